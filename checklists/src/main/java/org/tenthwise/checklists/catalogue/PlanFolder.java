package org.tenthwise.checklists.catalogue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.tenthwise.checklists.rules.PlanProblem;
import org.tenthwise.checklists.rules.PlanReader;
import org.tenthwise.checklists.rules.PlanReading;
import org.tenthwise.model.words.Message;

/**
 * A folder with plan files: {@code *.toml}, but neither {@code *.readings.toml} nor {@code *.draft.toml} nor
 * {@code *.template.toml}. Whatever lies there under such a name, the other plans are read all the same. Folders inside
 * it are not looked into.
 */
public final class PlanFolder {

    static final String READINGS = ".readings.toml";

    private final PlanReader reader = new PlanReader();
    private final Path folder;

    public PlanFolder(Path folder) {
        this.folder = folder;
    }

    /**
     * Every plan file of the folder, by name.
     *
     * @throws IOException if the folder itself cannot be listed; a file that cannot be read is among the refused
     */
    public Catalogue read() throws IOException {
        List<Path> files;
        try (Stream<Path> all = Files.list(folder)) {
            files = all.filter(PlanFolder::isPlanFile).sorted().toList();
        }
        Catalogue catalogue = new Catalogue(List.of(), List.of());
        for (Path file : files) {
            catalogue = catalogue.and(one(file));
        }
        return catalogue;
    }

    static boolean isPlanFile(Path file) {
        String name = file.getFileName().toString();
        return name.endsWith(PlanDesk.PLAN)
                && Stream.of(READINGS, PlanDesk.DRAFT, TemplateShelf.TEMPLATE).noneMatch(name::endsWith);
    }

    private Catalogue one(Path file) {
        String name = file.getFileName().toString();
        FileText text = FileText.of(file);
        if (text instanceof FileText.Unreadable unreadable) {
            return refused(name, Message.ofValue("file", unreadable.why()));
        }
        try {
            PlanReading reading = reader.read(((FileText.Readable) text).text());
            return reading instanceof PlanReading.Good good
                    ? new Catalogue(List.of(new Catalogue.Listed(name, good.plan())), List.of())
                    : refused(name, ((PlanReading.Bad) reading).problems());
        } catch (RuntimeException | StackOverflowError e) {
            return refused(name, Message.of("file.stumbled"));
        }
    }

    private static Catalogue refused(String name, Message what) {
        return refused(name, List.of(PlanProblem.ofFile(what)));
    }

    private static Catalogue refused(String name, List<PlanProblem> problems) {
        return new Catalogue(List.of(), List.of(new Catalogue.RefusedFile(name, problems)));
    }
}
