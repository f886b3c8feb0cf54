package org.tenthwise.app.sums.position;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.tenthwise.app.sums.CannotAnswer;
import org.tenthwise.app.sums.Input;
import org.tenthwise.app.sums.Output;
import org.tenthwise.app.sums.Sum;
import org.tenthwise.app.sums.SumDescription;
import org.tenthwise.app.sums.SumInput;
import org.tenthwise.app.sums.SumResult;
import org.tenthwise.model.compute.position.PositionBonus;
import org.tenthwise.model.compute.position.PositionDeviation;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.tolerance.FeatureOfSize;
import org.tenthwise.model.tolerance.MaterialModifier;
import org.tenthwise.model.words.Message;

/** How far a hole or a pin lies from its true place, against its zone with what its size adds. */
public final class PositionSum implements Sum {

    public static final String NAME = "position";
    public static final Input<List<Length>> DX = Input.lengthOrLengths("dx");
    public static final Input<List<Length>> DY = Input.lengthOrLengths("dy");
    public static final Input<Length> ZONE = Input.lengthNotNegative("zone");
    public static final Input<FeatureOfSize> FEATURE =
            Input.choice("feature", FeatureOfSize.values()).optional();
    public static final Input<MaterialModifier> MODIFIER =
            Input.choice("modifier", MaterialModifier.values()).usually("`none`");
    public static final Input<Length> SIZE = Input.positiveLength("size").optional();
    public static final Input<Length> LEAST = Input.positiveLength("least").optional();
    public static final Input<Length> GREATEST =
            Input.positiveLength("greatest").optional();
    public static final Input<Length> ORIENTATION_LOSS =
            Input.lengthNotNegative("orientation_loss").usually("0");
    public static final Output<Length> DEVIATION = Output.length("deviation");
    public static final Output<Length> BONUS = Output.length("bonus");
    public static final Output<Length> ALLOWED = Output.length("allowed");
    public static final Output<String> STATE = Output.word("state", "pass", "fail");
    private static final SumDescription DESCRIPTION = SumDescription.named(NAME)
            .takes(DX, DY, ZONE, FEATURE, MODIFIER, SIZE, LEAST, GREATEST, ORIENTATION_LOSS)
            .gives(DEVIATION, BONUS, ALLOWED, STATE);

    @Override
    public SumDescription description() {
        return DESCRIPTION;
    }

    @Override
    public SumResult of(SumInput given) {
        List<PositionDeviation> read = read(given);
        PositionDeviation furthest = read.stream()
                .reduce((one, next) -> next.isBeyond(one) ? next : one)
                .orElseThrow();
        MaterialModifier modifier = given.find(MODIFIER).orElse(MaterialModifier.NONE);
        Length zone = given.get(ZONE);
        if (zone.signum() == 0 && modifier == MaterialModifier.NONE) {
            throw new CannotAnswer(ZONE, Message.of("given.not-positive", ZONE, given.text(ZONE)));
        }
        PositionBonus limits = limits(given, modifier);
        Optional<Length> size = modifier == MaterialModifier.NONE ? given.find(SIZE) : Optional.of(given.get(SIZE));
        Length loss = given.find(ORIENTATION_LOSS).orElse(Length.ZERO);
        Length bonus = size.map(found -> limits.at(found, loss)).orElse(Length.ZERO);
        Length allowed = zone.plus(bonus);
        boolean holds = size.map(limits::holds).orElse(true);
        SumResult.Writing answer = DESCRIPTION
                .in(given.inUnit())
                .put(DEVIATION, furthest.diameter())
                .put(BONUS, bonus)
                .put(ALLOWED, allowed)
                .put(STATE, holds && furthest.isWithin(allowed) ? "pass" : "fail")
                .note("twice");
        if (!holds) {
            answer.note("outside-size", given.text(SIZE));
        }
        notes(given, answer, limits, read.size());
        return answer.done();
    }

    private static void notes(SumInput given, SumResult.Writing answer, PositionBonus limits, int places) {
        answer.note(places == 1 ? "one-place" : "furthest", places);
        if (limits.modifier() != MaterialModifier.NONE) {
            answer.note(limits.countsFromLeast() ? "smallest" : "greatest").note("datum-shift");
        } else if (given.has(ORIENTATION_LOSS)) {
            answer.note("no-bonus");
        }
        if (given.has(SIZE) && !(given.has(LEAST) && given.has(GREATEST))) {
            answer.note("size-not-judged", given.has(LEAST) ? GREATEST : LEAST);
        }
    }

    private static List<PositionDeviation> read(SumInput given) {
        List<Length> across = given.get(DX);
        List<Length> up = given.get(DY);
        if (across.size() != up.size()) {
            throw new CannotAnswer(DY, "not-as-many", across.size(), up.size());
        }
        return IntStream.range(0, across.size())
                .mapToObj(place -> new PositionDeviation(across.get(place), up.get(place)))
                .toList();
    }

    private static PositionBonus limits(SumInput given, MaterialModifier modifier) {
        FeatureOfSize feature =
                modifier == MaterialModifier.NONE ? given.find(FEATURE).orElse(FeatureOfSize.HOLE) : given.get(FEATURE);
        if (modifier != MaterialModifier.NONE) {
            given.get(modifier.countsFromLeast(feature) ? LEAST : GREATEST);
        }
        Optional<Length> least = given.find(LEAST);
        Optional<Length> greatest = given.find(GREATEST);
        if (least.isPresent() && greatest.isPresent() && greatest.get().isBelow(least.get())) {
            throw new CannotAnswer(
                    GREATEST,
                    Message.of("given.wrong-way-round", GREATEST, given.text(GREATEST), LEAST, given.text(LEAST)));
        }
        return new PositionBonus(feature, modifier, least, greatest);
    }
}
