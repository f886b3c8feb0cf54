package org.tenthwise.app.store;

import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.Arrays;
import java.util.List;
import org.tenthwise.app.store.sqlite.SqliteStores;
import org.tenthwise.checklists.catalogue.DemoPart;
import org.tenthwise.checklists.rules.ReadingsFile;
import org.tenthwise.checklists.rules.SampleReader;
import org.tenthwise.checklists.rules.SampleReading;
import org.tenthwise.model.run.Event;
import org.tenthwise.model.run.StepEvent;

/** A station with a store of its own, whose runs go to another; what signs for them is invented. */
public final class StationElsewhere implements AutoCloseable {

    public static final OffsetDateTime AT = OffsetDateTime.parse("2026-11-25T07:31:00+01:00");

    private static final ReadingsFile PASSING = passing();

    private final Ledger ledger;
    private final String key;

    /** @param sign the first digits of its key */
    public StationElsewhere(Path store, String sign) throws CouldNotOpen {
        this.ledger = new SqliteStores().open(store);
        this.key = sign + "0".repeat(64 - sign.length());
    }

    private static ReadingsFile passing() {
        SampleReading read =
                new SampleReader().read(DemoPart.SCREW_CARRIER.passingReadings(), DemoPart.SCREW_CARRIER.plan());
        return ((SampleReading.Good) read).sample();
    }

    public Ledger ledger() {
        return ledger;
    }

    /** The screw carrier, every reading inside, signed and closed. */
    public void make(String run) throws CouldNotSave {
        ledger.append(run, AT, "Setter 1", PASSING.begun());
        ledger.append(run, AT.plusMinutes(1), "Setter 1", PASSING.events());
    }

    /** Begun, one reading taken, and left so. */
    public void begin(String run) throws CouldNotSave {
        ledger.append(run, AT, "Setter 1", PASSING.begun());
        ledger.append(
                run,
                AT,
                "Setter 1",
                PASSING.events().stream()
                        .filter(event -> event.as(StepEvent.Answered.class).isPresent())
                        .limit(1)
                        .toList());
    }

    public void note(String run, String words) throws CouldNotSave {
        ledger.append(run, AT.plusHours(1), "Inspector 1", new StepEvent.NoteMade(1, words));
    }

    public void putAway(String run) throws CouldNotSave {
        ledger.append(run, AT.plusHours(1), "Setter 1", new Event.PutAway("Setter 1", "begun by mistake"));
    }

    /** All of its runs with these names, as they stand now. */
    public Incoming bundle(String... runs) {
        return with(Arrays.stream(runs)
                .map(run -> new Incoming.OfRun(run, ledger.stored(run)))
                .toList());
    }

    /** Other entries under its name. */
    public Incoming with(List<Incoming.OfRun> runs) {
        return new Incoming("ef".repeat(32), key, ledger.headAt(1).orElseThrow().hash(), false, runs);
    }

    @Override
    public void close() {
        ledger.close();
    }
}
