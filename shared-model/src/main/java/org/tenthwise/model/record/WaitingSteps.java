package org.tenthwise.model.record;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/** Which steps are shut because a hold point before them waits for others. */
final class WaitingSteps {

    private WaitingSteps() {}

    /**
     * The lines of a sheet, in plan order, each with the steps it waits for; what a run leaves out holds up nothing.
     */
    static List<Line> in(List<Line> lines) {
        Set<Integer> settled = new HashSet<>();
        Set<Integer> leftOut = lines.stream()
                .filter(line -> !line.asked())
                .map(line -> line.step().number())
                .collect(Collectors.toSet());
        Set<Integer> waitingFor = new LinkedHashSet<>();
        List<Line> waiting = new ArrayList<>();
        for (Line line : lines) {
            waiting.add(line.waitingFor(line.step().check().isInOrder() ? List.copyOf(waitingFor) : List.of()));
            if (line.settled()) {
                settled.add(line.step().number());
            }
            line.step().hold().stream()
                    .filter(number -> !settled.contains(number) && !leftOut.contains(number))
                    .forEach(waitingFor::add);
        }
        return waiting;
    }
}
