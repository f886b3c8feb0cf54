package org.tenthwise.app.ui.deed;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.tenthwise.app.session.Dispositions;
import org.tenthwise.app.session.State;
import org.tenthwise.app.text.Advice;
import org.tenthwise.app.text.Remarks;
import org.tenthwise.app.ui.form.CurrentRun;
import org.tenthwise.app.ui.form.Field;
import org.tenthwise.app.ui.form.StepForm;
import org.tenthwise.app.ui.form.Suggestions;
import org.tenthwise.app.ui.shell.Navigator;
import org.tenthwise.model.run.Disposition;
import org.tenthwise.model.run.Entry;
import org.tenthwise.model.run.Run;
import org.tenthwise.model.run.StepEvent;
import org.tenthwise.model.words.Words;

/** What becomes of the step in hand, why, and who signs. */
public final class DisposeForm extends StepForm {

    private static final int MOST_REASON = 160;
    private static final int MOST_NAME = 40;

    private final Field<Disposition> what;
    private final Field<String> why;
    private final Field<String> concession;
    private final Field<String> approval;
    private final Field<String> nonconformance;
    private final Field<String> document;
    private final Field<String> who;

    public DisposeForm(CurrentRun inHand, Words words, Navigator navigator) {
        super(words.say("dispose.title"), inHand, words, navigator);
        what = Field.choice(
                "what",
                words.say("dispose.what"),
                words.say("dispose.what.question"),
                disposition -> words.say("dispose.what", disposition));
        why = Field.words("why", words.say("dispose.why"), words.say("dispose.why.question"), true, MOST_REASON);
        who = Field.words("who", words.say("dispose.who"), words.say("dispose.who.question"), true, MOST_NAME);
        concession = number("concession", Disposition.USE_AS_IS);
        approval = number("approval", Disposition.REPAIR);
        nonconformance = number("nonconformance", Disposition.SCRAP);
        document = number("document", Disposition.CARRY_ON);
        asks(words.say("dispose.act"), what, why, concession, approval, nonconformance, document, who);
        numbers().forEach(number -> number.askedProperty().set(false));
        what.valueProperty().subscribe(chosen -> chosen.ifPresent(this::chosen));
    }

    private Field<String> number(String id, Disposition disposition) {
        return Field.words(
                id,
                words.say("disposition.number", disposition),
                words.say("dispose.number.question", disposition),
                disposition.departsFromTheDrawing(),
                MOST_NAME);
    }

    private Stream<Field<String>> numbers() {
        return Stream.of(concession, approval, nonconformance, document);
    }

    /** The number that belongs to a disposition. */
    private Field<String> number(Disposition disposition) {
        return switch (disposition) {
            case USE_AS_IS -> concession;
            case REPAIR -> approval;
            case REWORK, SCRAP -> nonconformance;
            case CARRY_ON -> document;
        };
    }

    private void chosen(Disposition disposition) {
        why.offer(Suggestions.ready(words, words.key("dispose.why.ready", disposition)));
        numbers().forEach(number -> number.askedProperty().set(number == number(disposition)));
    }

    /**
     * One document often covers several findings: the numbers given in the run are ready, and that there is none yet
     * where one is needed.
     */
    private void offerNumbers(Run run) {
        List<StepEvent.DispositionSigned> before = run.entries().stream()
                .map(Entry::event)
                .flatMap(event -> event.as(StepEvent.DispositionSigned.class).stream())
                .toList();
        numbers()
                .forEach(field -> field.offer(Stream.concat(
                                field.required() ? Stream.of(words.say("dispose.number.none-yet")) : Stream.empty(),
                                before.stream()
                                        .filter(disposed -> field == number(disposed.disposition()))
                                        .flatMap(disposed -> disposed.document().stream()))
                        .distinct()
                        .toList()));
    }

    @Override
    protected void offer(State state, Suggestions known) {
        what.offer(Dispositions.offeredTo(state.inHand().stepClass()));
        if (what.choice().offeredProperty().get().size() == 1) {
            what.choice().choose(what.choice().offeredProperty().get().get(0));
        }
        offerNumbers(state.sheet().run());
        who.offer(known.people());
        form().aboutProperty().set(words.say("words.about", state.inHand().number()));
    }

    @Override
    protected List<String> notes(State state) {
        List<String> notes = new ArrayList<>(new Remarks(words).of(state.line().finding()));
        String advice = new Advice(words).next(state.line());
        if (!advice.isEmpty()) {
            notes.add(advice);
        }
        notes.add(words.say("dispose.right"));
        return notes;
    }

    @Override
    protected void act() {
        Disposition disposition = what.valueProperty().get().orElseThrow();
        String reason = why.reads();
        String signedBy = who.reads();
        String number = number(disposition).reads();
        ask(session -> session.dispose(disposition, reason, signedBy, number));
    }
}
