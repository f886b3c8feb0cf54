package org.tenthwise.app.session;

import java.util.List;
import java.util.Optional;
import org.tenthwise.app.store.CouldNotSave;
import org.tenthwise.model.gauge.Calibration;
import org.tenthwise.model.gauge.GaugeOrMaster;
import org.tenthwise.model.plan.Step;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.run.Entry;

/**
 * What can be done with the gauge of the step in hand: another one taken, its sense told and confirmed, set anew, a
 * wrong setting struck out. As with the verbs of the run, one that is not taken says why and changes nothing.
 */
public final class GaugeVerbs {

    private final RunSession session;
    private final RunBook book;
    private final GaugeAtHand gauge;

    GaugeVerbs(RunSession session, RunBook book, GaugeAtHand gauge) {
        this.session = session;
        this.book = book;
        this.gauge = gauge;
    }

    public Reply choose(String mark) throws CouldNotSave {
        return choose(mark, Optional.empty());
    }

    /**
     * Takes another gauge; the readings so far keep the one they were made with.
     *
     * @param reference mark of its master or of its wires; absent where they go by their nominal size
     */
    public Reply choose(String mark, Optional<String> reference) throws CouldNotSave {
        Optional<Objection> against = unwanted().or(() -> Objection.where(mark.isBlank(), Objection.Kind.BLANK));
        if (against.isEmpty()) {
            gauge.choose(step(), mark.strip(), reference);
        }
        return session.replied(against);
    }

    /**
     * Sets the gauge anew; the readings so far keep the setting they were made with.
     *
     * @param senseToo whether its sense is asked anew as well
     */
    public Reply setAnew(boolean senseToo) throws CouldNotSave {
        Optional<Objection> against = unwanted()
                .or(() -> Objection.where(session.state().setting().isEmpty(), Objection.Kind.NOT_ASKED_HERE));
        if (against.isEmpty()) {
            gauge.setAnew(step(), senseToo);
        }
        return session.replied(against);
    }

    /** Sets the gauge as it lies ready, with all that is said against a size and a zero that are typed. */
    public Reply setAsBefore() throws CouldNotSave {
        Optional<Prompt.LiesReady> ready = session.asked().asLyingReady();
        if (ready.isEmpty()) {
            return session.replied(Optional.of(Objection.of(Objection.Kind.NOT_ASKED_HERE)));
        }
        Reply sized = certified(ready.get());
        Optional<Written> zero =
                ready.get().zero().filter(any -> sized.objection().isEmpty());
        return zero.isPresent() ? session.enter(zero.get().text(), zero.get().unit()) : sized;
    }

    /**
     * Lets what lies ready be typed instead.
     *
     * @param sameSize whether only the dial reads something else on the same master
     */
    public Reply setOtherwise(boolean sameSize) throws CouldNotSave {
        Optional<Prompt.LiesReady> ready = session.asked().asLyingReady();
        if (ready.isEmpty()) {
            return session.replied(Optional.of(Objection.of(Objection.Kind.NOT_ASKED_HERE)));
        }
        if (sameSize) {
            return certified(ready.get());
        }
        gauge.byHand(step());
        return session.replied(Optional.empty());
    }

    private Reply certified(Prompt.LiesReady ready) throws CouldNotSave {
        gauge.byHand(step());
        return session.enter(ready.certified().text(), ready.certified().unit());
    }

    /**
     * @param rises whether the number on the gauge rises as it is asked about: when the plunger of a bore gauge is
     *     pressed in, and of any other as the size grows
     */
    public Reply tellSense(boolean rises) {
        Optional<Objection> against = Objection.where(!session.asked().asksSense(), Objection.Kind.NOT_ASKED_HERE);
        if (against.isEmpty()) {
            gauge.tellSense(step(), step().check().means().orElseThrow().kind().told(rises));
        }
        return session.replied(against);
    }

    /**
     * @param so whether the figure that is asked about is as the gauge shows it; if not, it is asked the other way
     *     round
     */
    public Reply confirmSense(boolean so) throws CouldNotSave {
        Optional<Objection> against =
                Objection.where(!session.asked().asksIfSenseIsRight(), Objection.Kind.NOT_ASKED_HERE);
        if (against.isEmpty() && so) {
            gauge.confirm(step());
        } else if (against.isEmpty()) {
            gauge.turnRound(step());
        }
        return session.replied(against);
    }

    /**
     * Says by what certificate the gauge of the step in hand, or what it is set on, is calibrated: for this run and for
     * the shop. Runs of before keep what they say.
     *
     * @param putsRight whether it holds in place of what was said of it last in this run
     */
    public Reply calibrated(GaugeOrMaster what, Calibration calibration, boolean putsRight) throws CouldNotSave {
        Optional<Objection> against = session.closed();
        if (against.isEmpty()) {
            gauge.calibrated(what, calibration, putsRight);
        }
        return session.replied(against);
    }

    /**
     * The settings that share a fault and count, in all runs of the store, those of this run first: what would not
     * count any more if the fault was struck out.
     *
     * @param setting entry of this run that holds it
     */
    public List<Withdrawn> sharing(Entry setting, SettingFault fault) {
        return inDoubt(setting, fault).all();
    }

    /**
     * Strikes out a setting, and every other that shares its fault, with what was read under them: in this run and in
     * all others, closed ones too, all or none. Nothing is worked out anew; what is missing then is asked for again.
     *
     * @param setting entry of this run that holds it
     */
    public Reply strikeOut(Entry setting, SettingFault fault, String reason) throws CouldNotSave {
        Optional<Objection> against = Objection.where(reason.isBlank(), Objection.Kind.BLANK)
                .or(() -> EntryCheck.strikingOut(book.run(), setting.seq()))
                .or(() -> Objection.where(sharing(setting, fault).isEmpty(), Objection.Kind.NOT_ASKED_HERE));
        if (against.isEmpty()) {
            book.add(inDoubt(setting, fault).strikes(book.now(), book.by(), reason.strip()));
            gauge.forget();
        }
        return session.replied(against);
    }

    private SettingsInDoubt inDoubt(Entry setting, SettingFault fault) {
        return new SettingsInDoubt(book.kept(), book.run().id(), setting, fault);
    }

    private Step step() {
        return session.state().inHand();
    }

    private Optional<Objection> unwanted() {
        return session.shut()
                .or(() -> Objection.where(step().check().means().isEmpty(), Objection.Kind.NOT_ASKED_HERE));
    }
}
