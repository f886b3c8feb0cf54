package org.tenthwise.app.session;

import java.time.Clock;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.tenthwise.app.history.Progress;
import org.tenthwise.app.store.CouldNotRead;
import org.tenthwise.app.store.CouldNotSave;
import org.tenthwise.app.store.KeptEntries;
import org.tenthwise.app.store.Ledger;
import org.tenthwise.checklists.rules.PlanReader;
import org.tenthwise.checklists.rules.PlanReading;
import org.tenthwise.model.plan.PartId;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.record.Sheet;
import org.tenthwise.model.run.Entry;
import org.tenthwise.model.run.Event;
import org.tenthwise.model.run.Run;

/** The runs of one ledger. Used from the one thread that owns the ledger. */
public final class Runs {

    private final Ledger ledger;
    private final Clock clock;

    /** @param clock its zone gives the offset that times are kept with */
    public Runs(Ledger ledger, Clock clock) {
        this.ledger = ledger;
        this.clock = clock;
    }

    /** Every run, the one last worked on first. */
    public List<RunSummary> runs() {
        return ledger.runs().stream()
                .map(this::summary)
                .sorted(Comparator.comparing(RunSummary::last).reversed())
                .toList();
    }

    public RunSession open(String run) {
        List<Entry> entries = ledger.entries(run);
        return new RunSession(ledger, clock, new GaugeRack(ledger), planOf(new Run(entries)), entries);
    }

    public Sheet sheet(String run) {
        return sheet(ledger, run);
    }

    /** The same from a store that is open for reading alone. */
    public static Sheet sheet(KeptEntries kept, String run) {
        return sheet(new Run(kept.entries(run)));
    }

    /** The sheet of a run against the plan kept in it. */
    public static Sheet sheet(Run run) {
        return Sheet.of(planOf(run), run);
    }

    /** What the shop knows of the register of the machine goes into the run with its beginning. */
    public RunSession begin(RunHeader beginning) throws CouldNotSave {
        Plan plan = beginning.plan();
        String id = freeId(plan.part(), beginning.serial());
        List<Event> events = new ArrayList<>(List.of(new Event.Begun(
                plan.part(),
                beginning.serial(),
                beginning.lot(),
                beginning.machine(),
                plan.source(),
                beginning.noLot())));
        new MachineRack(ledger).find(beginning.machine()).ifPresent(events::add);
        List<Entry> entries = ledger.append(id, OffsetDateTime.now(clock), beginning.by(), events);
        return new RunSession(ledger, clock, new GaugeRack(ledger), plan, entries);
    }

    /** The runs begun on this part and serial, closed or not, in the order they were begun. */
    public List<String> runsOf(PartId part, String serial) {
        return ledger.runs().stream()
                .filter(id -> {
                    Event.Begun begun = new Run(ledger.entries(id)).begun();
                    return begun.part().equals(part) && begun.serial().equals(serial.strip());
                })
                .toList();
    }

    /** A run begun under the same part, revision and issue with another text of the plan: the last of them. */
    public Optional<String> runWithOtherText(Plan plan) {
        return ledger.runs().stream()
                .map(id -> new Run(ledger.entries(id)))
                .filter(run -> run.begun().part().equals(plan.part())
                        && !run.begun().plan().text().equals(plan.source().text()))
                .filter(run -> planOf(run).issue().equals(plan.issue()))
                .map(Run::id)
                .reduce((earlier, later) -> later);
    }

    private RunSummary summary(String id) {
        Sheet sheet = sheet(id);
        return new RunSummary(
                id, sheet, Progress.whereItStopped(sheet), sheet.run().last().at());
    }

    /** Part, revision and serial, in letters, digits and hyphens; a number behind it where that was used before. */
    private String freeId(PartId part, String serial) {
        String name = String.join("-", part.number(), part.revision(), serial).replaceAll("[^A-Za-z0-9.]+", "-");
        List<String> used = new ArrayList<>(ledger.runs());
        used.add(Entry.SHOP);
        String id = name;
        for (int i = 2; used.contains(id); i++) {
            id = name + "-" + i;
        }
        return id;
    }

    /** The plan a run was begun with, from the text kept in the run. */
    private static Plan planOf(Run run) {
        PlanReading reading = new PlanReader().readKept(run.begun().plan().text());
        if (reading instanceof PlanReading.Good good) {
            return good.plan();
        }
        throw new CouldNotRead(
                "The plan kept with run %s cannot be read by this version of Tenthwise. Nothing was changed."
                        .formatted(run.id()));
    }
}
