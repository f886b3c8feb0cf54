package org.tenthwise.app.session;

import java.time.Clock;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.tenthwise.app.history.History;
import org.tenthwise.app.history.RunQuery;
import org.tenthwise.app.history.RunShelf;
import org.tenthwise.app.history.RunSummary;
import org.tenthwise.app.store.CouldNotRead;
import org.tenthwise.app.store.CouldNotSave;
import org.tenthwise.app.store.KeptEntries;
import org.tenthwise.app.store.Ledger;
import org.tenthwise.app.store.NewEntry;
import org.tenthwise.model.plan.PartId;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.record.Sheet;
import org.tenthwise.model.run.Earlier;
import org.tenthwise.model.run.Entry;
import org.tenthwise.model.run.Event;
import org.tenthwise.model.run.Run;
import org.tenthwise.model.run.ShopEvent;
import org.tenthwise.model.words.Message;

/** The runs of one ledger. Used from the one thread that owns the ledger. */
public final class Runs {

    private final Ledger ledger;
    private final Clock clock;
    private final ShopNames names;
    private final StepsInHand steps;

    /** @param clock its zone gives the offset that times are kept with */
    public Runs(Ledger ledger, Clock clock) {
        this(ledger, clock, ShopBook.inMemory(ShopBook.Shop.NOBODYS), StepsInHand.inMemory());
    }

    /**
     * @param book what the shop said of itself beside its runs
     * @param steps where each run goes on
     */
    public Runs(Ledger ledger, Clock clock, ShopBook book, StepsInHand steps) {
        this.steps = steps;
        this.ledger = ledger;
        this.clock = clock;
        this.names = new ShopNames(ledger, book);
    }

    /** The machines and the people of the shop. */
    public ShopNames names() {
        return names;
    }

    /**
     * Keeps what is said of the register of a machine for the shop; an open run on it that has it the other way round
     * is put right.
     *
     * @param by who says so
     */
    public void tellMachine(ShopEvent.MachineKnown known, String by) throws CouldNotSave {
        List<NewEntry> added = new MachineRack(ledger).telling(known, "", OffsetDateTime.now(clock), by);
        if (!added.isEmpty()) {
            ledger.append(added);
        }
    }

    /** What a run can stand on at its beginning. */
    public Beginnings beginnings() {
        return new Beginnings(ledger);
    }

    /** By the clock that times are kept with. */
    public OffsetDateTime now() {
        return OffsetDateTime.now(clock);
    }

    /** What lists and suggestions are read from. */
    public History history() {
        return ledger.history();
    }

    /** Marks of the gauges that were found wrong and not told of since. */
    public List<String> gaugesInDoubt() {
        return new GaugeRack(ledger).inDoubt();
    }

    /** The runs asked for, each with the step it goes on with when it is opened. */
    public List<RunSummary> list(RunQuery query) {
        return history().runs(query).stream().map(this::goingOn).toList();
    }

    /** Only of a run that had another step in hand than its entries tell are the entries read. */
    private RunSummary goingOn(RunSummary run) {
        OptionalInt kept = steps.of(run.id());
        boolean elsewhere = !run.run().closed()
                && kept.isPresent()
                && run.inHand().filter(step -> step.number() != kept.getAsInt()).isPresent();
        return elsewhere ? run.at(open(run.id()).state().inHand().number()) : run;
    }

    public RunSession open(String run) {
        List<Entry> entries = ledger.entries(run);
        return new RunSession(ledger, clock, new GaugeRack(ledger), steps, planOf(ledger, new Run(entries)), entries);
    }

    /** How a run that was made elsewhere came in; absent for one that was made here. */
    public Optional<CameFrom> cameFrom(String run) {
        return CameFrom.of(ledger, run);
    }

    /** Signs of the stations whose runs came in and whose key nobody here ever named as one that is trusted. */
    public Set<String> unknownStations() {
        return CameFrom.unknownStations(ledger);
    }

    /** Whether the entries of a run are as they were written, and sealed. */
    public RunProof proof(String run) {
        return RunProof.of(ledger, run);
    }

    /** Whether this is a desk at which runs of other stations are looked at, and none of its own is open. */
    public boolean isDesk() {
        return !ledger.origins().isEmpty()
                && history()
                        .runs(new RunQuery(RunShelf.OPEN, Optional.empty(), "", Optional.empty(), 1))
                        .isEmpty();
    }

    public Sheet sheet(String run) {
        return sheet(ledger, run);
    }

    /** The same from a store that is open for reading alone. */
    public static Sheet sheet(KeptEntries kept, String run) {
        return sheet(kept, new Run(kept.entries(run)));
    }

    /** The sheet of a run against the plan kept in it. */
    public static Sheet sheet(KeptEntries kept, Run run) {
        return Sheet.of(planOf(kept, run), run);
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
                beginning.noLot(),
                beginning.occasion(),
                earlier(beginning))));
        new MachineRack(ledger).find(beginning.machine()).ifPresent(events::add);
        List<Entry> entries = ledger.append(id, OffsetDateTime.now(clock), beginning.by(), events);
        return new RunSession(ledger, clock, new GaugeRack(ledger), steps, plan, entries);
    }

    /** Not kept of a run of which nothing is said, on a part number that is new to the store. */
    private Optional<Earlier> earlier(RunHeader beginning) {
        Earlier known = beginnings().earlier(beginning.plan());
        return Optional.of(known).filter(any -> !beginning.occasion().saysNothing() || !known.equals(Earlier.NOTHING));
    }

    /** Part, revision and serial, in letters, digits and hyphens; a number behind it where that was used before. */
    private String freeId(PartId part, String serial) {
        String name = String.join("-", part.number(), part.revision(), serial).replaceAll("[^A-Za-z0-9.]+", "-");
        String id = name;
        for (int i = 2; id.equals(Entry.SHOP) || !ledger.entries(id).isEmpty(); i++) {
            id = name + "-" + i;
        }
        return id;
    }

    /** The plan a run was begun with, from the text kept in the run. */
    private static Plan planOf(KeptEntries kept, Run run) {
        return kept.history()
                .plan(run.begun().plan())
                .orElseThrow(() -> new CouldNotRead(Message.of("store.plan-unreadable", run.id())));
    }
}
