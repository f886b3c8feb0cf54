package org.tenthwise.app.session;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.stream.Stream;
import org.tenthwise.model.plan.Body;
import org.tenthwise.model.plan.Climate;
import org.tenthwise.model.quantity.Celsius;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.record.Line;
import org.tenthwise.model.record.Warmth;
import org.tenthwise.model.run.Run;

/** The temperatures of a pass: which is wanted, what to suggest, and what is said against one that is typed. */
final class Thermometer {

    private static final BigDecimal COLDEST = BigDecimal.ZERO;
    private static final BigDecimal WARMEST = new BigDecimal("60");
    /** Colder than the shop by more than this is no part and no gauge that lay in it. */
    private static final BigDecimal BELOW_THE_SHOP = BigDecimal.TEN;
    /** A thermometer shows hundredths at the most; a figure with more came from another gauge. */
    private static final int MOST_PLACES = 2;

    private Thermometer() {
    }

    /** The next temperature to take once the readings are there. */
    static Optional<Asked> asked(Line line, Run run) {
        return line.finding().warmth().flatMap(Warmth::wanted).map(body -> new Asked.Temperature(body, suggested(body, run)));
    }

    /** What was read last of {@code body} in the run and was not struck out, at whatever check. */
    private static Optional<Celsius> suggested(Body body, Run run) {
        return run.temperatures().filter(taken -> taken.of() == body && taken.struck().isEmpty())
                .reduce((earlier, later) -> later).map(Run.Temperature::read);
    }

    static Optional<Objection> objection(String text, Climate climate) {
        if (!Written.isPlainDecimal(text)) {
            return Optional.of(new Objection(Objection.Kind.NOT_A_NUMBER, text));
        }
        BigDecimal degrees = new BigDecimal(text);
        try {
            new Celsius(degrees);
        } catch (IllegalArgumentException e) {
            return Optional.of(new Objection(Objection.Kind.NO_SUM, e.getMessage()));
        }
        BigDecimal coldest = COLDEST.max(climate.shop().least().degrees().subtract(BELOW_THE_SHOP));
        boolean likely = degrees.compareTo(coldest) >= 0 && degrees.compareTo(WARMEST) <= 0 && degrees.scale() <= MOST_PLACES;
        return likely ? Optional.empty() : Optional.of(new Objection(Objection.Kind.FAR_OFF, text));
    }
}
