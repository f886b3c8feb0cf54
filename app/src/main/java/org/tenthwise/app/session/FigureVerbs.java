package org.tenthwise.app.session;

import java.util.List;
import java.util.Optional;
import org.tenthwise.app.store.CouldNotSave;
import org.tenthwise.app.store.NewEntry;
import org.tenthwise.model.gauge.Setting;
import org.tenthwise.model.plan.Slot;
import org.tenthwise.model.plan.Step;
import org.tenthwise.model.quantity.Degrees;
import org.tenthwise.model.quantity.QuantityKind;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.run.StepEvent;

/**
 * Takes a figure for what the step in hand asks: a certified size, a zero, a reading, a temperature. As with the verbs
 * of the run, one that is not taken says why and changes nothing.
 */
final class FigureVerbs {

    private final RunSession session;
    private final RunBook book;
    private final GaugeAtHand gauge;
    private final EntryCheck gate;

    FigureVerbs(RunSession session, RunBook book, GaugeAtHand gauge, EntryCheck gate) {
        this.session = session;
        this.book = book;
        this.gauge = gauge;
        this.gate = gate;
    }

    /** @param onPurpose whether it is taken although it is far off */
    Reply take(String text, Unit unit, boolean onPurpose) throws CouldNotSave {
        State state = session.state();
        Optional<Taken> taken =
                state.asked().asForAFigure().map(prompt -> prompt.match(new Taking(state, text, unit, onPurpose)));
        return taken.isPresent()
                ? taken.get().reply()
                : session.replied(session.shut()
                        .or(() -> Optional.of(Objection.of(
                                state.asked().isNothing()
                                        ? Objection.Kind.NOTHING_ASKED
                                        : Objection.Kind.NOT_ASKED_HERE))));
    }

    /** What becomes of a figure, kept or not. */
    private interface Taken {
        Reply reply() throws CouldNotSave;
    }

    /** Takes a figure that is one. */
    private interface Taker {
        Reply take(Written figure) throws CouldNotSave;
    }

    /** What a figure is, by what is asked. */
    private final class Taking implements Prompt.FigureCases<Taken> {

        private final State state;
        private final String text;
        private final Unit unit;
        private final boolean onPurpose;

        Taking(State state, String text, Unit unit, boolean onPurpose) {
            this.state = state;
            this.text = text;
            this.unit = unit;
            this.onPurpose = onPurpose;
        }

        @Override
        public Taken certified(Prompt.Certified wanted) {
            String figure = text.isEmpty() ? wanted.known().map(Written::text).orElse("") : text;
            return written(
                    figure, certified -> FigureVerbs.this.certified(state.inHand(), certified, wanted, onPurpose));
        }

        @Override
        public Taken zero(Prompt.Zero wanted) {
            String figure = text.isEmpty() ? wanted.suggested().text() : text;
            return written(figure, zero -> FigureVerbs.this.zero(state.inHand(), zero, wanted, onPurpose));
        }

        @Override
        public Taken reading(Prompt.Reading wanted) {
            return written(text, typed -> FigureVerbs.this.reading(state, typed, wanted.slot(), onPurpose));
        }

        @Override
        public Taken temperature(Prompt.Temperature wanted) {
            String figure =
                    text.isEmpty() ? wanted.suggested().map(Degrees::text).orElse("") : text;
            return () -> session.temperatures().take(wanted.of(), figure, onPurpose);
        }

        /** What is no figure in a unit of the step, a length where an angle is read, is not taken. */
        private Taken written(String figure, Taker taker) {
            QuantityKind kind = state.unit().kind();
            return Written.typed(figure, unit)
                    .filter(written -> written.unit().kind().equals(kind))
                    .<Taken>map(written -> () -> taker.take(written))
                    .orElse(() -> session.replied(Optional.of(new Objection(Objection.Kind.NOT_A_NUMBER, figure))));
        }
    }

    private Reply certified(Step step, Written typed, Prompt.Certified wanted, boolean onPurpose) throws CouldNotSave {
        Optional<Objection> against = Objection.standing(gate.certified(step, typed, wanted.nominal()), onPurpose);
        if (against.isEmpty()) {
            gauge.certify(step, typed);
        }
        return session.replied(against);
    }

    private Reply zero(Step step, Written typed, Prompt.Zero wanted, boolean onPurpose) throws CouldNotSave {
        Optional<Objection> against = Objection.standing(gate.zero(step, typed, wanted.certified()), onPurpose);
        if (against.isEmpty()) {
            gauge.zero(step, typed);
        }
        return session.replied(against);
    }

    private Reply reading(State state, Written typed, Slot slot, boolean onPurpose) throws CouldNotSave {
        Step step = state.inHand();
        Optional<Setting> toSet = gauge.settingToMake(step);
        Optional<Setting> setting = toSet.or(state::setting);
        Optional<Objection> against =
                Objection.standing(gate.reading(step, slot, typed, setting, state.pass()), onPurpose);
        if (against.isPresent()) {
            return session.replied(against);
        }
        StepEvent.ReadingTaken taken = new StepEvent.ReadingTaken(step.number(), slot.key(), typed);
        List<NewEntry> entries = book.happening(gauge.withItsSetting(step, taken));
        Optional<Objection> beside = EntryCheck.turn(step, state.pass(), setting, taken)
                .or(() ->
                        Objection.standing(EntryCheck.sweep(step, state.sheet().run(), taken), onPurpose))
                .or(() -> EntryCheck.sum(book, entries));
        if (beside.isEmpty()) {
            book.add(entries);
        }
        return session.replied(beside);
    }
}
