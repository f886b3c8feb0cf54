package org.tenthwise.checklists.rules;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.IntStream;
import org.tenthwise.checklists.format.Spot;
import org.tenthwise.model.plan.BalloonNumber;
import org.tenthwise.model.plan.Instances;

/**
 * One step of the drawing answers a balloon, or one for each of its instances: else two results would stand for one
 * requirement, or some of four holes for all of them.
 */
final class BalloonRules {

    private record Answer(int step, Instances instances, TableKeys keys, Spot spot) {}

    /** Capitals tell no two balloons apart. */
    private final TreeMap<BalloonNumber, List<Answer>> answers =
            new TreeMap<>(Comparator.comparing(BalloonNumber::text, String.CASE_INSENSITIVE_ORDER));

    /** What a step of the drawing says of its balloon. */
    void judge(TableKeys keys, int step, BalloonNumber balloon, Instances instances) {
        List<Answer> before = answers.computeIfAbsent(balloon, first -> new ArrayList<>());
        Answer answer = new Answer(step, instances, keys, keys.spot(OnDrawingRules.BALLOON));
        before.stream()
                .filter(other -> other.instances().one().isEmpty()
                        || instances.one().isEmpty()
                        || other.instances().one().equals(instances.one()))
                .findFirst()
                .ifPresent(other -> keys.problem(answer.spot(), "plan.balloon.twice", balloon, other.step()));
        before.stream()
                .filter(other -> other.instances().count() != instances.count())
                .findFirst()
                .ifPresent(other -> keys.problem(
                        answer.spot(),
                        "plan.balloon.count",
                        other.step(),
                        balloon,
                        other.instances().count()));
        before.add(answer);
    }

    /** What is missing once all steps are read. */
    void finish() {
        answers.forEach((balloon, all) -> {
            Answer first = all.get(0);
            if (first.instances().one().isPresent()) {
                List<Integer> there = all.stream()
                        .map(answer -> answer.instances().one())
                        .flatMap(Optional::stream)
                        .toList();
                List<Integer> missing = IntStream.rangeClosed(
                                1, first.instances().count())
                        .boxed()
                        .filter(number -> !there.contains(number))
                        .toList();
                if (!missing.isEmpty()) {
                    first.keys()
                            .problem(
                                    first.spot(),
                                    "plan.instance.missing",
                                    balloon,
                                    first.instances().count(),
                                    missing);
                }
            }
        });
    }
}
