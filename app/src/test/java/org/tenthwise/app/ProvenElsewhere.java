package org.tenthwise.app;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.tenthwise.model.plan.Answer;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.plan.Question;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.run.Document;
import org.tenthwise.model.run.Event;
import org.tenthwise.model.run.SignedAs;
import org.tenthwise.model.run.StepEvent;

/** An invented drawing of sixty balloons, 41 to 60 of them proven elsewhere, and what the part is made of. */
public final class ProvenElsewhere {

    private static final String HEAD =
            """
            format = 1
            part = "PE-60"
            revision = "A"
            issue = "1"
            name = "Carrier, invented"
            drawing = "PE-60 sheet 1"
            unit = "mm"
            remark = "Invented part, for trying out"

            [[operation]]
            number = 10
            name = "Turn"
            """;

    private static final String PRODUCT =
            """
            [[material]]
            number = 71
            name = "Alloy 718, aged"
            specification = "AMS 5663, class A"
            form = "forged bar"
            code = "M12"
            supplier = "Invented Alloys"

            [[process]]
            number = 72
            name = "Penetrant test"
            specification = "Shop rule 17"
            supplier = "Invented Test House"

            [[test]]
            number = 73
            name = "Pressure test, 40 bar"
            """;

    private static final String LOOK =
            """
            [[step]]
            number = %1$d
            balloon = %1$d
            operation = 10
            kind = "look"
            name = "Look %1$d"
            what = "As drawn."
            """;

    private static final String NOTE =
            """
            [[note]]
            number = 40
            balloon = 40
            kind = "look"
            name = "Edges"
            what = "All edges broken."
            """;

    private static final String POSITION =
            """
            [[elsewhere]]
            number = %1$d
            balloon = %1$d
            name = "Position %1$d"
            requirement = "2X position Ø0.05 A B"
            count = 2
            where = "coordinate machine"
            upper = 0.050
            """;

    /** Looks 1 to 40, of which 40 is a note; then figures and words of others. */
    public static final Plan PLAN =
            InventedPlans.read(HEAD + all(1, 39, LOOK) + NOTE + all(41, 60, POSITION) + PRODUCT);

    private ProvenElsewhere() {}

    private static String all(int from, int to, String table) {
        return IntStream.rangeClosed(from, to).mapToObj(table::formatted).collect(Collectors.joining());
    }

    /**
     * All looked at and closed; then documents for 41 to 59, of which that of 42 is struck out and entered again and
     * that of 50 has a figure outside; the certificate of the material, and the word that the process is to come.
     */
    public static List<Event> run() {
        List<Event> events = new ArrayList<>();
        events.add(new Event.Begun(PLAN.part(), "001", "L-1", "Lathe 4", PLAN.source()));
        for (int step = 1; step <= 40; step++) {
            events.add(new StepEvent.Answered(step, Question.LOOKS_RIGHT, Answer.YES));
        }
        events.add(new Event.Closed("Setter 1", SignedAs.MACHINED_AND_MEASURED));
        events.add(figures(42, "CM-117", "0.031", "0.032"));
        events.add(new Event.StruckOut(events.size(), "Of another part"));
        for (int step = 41; step <= 59; step++) {
            events.add(figures(step, "CM-118", "0.021", step == 50 ? "0.0505" : "0.030"));
        }
        events.add(said(71, "HT-4711", Document.Says.CONFORMS, "Invented Alloys"));
        events.add(said(72, "", Document.Says.NOT_YET, "Invented Test House"));
        return events;
    }

    private static Event figures(int step, String number, String... figures) {
        return new StepEvent.DocumentGiven(
                step,
                new Document(
                        number,
                        LocalDate.parse("2026-11-24"),
                        Document.Says.FIGURES,
                        "Measuring room",
                        Stream.of(figures)
                                .map(figure -> new Written(figure, Unit.MILLIMETRE))
                                .toList()));
    }

    private static Event said(int step, String number, Document.Says says, String by) {
        return new StepEvent.DocumentGiven(
                step, new Document(number, LocalDate.parse("2026-11-20"), says, by, List.of()));
    }
}
