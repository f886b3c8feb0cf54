package org.tenthwise.app.ui.about;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Pattern;

/** The licences that lie in {@code META-INF/licenses}: our own and those of the libraries, word for word. */
final class LicenceText {

    /** The file of our own. */
    static final String OURS = "GPL-3.0";

    private static final Pattern EMPTY_LINES = Pattern.compile("\\R(?:[ \\t]*\\R)+");
    private static final Pattern LINE_BREAK = Pattern.compile("[ \\t]*\\R[ \\t]*");

    /** What a page surely holds: up to the end of a sentence, or else of a word. */
    private static final Pattern PIECE = Pattern.compile("\\G(?:.{1,400}$|.{1,399}[.;:,](?= )|.{1,400}(?= )) *");

    private LicenceText() {}

    /** The text in paragraphs, each of one line, so that a screen breaks it where it likes; long ones in pieces. */
    static List<String> paragraphs(String name) {
        return Arrays.stream(EMPTY_LINES.split(resource("/META-INF/licenses/" + name + ".txt")))
                .map(paragraph -> LINE_BREAK.matcher(paragraph.strip()).replaceAll(" "))
                .flatMap(paragraph -> PIECE.matcher(paragraph).results())
                .map(piece -> piece.group().strip())
                .toList();
    }

    static String resource(String path) {
        try (InputStream file = LicenceText.class.getResourceAsStream(path)) {
            if (file == null) {
                throw new IllegalStateException(path + " is not in the program");
            }
            return new String(file.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
