package org.tenthwise.app.session;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.tenthwise.app.store.CouldNotRead;
import org.tenthwise.app.store.CouldNotSave;
import org.tenthwise.app.store.NewEntry;
import org.tenthwise.model.gauge.Calibration;
import org.tenthwise.model.gauge.GaugeOrMaster;
import org.tenthwise.model.gauge.Setting;
import org.tenthwise.model.run.Event;
import org.tenthwise.model.run.ShopEvent;

/**
 * By what certificate the gauge in hand, and what it is set on, is calibrated: said once, it comes by itself to every
 * run in which that gauge is set, and is kept in each as it stood then.
 */
final class CalibrationAtHand {

    private final RunBook book;
    private final CalibrationRack rack;
    private final Map<GaugeOrMaster, Calibration> found = new HashMap<>();

    CalibrationAtHand(RunBook book) {
        this.book = book;
        this.rack = new CalibrationRack(book.kept());
    }

    /** What is said from now on, for this run and for the shop; nothing where it is said already. */
    void tell(GaugeOrMaster what, Calibration calibration, boolean putsRight) throws CouldNotSave {
        Event known = new ShopEvent.CalibrationKnown(what, calibration, putsRight);
        boolean saidHere = now(what).equals(calibration);
        boolean saidThere = rack.find(what).equals(calibration);
        List<Event> one = List.of(known);
        List<NewEntry> entries = Stream.concat(
                        saidThere ? Stream.empty() : book.told(one).stream(),
                        saidHere ? Stream.empty() : book.happening(one).stream())
                .toList();
        if (!entries.isEmpty()) {
            book.add(entries);
        }
    }

    /** What the shop knows of a gauge and of what it is set on, and the run does not say yet. */
    Stream<Event> comesWith(Setting setting) {
        return Stream.concat(
                comesWith(GaugeOrMaster.of(setting.gauge())),
                GaugeOrMaster.under(setting).stream().flatMap(this::comesWith));
    }

    /** The same of one of them. */
    Stream<Event> comesWith(GaugeOrMaster what) {
        return Stream.of(next(what))
                .filter(next -> !next.equals(now(what)))
                .map(next -> new ShopEvent.CalibrationKnown(what, next, false));
    }

    /** What will hold for something that is set or read with next: as the shop knows it, or else as the run has it. */
    Calibration next(GaugeOrMaster what) {
        return Optional.of(inShop(what)).filter(Calibration::isStated).orElseGet(() -> now(what));
    }

    /**
     * Once the store is taken away, as it was found last: nothing can be saved then, and that is what has to be said.
     */
    private Calibration inShop(GaugeOrMaster what) {
        try {
            found.put(what, rack.find(what));
        } catch (CouldNotRead e) {
            if (!found.containsKey(what)) {
                throw e;
            }
        }
        return found.get(what);
    }

    /** What holds in the run for something that was set on already. */
    Calibration now(GaugeOrMaster what) {
        return book.run().calibrations().now(what);
    }
}
