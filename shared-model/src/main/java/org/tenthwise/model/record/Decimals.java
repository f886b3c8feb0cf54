package org.tenthwise.model.record;

import java.util.List;
import java.util.stream.Stream;
import org.tenthwise.model.gauge.Setting;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.tolerance.Limits;

/**
 * With how many decimals a size is written, wherever a person reads it: with those of its reading, or with those of the
 * limits it stands beside where these have more, yet with no more than one behind the reading.
 *
 * <p>What a gauge showed on its ring or master is a reading of it as well; the certified size of that is none, and
 * neither it nor a correction makes a size finer than the gauge reads.
 *
 * <p>Unit: decimals in the unit of the limits; a reading in another unit counts for those that are about as fine.
 *
 * <p>Source: no more digits than are known, one more at the most to save rounding errors (JCGM 100:2008, 7.2.6, from
 * memory); beside limits with their decimals is common practice.
 */
public final class Decimals {

    private Decimals() {}

    /** Of the size one reading stands for; of an angle worked out of lengths those of its limits. */
    public static int of(Measured measured, Limits limits) {
        if (!measured.reading().typed().unit().kind().equals(limits.unit().kind())) {
            return limits.places();
        }
        return beside(
                limits,
                Stream.concat(
                        Stream.of(measured.reading().typed()),
                        measured.reading().setting().flatMap(Setting::zero).stream()));
    }

    private static int beside(Limits limits, Stream<Written> figures) {
        int read = figures.mapToInt(shown -> among(shown, limits.unit())).max().orElseThrow();
        return Math.max(read, Math.min(limits.places(), read + 1));
    }

    /**
     * Of the size judged: of the reading that decides; of the finest where several do together, of the figure of a
     * document, and where there is nothing of all that, of the limits or of what it is worked out of.
     */
    public static int of(Finding finding, Limits limits) {
        int read = finding.deciding().map(measured -> of(measured, limits)).orElseGet(() -> finding.measured().stream()
                .mapToInt(measured -> of(measured, limits))
                .max()
                .orElseGet(() -> finding.decidingFigure()
                        .map(figure -> beside(limits, Stream.of(figure)))
                        .orElseGet(() -> Math.max(limits.places(), finding.places()))));
        int more = finding.placesMore();
        return more == 0 ? read : Math.max(read, read(finding.measured(), limits.unit()) + more);
    }

    /** Of the finest of several readings. */
    public static int read(List<Measured> measured, Unit unit) {
        return measured.stream()
                .mapToInt(one -> among(one.reading().typed(), unit))
                .max()
                .orElse(0);
    }

    /**
     * Of a figure as it was typed: a place of an inch is 25 times as coarse as the same place of a millimetre. Of one
     * of another kind none.
     */
    public static int among(Written typed, Unit unit) {
        if (!typed.unit().kind().equals(unit.kind())) {
            return 0;
        }
        return Math.max(0, typed.places() + unit.placesMoreThan(typed.unit()));
    }
}
