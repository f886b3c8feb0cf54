package org.tenthwise.app.ui.about;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;

/**
 * One piece of other people's work that comes along.
 *
 * @param artifact how the build names it
 * @param licence SPDX identifier
 * @param serves what it does here
 */
record Library(String artifact, String name, String licence, String serves) {

    private static final String FILE = "libraries.tsv";

    /**
     * From the data file: a line each, four values with tabs between; lines that begin with # say something about it.
     */
    static List<Library> all() {
        try (InputStream file = Library.class.getResourceAsStream(FILE)) {
            if (file == null) {
                throw new IllegalStateException(FILE + " is not in the program");
            }
            return new String(file.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .filter(line -> !line.isBlank() && !line.startsWith("#"))
                    .map(Library::of)
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Library of(String line) {
        String[] values = line.split("\t");
        if (values.length != 4) {
            throw new IllegalStateException("%s: four values are wanted in: %s".formatted(FILE, line));
        }
        return new Library(values[0], values[1], values[2], values[3]);
    }
}
