package org.tenthwise.app.sums.cutting;

import java.util.List;
import java.util.Set;
import org.tenthwise.app.sums.CannotAnswer;
import org.tenthwise.app.sums.Sum;
import org.tenthwise.app.sums.SumInput;
import org.tenthwise.app.sums.SumResult;
import org.tenthwise.app.sums.SumResult.OutputValue;
import org.tenthwise.model.compute.drilling.DrillSet;
import org.tenthwise.model.quantity.Length;

/** The drills a deep hole takes, one after the other, and how long each must be. */
final class DrillSetSum implements Sum {

    private static final String REACHES = "reaches";
    private static final String PER_DRILL = "per_drill";
    private static final String CHIP_CLEARANCE = "chip_clearance";

    @Override
    public String name() {
        return "drill-set";
    }

    @Override
    public Set<String> keys() {
        return Set.of("depth", "start", PER_DRILL, CHIP_CLEARANCE, REACHES);
    }

    @Override
    public SumResult of(SumInput given) {
        Length depth = given.positiveLength("depth");
        Length start = CutInputs.notNegative(given, "start");
        if (!start.isBelow(depth)) {
            throw new CannotAnswer(
                    "start",
                    "start is %s: it must be less than depth, which is %s"
                            .formatted(given.text("start"), given.text("depth")));
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
        SumResult.Writing answer = SumResult.in(given.inUnit())
                .put(
                        "steps",
                        new OutputValue.Many(set.stages().stream()
                                .map(stage -> step(given, stage))
                                .toList()))
                .whole("drills", set.stages().size());
        notes(answer, given, set);
        return answer.on(
                "Each drill runs in the hole of the one before, flutes clear of the hole by the chip clearance: "
                        + "common practice");
    }

    private static DrillSet ofStages(SumInput given, Length depth, Length start) {
        Length perDrill = given.positiveLength(PER_DRILL);
        Length clearance = CutInputs.notNegative(given, CHIP_CLEARANCE);
        return given.about(
                PER_DRILL,
                "the hole would take more drills than any set has",
                () -> DrillSet.ofStages(depth, start, perDrill, clearance));
    }

    private static DrillSet ofReaches(SumInput given, Length depth, Length start) {
        List<Length> reaches = given.lengths(REACHES);
        reaches.stream().filter(reach -> reach.signum() <= 0).findFirst().ifPresent(reach -> {
            throw new CannotAnswer(
                    REACHES, "reaches has %s: each must be more than nought".formatted(plain(given, reach)));
        });
        Length clearance = given.has(CHIP_CLEARANCE) ? CutInputs.notNegative(given, CHIP_CLEARANCE) : Length.ZERO;
        if (Length.greatest(reaches).minus(clearance).isBelow(depth)) {
            throw new CannotAnswer(
                    REACHES,
                    ("reaches go to %s: with a chip clearance of %s the last drill ends at %s and cannot reach "
                                    + "depth, which is %s")
                            .formatted(
                                    plain(given, Length.greatest(reaches)), plain(given, clearance),
                                    plain(given, Length.greatest(reaches).minus(clearance)), given.text("depth")));
        }
        return DrillSet.ofReaches(depth, start, reaches, clearance);
    }

    private static OutputValue step(SumInput given, DrillSet.Stage stage) {
        return new OutputValue.Table(SumResult.in(given.inUnit())
                .length("from", stage.from())
                .length("to", stage.to())
                .length("least_reach", stage.leastReach())
                .on("one stage")
                .results());
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
            int spare = given.lengths(REACHES).size() - set.stages().size();
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
