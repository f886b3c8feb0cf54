package org.tenthwise.model.tolerance;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.words.Refused;

/**
 * Takes the tolerances of a title block apart, entry by entry: {@code .XX ±.01}, {@code 2 PL ±.01}, {@code FRACTIONS
 * ±1/64}, {@code ANGLES ±0°30′}. What it does not know, what stands twice and what leaves no room it refuses.
 */
final class BlockReader {

    private static final Pattern FILL =
            Pattern.compile("(?:[\\s,;:]|TITLE BLOCK|TOLERANCES?|UNLESS OTHERWISE SPECIFIED|DECIMALS?\\b|LINEAR\\b)+");
    private static final Pattern EQUALS = Pattern.compile("[\\s=:]*±\\s*");
    private static final Pattern X_PLACES = Pattern.compile("X?\\.(X{1,5})(?!X)|X(?![.X])\\.?|X\\.(?!X)");
    private static final Pattern COUNTED = Pattern.compile("([0-5])[ -]?(?:PL|PLACES?)(?![A-Z])(?: DEC(?:IMALS?)?)?");
    private static final Pattern FRACTIONS = Pattern.compile("FRACTION(?:S|AL)?(?![A-Z])");
    private static final Pattern ANGLES = Pattern.compile("ANG(?:LES?|ULAR)?(?![A-Z])");
    private static final Pattern FIGURE = Pattern.compile("(\\d{0,3}\\.\\d{1,6}|\\d{1,3})(?![\\d./°′']|,\\d)");
    private static final Pattern FRACTION = Pattern.compile("(\\d{1,2})/(2|4|8|16|32|64|128)(?!\\d)");
    private static final Pattern DEGREES =
            Pattern.compile("(?:(\\d{0,2}\\.?\\d{1,4})\\s*(?:°|DEG(?:REES?)?\\b))?\\s*(?:(\\d{1,2})\\s*[′'])?");
    private static final BigDecimal MINUTES = new BigDecimal("60");
    private static final int PLACES_OF_A_FRACTION = 7;

    private final String text;
    private final Unit unit;
    private final Matcher at;
    private final int end;
    private int place;
    private final Map<Integer, Written> byPlaces = new HashMap<>();
    private Optional<Written> fractions = Optional.empty();
    private Optional<Written> angles = Optional.empty();

    BlockReader(String text, Unit unit) {
        this.text = text;
        this.unit = unit;
        String plain = text.strip()
                .toUpperCase(Locale.ROOT)
                .replaceAll("\\+\\s*/?\\s*[-−–]", "±")
                .replace("’", "′");
        this.at = FILL.matcher(plain);
        this.end = plain.length();
    }

    BlockTolerance read() {
        skip();
        while (place < end) {
            entry();
            skip();
        }
        if (byPlaces.isEmpty() && fractions.isEmpty() && angles.isEmpty()) {
            throw unreadable();
        }
        return new BlockTolerance(text.strip(), byPlaces, fractions, angles);
    }

    private void entry() {
        if (next(X_PLACES)) {
            String decimals = at.group(1);
            places(decimals == null ? 0 : decimals.length());
        } else if (next(COUNTED)) {
            places(Integer.parseInt(at.group(1)));
        } else if (next(FRACTIONS)) {
            once(fractions.isPresent());
            fractions = Optional.of(fraction());
        } else if (next(ANGLES)) {
            once(angles.isPresent());
            angles = Optional.of(angle());
        } else {
            throw unreadable();
        }
    }

    private void places(int places) {
        once(byPlaces.containsKey(places));
        expect(EQUALS);
        expect(FIGURE);
        byPlaces.put(places, positive(new BigDecimal(at.group(1)), unit));
    }

    private Written fraction() {
        expect(EQUALS);
        if (next(FIGURE)) {
            return positive(new BigDecimal(at.group(1)), unit);
        }
        expect(FRACTION);
        return positive(
                new BigDecimal(at.group(1))
                        .divide(new BigDecimal(at.group(2)), PLACES_OF_A_FRACTION, RoundingMode.UNNECESSARY),
                unit);
    }

    /** Degrees, minutes or both; a figure without a mark could be either and is refused. */
    private Written angle() {
        expect(EQUALS);
        expect(DEGREES);
        if (at.group(1) == null && at.group(2) == null) {
            throw new Refused("model.general-tolerance.angle-mark", text);
        }
        BigDecimal degrees = at.group(1) == null ? BigDecimal.ZERO : new BigDecimal(at.group(1));
        BigDecimal minutes = at.group(2) == null ? BigDecimal.ZERO : new BigDecimal(at.group(2));
        return positive(degrees.multiply(MINUTES).add(minutes).stripTrailingZeros(), Unit.MINUTE_OF_ARC);
    }

    private Written positive(BigDecimal figure, Unit of) {
        if (figure.signum() == 0) {
            throw new Refused("model.general-tolerance.no-room", text);
        }
        return Written.of(figure.scale() < 0 ? figure.setScale(0) : figure, of);
    }

    private void once(boolean there) {
        if (there) {
            throw new Refused("model.general-tolerance.twice", text);
        }
    }

    private void skip() {
        next(FILL);
    }

    private void expect(Pattern pattern) {
        if (!next(pattern)) {
            throw unreadable();
        }
    }

    private boolean next(Pattern pattern) {
        boolean there = at.usePattern(pattern).region(place, end).lookingAt();
        if (there) {
            place = at.end();
        }
        return there;
    }

    private Refused unreadable() {
        return new Refused("model.general-tolerance.unreadable", text);
    }
}
