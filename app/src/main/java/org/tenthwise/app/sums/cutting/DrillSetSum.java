package org.tenthwise.app.sums.cutting;

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
            Input.lengthNotNegative("chip_clearance").usually("0 with `reaches`");
    public static final Output<Length> FROM = Output.length("from");
    public static final Output<Length> TO = Output.length("to");
    public static final Output<Length> LEAST_REACH = Output.length("least_reach");
    public static final Output<List<OutputValues>> STEPS = Output.tables("steps", FROM, TO, LEAST_REACH);
    public static final Output<Integer> DRILLS = Output.whole("drills");
    private static final SumDescription DESCRIPTION = SumDescription.named(NAME)
            .takes(DEPTH, START)
            .takesOneOf(PER_DRILL, REACHES)
            .takes(CHIP_CLEARANCE)
            .gives(STEPS, DRILLS)
            .on("Each drill runs in the hole of the one before, flutes clear of the hole by the chip clearance: "
                    + "common practice");

    @Override
    public SumDescription description() {
        return DESCRIPTION;
    }

    @Override
    public SumResult of(SumInput given) {
        Length depth = given.get(DEPTH);
        Length start = given.get(START);
        if (!start.isBelow(depth)) {
            throw new CannotAnswer(
                    START,
                    "start is %s: it must be less than depth, which is %s"
                            .formatted(given.text(START), given.text(DEPTH)));
        }
        if (given.has(REACHES) == given.has(PER_DRILL)) {
            throw new CannotAnswer(
                    PER_DRILL,
                    given.has(PER_DRILL)
                            ? "per_drill is %s and reaches are given: one of them is enough"
                                    .formatted(given.text(PER_DRILL))
                            : "per_drill is missing: give it with chip_clearance, or reaches");
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
        return given.about(
                PER_DRILL,
                "the hole would take more drills than any set has",
                () -> DrillSet.ofStages(depth, start, perDrill, clearance));
    }

    private static DrillSet ofReaches(SumInput given, Length depth, Length start) {
        List<Length> reaches = given.get(REACHES);
        reaches.stream().filter(reach -> reach.signum() <= 0).findFirst().ifPresent(reach -> {
            throw new CannotAnswer(
                    REACHES, "reaches has %s: each must be more than nought".formatted(plain(given, reach)));
        });
        Length clearance = given.find(CHIP_CLEARANCE).orElse(Length.ZERO);
        if (Length.greatest(reaches).minus(clearance).isBelow(depth)) {
            throw new CannotAnswer(
                    REACHES,
                    ("reaches go to %s: with a chip clearance of %s the last drill ends at %s and cannot reach "
                                    + "depth, which is %s")
                            .formatted(
                                    plain(given, Length.greatest(reaches)), plain(given, clearance),
                                    plain(given, Length.greatest(reaches).minus(clearance)), given.text(DEPTH)));
        }
        return DrillSet.ofReaches(depth, start, reaches, clearance);
    }

    private static OutputValues step(DrillSet.Stage stage) {
        return new OutputValues().put(FROM, stage.from()).put(TO, stage.to()).put(LEAST_REACH, stage.leastReach());
    }

    private static void notes(SumResult.Writing answer, SumInput given, DrillSet set) {
        answer.note(
                "Depths are to where the point ends up: where the drawing gives the depth of the full diameter, add "
                        + "the length of the point, 0.3 of the diameter for 118°.");
        if (set.endsShort()) {
            answer.note("The last stage is short: see whether a little more for each drill, or a longer one, saves a "
                    + "drill.");
        }
        if (given.has(REACHES)) {
            int spare = given.get(REACHES).size() - set.stages().size();
            if (spare > 0) {
                answer.note("Not every drill at hand is needed: %d can stay in the rack.".formatted(spare));
            }
            if (!given.has(CHIP_CLEARANCE)) {
                answer.note("No chip_clearance was given: the reaches are taken as what goes into the hole with the "
                        + "chips still finding a way out.");
            }
        }
        answer.note(
                "Clear the chips at every change of drill and every stop, with the spindle stopped and never by hand.");
        answer.note("A long drill brought up to speed outside the hole whips and can break: lead it into the hole "
                + "stopped or slow, and only then to speed. The shop's rules and the drill maker's figures "
                + "go before this.");
    }

    private static String plain(SumInput given, Length length) {
        return length.in(given.inUnit()).toPlainString();
    }
}
