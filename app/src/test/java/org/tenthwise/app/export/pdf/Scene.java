package org.tenthwise.app.export.pdf;

import static org.tenthwise.model.quantity.TemperatureScale.CELSIUS;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import org.tenthwise.app.InventedPlans;
import org.tenthwise.app.ProvenElsewhere;
import org.tenthwise.app.SixtyBalloons;
import org.tenthwise.app.export.Evidence;
import org.tenthwise.app.export.Records;
import org.tenthwise.checklists.catalogue.DemoPart;
import org.tenthwise.checklists.rules.ReadingsFile;
import org.tenthwise.model.plan.Answer;
import org.tenthwise.model.plan.Check;
import org.tenthwise.model.plan.Contact;
import org.tenthwise.model.plan.DrawingInForce;
import org.tenthwise.model.plan.MeasuredBody;
import org.tenthwise.model.plan.OnDrawing;
import org.tenthwise.model.plan.Operation;
import org.tenthwise.model.plan.OverWiresCheck;
import org.tenthwise.model.plan.PartId;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.plan.PlanBuilder;
import org.tenthwise.model.plan.PlanSource;
import org.tenthwise.model.plan.PlugFitCheck;
import org.tenthwise.model.plan.Question;
import org.tenthwise.model.plan.Step;
import org.tenthwise.model.plan.StepBuilder;
import org.tenthwise.model.quantity.Degrees;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.run.Disposition;
import org.tenthwise.model.run.Event;
import org.tenthwise.model.run.SignedAs;
import org.tenthwise.model.run.StepEvent;

/** Invented runs to write records of, from the plain one to the worst a tablet may be given. */
public enum Scene {
    PASSED(() -> Records.whole(DemoPart.SCREW_CARRIER, Records.passing(DemoPart.SCREW_CARRIER))),
    FAILED(() -> Records.whole(DemoPart.SCREW_CARRIER, Records.failing(DemoPart.SCREW_CARRIER))),
    UNFINISHED(Scene::unfinished),
    CONCEDED(Scene::conceded),
    LAPSED(Scene::lapsed),
    NOT_BEGUN(() -> Records.walk(DemoPart.SCREW_CARRIER, Records.passing(DemoPart.SCREW_CARRIER), 0)
            .evidence()),
    INCH_PASSED(() -> Records.whole(DemoPart.WINCH_BARREL_END, Records.passing(DemoPart.WINCH_BARREL_END))),
    INCH_FAILED(() -> Records.whole(DemoPart.WINCH_BARREL_END, Records.failing(DemoPart.WINCH_BARREL_END))),
    INCH_UNFINISHED(() -> Records.walk(DemoPart.WINCH_BARREL_END, Records.passing(DemoPart.WINCH_BARREL_END), 50)
            .evidence()),
    WARM_GROOVES(Scene::warmGrooves),
    SIXTY_BALLOONS(() -> new Records.Walk(SixtyBalloons.PLAN, "Setter 1")
            .addAll(SixtyBalloons.run(60))
            .evidence()),
    PROVEN_ELSEWHERE(() -> new Records.Walk(ProvenElsewhere.PLAN, "Setter 1")
            .addAll(ProvenElsewhere.run())
            .evidence()),
    LONG_NAMES(Scene::longNames);

    private static final String SIXTY = "Mitnehmerzapfenaufnahmebohrung für die Spindelmutter am Tor 4";
    private static final String ANY_SIGN =
            "tab\there, two\nlines, \u0007bell, \u4e2d\u6587, \u05d0\u05d1, \ud83d\udd27, "
                    + "\u2300 30, \u221e, e\u0301, \ufb01, \ud800, =1+1";

    private final Supplier<Evidence> evidence;

    Scene(Supplier<Evidence> evidence) {
        this.evidence = evidence;
    }

    public Evidence evidence() {
        return evidence.get();
    }

