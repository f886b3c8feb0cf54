package org.tenthwise.app.sums.cutting;

import java.math.BigDecimal;
import java.util.List;
import org.tenthwise.app.sums.CannotAnswer;
import org.tenthwise.app.sums.Input;
import org.tenthwise.app.sums.Output;
import org.tenthwise.app.sums.OutputValues;
import org.tenthwise.app.sums.Sum;
import org.tenthwise.app.sums.SumDescription;
import org.tenthwise.app.sums.SumInput;
import org.tenthwise.app.sums.SumResult;
import org.tenthwise.model.compute.drilling.DrillSet;
import org.tenthwise.model.quantity.Length;

/** The drills a deep hole takes, one after the other, and how long each must be. */
public final class DrillSetSum implements Sum {

    public static final String NAME = "drill-set";
    public static final Input<Length> DEPTH = Input.positiveLength("depth");
    public static final Input<Length> START = Input.lengthNotNegative("start");
    public static final Input<Length> PER_DRILL = Input.positiveLength("per_drill");
    public static final Input<List<Length>> REACHES = Input.lengths("reaches");
    public static final Input<Length> CHIP_CLEARANCE =
            Input.lengthNotNegative("chip_clearance").usually();
    public static final Output<Length> FROM = Output.length("from");
    public static final Output<Length> TO = Output.length("to");
    public static final Output<Length> LEAST_REACH = Output.length("least_reach");
    public static final Output<List<OutputValues>> STEPS = Output.tables("steps", FROM, TO, LEAST_REACH);
    public static final Output<Integer> DRILLS = Output.whole("drills");
    private static final SumDescription DESCRIPTION = SumDescription.named(NAME)
            .takes(DEPTH, START)
            .takesOneOf(PER_DRILL, REACHES)
            .takes(CHIP_CLEARANCE)
            .gives(STEPS, DRILLS);

    @Override
    public SumDescription description() {
        return DESCRIPTION;
    }

    @Override
    public SumResult of(SumInput given) {
        Length depth = given.get(DEPTH);
        Length start = given.get(START);
        if (!start.isBelow(depth)) {
            throw new CannotAnswer(START, "beyond", given.text(START), given.text(DEPTH));
        }
        if (given.has(REACHES) == given.has(PER_DRILL)) {
            throw given.has(PER_DRILL)
                    ? new CannotAnswer(PER_DRILL, "both", given.text(PER_DRILL))
                    : new CannotAnswer(PER_DRILL, "neither");
        }
        DrillSet set = given.has(PER_DRILL) ? ofStages(given, depth, start) : ofReaches(given, depth, start);
        SumResult.Writing answer = DESCRIPTION
                .in(given.inUnit())
                .put(STEPS, set.stages().stream().map(DrillSetSum::step).toList())
                .put(DRILLS, set.stages().size());
        notes(answer, given, set);
        return answer.done();
    }

    private static DrillSet ofStages(SumInput given, Length depth, Length start) {
        Length perDrill = given.get(PER_DRILL);
        Length clearance = given.get(CHIP_CLEARANCE);
        return given.about(PER_DRILL, "too-many", () -> DrillSet.ofStages(depth, start, perDrill, clearance));
    }

    private static DrillSet ofReaches(SumInput given, Length depth, Length start) {
        List<Length> reaches = given.get(REACHES);
        reaches.stream().filter(reach -> reach.signum() <= 0).findFirst().ifPresent(reach -> {
            throw new CannotAnswer(REACHES, "not-positive", plain(given, reach));
        });
        Length clearance = given.find(CHIP_CLEARANCE).orElse(Length.ZERO);
        if (Length.greatest(reaches).minus(clearance).isBelow(depth)) {
            throw new CannotAnswer(
                    REACHES,
                    "too-short",
                    plain(given, Length.greatest(reaches)),
                    plain(given, clearance),
                    plain(given, Length.greatest(reaches).minus(clearance)),
                    given.text(DEPTH));
        }
        return DrillSet.ofReaches(depth, start, reaches, clearance);
    }

    private static OutputValues step(DrillSet.Stage stage) {
        return new OutputValues().put(FROM, stage.from()).put(TO, stage.to()).put(LEAST_REACH, stage.leastReach());
    }

    private static void notes(SumResult.Writing answer, SumInput given, DrillSet set) {
        answer.note("point");
        if (set.endsShort()) {
            answer.note("short-stage");
        }
        if (given.has(REACHES)) {
            int spare = given.get(REACHES).size() - set.stages().size();
            if (spare > 0) {
                answer.note("spare", spare);
            }
            if (!given.has(CHIP_CLEARANCE)) {
                answer.note("no-clearance");
            }
        }
        answer.note("chips");
        answer.note("lead-in");
    }

    private static BigDecimal plain(SumInput given, Length length) {
        return length.in(given.inUnit());
    }
}
