package org.tenthwise.app.history;

import java.math.BigInteger;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.tenthwise.model.plan.PartId;

/**
 * The part that is next at the machine: the one that follows on the last of a part number, by its serial, or one that
 * is measured again.
 *
 * @param serial one more than the last, written as that is, 014 after 013; of the same part as it is
 * @param lot that of the last; absent where it had none
 */
public record NextPart(String serial, Optional<String> lot) {

    private static final Pattern COUNTED = Pattern.compile("(.*?)(\\d+)", Pattern.DOTALL);

    /**
     * Absent where nothing was begun on the part and revision, the last serial does not end in a number that can be
     * counted on, or a run has the next one.
     */
    public static Optional<NextPart> of(PartId part, History history) {
        return history.lastOf(part).flatMap(last -> after(last.serial())
                .filter(serial -> history.runsOf(part, serial).isEmpty())
                .map(serial -> new NextPart(serial, lot(last))));
    }

    /** The part of a run once more; absent where it has no serial. */
    public static Optional<NextPart> same(RunFacts run) {
        return Optional.of(run).filter(of -> !of.serial().isBlank()).map(of -> new NextPart(of.serial(), lot(of)));
    }

    private static Optional<String> lot(RunFacts run) {
        return Optional.of(run.lot()).filter(lot -> !lot.isBlank());
    }

    /** One more, in as many digits; absent behind nines alone, where nobody can tell whether a digit more is meant. */
    static Optional<String> after(String serial) {
        Matcher counted = COUNTED.matcher(serial);
        if (!counted.matches()) {
            return Optional.empty();
        }
        String digits = counted.group(2);
        String next = new BigInteger(digits).add(BigInteger.ONE).toString();
        return next.length() > digits.length()
                ? Optional.empty()
                : Optional.of(counted.group(1) + "0".repeat(digits.length() - next.length()) + next);
    }
}
