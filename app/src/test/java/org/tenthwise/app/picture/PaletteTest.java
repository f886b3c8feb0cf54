package org.tenthwise.app.picture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * Contrast by WCAG 2.2, definitions of relative luminance and contrast ratio; asked: 1.4.6 for text, 1.4.11 for shapes.
 */
class PaletteTest {

    private static final List<Role> TEXT =
            List.of(Role.INK, Role.INK2, Role.ACCENT, Role.PASS, Role.FAIL, Role.CUT, Role.UNPROVEN);
    private static final List<Role> SHAPES = List.of(Role.LINE, Role.HATCH, Role.RULE, Role.CUTFILL, Role.OPEN);

    @ParameterizedTest
    @EnumSource(Palette.class)
    void textStandsOutSevenToOne(Palette palette) {
        for (Role ground : List.of(Role.PAPER, Role.SHEET, Role.ZONE)) {
            TEXT.forEach(role -> asked(palette, role, ground, 7));
        }
        asked(palette, Role.ONACCENT, Role.ACCENTFILL, 7);
        asked(palette, Role.ONSTOP, Role.STOP, 7);
        asked(palette, Role.INK, Role.PRESSED, 7);
    }

    @ParameterizedTest
    @EnumSource(Palette.class)
    void shapesStandOutThreeToOne(Palette palette) {
        for (Role ground : List.of(Role.PAPER, Role.SHEET)) {
            SHAPES.forEach(role -> asked(palette, role, ground, 3));
        }
    }

    @ParameterizedTest
    @EnumSource(Palette.class)
    void everyRoleIsDeclaredForTheTheme(Palette palette) {
        assertEquals(
                Role.values().length,
                palette.css()
                        .lines()
                        .filter(line -> line.matches("-[a-z0-9]+: #[0-9A-F]{6};"))
                        .count());
    }

    private static void asked(Palette palette, Role role, Role ground, double ratio) {
        double one = luminance(palette.rgb(role));
        double other = luminance(palette.rgb(ground));
        double contrast = (Math.max(one, other) + 0.05) / (Math.min(one, other) + 0.05);
        assertTrue(
                contrast >= ratio,
                () -> String.format(Locale.ROOT, "%s on %s, %s: %.1f", role, ground, palette, contrast));
    }

    private static double luminance(int rgb) {
        return 0.2126 * linear(rgb >> 16 & 0xff) + 0.7152 * linear(rgb >> 8 & 0xff) + 0.0722 * linear(rgb & 0xff);
    }

    private static double linear(int part) {
        double share = part / 255.0;
        return share <= 0.04045 ? share / 12.92 : Math.pow((share + 0.055) / 1.055, 2.4);
    }
}
