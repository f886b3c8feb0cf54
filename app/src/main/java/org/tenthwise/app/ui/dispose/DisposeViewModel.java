package org.tenthwise.app.ui.dispose;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.beans.value.ObservableValue;
import org.tenthwise.app.session.Dispositions;
import org.tenthwise.app.session.State;
import org.tenthwise.app.text.Advice;
import org.tenthwise.app.text.Remarks;
import org.tenthwise.app.text.Words;
import org.tenthwise.app.ui.form.Field;
import org.tenthwise.app.ui.form.FormViewModel;
import org.tenthwise.app.ui.form.InHand;
import org.tenthwise.app.ui.form.Known;
import org.tenthwise.app.ui.form.StepCard;
import org.tenthwise.app.ui.shell.Journey;
import org.tenthwise.model.run.Disposition;

/** What becomes of the step in hand, why, and who signs. */
public final class DisposeViewModel {

    private static final int MOST_REASON = 160;
    private static final int MOST_NAME = 40;

    private final InHand inHand;
    private final Words words;
    private final Journey journey;
    private final Field<Disposition> what;
    private final Field<String> why;
    private final Field<String> who;
    private final FormViewModel form;

    public DisposeViewModel(InHand inHand, Words words, Journey journey) {
        this.inHand = inHand;
        this.words = words;
        this.journey = journey;
        what = Field.choice("what", words.say("dispose.what"), words.say("dispose.what.question"),
                disposition -> words.say("dispose.what", disposition));
        why = Field.words("why", words.say("dispose.why"), words.say("dispose.why.question"), true, MOST_REASON);
        who = Field.words("who", words.say("dispose.who"), words.say("dispose.who.question"), true, MOST_NAME);
        form = new FormViewModel(List.of(what, why, who), words, words.say("dispose.act"), this::dispose);
        what.valueProperty().subscribe(chosen -> chosen.ifPresent(this::offerReasons));
    }

    private void offerReasons(Disposition disposition) {
        why.offer(Known.ready(words, words.key("dispose.why.ready", disposition)));
    }

    public FormViewModel form() {
        return form;
    }

    public InHand inHand() {
        return inHand;
    }

    public ObservableValue<Optional<StepCard>> cardValue() {
        return inHand.stateProperty().map(state -> state.map(this::card));
    }

    public void load() {
        inHand.load((state, known) -> {
            what.offer(Dispositions.offeredTo(state.inHand().stepClass()));
            if (what.choice().offeredProperty().get().size() == 1) {
                what.choice().choose(what.choice().offeredProperty().get().get(0));
            }
            who.offer(known.people());
            form.aboutProperty().set(words.say("words.about", state.inHand().number()));
        });
    }

    private StepCard card(State state) {
        List<String> notes = new ArrayList<>(new Remarks(words).of(state.line().finding()));
        String advice = new Advice(words).next(state.line());
        if (!advice.isEmpty()) {
            notes.add(advice);
        }
        notes.add(words.say("dispose.right"));
        return StepCard.of(state, words, notes);
    }

    private void dispose() {
        Disposition disposition = what.valueProperty().get().orElseThrow();
        String reason = why.reads();
        String signedBy = who.reads();
        form.busy(true);
        inHand.errands().ask(() -> inHand.session().dispose(disposition, reason, signedBy), state -> journey.back(),
                () -> form.busy(false));
    }
}
