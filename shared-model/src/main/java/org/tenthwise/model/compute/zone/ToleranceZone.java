package org.tenthwise.model.compute.zone;

import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.words.Refused;

/**
 * A zone as a drawing has it behind the size: letters for where it lies, a grade for how wide it is.
 *
 * <p>The letters set one deviation, the grade the other: a to h ei = es − IT, j to zc es = ei + IT, A to H ES = EI +
 * IT, J to ZC EI = ES − IT; js and JS lie half and half.
 *
 * <p>Deviations and limits, exact: with an odd width js has half micrometres, which the standard allows a drawing to
 * round away and this does not.
 *
 * <p>A zone the standard does not tabulate at a size is refused with the reason, not made up from a formula.
 *
 * <p>Source: ISO 286-1:2010, 4.3 and Tables 1 to 5; its limits are those of ISO 286-2:2010.
 *
 * @param letters all capital for a hole, all small for a shaft
 */
public record ToleranceZone(String letters, Grade grade) {

    private static final Pattern NAME = Pattern.compile("([A-Za-z]{1,2})(\\d{1,2})");
    private static final int PLACES_OF_A_MICROMETRE = 3;

    public ToleranceZone {
        if (!isOneCase(letters) || !ShaftDeviation.knows(letters.toLowerCase(Locale.ROOT))) {
            throw new Refused("model.tolerance-zone.position-zone", letters);
        }
    }

    /**
     * @param name such as {@code H7}, {@code js6}, {@code ZC9}
     * @throws IllegalArgumentException if no zone is called that
     */
    public static ToleranceZone read(String name) {
        Matcher parts = NAME.matcher(name);
        if (!parts.matches()) {
            throw new Refused("model.tolerance-zone.tolerance-zone", name);
        }
        Grade grade = Grade.ofNumber(parts.group(2))
                .orElseThrow(() -> new Refused("model.tolerance-zone.tolerance-zone-grades", name));
        return new ToleranceZone(parts.group(1), grade);
    }

    public boolean isHole() {
        return letters.equals(letters.toUpperCase(Locale.ROOT));
    }

    /** @throws IllegalArgumentException if the standard has no such zone at that size, with the reason */
    public ZoneLimits of(Length nominal) {
        Length width = StandardTolerance.of(grade, nominal);
        String position = letters.toLowerCase(Locale.ROOT);
        if (position.equals("js")) {
            return new ZoneLimits(nominal, width.half(), width.half().negated());
        }
        Length set = isHole() ? HoleDeviation.of(letters, grade, nominal) : ShaftDeviation.of(letters, grade, nominal);
        return isHole() == ShaftDeviation.ABOVE_H.contains(position)
                ? new ZoneLimits(nominal, set.plus(width), set)
                : new ZoneLimits(nominal, set, set.minus(width));
    }

    /**
     * Whether the standard lets a drawing round the half micrometres of this zone down: js and JS of grades 7 to 11.
     */
    public boolean mayBeRoundedDown(Length nominal) {
        return letters.equalsIgnoreCase("js")
                && grade.isFrom(Grade.IT7)
                && grade.isAtMost(Grade.IT11)
                && of(nominal).upper().millimetres().scale() > PLACES_OF_A_MICROMETRE;
    }

    @Override
    public String toString() {
        return letters + grade.number();
    }

    private static boolean isOneCase(String letters) {
        return letters.equals(letters.toLowerCase(Locale.ROOT)) || letters.equals(letters.toUpperCase(Locale.ROOT));
    }
}
