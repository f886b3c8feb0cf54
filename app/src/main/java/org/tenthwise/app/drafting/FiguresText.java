package org.tenthwise.app.drafting;

import java.io.IOException;
import java.nio.charset.CharacterCodingException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.tenthwise.model.words.Refused;

/** A table of figures as a file, as a coordinate machine hands it out. */
public final class FiguresText {

    /** Ending of its name. */
    public static final String ENDING = ".csv";

    private static final long MOST_BYTES = 4_000_000;

    private FiguresText() {}

    /**
     * The text of one.
     *
     * @throws Refused if it cannot be read as such a table
     */
    public static String of(Path file) {
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
