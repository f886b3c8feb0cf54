package org.tenthwise.model.record;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.tenthwise.model.plan.Combine;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.verdict.Judge;
import org.tenthwise.model.verdict.Standing;
import org.tenthwise.model.verdict.Verdict;

/**
 * Several readings of one size, combined and judged.
 *
 * <p>Where every reading must be inside, one that is out settles the check before the rest are taken; in every other case
 * a check stays open until its last reading.
 *
 * @param value    absent before the first reading
 * @param deciding absent where no single reading decides
 */
record Combined(Optional<Length> value, Optional<Measured> deciding, Verdict verdict) {

    /** Worst first: past size, then still to cut, then unproven, then the least room. */
    private static final List<Standing> WORST_FIRST =
            List.of(Standing.FAIL, Standing.CUT_AGAIN, Standing.UNPROVEN, Standing.PASS);

    static Combined of(Combine how, List<Measured> measured, int missing, Judge judge) {
        if (measured.isEmpty()) {
            return new Combined(Optional.empty(), Optional.empty(), Verdict.plain(Standing.OPEN));
        }
        Comparator<Measured> bySize = Comparator.comparing(Measured::value);
        Optional<Measured> deciding = switch (how) {
            case EACH -> measured.stream().min(worstFirst(judge));
            case LARGEST -> measured.stream().max(bySize);
            case SMALLEST -> measured.stream().min(bySize);
            case MEAN, RANGE -> Optional.empty();
        };
        List<Length> sizes = measured.stream().map(Measured::value).toList();
        Length value = switch (how) {
            case MEAN -> Length.mean(sizes);
            case RANGE -> Length.greatest(sizes).minus(Length.least(sizes));
            case EACH, LARGEST, SMALLEST -> deciding.orElseThrow().value();
        };
        Verdict verdict = judge.of(value);
        boolean settled = missing == 0 || how == Combine.EACH && isOut(verdict);
        return new Combined(Optional.of(value), deciding, settled ? verdict : Verdict.plain(Standing.OPEN));
    }

    /** The same without a verdict, where what the readings stand for is not known yet. */
    Combined stillOpen() {
        return new Combined(value, deciding, Verdict.plain(Standing.OPEN));
    }

    /** The same with nothing shown by it, in or still to cut, where a figure of the pass is far off; what is past size stays so. */
    Combined provingNothingIf(boolean spoilt) {
        boolean shown = verdict.standing() == Standing.PASS || verdict.standing() == Standing.CUT_AGAIN;
        return spoilt && shown ? new Combined(value, deciding, Verdict.plain(Standing.UNPROVEN)) : this;
    }

    private static boolean isOut(Verdict verdict) {
        return verdict.standing() == Standing.FAIL || verdict.standing() == Standing.CUT_AGAIN;
    }

    private static Comparator<Measured> worstFirst(Judge judge) {
        return Comparator.<Measured>comparingInt(m -> WORST_FIRST.indexOf(judge.of(m.value()).standing()))
                .thenComparing(m -> room(judge.of(m.value()).margin().orElseThrow()));
    }

    private static Length room(Verdict.Margin margin) {
        return margin.inside() ? margin.distance() : margin.distance().negated();
    }
}
