package org.tenthwise.app.picture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Font;
import java.awt.FontFormatException;
import java.io.IOException;
import java.io.InputStream;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.tenthwise.model.words.Words;

/** An empty box in place of a counterbore reads as a square: every face of a screen is asked for every sign. */
class DrawingSignsTest {

    @ParameterizedTest
    @EnumSource(
            value = Face.class,
            names = {"REGULAR", "MEDIUM", "BOLD"})
    void noSignIsABoxOnAScreen(Face face) throws IOException, FontFormatException {
        try (InputStream file = face.open()) {
            Font font = Font.createFont(Font.TRUETYPE_FONT, file);
            for (Locale language : List.of(Locale.ENGLISH, Locale.GERMAN)) {
                Words words = Words.of(language).lettered();
                DrawingSigns.all().forEach(sign -> {
                    String said = words.list(List.of("4X" + sign + "15"));
                    assertEquals(-1, font.canDisplayUpTo(said), said);
                    assertTrue(said.matches("4X.+15"), said);
                });
            }
        }
    }
}
