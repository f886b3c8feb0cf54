package org.tenthwise.app.sums.statistics;

import java.util.Set;
import org.tenthwise.app.sums.Sum;
import org.tenthwise.app.sums.SumInput;
import org.tenthwise.app.sums.SumResult;
import org.tenthwise.model.compute.statistics.Summary;

/** A series of readings in a few figures. */
final class SummarySum implements Sum {

    @Override
    public String name() {
        return "summary";
    }

    @Override
    public Set<String> keys() {
        return Set.of(SampleInputs.VALUES);
    }

    @Override
    public SumResult of(SumInput given) {
        Summary summary = Summary.of(given.figures(SampleInputs.VALUES));
        SumResult.Writing answer = SumResult.in(SampleInputs.unit(given))
                .whole("n", summary.n())
                .exact("mean", Wording.full(summary.mean()));
        summary.sd().ifPresent(sd -> answer.exact("sd", Wording.full(sd)));
        answer.exact("least", Wording.full(summary.least()))
                .exact("greatest", Wording.full(summary.greatest()))
                .exact("range", Wording.full(summary.range()));
        summary.autocorrelation().ifPresent(lag -> answer.exact("autocorrelation", Wording.full(lag)));
        if (summary.n() == 1) {
            answer.note("One reading has no spread: sd and autocorrelation need two or more");
        } else if (summary.range().signum() == 0) {
            answer.note("All %d readings are the same: that is the step of the gauge, not the spread of the parts"
                    .formatted(summary.n()));
        } else if (summary.n() == 2) {
            answer.note("From two readings the true spread may be anything from about half of sd to 32 times it");
        } else if (summary.coarse()) {
            answer.note(
                    "Only %d different values in %d readings: the gauge is too coarse, and sd is mostly its rounding"
                            .formatted(summary.different(), summary.n()));
        }
        return answer.on("NIST/SEMATECH e-Handbook 1.3.5.1, 1.3.5.6 and 1.3.5.12; sd with n - 1; exact decimal sums");
    }
}
