package org.tenthwise.model.callout;

import java.math.BigDecimal;
import java.util.Optional;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.tolerance.GeneralTolerance;
import org.tenthwise.model.tolerance.Origin;
import org.tenthwise.model.words.Message;

/**
 * Gives a size without limits those of the general tolerance of the drawing, where it has one that says something of
 * such a size; where not, it stays without.
 */
record GeneralLimits(Optional<GeneralTolerance> general) {

    /** @param kind no chamfer's angle, whose tolerance hangs on its leg */
    CalloutSize on(CalloutKind kind, CalloutSize size) {
        return switch (kind) {
            case LINEAR, DIAMETER, SQUARE, COUNTERBORE, COUNTERSINK, SPOTFACE, DEPTH, ARC ->
                limited(size, nominal -> size.isFraction() ? on().onFraction(nominal) : on().onSize(nominal));
            case RADIUS, CHAMFER -> limited(size, nominal -> on().onRadius(nominal));
            case ANGLE, COUNTERSINK_ANGLE -> limited(size, nominal -> on().onAngle(Optional.empty()));
            default -> size;
        };
    }

    /** @param leg of the chamfer, along the face: the shorter one of its angle */
    CalloutSize onAngle(CalloutSize angle, CalloutSize leg) {
        Optional<Length> length = leg.nominal().map(figure -> Length.of(figure, leg.unit()));
        return limited(angle, nominal -> on().onAngle(length));
    }

    private GeneralTolerance on() {
        return general.orElseThrow();
    }

    private interface Found {
        Optional<Written> of(Written nominal);
    }

    private CalloutSize limited(CalloutSize size, Found found) {
        if (general.isEmpty() || size.hasLimits() || size.nominal().isEmpty()) {
            return size;
        }
        Written nominal = Written.of(size.nominal().orElseThrow(), size.unit());
        return found.of(nominal).map(off -> around(size, off)).orElse(size);
    }

    private CalloutSize around(CalloutSize size, Written off) {
        Unit finer = size.isOfAngle() ? off.unit() : size.unit();
        boolean whole = size.isOfAngle() && off.length().in(size.unit()).scale() <= 0;
        Unit unit = whole ? size.unit() : finer;
        BigDecimal nominal = in(size.nominal().orElseThrow(), size.unit(), unit);
        BigDecimal tolerance = in(off.figure(), off.unit(), unit);
        return new CalloutSize(
                Optional.of(nominal),
                Optional.of(nominal.subtract(tolerance)),
                Optional.of(nominal.add(tolerance)),
                unit,
                size.isFraction(),
                Optional.of(new Origin(on().text(), Message.of("model.callout.general"))));
    }

    private static BigDecimal in(BigDecimal figure, Unit from, Unit to) {
        if (from == to) {
            return figure;
        }
        BigDecimal other = Length.of(figure, from).in(to);
        return other.scale() < 0 ? other.setScale(0) : other;
    }
}
