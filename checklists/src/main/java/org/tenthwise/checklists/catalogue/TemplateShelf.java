package org.tenthwise.checklists.catalogue;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.tenthwise.checklists.editing.Template;
import org.tenthwise.model.words.Refused;

/** Templates of checks: those that come along, in the language of the shop, and behind them those the shop keeps. */
public final class TemplateShelf {

    /** End of the name of a file of a template in the folder of plans. */
    static final String TEMPLATE = ".template.toml";

    /** In the order they are offered. */
    private static final List<String> SHIPPED = List.of(
            "bore-with-plug",
            "thread-over-wires",
            "deep-hole",
            "run-out-before-form-tool",
            "size-of-a-feature",
            "confirm",
            "look");

    private final Path folder;

    /** @param folder of plans; need not be there before the first template is kept */
    public TemplateShelf(Path folder) {
        this.folder = folder.toAbsolutePath();
    }

    /** Those that come along; in English for a language there are none in. */
    public static List<Template> shipped(Locale language) {
        String spoken = language.getLanguage().equals(Locale.GERMAN.getLanguage()) ? "de" : "en";
        return SHIPPED.stream()
                .map(name -> Template.of(text(spoken + "/" + name), name).orElseThrow())
                .toList();
    }

    private static String text(String name) {
        try (InputStream in = TemplateShelf.class.getResourceAsStream("/templates/" + name + PlanDesk.PLAN)) {
            if (in == null) {
                throw new IllegalStateException("The template %s is not in the program".formatted(name));
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /**
     * All there are; a file that cannot be read, or holds no step, is passed over. Figures that a person has written
     * into one are left out like those of a plan.
     */
    public List<Template> all(Locale language) throws IOException {
        List<Template> all = new ArrayList<>(shipped(language));
        if (!Files.isDirectory(folder)) {
            return all;
        }
        List<Path> files;
        try (Stream<Path> listed = Files.list(folder)) {
            files = listed.filter(file -> file.getFileName().toString().endsWith(TEMPLATE))
                    .sorted()
                    .toList();
        }
        for (Path file : files) {
            String name = file.getFileName().toString();
            if (FileText.of(file) instanceof FileText.Readable readable) {
                Template.of(readable.text(), name.substring(0, name.length() - TEMPLATE.length()))
                        .map(template -> Template.kept(template.name(), template.steps()))
                        .ifPresent(all::add);
            }
        }
        return all;
    }

    /**
     * Keeps one for the shop.
     *
     * @throws Refused if there is one of that name
     */
    public void keep(Template template) throws IOException {
        Path file = folder.resolve(template.name().strip().replaceAll("[^\\p{L}\\p{N}._-]", "_") + TEMPLATE);
        if (Files.exists(file)) {
            throw new Refused("desk.template-there", template.name());
        }
        PlanDesk.write(file, template.text());
    }
}
