package org.tenthwise.app.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.tenthwise.app.picture.DrillPicture;
import org.tenthwise.app.picture.Picture;
import org.tenthwise.app.sums.SumResult;
import org.tenthwise.app.sums.SumResult.OutputValue;
import org.tenthwise.model.quantity.Length;

/** The drills a deep hole takes, each with the least it has to reach. */
final class DrillSetForm implements BenchForm {

    private static final String BY = "drills_by";
    private static final String REACHES = "reaches";
    private static final String START = "start";
    private static final String DEPTH = "depth";

    @Override
    public BenchKind kind() {
        return BenchKind.DRILL_SET;
    }

    @Override
    public String sum() {
        return "drill-set";
    }

    @Override
    public List<FormField> asks(FormValues filled) {
        List<FormField> asks = new ArrayList<>(List.of(
                FormField.length(DEPTH),
                FormField.length(START),
                FormField.choice(BY, "per_drill", REACHES).aside()));
        if (filled.is(BY, REACHES)) {
            asks.addAll(List.of(
                    FormField.of(FormField.FieldKind.LENGTHS, REACHES),
                    FormField.length("chip_clearance").optional()));
        } else {
            asks.addAll(List.of(FormField.length("per_drill"), FormField.length("chip_clearance")));
        }
        return asks;
    }

    @Override
    public List<String> first(FormValues filled) {
        return List.of("drills");
    }

    @Override
    public Optional<Picture> picture(FormValues filled, SumResult answer, AnswerFormat said) {
        List<DrillPicture.Drill> drills = answer
                .at("steps")
                .filter(OutputValue.Many.class::isInstance)
                .map(worked -> ((OutputValue.Many) worked).values())
                .orElse(List.of())
                .stream()
                .filter(OutputValue.Table.class::isInstance)
                .flatMap(step -> drill((OutputValue.Table) step, said).stream())
                .toList();
        return drills.isEmpty()
                ? Optional.empty()
                : filled.length(DEPTH).flatMap(depth -> filled.length(START)
                        .map(start -> new DrillPicture(
                                depth,
                                start,
                                drills,
                                said.words().say("bench.drill.reach"),
                                said.words().say("bench.picture.drills", drills.size(), said.depth(depth)))));
    }

    private static Optional<DrillPicture.Drill> drill(OutputValue.Table step, AnswerFormat said) {
        return at(step, "from", said).flatMap(from -> at(step, "to", said).flatMap(to -> at(step, "least_reach", said)
                .map(reach -> new DrillPicture.Drill(from, to, reach, said.depth(to), said.depth(reach)))));
    }

    private static Optional<Length> at(OutputValue.Table step, String key, AnswerFormat said) {
        return step.values().stream()
                .filter(result -> result.key().equals(key))
                .findFirst()
                .flatMap(result -> said.length(result.value()));
    }
}
