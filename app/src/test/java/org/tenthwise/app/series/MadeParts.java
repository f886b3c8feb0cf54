package org.tenthwise.app.series;

import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.tenthwise.app.InventedPlans;
import org.tenthwise.app.history.ReadFromEntries;
import org.tenthwise.app.history.Sought;
import org.tenthwise.app.store.CouldNotSave;
import org.tenthwise.app.store.Ledger;
import org.tenthwise.app.store.sqlite.SqliteStores;
import org.tenthwise.model.gauge.Gauge;
import org.tenthwise.model.gauge.GaugeKind;
import org.tenthwise.model.gauge.Setting;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.run.Event;
import org.tenthwise.model.run.SignedAs;
import org.tenthwise.model.run.StepEvent;
import org.tenthwise.model.run.StepEvent.PassBegun.Why;

/** A store in which invented parts are made, a minute an entry, as a tablet would keep them. */
public final class MadeParts implements AutoCloseable {

    /** A journal read once, a shoulder read at two places, and a run-out. */
    static final String STEPS =
            """
            [[step]]
            number = 1
            operation = 10
            kind = "diameter"
            name = "Journal"
            balloon = "7"
            method = "One place."
            lower = 29.980
            upper = 30.000
            places = ["middle"]
            cut_again = "too big"
            gauge_kind = "micrometer"
            gauge = "MC-1"

            [[step]]
            number = 2
            operation = 10
            kind = "diameter"
            name = "Seat"
            balloon = "8"
            method = "Two places."
            lower = 39.975
            upper = 40.000
            places = ["left", "right"]
            cut_again = "too big"
            gauge_kind = "micrometer"
            gauge = "MC-2"

            [[step]]
            number = 3
            operation = 10
            kind = "diameter"
            name = "Relief"
            balloon = "9"
            method = "One place."
            upper = 28.5
            places = ["middle"]
            gauge_kind = "micrometer"
            gauge = "MC-1"
            """;

    static final String TEXT = InventedPlans.text("mm", STEPS);
    public static final Plan PLAN = InventedPlans.read(TEXT);
    public static final int JOURNAL = 1;
    public static final int SEAT = 2;
    public static final int RELIEF = 3;

    final Ledger ledger;
    private OffsetDateTime now = OffsetDateTime.parse("2026-03-02T07:15:00+01:00");
    private int runs;

    public MadeParts(Path folder) throws Exception {
        ledger = new SqliteStores().open(folder.resolve("shop.db"));
    }

    static Plan changed(String from, String to) {
        if (!TEXT.contains(from)) {
            throw new AssertionError(from);
        }
        return InventedPlans.read(TEXT.replace(from, to));
    }

    /** One part in the making. */
    public final class Part {
        private final String run;
        private String by = "Setter 1";

        private Part(String run) {
            this.run = run;
        }

        String id() {
            return run;
        }

        public Part by(String person) {
            by = person;
            return this;
        }

        public Part with(int step, String mark) {
            return did(new StepEvent.GaugeSet(
                    step, Setting.direct(new Gauge(mark, GaugeKind.MICROMETER, Optional.empty()))));
        }

        /** Reads the places in their order, with the usual gauge where none was set yet. */
        public Part reads(int step, String... sizes) {
            boolean set = ledger.entries(run).stream().anyMatch(entry -> entry.event()
                    .as(StepEvent.GaugeSet.class)
                    .filter(of -> of.step() == step)
                    .isPresent());
            if (!set) {
                with(step, step == SEAT ? "MC-2" : "MC-1");
            }
            for (int i = 0; i < sizes.length; i++) {
                did(new StepEvent.ReadingTaken(
                        step, PLAN.step(step).check().slots().get(i).key(), new Written(sizes[i], Unit.MILLIMETRE)));
            }
            return this;
        }

        public Part cut(int step) {
            return did(new StepEvent.PassBegun(step, Why.CUT));
        }

        public Part again(int step) {
            return did(new StepEvent.PassBegun(step, Why.MEASURED_AGAIN));
        }

        /** Strikes out what was entered last. */
        public Part struck() {
            return did(new Event.StruckOut(ledger.head().seq(), "slipped"));
        }

        public Part closed() {
            return did(new Event.Closed("Inspector 1", SignedAs.ACCEPTED));
        }

        public Part did(Event event) {
            try {
                now = now.plusMinutes(1);
                ledger.append(run, now, by, event);
                return this;
            } catch (CouldNotSave e) {
                throw new AssertionError(e);
            }
        }
    }

    public Part part(String serial) {
        return part(PLAN, serial, "L-1", "Lathe 4");
    }

    public Part part(Plan plan, String serial, String lot, String machine) {
        Part part = new Part("run-%03d".formatted(++runs));
        return part.did(new Event.Begun(plan.part(), serial, lot, machine, plan.source()));
    }

    /** Parts 001, 002 … whose journal reads so, each closed. */
    public void journals(String... sizes) {
        for (String size : sizes) {
            part("%03d".formatted(runs + 1)).reads(JOURNAL, size).closed();
        }
    }

    void at(String time) {
        now = OffsetDateTime.parse(time);
    }

    /** The series of a step of the part number, as the tables have it; the entries alone must have it alike. */
    Series series(int step) {
        return all().stream()
                .filter(series -> series.characteristic().step() == step)
                .findFirst()
                .orElseThrow();
    }

    List<Series> all() {
        List<Series> drawn = new Followed(ledger.history()).of(Sought.ofPart("T-1"));
        List<Series> told = new Followed(new ReadFromEntries(ledger)).of(Sought.ofPart("T-1"));
        if (!drawn.equals(told)) {
            throw new AssertionError(told + "\nbut was\n" + drawn);
        }
        drawn.forEach(this::readByItself);
        return new ArrayList<>(drawn);
    }

    /** Looked for alone, a characteristic is what it is among all. */
    private void readByItself(Series series) {
        List<Series> alone = new Followed(ledger.history())
                .of(series.characteristic().in(Sought.ALL)).stream()
                        .filter(some -> some.characteristic().equals(series.characteristic()))
                        .toList();
        if (!alone.equals(List.of(series))) {
            throw new AssertionError(series + "\nbut by itself\n" + alone);
        }
    }

    @Override
    public void close() {
        ledger.close();
    }
}
