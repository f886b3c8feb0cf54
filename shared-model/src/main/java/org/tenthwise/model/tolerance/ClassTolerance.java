package org.tenthwise.model.tolerance;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.words.Refused;

/**
 * General tolerances by a class of ISO 2768-1. What stands behind the class, as the K of {@code mK}, is of form and
 * place and says nothing of sizes.
 *
 * @param text as the drawing has it
 */
public record ClassTolerance(String text, GeneralClass classOf) implements GeneralTolerance {

    private static final Pattern NAMES = Pattern.compile("(?i)\\s*(?:(?:DIN|EN|BS|NF)[ -]*)*ISO[ -]*2768(.*)");
    private static final Pattern CLASS =
            Pattern.compile("(?i)(?:-1(?![0-9]))?(?::\\d{4}(?:-\\d\\d)?)?[ -]*([fmcv])(?:[HKL])?(?:[ -]*E)?\\s*");

    /**
     * Absent where {@code text} names another thing.
     *
     * @throws Refused where it names the standard without a class of sizes, or the drawing is in inches
     */
    static Optional<ClassTolerance> read(String text, Unit unit) {
        Matcher named = NAMES.matcher(text);
        if (!named.matches()) {
            return Optional.empty();
        }
        Matcher read = CLASS.matcher(named.group(1).replaceAll("[‐‑–—−]", "-").strip());
        if (!read.matches()) {
            throw new Refused("model.general-tolerance.no-class", text);
        }
        if (unit == Unit.INCH) {
            throw new Refused("model.general-tolerance.millimetres", text);
        }
        return GeneralClass.ofLetter(read.group(1)).map(known -> new ClassTolerance(text.strip(), known));
    }

    @Override
    public Optional<Written> onSize(Written nominal) {
        return at(GeneralClass.Kind.LINEAR, nominal);
    }

    @Override
    public Optional<Written> onFraction(Written nominal) {
        return onSize(nominal);
    }

    @Override
    public Optional<Written> onRadius(Written nominal) {
        return at(GeneralClass.Kind.RADIUS, nominal);
    }

    @Override
    public Optional<Written> onAngle(Optional<Length> shorterLeg) {
        return shorterLeg
                .flatMap(leg -> classOf.find(GeneralClass.Kind.ANGLE, leg.millimetres()))
                .map(minutes -> Written.of(minutes, Unit.MINUTE_OF_ARC));
    }

    private Optional<Written> at(GeneralClass.Kind kind, Written nominal) {
        BigDecimal size = nominal.figure();
        return nominal.unit() == Unit.MILLIMETRE
                ? classOf.find(kind, size).map(figure -> Written.of(figure, Unit.MILLIMETRE))
                : Optional.empty();
    }
}
