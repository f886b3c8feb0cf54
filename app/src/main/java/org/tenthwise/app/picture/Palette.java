package org.tenthwise.app.picture;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;

/** A colour for every role. The screen's theme and the record take theirs from here, so there is one table. */
public enum Palette {
    DAY(
            """
            paper #F1EDE3
            sheet #FFFDF8
            zone #E2EFE9
            pressed #E2DCCD
            ink #15171A
            ink2 #45463F
            line #15171A
            hatch #7E7B70
            rule #87837A
            accent #0B4A8C
            accentfill #0B4A8C
            onaccent #FFFFFF
            stop #15171A
            onstop #FFFFFF
            pass #005558
            fail #8E1B04
            cut #6E4300
            cutfill #B36E00
            unproven #563C8A
            open #736F66
            """),

    NIGHT(
            """
            paper #0E1012
            sheet #181B1E
            zone #122D28
            pressed #34383D
            ink #EFEBE2
            ink2 #BDB9AF
            line #EFEBE2
            hatch #85837B
            rule #74726B
            accent #8CC2FF
            accentfill #154478
            onaccent #FFFFFF
            stop #3A3E43
            onstop #FFFFFF
            pass #5FD3D0
            fail #FF9E80
            cut #F0BF4C
            cutfill #D79B1E
            unproven #C9B6FA
            open #98958C
            """),

    /** Day, on white paper. */
    PRINT(DAY, """
            paper #FFFFFF
            sheet #FFFFFF
            """);

    private final Map<Role, String> hex;

    Palette(String table) {
        this.hex = Map.copyOf(colours(table));
    }

    /** Like {@code other} but for the colours in {@code table}. */
    Palette(Palette other, String table) {
        Map<Role, String> colours = new EnumMap<>(other.hex);
        colours.putAll(colours(table));
        this.hex = Map.copyOf(colours);
    }

    private static Map<Role, String> colours(String table) {
        return table.lines()
                .map(line -> line.split(" "))
                .collect(Collectors.toMap(row -> Role.valueOf(row[0].toUpperCase(Locale.ROOT)), row -> row[1]));
    }

    /** {@code #} and six hexadecimal digits. */
    public String hex(Role role) {
        return hex.get(role);
    }

    /** Red, green and blue as 0xRRGGBB. */
    public int rgb(Role role) {
        return Integer.parseInt(hex(role).substring(1), 16);
    }

    /** Looked-up colours for the root of a style sheet, one declaration a line: {@code -paper: #F1EDE3;}. */
    public String css() {
        return Arrays.stream(Role.values())
                .map(role -> role.css() + ": " + hex(role) + ";\n")
                .collect(Collectors.joining());
    }
}