    /** Stops after a while, with a reading struck out, one taken again, a doubt, notes and another person. */
    private static Evidence unfinished() {
        ReadingsFile passed = Records.passing(DemoPart.SCREW_CARRIER);
        Records.Walk walk = Records.walk(
                DemoPart.SCREW_CARRIER,
                passed,
                passed.events().indexOf(new StepEvent.ReadingTaken(12, "1.1", mm("46.04"))));
        walk.add(new StepEvent.ReadingTaken(12, "1.1", mm("46.40")));
        long wrong = walk.seq();
        return walk.add(new Event.StruckOut(wrong, "Gauge stood on a chip; wiped and measured again."))
                .add(new StepEvent.ReadingTaken(12, "1.1", mm("46.05")))
                .add(new StepEvent.ReadingTaken(12, "1.1", mm("46.04")))
                .add(new StepEvent.DoubtFlagged(12, "Does the drawing mean the depth from the shoulder?"))
                .add(new StepEvent.NoteMade(0, "Coolant at 21 °C since noon."))
                .add(new Event.HandedOver("Setter 1"))
                .evidence();
    }

    /** All passed but one place of the pocket, which is signed for. */
    private static Evidence conceded() {
        List<Event> events = new ArrayList<>();
        for (Event event : Records.passing(DemoPart.SCREW_CARRIER).events()) {
            boolean pocket = event instanceof StepEvent.ReadingTaken taken
                    && taken.step() == 26
                    && taken.slot().equals("3.1");
            if (event instanceof Event.Signed) {
                events.add(new StepEvent.DispositionSigned(
                        26,
                        Disposition.USE_AS_IS,
                        "Over by 0.003 at one of six places; key fitted by hand.",
                        "Design office",
                        Optional.of("C-117")));
            }
            events.add(pocket ? new StepEvent.ReadingTaken(26, "3.1", mm("12.046")) : event);
        }
        return new Records.Walk(DemoPart.SCREW_CARRIER.plan(), "Setter 2")
                .add(Records.passing(DemoPart.SCREW_CARRIER).begun())
                .addAll(events)
                .evidence();
    }

    /**
     * Accepted with a concession; then the pocket is corrected, the bore cut again before the plug is tried anew, and
     * two figures far off are kept.
     */
    private static Evidence lapsed() {
        Records.Walk walk = new Records.Walk(DemoPart.SCREW_CARRIER.plan(), "Setter 2")
                .add(Records.passing(DemoPart.SCREW_CARRIER).begun());
        for (Event event : Records.passing(DemoPart.SCREW_CARRIER).events()) {
            if (event instanceof Event.Signed) {
                continue;
            }
            boolean pocket = event instanceof StepEvent.ReadingTaken taken
                    && taken.step() == 26
                    && taken.slot().equals("3.1");
            walk.add(
                    event instanceof Event.Closed
                            ? new StepEvent.DispositionSigned(
                                    26, Disposition.USE_AS_IS, "Key fitted by hand.", "Design office")
                            : pocket ? new StepEvent.ReadingTaken(26, "3.1", mm("12.046")) : event);
        }
        walk.add(new Event.Closed("Setter 2", SignedAs.MACHINED_AND_MEASURED))
                .add(new Event.Signed("Inspector 2", SignedAs.MEASURED_AGAIN))
                .add(new Event.Signed("Inspector 1", SignedAs.ACCEPTED))
                .add(new Event.HandedOver("Setter 1"))
                .add(new StepEvent.ReadingTaken(26, "3.1", mm("12.047")))
                .add(new StepEvent.PassBegun(13, StepEvent.PassBegun.Why.CUT))
                .add(new StepEvent.TemperatureTaken(13, MeasuredBody.PART, Degrees.of("21.0", CELSIUS)))
                .add(new StepEvent.TemperatureTaken(13, MeasuredBody.GAUGE, Degrees.of("20.5", CELSIUS)));
        List.of("1.1", "2.1", "3.1", "4.1")
                .forEach(place -> walk.add(new StepEvent.ReadingTaken(13, place, mm("0.018"))));
        return walk.add(new StepEvent.ReadingTaken(12, "1.1", mm("4.60")))
                .add(new StepEvent.ReadingTaken(18, "1.1", mm("1065")))
                .evidence();
    }

