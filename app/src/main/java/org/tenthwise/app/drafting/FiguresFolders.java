package org.tenthwise.app.drafting;

import java.io.IOException;
import java.nio.charset.CharacterCodingException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.tenthwise.model.words.Refused;

/**
 * Where tables of figures lie, as a coordinate machine hands them out.
 *
 * @param folders looked through in their order; one that is not there holds none
 */
public record FiguresFolders(List<Path> folders) {

    private static final String TEXT = ".csv";
    private static final long MOST_BYTES = 4_000_000;

    public FiguresFolders {
        folders = List.copyOf(folders);
    }

    /** Every CSV in them by its name. */
    public List<Path> files() throws IOException {
        List<Path> found = new ArrayList<>();
        for (Path folder : folders) {
            if (Files.isDirectory(folder)) {
                try (Stream<Path> all = Files.list(folder)) {
                    all.filter(file -> file.getFileName()
                                    .toString()
                                    .toLowerCase(Locale.ROOT)
                                    .endsWith(TEXT))
                            .sorted(Comparator.comparing(Path::getFileName))
                            .forEach(found::add);
                }
            }
        }
        return found;
    }

    /**
     * The text of one of them.
     *
     * @throws Refused if it cannot be read as such a table
     */
    public static String text(Path file) {
        try {
            if (!Files.isRegularFile(file)) {
                throw new Refused("list.no-file", file);
            }
            if (Files.size(file) > MOST_BYTES) {
                throw new Refused("list.too-long", file);
            }
            return Files.readString(file);
        } catch (CharacterCodingException e) {
            throw new Refused("list.not-utf8", file);
        } catch (IOException e) {
            throw new Refused("list.broken", file);
        }
    }
}
