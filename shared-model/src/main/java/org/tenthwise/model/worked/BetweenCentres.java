package org.tenthwise.model.worked;

import java.util.List;
import java.util.Optional;
import org.tenthwise.model.compute.position.CentreDistance;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.words.Word;

/**
 * The distance of two bores from middle to middle, over plugs in them, between the plugs, or by the web left between
 * the bores themselves.
 *
 * @param first diameter of one plug or, by the web, of one bore
 * @param second of the other
 */
public record BetweenCentres(Read read, Written first, Written second) implements WorkedBy {

    /** What is read. */
    public enum Read {
        OVER,
        BETWEEN,
        WEB;

        /** How a plan names it. */
        public String key() {
            return Word.of(this);
        }
    }

    @Override
    public WorkedWay way() {
        return WorkedWay.CENTRES;
    }

    @Override
    public List<WorkedReading> readings() {
        return List.of(
                switch (read) {
                    case OVER -> WorkedReading.OVER_PLUGS;
                    case BETWEEN -> WorkedReading.BETWEEN_PLUGS;
                    case WEB -> WorkedReading.WEB;
                });
    }

    @Override
    public List<Given> given() {
        return List.of(Given.of(KnownSize.FIRST, first), Given.of(KnownSize.SECOND, second));
    }

    @Override
    public Length of(List<Length> readings) {
        return read == Read.OVER
                ? CentreDistance.over(readings.get(0), first.length(), second.length())
                : CentreDistance.between(readings.get(0), first.length(), second.length());
    }

    @Override
    public Optional<Length> reading(Length size) {
        Length half = first.length().plus(second.length()).half();
        return Optional.of(read == Read.OVER ? size.plus(half) : size.minus(half));
    }

    @Override
    public <R> R match(Cases<R> cases) {
        return cases.centres(this);
    }
}
