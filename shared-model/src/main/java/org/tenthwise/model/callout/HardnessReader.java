package org.tenthwise.model.callout;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.words.Refused;

/**
 * Reads a requirement of hardness, its scale before the figures or behind them: {@code HRC 32-36}, {@code 58 HRC MIN},
 * {@code 650 HV10 MIN}. Notation: ISO 6506-1, ISO 6507-1, ISO 6508-1, from memory.
 */
final class HardnessReader {

    static final String[] SCALES = {"HRC", "HRB", "HRA", "HB", "HBW", "HBS", "HV", "HRN", "HK"};

    private static final String LOAD = "(?:0\\.[1-9]\\d?|1|2|3|5|10|20|30|50|100)(?![\\d.])";
    private static final String SCALE =
            "HR[ABC]|HR ?(?:15|30|45)N|HRN|HBW(?: ?10/3000| ?5/750| ?2\\.5/187\\.5)?|HBS|HB|HV(?:" + LOAD
                    + "(?=\\s|$))?|HK";
    private static final Pattern HARDNESS = Pattern.compile("(?:(?<bound>MAX|MIN|≤|≥)\\.? ?)?"
            + "(?:(?<before>" + SCALE + ") ?(?<between>MAX|MIN|≤|≥)?\\.? ?)?"
            + "(?<size>\\d[\\d.+\\-±/ ]*?|\\d[\\d.]*\\s*TO\\s*\\d[\\d.]*)"
            + "(?: ?(?<behind>" + SCALE + "))?"
            + "(?: ?(?<last>MAX|MIN)\\.?)?");

    private final Tokens row;

    HardnessReader(Tokens row) {
        this.row = row;
    }

    /** Whether the name of a scale begins it, or stands behind figures. */
    static boolean isNext(Tokens row) {
        return isScale(row.peek()) || isFigures(row) && row.rest().stream().anyMatch(HardnessReader::isScale);
    }

    private static boolean isFigures(Tokens row) {
        return row.peek().isFigure()
                || row.peek().is('≥')
                || row.peek().is('≤')
                || row.peek().isWord("MAX", "MIN") && row.peek(1).isFigure();
    }

    private static boolean isScale(Token token) {
        return token.isWord(SCALES) || token.isWord("HR");
    }

    CalloutPart read() {
        String drawn = row.text(row.rest().size());
        Matcher found = HARDNESS.matcher(drawn.toUpperCase(Locale.ROOT));
        if (!found.matches() || (found.group("before") == null) == (found.group("behind") == null)) {
            throw new Refused("model.callout.hardness", drawn);
        }
        row.skip(row.rest().size());
        String scale = found.group("before") == null ? found.group("behind") : found.group("before");
        return CalloutPart.of(
                CalloutKind.HARDNESS,
                BoundedSize.read(
                        found.group("size"),
                        Unit.named(scale.replace(" ", "")),
                        List.of(
                                Optional.ofNullable(found.group("bound")),
                                Optional.ofNullable(found.group("between")),
                                Optional.ofNullable(found.group("last")))));
    }
}
