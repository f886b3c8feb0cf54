package org.tenthwise.app.ui.about;

import java.util.List;
import org.tenthwise.model.words.Message;

/**
 * One piece of other people's work that comes along.
 *
 * @param artifacts how the build names it, and what it brings with it
 * @param licence SPDX identifier
 * @param texts of its licence and what it wants said beside it, by the names of their files
 */
record Library(List<String> artifacts, String name, String licence, List<String> texts) {

    private static final String FILE = "libraries.tsv";

    Library {
        artifacts = List.copyOf(artifacts);
        texts = List.copyOf(texts);
    }

    /**
     * From the data file: a line each, four values with tabs between; lines that begin with # say something about it.
     */
    static List<Library> all() {
        return LicenceText.resource(FILE)
                .lines()
                .filter(line -> !line.isBlank() && !line.startsWith("#"))
                .map(Library::of)
                .toList();
    }

    /** What it does here. */
    Message serves() {
        return Message.of("about.serves." + artifacts.get(0));
    }

    private static Library of(String line) {
        String[] values = line.split("\t");
        if (values.length != 4) {
            throw new IllegalStateException("%s: four values are wanted in: %s".formatted(FILE, line));
        }
        return new Library(List.of(values[0].split(" ")), values[1], values[2], List.of(values[3].split(" ")));
    }
}
