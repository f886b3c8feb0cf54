package org.tenthwise.app.session;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.tenthwise.app.history.RunFacts;
import org.tenthwise.app.history.RunQuery;
import org.tenthwise.app.history.RunShelf;
import org.tenthwise.app.history.RunSummary;
import org.tenthwise.app.history.StepSummary;
import org.tenthwise.app.store.Ledger;
import org.tenthwise.model.plan.AffectedSince;
import org.tenthwise.model.plan.BalloonNumber;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.plan.Step;
import org.tenthwise.model.record.Line;
import org.tenthwise.model.record.Outcome;
import org.tenthwise.model.record.Sheet;
import org.tenthwise.model.run.AskedSteps;
import org.tenthwise.model.run.Baseline;
import org.tenthwise.model.run.Earlier;
import org.tenthwise.model.run.Event;
import org.tenthwise.model.run.Occasion;
import org.tenthwise.model.run.OccasionSaid;
import org.tenthwise.model.run.Purpose;
import org.tenthwise.model.verdict.VerdictKind;
import org.tenthwise.model.words.Message;
import org.tenthwise.model.words.Refused;

/** What a run can stand on at its beginning. */
public final class Beginnings {

    private static final int MOST_OFFERED = 12;
    private static final int LOOKED_AT = 200;
    private static final int PAGE = 20;

    private final Ledger ledger;

    Beginnings(Ledger ledger) {
        this.ledger = ledger;
    }

    /**
     * The runs of a part number, whatever the revision, that one for {@code purpose} can stand on, the latest first: a
     * partial first article on what is closed and whole, what is measured again on any that was not put away.
     */
    public List<RunSummary> offered(Plan plan, Purpose purpose) {
        List<RunSummary> offered = new ArrayList<>();
        for (RunShelf shelf : List.of(RunShelf.CLOSED, RunShelf.OPEN)) {
            if (shelf == RunShelf.CLOSED || purpose == Purpose.MEASURED_AGAIN) {
                addTo(offered, plan, purpose, shelf);
            }
        }
        return offered;
    }

    /** A page at a time, until there are enough. */
    private void addTo(List<RunSummary> offered, Plan plan, Purpose purpose, RunShelf shelf) {
        Optional<RunFacts> after = Optional.empty();
        for (int looked = 0; looked < LOOKED_AT && offered.size() < MOST_OFFERED; looked += PAGE) {
            List<RunSummary> page = ledger.history()
                    .runs(new RunQuery(shelf, Optional.empty(), plan.part().number(), after, PAGE));
            page.stream()
                    .filter(run -> run.run().part().equals(plan.part().number())
                            && (purpose == Purpose.MEASURED_AGAIN || isWhole(run)))
                    .limit(MOST_OFFERED - offered.size())
                    .forEach(offered::add);
            if (page.size() < PAGE) {
                return;
            }
            after = Optional.of(page.get(page.size() - 1).run());
        }
    }

    /** What the store knows of a part number now. */
    public Earlier earlier(Plan plan) {
        return new EarlierRuns(ledger).of(plan);
    }

    /**
     * Numbers of the steps that a run would ask of which this is said; absent while too little is said to tell. Why
     * there is a first article does not change them.
     */
    public Optional<Set<Integer>> asked(Plan plan, OccasionSaid said) {
        try {
            return Optional.of(AskedSteps.of(plan, occasion(plan, said.because("-"))));
        } catch (Refused notYet) {
            return Optional.empty();
        }
    }

    /**
     * A run as it is begun, for what is said of it. What is measured again is the same piece, by its serial.
     *
     * @throws Refused where the run it names is none that it can stand on, or something else is missing
     */
    public RunHeader begunFor(RunHeader header, OccasionSaid said) {
        Occasion occasion = occasion(header.plan(), said);
        if (occasion.purpose() == Purpose.MEASURED_AGAIN) {
            String serial = ledger.entries(said.baseline())
                    .get(0)
                    .event()
                    .as(Event.Begun.class)
                    .orElseThrow()
                    .serial();
            if (!serial.strip().equalsIgnoreCase(header.serial().strip())) {
                throw new Refused(Message.of("begin.baseline.other-serial", said.baseline(), serial, header.serial()));
            }
        }
        return header.begunFor(occasion);
    }

    /** @throws Refused where the run it names is none that it can stand on, or something else is missing */
    public Occasion occasion(Plan plan, OccasionSaid said) {
        if (said.baseline().isEmpty()) {
            return said.on(Optional.empty(), said.affected());
        }
        if (ledger.entries(said.baseline()).isEmpty()) {
            throw new Refused(Message.of("begin.baseline.unknown", said.baseline()));
        }
        Sheet before = Runs.sheet(ledger, said.baseline());
        if (!before.plan().part().number().equals(plan.part().number())) {
            throw new Refused(Message.of(
                    "begin.baseline.other-part",
                    said.baseline(),
                    before.plan().part().number()));
        }
        boolean partial = said.purpose() == Purpose.FIRST_ARTICLE_PARTIAL;
        if (partial && !before.isWhole()) {
            throw new Refused(Message.of("begin.baseline.not-whole", said.baseline()));
        }
        Baseline baseline =
                new Baseline(said.baseline(), ledger.runHead(said.baseline()).hash());
        return said.on(Optional.of(baseline), partial ? affected(before, plan, said) : again(before, plan, said));
    }

    /** @throws Refused where what was named leaves out what an issue of the plan since then affects */
    private static List<Integer> affected(Sheet before, Plan plan, OccasionSaid said) {
        AffectedSince since = AffectedSince.of(before.plan(), plan);
        if (said.affected().isEmpty()) {
            return since.steps();
        }
        List<String> leftOut = since.leftOut(said.affected()).stream()
                .map(step -> plan.balloon(step).map(BalloonNumber::text).orElse(step.name()))
                .distinct()
                .toList();
        if (!leftOut.isEmpty()) {
            throw new Refused(Message.of("begin.affected.left-out", said.baseline(), leftOut));
        }
        return said.affected();
    }

    /** Numbers mean the same checks in the same text alone; under any other all of them are measured. */
    private static List<Integer> again(Sheet before, Plan plan, OccasionSaid said) {
        boolean hadAll = before.leftOut().stream().map(Line::step).noneMatch(Step::isOfDrawing);
        return !said.affected().isEmpty() || hadAll || !before.plan().source().equals(plan.source())
                ? said.affected()
                : before.characteristics().stream()
                        .map(line -> line.step().number())
                        .toList();
    }

    private static boolean isWhole(RunSummary run) {
        return run.run()
                        .stand()
                        .map(stand -> stand.outcome() != Outcome.NOT_COMPLETE && stand.outcome() != Outcome.PUT_AWAY)
                        .orElse(false)
                && run.steps().stream().allMatch(step -> step.asked() && isFound(step));
    }

    private static boolean isFound(StepSummary step) {
        return step.verdict().standing() != VerdictKind.OPEN;
    }
}