    /**
     * A root read warm and across opposite grooves, so that two corrections come together; then repaired and read
     * again.
     */
    private static Evidence warmGrooves() {
        Plan plan = InventedPlans.inMillimetres(
                """
                [temperature]
                part_expansion = 16.2
                shop_least = 18
                shop_greatest = 25
                [[step]]
                number = 1
                operation = 10
                kind = "diameter"
                name = "Root"
                method = "Point micrometer."
                lower = 32.480
                upper = 32.500
                grooves = { pitch = 7 }
                places = ["front"]
                temperature = "ask"
                gauge_kind = "micrometer"
                """);
        Records.Walk walk = new Records.Walk(plan, "Setter 1")
                .add(new Event.Begun(plan.part(), "1", "L-1", "Lathe 4", plan.source()));
        readWarm(walk, "32.692");
        readWarm(
                walk.add(new StepEvent.DispositionSigned(
                        1, Disposition.REPAIR, "Dressed and sprayed.", "Design office", Optional.of("A-7"))),
                "32.688");
        return walk.add(new Event.Closed("Setter 1", SignedAs.MACHINED_AND_MEASURED))
                .evidence();
    }

    private static void readWarm(Records.Walk walk, String figure) {
        walk.add(new StepEvent.TemperatureTaken(1, MeasuredBody.PART, Degrees.of("25", CELSIUS)))
                .add(new StepEvent.TemperatureTaken(1, MeasuredBody.GAUGE, Degrees.of("20", CELSIUS)))
                .add(new StepEvent.ReadingTaken(1, "1.1", mm(figure)))
                .add(new StepEvent.Answered(1, Question.GROOVES_TOUCHED, Answer.OPPOSITE_GROOVES));
    }

    /** Forty steps with names of sixty letters, no outline, and free text with any sign there is. */
    private static Evidence longNames() {
        Plan demo = DemoPart.SCREW_CARRIER.plan();
        List<Step> steps = new ArrayList<>();
        List<Check> checks = demo.steps().stream()
                .map(Step::check)
                .filter(check -> !(check instanceof PlugFitCheck) && !(check instanceof OverWiresCheck))
                .filter(check -> check.asSize()
                        .filter(size -> size.contact() instanceof Contact.DepthOfThread)
                        .isEmpty())
                .toList();
        IntStream.rangeClosed(1, 40)
                .forEach(
                        number -> steps.add(new StepBuilder(number * 101, 10, SIXTY, checks.get(number % checks.size()))
                                .drawing(OnDrawing.words(SIXTY + " " + SIXTY))
                                .method(ANY_SIGN)
                                .hold(number % 7 == 0 ? List.of(number * 101 - 101) : List.of())
                                .build()));
        PlanSource source = demo.source();
        String unbroken = "X".repeat(60);
        Plan plan = new PlanBuilder(
                        new PartId(unbroken, "AB"), Unit.MILLIMETRE, List.of(new Operation(10, SIXTY)), steps)
                .issue(SIXTY)
                .name(SIXTY)
                .material(SIXTY)
                .drawing(DrawingInForce.titled(unbroken))
                .remark(demo.remark() + " " + SIXTY + " " + SIXTY)
                .source(source)
                .build();
        return new Records.Walk(plan, unbroken)
                .add(new Event.Begun(plan.part(), unbroken, unbroken, SIXTY, source))
                .add(new StepEvent.NoteMade(101, ANY_SIGN))
                .add(new StepEvent.NoteMade(0, String.join(" ", Collections.nCopies(120, SIXTY))))
                .add(new StepEvent.DoubtFlagged(202, String.join("", Collections.nCopies(40, unbroken))))
                .add(new StepEvent.DispositionSigned(303, Disposition.SCRAP, ANY_SIGN + SIXTY + unbroken, unbroken))
                .evidence();
    }

    private static Written mm(String figure) {
        return new Written(figure, Unit.MILLIMETRE);
    }
}
