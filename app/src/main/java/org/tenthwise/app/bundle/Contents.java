package org.tenthwise.app.bundle;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Whether a bundle holds what its manifest names, no file more and none less, each where it belongs. */
record Contents(Manifest manifest, List<String> there) {

    private static final List<String> AHEAD = List.of(Manifest.FILE, Manifest.SIGNATURE, Manifest.KEY);

    void check() throws NotABundle {
        List<String> due = new ArrayList<>(AHEAD);
        manifest.files().forEach(file -> due.add(file.name()));
        Set<String> found = new HashSet<>(there);
        for (String name : due) {
            if (!found.contains(name)) {
                throw NotABundle.because("bundle.missing", name);
            }
        }
        Set<String> named = new HashSet<>(due);
        for (String name : there) {
            if (!named.contains(name)) {
                throw NotABundle.because("bundle.one-more", name);
            }
        }
        if (!there.equals(due)) {
            throw NotABundle.because("bundle.order");
        }
        eachInARun();
    }

    private void eachInARun() throws NotABundle {
        Set<String> folders = new HashSet<>();
        Set<String> names = new HashSet<>();
        manifest.files().forEach(file -> names.add(file.name()));
        for (Manifest.OfRun run : manifest.runs()) {
            if (!folders.add(run.folder())) {
                throw NotABundle.because("bundle.run-twice", run.run());
            }
            for (String file : List.of(Manifest.ENTRIES, Manifest.PLAN, Manifest.RECORD + "json")) {
                if (!names.contains(run.file(file))) {
                    throw NotABundle.because("bundle.missing", run.file(file));
                }
            }
        }
        for (String name : names) {
            String folder = name.substring(0, Math.max(0, name.lastIndexOf('/')));
            String file = name.substring(name.lastIndexOf('/') + 1);
            if (!folders.contains(folder)
                    || !(file.equals(Manifest.ENTRIES)
                            || file.equals(Manifest.PLAN)
                            || file.startsWith(Manifest.RECORD))) {
                throw NotABundle.because("bundle.one-more", name);
            }
        }
        if (folders.isEmpty()) {
            throw NotABundle.because("bundle.manifest");
        }
    }
}
