package org.tenthwise.model.record;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.tenthwise.model.plan.CheckOfDimension;
import org.tenthwise.model.plan.Combine;
import org.tenthwise.model.plan.IndicatedCheck;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.verdict.Judge;
import org.tenthwise.model.verdict.Verdict;
import org.tenthwise.model.verdict.VerdictKind;

/**
 * Several readings of one size, combined and judged.
 *
 * <p>Where every reading must be inside, one that is out settles the check before the rest are taken, and so does a
 * movement that is; in every other case a check stays open until its last reading ({@link #with}).
 *
 * <p>Where the drawing makes one size of all readings, that alone is bound by the limits. Everywhere else each of them
 * is, however a plan combines them, and it is never <em>cut again</em> while one place is past size: a mean can still
 * have metal left where the bore is scrap at one end, and a cut makes that end worse. The size judged is out and no cut
 * puts it right, so it is a fail; where that place is past size by no more than the guard band, it is unproven until it
 * is measured again.
 *
 * @param value absent before the first reading
 * @param deciding absent where no single reading decides
 * @param past the place furthest past size where the size judged still has metal left
 * @param lightCut whether it is unproven for metal left, and no place stands in the way of a light cut
 */
record Combined(
        Optional<Length> value,
        Optional<Measured> deciding,
        Verdict verdict,
        Optional<Measured> past,
        boolean lightCut) {

    /** As if nothing were missing. */
    static Combined of(CheckOfDimension asked, List<Measured> measured) {
        Judge judge = judge(asked);
        if (measured.isEmpty()) {
            return new Combined(
                    Optional.empty(), Optional.empty(), Verdict.plain(VerdictKind.OPEN), Optional.empty(), false);
        }
        Comparator<Measured> bySize = Comparator.comparing(Measured::value);
        Optional<Measured> deciding =
                switch (asked.combine()) {
                    case EACH -> measured.stream().min(worstFirst(judge));
                    case LARGEST -> measured.stream().max(bySize);
                    case SMALLEST -> measured.stream().min(bySize);
                    case SIXTEEN_PERCENT ->
                        Optional.of(SixteenPercent.of(asked, measured).deciding());
                    case MEAN, RANGE, GREATEST_RANGE -> Optional.empty();
                };
        List<Length> sizes = measured.stream().map(Measured::value).toList();
        Length value =
                switch (asked.combine()) {
                    case MEAN -> Length.mean(sizes);
                    case RANGE -> range(sizes);
                    case GREATEST_RANGE -> greatestRange(measured);
                    case EACH, LARGEST, SMALLEST, SIXTEEN_PERCENT ->
                        deciding.orElseThrow().value();
                };
        Verdict judged = judge.of(value);
        Optional<Measured> past = judged.standing() == VerdictKind.CUT_AGAIN && !asked.isOne()
                ? furthestPast(measured, judge)
                : Optional.empty();
        Verdict verdict = past.map(place -> new Verdict(judge.of(place.value()).standing(), judged.margin()))
                .orElse(judged);
        return new Combined(
                Optional.of(value), deciding, verdict, past, lightCut(value, asked.isOne() ? List.of() : sizes, judge));
    }

    private static Length range(List<Length> sizes) {
        return Length.greatest(sizes).minus(Length.least(sizes));
    }

    private static Length greatestRange(List<Measured> measured) {
        return Length.greatest(measured.stream()
                .map(one -> one.slot().place())
                .distinct()
                .map(place -> range(measured.stream()
                        .filter(one -> one.slot().place().equals(place))
                        .map(Measured::value)
                        .toList()))
                .toList());
    }

    static Judge judge(CheckOfDimension asked) {
        return new Judge(asked.limits(), asked.guardBand().length(), asked.cutAgainBeyond());
    }

    /** The same with so many readings still to come. */
    Combined with(int missing, CheckOfDimension asked) {
        return missing == 0 || oneSettlesIt(asked) && isOut(verdict) ? this : stillOpen();
    }

    /** Whether what is out now stays out: a movement only grows with what is swept after it. */
    private static boolean oneSettlesIt(CheckOfDimension asked) {
        return asked.combine() == Combine.EACH || asked.asIndicated().isPresent();
    }

    private static Optional<Measured> furthestPast(List<Measured> measured, Judge judge) {
        return measured.stream()
                .filter(place -> judge.isPast(place.value()))
                .max(Comparator.comparing(
                        place -> judge.of(place.value()).margin().orElseThrow().distance()));
    }

    private static boolean lightCut(Length value, List<Length> bound, Judge judge) {
        return judge.isUnprovenWithMetalLeft(value)
                && bound.stream()
                        .allMatch(size -> judge.of(size).passed()
                                || judge.of(size).standing() == VerdictKind.CUT_AGAIN
                                || judge.isUnprovenWithMetalLeft(size));
    }

    /** The same without a verdict, where what the readings stand for is not known yet. */
    Combined stillOpen() {
        return new Combined(value, deciding, Verdict.plain(VerdictKind.OPEN), Optional.empty(), false);
    }

    /** The same with nothing shown by it, in or out, where what was indicated did not turn about its datum. */
    Combined ofItsDatum(CheckOfDimension asked) {
        boolean proves = value.isEmpty()
                || asked.asIndicated().map(IndicatedCheck::isOfItsDatum).orElse(true);
        return proves ? this : new Combined(value, deciding, Verdict.plain(VerdictKind.UNPROVEN), past, false);
    }

    /**
     * The same with nothing shown by it, in or still to cut, where a figure of the pass is far off; what is past size
     * stays so.
     */
    Combined provingNothingIf(boolean spoilt) {
        boolean shown = verdict.standing() == VerdictKind.PASS || verdict.standing() == VerdictKind.CUT_AGAIN;
        return spoilt
                ? new Combined(value, deciding, shown ? Verdict.plain(VerdictKind.UNPROVEN) : verdict, past, false)
                : this;
    }

    private static boolean isOut(Verdict verdict) {
        return verdict.standing() == VerdictKind.FAIL || verdict.standing() == VerdictKind.CUT_AGAIN;
    }

    /** Past size before all else, then the least room: still to cut, unproven and passed follow each other by it. */
    private static Comparator<Measured> worstFirst(Judge judge) {
        return Comparator.<Measured, Boolean>comparing(m -> !judge.isPast(m.value()))
                .thenComparing(m -> room(judge.of(m.value()).margin().orElseThrow()));
    }

    private static Length room(Verdict.Margin margin) {
        return margin.inside() ? margin.distance() : margin.distance().negated();
    }
}
