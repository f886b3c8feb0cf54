package org.tenthwise.app.session;

import java.time.OffsetDateTime;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.tenthwise.app.history.RunFacts;
import org.tenthwise.app.history.RunQuery;
import org.tenthwise.app.history.RunShelf;
import org.tenthwise.app.history.RunSummary;
import org.tenthwise.app.store.Ledger;
import org.tenthwise.model.compare.PlanComparison;
import org.tenthwise.model.gauge.Setting;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.record.Sheet;
import org.tenthwise.model.run.AcceptedBefore;
import org.tenthwise.model.run.Earlier;
import org.tenthwise.model.run.Entry;
import org.tenthwise.model.run.Event;
import org.tenthwise.model.run.Purpose;
import org.tenthwise.model.run.Signature;
import org.tenthwise.model.run.SignedAs;
import org.tenthwise.model.run.StepEvent;

/** What a store knows of a part number, whatever the revision, from the runs of it. */
final class EarlierRuns {

    private static final int LOOKED_AT = 20;

    private final Ledger ledger;

    EarlierRuns(Ledger ledger) {
        this.ledger = ledger;
    }

    Earlier of(Plan plan) {
        return new Earlier(accepted(plan), lastMade(plan));
    }

    /** However many runs were closed since that nobody accepted. */
    private Optional<AcceptedBefore> accepted(Plan plan) {
        return ledger.history().accepted(plan.part().number(), LOOKED_AT).stream()
                .flatMap(run -> accepted(plan, run.id()).stream())
                .findFirst();
    }

    private Optional<AcceptedBefore> accepted(Plan plan, String id) {
        Sheet sheet = Runs.sheet(ledger, id);
        Optional<Signature> acceptance = sheet.run().signatures().stream()
                .filter(signature -> signature.meaning() == SignedAs.ACCEPTED && !signature.lapsed())
                .reduce((before, after) -> after)
                .filter(any -> sheet.against().isEmpty() && isOfThePart(sheet));
        return acceptance.map(signed -> new AcceptedBefore(
                id,
                ledger.runHead(id).hash(),
                signed.signedBy(),
                signed.entry().at(),
                sheet.plan().issue(),
                sheet.plan().source().sha256(),
                sheet.run().begun().machine(),
                sheet.run().begun().lot(),
                gauges(sheet),
                otherwise(sheet.plan(), plan)));
    }

    /** What was left out of a last piece, or of one measured again, was not accepted with it. */
    private static boolean isOfThePart(Sheet sheet) {
        Purpose purpose = sheet.run().begun().occasion().purpose();
        return sheet.leftOut().isEmpty() || purpose.speaksForThePart();
    }

    private static List<String> gauges(Sheet sheet) {
        return sheet.run().entries().stream()
                .flatMap(entry -> entry.event().as(StepEvent.GaugeSet.class).stream())
                .map(StepEvent.GaugeSet::setting)
                .map(Setting::gauge)
                .map(gauge -> gauge.id())
                .distinct()
                .toList();
    }

    /** What is otherwise in the plan now, by check. */
    private static List<String> otherwise(Plan before, Plan now) {
        return before.source().equals(now.source())
                ? List.of()
                : PlanComparison.of(before, now).changes().stream()
                        .map(change -> change.step().name())
                        .distinct()
                        .toList();
    }

    /** A note or a signature that came later makes nothing: only what was made or measured counts. */
    private Optional<OffsetDateTime> lastMade(Plan plan) {
        Optional<OffsetDateTime> last = Optional.empty();
        for (RunFacts run : lately(plan)) {
            if (last.filter(made -> !run.lastAt().isAfter(made)).isPresent()) {
                break; // nor was anything made later in those behind it
            }
            last = Stream.concat(last.stream(), made(run)).max(OffsetDateTime::compareTo);
        }
        return last;
    }

    private Stream<OffsetDateTime> made(RunFacts run) {
        return ledger.entries(run.id()).stream()
                .filter(entry -> entry.event().changesTheFinding()
                        || entry.event().as(Event.Begun.class).isPresent())
                .map(Entry::at);
    }

    /** Those of each shelf that were last worked on, the latest first. */
    private List<RunFacts> lately(Plan plan) {
        String part = plan.part().number();
        return Stream.of(RunShelf.values())
                .flatMap(
                        shelf -> ledger
                                .history()
                                .runs(new RunQuery(shelf, Optional.empty(), part, Optional.empty(), LOOKED_AT))
                                .stream())
                .map(RunSummary::run)
                .filter(run -> run.part().equals(part))
                .sorted(Comparator.comparing(RunFacts::lastAt).reversed())
                .toList();
    }
}
