package org.tenthwise.app.bench;

import static org.tenthwise.app.sums.cutting.DrillSetSum.CHIP_CLEARANCE;
import static org.tenthwise.app.sums.cutting.DrillSetSum.DEPTH;
import static org.tenthwise.app.sums.cutting.DrillSetSum.DRILLS;
import static org.tenthwise.app.sums.cutting.DrillSetSum.FROM;
import static org.tenthwise.app.sums.cutting.DrillSetSum.LEAST_REACH;
import static org.tenthwise.app.sums.cutting.DrillSetSum.PER_DRILL;
import static org.tenthwise.app.sums.cutting.DrillSetSum.REACHES;
import static org.tenthwise.app.sums.cutting.DrillSetSum.START;
import static org.tenthwise.app.sums.cutting.DrillSetSum.STEPS;
import static org.tenthwise.app.sums.cutting.DrillSetSum.TO;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.tenthwise.app.picture.DrillPicture;
import org.tenthwise.app.picture.Picture;
import org.tenthwise.app.picture.Role;
import org.tenthwise.app.sums.Output;
import org.tenthwise.app.sums.OutputValues;
import org.tenthwise.app.sums.SumResult;
import org.tenthwise.app.sums.cutting.DrillSetSum;
import org.tenthwise.model.quantity.Length;

/** The drills a deep hole takes, each with the least it has to reach. */
final class DrillSetForm implements BenchForm {

    private static final String BY = "drills_by";

    @Override
    public BenchKind kind() {
        return BenchKind.DRILL_SET;
    }

    @Override
    public String sum() {
        return DrillSetSum.NAME;
    }

    /** A deep hole in three stages. */
    @Override
    public void sign(SignSketch sketch) {
        sketch.thick(Role.LINE, 8, 4, 8, 16, 82, 16, 90, 28, 82, 40, 8, 40, 8, 52);
        sketch.thick(Role.ACCENT, 8, 22, 26, 22, 31, 28, 26, 34, 8, 34);
        sketch.thin(Role.LINE, 34, 8, 34, 48);
        sketch.thin(Role.LINE, 62, 8, 62, 48);
    }

    @Override
    public List<FormField> fields(FormValues filled) {
        boolean byReach = filled.is(BY, REACHES.key());
        FormField clearance = FormField.of(CHIP_CLEARANCE);
        return List.of(
                FormField.of(DEPTH),
                FormField.of(START),
                FormField.ofTheForm(BY, PER_DRILL.key(), REACHES.key()),
                FormField.of(byReach ? REACHES : PER_DRILL),
                byReach ? clearance : clearance.must());
    }

    @Override
    public List<Output<?>> first(FormValues filled) {
        return List.of(DRILLS);
    }

    @Override
    public List<ResultRow> rows(Output<?> output, SumResult result, AnswerFormat format) {
        List<OutputValues> steps = result.find(STEPS).orElse(List.of());
        return IntStream.range(0, steps.size())
                .mapToObj(i -> new ResultRow(
                        STEPS.key(),
                        format.words().say("bench.drill", i + 1),
                        format.words()
                                .say(
                                        "bench.drill.step",
                                        depth(steps.get(i), FROM, format),
                                        depth(steps.get(i), TO, format),
                                        depth(steps.get(i), LEAST_REACH, format))))
                .toList();
    }

    private static String depth(OutputValues step, Output<Length> output, AnswerFormat format) {
        return step.find(output)
                .map(length -> format.depth(length, SafeSide.of(output)))
                .orElse("");
    }

    @Override
    public Optional<Picture> picture(FormValues filled, SumResult result, AnswerFormat format) {
        List<DrillPicture.Drill> drills = result.find(STEPS).orElse(List.of()).stream()
                .map(step -> drill(step, format))
                .toList();
        return drills.isEmpty()
                ? Optional.empty()
                : filled.length(DEPTH).flatMap(depth -> filled.length(START)
                        .map(start -> new DrillPicture(
                                depth,
                                start,
                                drills,
                                format.words().say("bench.drill.reach"),
                                format.words()
                                        .say(
                                                "bench.picture.drills",
                                                drills.size(),
                                                format.depth(depth, SafeSide.of(TO))))));
    }

    private static DrillPicture.Drill drill(OutputValues step, AnswerFormat format) {
        Length to = step.find(TO).orElseThrow();
        Length reach = step.find(LEAST_REACH).orElseThrow();
        return new DrillPicture.Drill(
                step.find(FROM).orElseThrow(),
                to,
                reach,
                format.depth(to, SafeSide.of(TO)),
                format.depth(reach, SafeSide.of(LEAST_REACH)));
    }
}
