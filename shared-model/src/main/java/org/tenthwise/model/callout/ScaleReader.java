package org.tenthwise.model.callout;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.words.Refused;

/**
 * Reads a figure in a unit that is none of length or angle: {@code 3.0 kg MAX}, {@code TORQUE 45 ±5 N·m}, {@code 32 µin
 * MAX}. Without limits it says nothing to hold and is refused. A micrometre behind a tolerance may be that of a size in
 * millimetres ({@code 25 ±10 µm}) and is refused too. Symbols: ISO 80000-1, and common practice of drawings in inches.
 */
final class ScaleReader {

    /** As drawn, in capitals and without blanks, to the symbol. */
    private static final Map<String, String> UNITS = units();

    private static final String WORDS =
            "(?:WEIGHT|MASS|TORQUE|TIGHTEN(?: TO)?|PRESSURE|LEAK(?:AGE)?(?: RATE)?|FORCE|UNBALANCE)";
    private static final Pattern SCALE = Pattern.compile("(?:" + WORDS + " )?(?:(?<bound>MAX|MIN|≤|≥)\\.? ?)?"
            + "(?<size>\\.?\\d[\\d.+\\-±/ ]*?) ?(?<unit>"
            + UNITS.keySet().stream().map(Pattern::quote).collect(Collectors.joining("|"))
            + ")(?: (?<last>MAX|MIN)\\.?)?");

    private final Tokens row;

    ScaleReader(Tokens row) {
        this.row = row;
    }

    private static Map<String, String> units() {
        Map<String, String> units = new LinkedHashMap<>();
        for (String symbol :
                new String[] {"kg", "kN", "N·m", "N·cm", "bar", "mbar", "kPa", "MPa", "psi", "g·mm", "°C", "°F"}) {
            units.put(symbol.toUpperCase(Locale.ROOT), symbol);
        }
        for (String spelling : new String[] {"NM", "N.M", "N-M", "N M"}) {
            units.put(spelling, "N·m");
        }
        for (String spelling : new String[] {
            "LBF·FT", "LBF.FT", "LBF-FT", "LB·FT", "LB-FT", "FT·LB", "FT-LB", "FT-LBS", "FT-LBF", "FT LB"
        }) {
            units.put(spelling, "lbf·ft");
        }
        for (String spelling :
                new String[] {"LBF·IN", "LBF-IN", "LB·IN", "LB-IN", "IN·LB", "IN-LB", "IN-LBS", "IN-LBF", "IN LB"}) {
            units.put(spelling, "lbf·in");
        }
        units.put("ML/MIN", "ml/min");
        units.put("CC/MIN", "cm³/min");
        units.put("CM3/MIN", "cm³/min");
        units.put("LBS", "lb");
        units.put("LB", "lb");
        units.put("OZ", "oz");
        units.put("G", "g");
        units.put("µM", "µm");
        units.put("µIN", "µin");
        return units;
    }

    /** In capitals, with the sign of a millionth as it is: its capital is another letter. */
    private static String capitals(String text) {
        return text.replace("µ", "\u0001").toUpperCase(Locale.ROOT).replace("\u0001", "µ");
    }

    private static Matcher found(Tokens row) {
        return SCALE.matcher(capitals(row.text(row.rest().size())).replaceAll("\\s+", " "));
    }

    static boolean isNext(Tokens row) {
        return found(row).matches();
    }

    CalloutPart read() {
        Matcher found = found(row);
        found.matches();
        String unit = UNITS.get(found.group("unit"));
        CalloutSize size = BoundedSize.read(
                found.group("size"),
                Unit.named(unit),
                List.of(Optional.ofNullable(found.group("bound")), Optional.ofNullable(found.group("last"))));
        if (!size.hasLimits()) {
            throw new Refused("model.callout.scale-without-limit", found.group("size"), unit);
        }
        if (unit.startsWith("µ") && size.nominal().isPresent()) {
            throw new Refused("model.callout.size-or-height", unit);
        }
        row.skip(row.rest().size());
        return CalloutPart.of(CalloutKind.SCALE, size);
    }
}
