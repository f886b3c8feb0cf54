package org.tenthwise.app.session;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.tenthwise.app.history.LastPart;
import org.tenthwise.model.gauge.Setting;
import org.tenthwise.model.plan.Slot;
import org.tenthwise.model.plan.Step;
import org.tenthwise.model.quantity.QuantityKind;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.record.HoldOpened;
import org.tenthwise.model.record.Line;
import org.tenthwise.model.record.Measured;
import org.tenthwise.model.record.Sheet;
import org.tenthwise.model.record.TemperatureEffect;
import org.tenthwise.model.run.Entry;
import org.tenthwise.model.run.Pass;
import org.tenthwise.model.run.StepEvent;

/**
 * A run at one moment, for a screen to show.
 *
 * @param inHand step in hand
 * @param asked what it wants next
 * @param setting what its gauge is set with; absent before it was set and for a step without gauge
 * @param readingsFirst whether the temperatures, where they are needed, wait until everything is read
 * @param next step that follows the one in hand: the next that is neither settled nor held; absent at the end
 * @param opened the hold points that are open, by their step
 * @param lastPart what the step in hand came to on the part before, which is no reading of this one; absent where it
 *     was not measured there
 * @param calibrated by what certificates the gauge of the step in hand, and what it is set on, will be calibrated at
 *     the next reading, stated or not; empty for a step without a gauge, or while nobody knows which
 * @param at when it stood so
 */
public record State(
        Sheet sheet,
        Step inHand,
        Prompt asked,
        Optional<Setting> setting,
        boolean readingsFirst,
        Optional<Step> next,
        Map<Integer, HoldOpened> opened,
        Optional<LastPart> lastPart,
        List<CalibratedHere> calibrated,
        OffsetDateTime at) {

    public State {
        calibrated = List.copyOf(calibrated);
        opened = Map.copyOf(opened);
    }

    public Line line() {
        return sheet.line(inHand.number());
    }

    /** Whether the plan says where on the file of its drawing the step in hand is. */
    public boolean isOnDrawing() {
        return sheet.plan().drawing().file().isPresent()
                && inHand.drawing().onPage().isPresent();
    }

    /** The settings of the gauge of the step in hand that count, the latest first, each in the entry that holds it. */
    public List<Entry> settingsHere() {
        List<Entry> settings = new ArrayList<>(sheet.run().gauges().settings().stream()
                .filter(entry -> StepEvent.GaugeSet.in(entry).step() == inHand.number())
                .toList());
        Collections.reverse(settings);
        return settings;
    }

    /** The pass in hand of the step in hand. */
    public Pass pass() {
        return sheet.run().pass(inHand);
    }

    /** Whether the step in hand can be measured anew: something was read or answered, and the step is not shut. */
    public boolean mayBeginPass() {
        return !pass().isEmpty() && !asked.isShut();
    }

    /** Whether a cut may be taken: everything of the pass is read and settled, or someone signed for it. */
    public boolean mayCut() {
        return mayBeginPass() && CutGate.cutting(line().finding(), pass()).isEmpty();
    }

    /** Whether someone may sign for a cut on what is read so far. */
    public boolean mayCutOnThese() {
        return mayBeginPass() && CutGate.onThese(line().finding(), pass()).isEmpty();
    }

    /** Whether temperatures are needed that can still be taken before the readings or after them, as one likes. */
    public boolean turnable() {
        return pass().standing().isEmpty()
                && !asked.isShut()
                && line().finding().warmth().flatMap(TemperatureEffect::wanted).isPresent();
    }

    /**
     * Whether a figure typed now begins the next check: nothing is asked here any more, it is settled, the next is
     * measured, and a length or an angle as this one.
     */
    public boolean figureBeginsNext() {
        return asked.isNothing()
                && line().settled()
                && next.filter(step ->
                                !step.check().slots().isEmpty() && kind(step).equals(kind(inHand)))
                        .isPresent();
    }

    /** What a figure is written in that is typed now, where it is no temperature. */
    public Unit unit() {
        return asked.asReading()
                .map(reading -> sheet.plan().unit(inHand(), reading.slot()))
                .orElseGet(() -> sheet.plan().unit(inHand()));
    }

    private QuantityKind kind(Step step) {
        return sheet.plan().unit(step).kind();
    }

    /**
     * Whether a run-out in hand is still to be read as one likes, over a full turn or by angle: nothing of what is
     * asked is read yet. True where it could be turned to a full turn, false to readings by angle; absent where there
     * is no choice.
     */
    public Optional<Boolean> otherTurn() {
        return asked.asReading().filter(reading -> reading.taken() == 0).flatMap(reading -> line().finding()
                .asTurn()
                .flatMap(turn -> Optional.of(!RunOutOrder.isOfATurn(turn.check(), reading.slot()))
                        .filter(new RunOutOrder(turn)::canTurnTo)));
    }

    /**
     * The one reading by angle so far of a turn in hand, which can be put to another place; absent where there is none,
     * or more.
     */
    public Optional<Measured> movable() {
        return order().flatMap(RunOutOrder::alone)
                .filter(read -> !asked.isShut() && read.reading().setting().equals(setting));
    }

    private Optional<RunOutOrder> order() {
        return line().finding().asTurn().map(RunOutOrder::new);
    }

    /** Where that reading can have been taken instead. */
    public List<Slot> otherPlaces() {
        return movable()
                .flatMap(read -> order().map(order -> order.otherPlaces(read)))
                .orElse(List.of());
    }

    /** The answer given last, while nothing was done in the run after it: it can be taken back by one tap. */
    public Optional<Entry> undoable() {
        List<Entry> entries = sheet.run().entries();
        return Optional.of(entries.get(entries.size() - 1))
                .filter(last -> last.event().as(StepEvent.Answered.class).isPresent());
    }

    /** The gauge of the step in hand, or what it is set on, where the next reading is made past its due day. */
    public List<CalibratedHere> pastDue() {
        return asked.isShut()
                ? List.of()
                : calibrated.stream().filter(one -> one.isPastAt(at)).toList();
    }

    /** Lines of this run that are neither settled nor conceded. */
    public List<Line> open() {
        return sheet.lines().stream().filter(Line::open).toList();
    }
}
