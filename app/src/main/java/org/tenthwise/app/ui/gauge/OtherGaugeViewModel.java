package org.tenthwise.app.ui.gauge;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.beans.value.ObservableValue;
import org.tenthwise.app.session.State;
import org.tenthwise.app.text.Words;
import org.tenthwise.app.ui.form.Field;
import org.tenthwise.app.ui.form.FormViewModel;
import org.tenthwise.app.ui.form.InHand;
import org.tenthwise.app.ui.form.Known;
import org.tenthwise.app.ui.form.StepCard;
import org.tenthwise.app.ui.shell.Journey;
import org.tenthwise.model.plan.Check;

/** Which gauge the step in hand is measured with from now on. */
public final class OtherGaugeViewModel {

    private static final int MOST = 24;

    private final InHand inHand;
    private final Words words;
    private final Journey journey;
    private final Field<String> mark;
    private final FormViewModel form;

    public OtherGaugeViewModel(InHand inHand, Words words, Journey journey) {
        this.inHand = inHand;
        this.words = words;
        this.journey = journey;
        mark = Field.words("mark", words.say("gauge.mark"), words.say("gauge.mark.question"), true, MOST);
        form = new FormViewModel(List.of(mark), words, words.say("gauge.act"), this::choose);
        mark.valueProperty().subscribe(chosen -> form.aboutProperty().set(chosen.orElse("")));
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
        inHand.load((state, known) -> state.inHand().check().means().ifPresent(
                means -> mark.offer(known.gauges(means.kind(), state.sheet().plan()))));
    }

    private StepCard card(State state) {
        List<String> notes = new ArrayList<>();
        state.inHand().check().means().map(Check.Means::kind)
                .ifPresent(kind -> notes.add(words.say("gauge.kind", words.say("gauge-kind", kind))));
        state.setting().ifPresent(setting -> notes.add(words.say("gauge.now", setting.gauge().id())));
        notes.add(words.say("gauge.kept"));
        return StepCard.of(state, words, notes);
    }

    private void choose() {
        String chosen = mark.reads();
        form.busy(true);
        inHand.errands().ask(() -> inHand.session().gauge().choose(chosen), state -> journey.back(),
                () -> form.busy(false));
    }
}
