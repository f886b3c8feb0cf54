package org.tenthwise.app.ui.sign;

import java.time.Clock;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import javafx.beans.value.ObservableValue;
import org.tenthwise.app.session.State;
import org.tenthwise.app.text.OutcomeWords;
import org.tenthwise.app.ui.form.CurrentRun;
import org.tenthwise.app.ui.form.Field;
import org.tenthwise.app.ui.form.FormViewModel;
import org.tenthwise.app.ui.shell.Navigator;
import org.tenthwise.app.ui.shell.Notice;
import org.tenthwise.model.record.Outcome;
import org.tenthwise.model.record.Sheet;
import org.tenthwise.model.run.Entry;
import org.tenthwise.model.run.Event;
import org.tenthwise.model.run.Run;
import org.tenthwise.model.run.SignedAs;
import org.tenthwise.model.verdict.VerdictKind;
import org.tenthwise.model.words.Words;

/** Who signs the run, with which meaning, whether that closes it, and what the record will then be called. */
public final class SignViewModel {

    /** In the order they are offered. */
    public static final List<SignedAs> MEANINGS =
            List.of(SignedAs.MACHINED_AND_MEASURED, SignedAs.MEASURED_AGAIN, SignedAs.ACCEPTED, SignedAs.NOT_ACCEPTED);

    private static final int MOST = 40;

    private final CurrentRun inHand;
    private final Words words;
    private final Navigator navigator;
    private final Clock clock;
    private final boolean closed;
    private final Field<String> who;
    private final Field<SignedAs> meaning;
    private final Field<End> end;
    private final FormViewModel form;

    /** What the signature does to a run that is open. */
    public enum End {
        CLOSE,
        LEAVE_OPEN
    }

    /** @param closed whether the run is closed already, so that only a further signature can be given */
    public SignViewModel(CurrentRun inHand, boolean closed, Words words, Navigator navigator, Clock clock) {
        this.inHand = inHand;
        this.closed = closed;
        this.words = words;
        this.navigator = navigator;
        this.clock = clock;
        who = Field.words("who", words.say("sign.who"), words.say("sign.who.question"), true, MOST);
        meaning = Field.choice(
                "meaning",
                words.say("sign.meaning"),
                words.say("sign.meaning.question"),
                as -> words.say("signed-as", as));
        meaning.offer(MEANINGS);
        end = Field.choice(
                "end", words.say("sign.end"), words.say("sign.end.question"), what -> words.say("sign.end", what));
        end.offer(List.of(End.values()));
        form = new FormViewModel(
                closed ? List.of(who, meaning) : List.of(who, meaning, end), words, words.say("sign.act"), this::sign);
        form.about(who);
        form.leadsOn(end, clock);
    }

    public FormViewModel form() {
        return form;
    }

    public CurrentRun inHand() {
        return inHand;
    }

    public void load() {
        inHand.load((state, known) -> who.offer(known.people()));
    }

    /**
     * What the record says of the characteristics; while the run is open, what it will say once it is closed as it is
     * now.
     */
    public ObservableValue<String> willBeValue() {
        return inHand.stateProperty().map(state -> state.map(there -> words.say(
                        closed ? "sign.is" : "sign.will-be",
                        new OutcomeWords(words).outcome(onceClosed(there.sheet()))))
                .orElse(""));
    }

    /** Who has signed what so far. */
    public ObservableValue<String> signedValue() {
        return inHand.stateProperty().map(state -> state.map(there -> new OutcomeWords(words).signed(there.sheet()))
                .orElse(""));
    }

    /** How many characteristics passed, and of how many. */
    public ObservableValue<String> passedValue() {
        return inHand.stateProperty().map(state -> state.map(there -> new OutcomeWords(words).counts(there.sheet()))
                .orElse(""));
    }

    /** The steps that did not pass: those that are out first, the open ones last, each in plan order. */
    public ObservableValue<List<OpenIssue>> mattersValue() {
        return inHand.stateProperty().map(state -> state.map(there -> there.sheet().lines().stream()
                        .filter(line ->
                                line.asked() && !line.finding().verdict().passed())
                        .sorted(Comparator.comparing(
                                line -> line.finding().verdict().standing() == VerdictKind.OPEN))
                        .map(line -> OpenIssue.of(line, words))
                        .toList())
                .orElse(List.of()));
    }

    private Sheet onceClosed(Sheet sheet) {
        if (closed) {
            return sheet;
        }
        List<Entry> entries = new ArrayList<>(sheet.run().entries());
        long after = entries.get(entries.size() - 1).seq() + 1;
        entries.add(new Entry(
                after,
                sheet.run().id(),
                OffsetDateTime.now(clock),
                sheet.run().by(),
                new Event.Closed(sheet.run().by(), SignedAs.MACHINED_AND_MEASURED)));
        return new Sheet(sheet.plan(), new Run(entries), sheet.lines());
    }

    private void sign() {
        Optional<State> state = inHand.stateProperty().get();
        boolean ends = end.valueProperty().get().filter(End.CLOSE::equals).isPresent();
        Outcome outcome =
                state.map(there -> onceClosed(there.sheet()).outcome()).orElse(Outcome.NOT_COMPLETE);
        if (ends && (outcome == Outcome.NOT_COMPLETE || outcome == Outcome.DOES_NOT_CONFORM)) {
            navigator.tell(new Notice(
                    words.say(words.key("sign.unfinished", outcome)),
                    willBeValue().getValue() + " " + words.say("sign.unfinished.next"),
                    List.of(
                            new Notice.NoticeKey(words.say("sign.all-the-same"), () -> sign(true)),
                            new Notice.NoticeKey(words.say("sign.leave-open"), () -> {}))));
        } else {
            sign(ends);
        }
    }

    private void sign(boolean ends) {
        String signedBy = who.reads();
        SignedAs as = meaning.valueProperty().get().orElseThrow();
        inHand.ask(
                form,
                session -> ends ? session.close(signedBy, as) : session.sign(signedBy, as),
                state -> navigator.record(state.sheet().run().id()));
    }
}
