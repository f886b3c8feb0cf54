package org.tenthwise.model.firstarticle;

import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.tenthwise.model.gauge.GaugeKind;
import org.tenthwise.model.plan.BalloonNumber;
import org.tenthwise.model.plan.Check;
import org.tenthwise.model.plan.Combine;
import org.tenthwise.model.plan.DocumentCheck;
import org.tenthwise.model.plan.Feature;
import org.tenthwise.model.plan.Instances;
import org.tenthwise.model.plan.IssueOfPlan;
import org.tenthwise.model.plan.OnDrawing;
import org.tenthwise.model.plan.Operation;
import org.tenthwise.model.plan.PartId;
import org.tenthwise.model.plan.Place;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.plan.PlanBuilder;
import org.tenthwise.model.plan.PlanSource;
import org.tenthwise.model.plan.ProofOf;
import org.tenthwise.model.plan.SizeCheck;
import org.tenthwise.model.plan.Specified;
import org.tenthwise.model.plan.Step;
import org.tenthwise.model.plan.StepBuilder;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.record.Sheet;
import org.tenthwise.model.run.Document;
import org.tenthwise.model.run.Entry;
import org.tenthwise.model.run.Event;
import org.tenthwise.model.run.Occasion;
import org.tenthwise.model.run.ReportAsked;
import org.tenthwise.model.run.Run;
import org.tenthwise.model.run.SignedAs;
import org.tenthwise.model.run.StepEvent;
import org.tenthwise.model.tolerance.Limits;

/**
 * Invented runs of one small part: balloon 1 a bore 20.00 to 20.02, balloon 2 four holes 8.00 to 8.02, balloon 3 proven
 * elsewhere, and the material.
 */
final class Joined {

    static final PartId PART = new PartId("X-1", "A");

    private final String serial;
    private final List<Entry> entries = new ArrayList<>();
    private List<IssueOfPlan> issues = issues("1");
    private String greatest = "20.02";
    private String third = "3";
    private OffsetDateTime at = OffsetDateTime.parse("2026-11-25T07:31:00+01:00");
    private Instances.Report report = Instances.Report.LEAST_AND_GREATEST;

    Joined(String serial) {
        this(serial, Occasion.NOT_STATED);
    }

    Joined(String serial, Occasion occasion) {
        this(serial, "", occasion);
    }

    Joined(String serial, String lot, Occasion occasion) {
        this.serial = serial;
        did(new Event.Begun(PART, serial, lot, "", new PlanSource("", ""), false, occasion));
    }

    /** All four, all right, and closed. */
    static Joined right(String serial) {
        return new Joined(serial)
                .bore("20.010")
                .holes("8.010", "8.00", "8.015", "8.02")
                .papers()
                .closed();
    }

    /** The same under another id. */
    Joined asRun(String id) {
        entries.replaceAll(entry -> new Entry(entry.seq(), id, entry.at(), entry.by(), entry.event()));
        return this;
    }

    /** Of a plan of that one issue, by which the bore is affected. */
    Joined issue(String number) {
        issues = issues(number);
        return this;
    }

    private static List<IssueOfPlan> issues(String number) {
        return List.of(new IssueOfPlan(
                number, "first", "Planner 1", Optional.empty(), Optional.empty(), Optional.of(List.of("1"))));
    }

    /** Of a plan of several, the one in force last. */
    Joined issues(IssueOfPlan... all) {
        issues = List.of(all);
        return this;
    }

    Joined boreUpTo(String limit) {
        greatest = limit;
        return this;
    }

    Joined thirdBalloon(String balloon) {
        third = balloon;
        return this;
    }

    Joined eachHole() {
        report = Instances.Report.EACH;
        return this;
    }

    Joined bore(String typed) {
        return read(1, 1, typed);
    }

    Joined holes(String... typed) {
        for (int place = 1; place <= typed.length; place++) {
            read(2, place, typed[place - 1]);
        }
        return this;
    }

    private Joined read(int step, int place, String typed) {
        return did(new StepEvent.ReadingTaken(step, place + ".1", mm(typed)));
    }

