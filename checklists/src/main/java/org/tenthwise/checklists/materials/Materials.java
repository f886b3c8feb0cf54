package org.tenthwise.checklists.materials;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import org.tenthwise.model.quantity.Expansion;

/** The table of materials. */
public final class Materials {

    private static final String FILE = "expansion.tsv";
    private static final int COLUMNS = 5;

    private final List<Material> all;

    private Materials(List<Material> all) {
        this.all = List.copyOf(all);
    }

    /** Those that come along. */
    public static Materials known() {
        try (InputStream in = Materials.class.getResourceAsStream(FILE)) {
            if (in == null) {
                throw new IllegalStateException("The table of materials is not in the program");
            }
            return new Materials(new String(in.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .filter(line -> !line.isBlank() && !line.startsWith("#"))
                    .map(Materials::material)
                    .toList());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Material material(String line) {
        String[] cells = line.split("\t", -1);
        if (cells.length != COLUMNS) {
            throw new IllegalStateException(
                    "The table of materials has a line of %s columns: %s".formatted(cells.length, line));
        }
        return new Material(cells[0], cells[1], Expansion.of(cells[2]), cells[3], cells[4]);
    }

    /** In the order of the table. */
    public List<Material> all() {
        return all;
    }

    /** Those of one designation, in whatever condition. */
    public List<Material> ofDesignation(String designation) {
        return all.stream()
                .filter(material -> material.designation().equals(designation))
                .toList();
    }

    /** By its whole name, or by its designation alone where the table has it in one condition only. */
    public Optional<Material> named(String name) {
        List<Material> alike = ofDesignation(name);
        return alike.size() == 1
                ? Optional.of(alike.get(0))
                : all.stream().filter(material -> material.name().equals(name)).findFirst();
    }
}
