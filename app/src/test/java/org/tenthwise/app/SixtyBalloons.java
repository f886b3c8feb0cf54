package org.tenthwise.app;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.plan.Step;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.run.Event;
import org.tenthwise.model.run.StepEvent;

/**
 * A drawing of sixty balloons that does not exist, and a plan of it in the order of work, which is another. Balloon 20
 * is measured on the way too. Every third characteristic is looked at, the others are diameters of the balloon's place
 * in the row, 0.02 wide.
 */
public final class SixtyBalloons {

    /** In the order of the drawing. */
    public static final List<String> ROW = Stream.of(
                    numbers(1, 3), Stream.of("3.1", "3.2"), numbers(4, 12), Stream.of("12A"), numbers(13, 57))
            .flatMap(numbers -> numbers)
            .toList();

    private static final String HEAD =
            """
            format = 1
            part = "SB-60"
            revision = "B"
            issue = "1"
            name = "Sixty balloons, invented"
            material = "nickel alloy 718, aged"
            drawing_number = "D-6060"
            drawing_revision = "E"
            sheets = 2
            changes = ["change 12", "change 14"]
            route = "R-17 issue 2"
            unit = "mm"
            remark = "Invented part, for trying out"

            [[operation]]
            number = 10
            name = "Turn"

            [[step]]
            number = 1
            operation = 10
            kind = "confirm"
            name = "Jaws"
            what = "Jaws wiped."

            [[step]]
            number = 2
            operation = 10
            kind = "diameter"
            class = "in-process"
            name = "Balloon 20, roughed"
            balloon = 20
            method = "Across."
            lower = 22.000
            upper = 24.000
            places = ["middle"]
            gauge_kind = "micrometer"
            """;

    /** Steps 3 to 62, a characteristic each. */
    public static final String TEXT =
            HEAD + IntStream.range(0, ROW.size()).mapToObj(SixtyBalloons::step).collect(Collectors.joining());

    public static final Plan PLAN = InventedPlans.read(TEXT);

    private SixtyBalloons() {}

    private static Stream<String> numbers(int from, int to) {
        return IntStream.rangeClosed(from, to).mapToObj(String::valueOf);
    }

    /** Work goes round the part seven balloons at a time. */
    private static String step(int work) {
        int place = work * 7 % ROW.size();
        String balloon = ROW.get(place);
        String drawn =
                """

                [[step]]
                number = %d
                operation = 10
                name = "Characteristic of balloon %s"
                balloon = "%s"
                sheet = %d
                drawing_zone = "%s%d"
                %s
                """
                        .formatted(
                                work + 3,
                                balloon,
                                balloon,
                                place < 30 ? 1 : 2,
                                (char) ('A' + place % 6),
                                place % 8 + 1,
                                place % 20 == 4 ? "designator = \"key\"" : "");
        return drawn
                + (place % 3 == 0
                        ? """
                        kind = "look"
                        requirement = "BREAK SHARP EDGES 0.2 MAX, NOTE %s"
                        what = "Edges broken."
                        """
                                .formatted(balloon)
                        : """
                        kind = "diameter"
                        requirement = "Ø%d +0.02/0"
                        method = "Across."
                        lower = %d.000
                        upper = %d.020
                        places = ["front", "back"]
                        gauge_kind = "micrometer"
                        """
                                .formatted(place + 1, place + 1, place + 1));
    }

    /** A run on it up to so many steps, each diameter read 0.004 and 0.011 over its lower limit. */
    public static List<Event> run(int steps) {
        List<Event> events = new ArrayList<>();
        events.add(new Event.Begun(PLAN.part(), "001", "L-1", "Lathe 4", PLAN.source()));
        for (Step step : PLAN.steps().subList(0, steps)) {
            step.check()
                    .questions()
                    .forEach(question -> events.add(new StepEvent.Answered(
                            step.number(), question, question.answers().get(0))));
            step.limits().ifPresent(limits -> {
                String whole =
                        limits.lower().orElseThrow().figure().toBigInteger().toString();
                for (int i = 0; i < step.check().slots().size(); i++) {
                    events.add(new StepEvent.ReadingTaken(
                            step.number(),
                            step.check().slots().get(i).key(),
                            new Written(whole + (i == 0 ? ".004" : ".011"), Unit.MILLIMETRE)));
                }
            });
        }
        return events;
    }
}