    Joined papers() {
        return paper(3, "CMM-7", Document.Says.CONFORMS).paper(4, "HEAT-9", Document.Says.CONFORMS);
    }

    Joined paper(int step, String number, Document.Says says, String... figures) {
        return did(new StepEvent.DocumentGiven(
                step, new Document(number, LocalDate.parse("2026-11-20"), says, "Works laboratory", figures(figures))));
    }

    private static List<Written> figures(String... figures) {
        return List.of(figures).stream().map(Joined::mm).toList();
    }

    Joined closed() {
        return did(new Event.Closed("Setter 1", SignedAs.MACHINED_AND_MEASURED));
    }

    Joined did(Event event) {
        entries.add(new Entry(entries.size() + 1, "r-" + serial, at, "Setter 1", event));
        at = at.plusSeconds(40);
        return this;
    }

    Sheet sheet() {
        List<Step> steps = List.of(
                step(
                        1,
                        "Bore",
                        new OnDrawing(
                                Optional.of(new BalloonNumber("1")),
                                Optional.of("1"),
                                Optional.of("B2"),
                                "Ø20 +0.02/0",
                                Optional.of("key"),
                                Instances.ONE,
                                Optional.empty()),
                        size("20.00", greatest, 1)),
                step(
                        2,
                        "Holes",
                        new OnDrawing(
                                Optional.of(new BalloonNumber("2")),
                                Optional.empty(),
                                Optional.empty(),
                                "4X Ø8 +0.02/0",
                                Optional.empty(),
                                new Instances(4, Optional.empty(), report),
                                Optional.empty()),
                        size("8.00", "8.02", 4)),
                step(
                        3,
                        "Profile",
                        new OnDrawing(
                                Optional.of(new BalloonNumber(third)),
                                Optional.empty(),
                                Optional.empty(),
                                "profile 0.05",
                                Optional.empty(),
                                Instances.ONE,
                                Optional.empty()),
                        new DocumentCheck(
                                ProofOf.ELSEWHERE, "", "coordinate machine", Optional.empty(), Specified.NOTHING)),
                step(
                        4,
                        "Bar",
                        OnDrawing.NOTHING,
                        new DocumentCheck(
                                ProofOf.MATERIAL,
                                "certificate",
                                "",
                                Optional.empty(),
                                new Specified("EN 10088-3", "bar", "M-1", "invented mill"))));
        String issue = issues.get(issues.size() - 1).number();
        Plan plan = new PlanBuilder(PART, Unit.MILLIMETRE, List.of(new Operation(10, "All")), steps)
                .name("Trial")
                .issue(issue)
                .issues(issues)
                .route(Optional.of("R-1"))
                .source(new PlanSource("issue " + issue + greatest, "ab".repeat(32)))
                .build();
        return Sheet.of(plan, new Run(entries));
    }

    private static Step step(int number, String name, OnDrawing drawing, Check check) {
        return new StepBuilder(number, 10, name, check).drawing(drawing).build();
    }

    private static SizeCheck size(String lower, String upper, int places) {
        return new SizeCheck(
                Feature.BORE,
                Limits.between(mm(lower), mm(upper)),
                IntStream.rangeClosed(1, places)
                        .mapToObj(place -> Place.named("place " + place))
                        .toList(),
                1,
                Combine.EACH,
                true,
                mm("0"),
                new Check.Means(GaugeKind.MICROMETER, Optional.empty(), Optional.empty()));
    }

    private static Written mm(String figure) {
        return new Written(figure, Unit.MILLIMETRE);
    }

    /** A full report with all that it needs. */
    static ReportAsked full() {
        return asked(ReportAsked.Extent.FULL, "", List.of());
    }

    static ReportAsked partial(String... affected) {
        return asked(ReportAsked.Extent.PARTIAL, "X-1 rev A, F-1", List.of(affected));
    }

    private static ReportAsked asked(ReportAsked.Extent extent, String baseline, List<String> affected) {
        return new ReportAsked(
                "F-2",
                PART,
                ReportAsked.Edition.C,
                extent,
                "first run",
                baseline,
                affected,
                "PO-1",
                "Invented works",
                "V-3",
                "",
                List.of("ECN 3"),
                false,
                "");
    }
}
