package org.tenthwise.app.ui.sign;

import java.time.Clock;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import javafx.beans.value.ObservableValue;
import org.tenthwise.app.session.State;
import org.tenthwise.app.text.Sentences;
import org.tenthwise.app.text.Words;
import org.tenthwise.app.ui.form.Field;
import org.tenthwise.app.ui.form.FormViewModel;
import org.tenthwise.app.ui.form.InHand;
import org.tenthwise.app.ui.form.Known;
import org.tenthwise.app.ui.shell.Journey;
import org.tenthwise.app.ui.shell.Message;
import org.tenthwise.model.record.Outcome;
import org.tenthwise.model.record.Sheet;
import org.tenthwise.model.run.Entry;
import org.tenthwise.model.run.Event;
import org.tenthwise.model.run.Run;
import org.tenthwise.model.verdict.Standing;

/** Who closes the run, with which meaning, and what the record will then be called. */
public final class SignViewModel {

    private static final int MOST = 40;

    private final InHand inHand;
    private final Words words;
    private final Journey journey;
    private final Clock clock;
    private final Field<String> who;
    private final Field<String> meaning;
    private final FormViewModel form;

    public SignViewModel(InHand inHand, Words words, Journey journey, Clock clock) {
        this.inHand = inHand;
        this.words = words;
        this.journey = journey;
        this.clock = clock;
        who = Field.words("who", words.say("sign.who"), words.say("sign.who.question"), true, MOST);
        meaning = Field.words("meaning", words.say("sign.meaning"), words.say("sign.meaning.question"), true, MOST);
        meaning.offer(Known.ready(words, "sign.meaning.ready"));
        form = new FormViewModel(List.of(who, meaning), words, words.say("sign.act"), this::sign);
        who.valueProperty().subscribe(person -> form.aboutProperty().set(person.orElse("")));
    }

    public FormViewModel form() {
        return form;
    }

    public InHand inHand() {
        return inHand;
    }

    public void load() {
        inHand.load((state, known) -> who.offer(known.people()));
    }

    /** What the record will be called once the run is closed as it is now. */
    public ObservableValue<String> willBeValue() {
        return inHand.stateProperty().map(state -> state.map(
                there -> words.say("sign.will-be", new Sentences(words).outcome(closed(there.sheet())))).orElse(""));
    }

    /** How many characteristics passed, and of how many. */
    public ObservableValue<String> passedValue() {
        return inHand.stateProperty().map(state -> state.map(there -> words.say("sign.passed",
                there.sheet().lines().stream().filter(line -> line.finding().verdict().passed()).count(),
                there.sheet().lines().size())).orElse(""));
    }

    /** The characteristics that did not pass: those that are out first, the open ones last, each in plan order. */
    public ObservableValue<List<Matter>> mattersValue() {
        return inHand.stateProperty().map(state -> state.map(there -> there.sheet().lines().stream()
                .filter(line -> !line.finding().verdict().passed())
                .sorted(Comparator.comparing(line -> line.finding().verdict().standing() == Standing.OPEN))
                .map(line -> Matter.of(line, words)).toList()).orElse(List.of()));
    }

    private Sheet closed(Sheet sheet) {
        List<Entry> entries = new ArrayList<>(sheet.run().entries());
        long after = entries.get(entries.size() - 1).seq() + 1;
        entries.add(new Entry(after, sheet.run().id(), OffsetDateTime.now(clock), sheet.run().by(),
                new Event.Closed(sheet.run().by(), words.say("sign.act"))));
        return new Sheet(sheet.plan(), new Run(entries), sheet.lines());
    }

    private void sign() {
        Optional<State> state = inHand.stateProperty().get();
        boolean unfinished = state.filter(
                there -> closed(there.sheet()).outcome() == Outcome.NOT_RELEASED).isPresent();
        if (unfinished) {
            journey.tell(new Message(words.say("sign.unfinished"),
                    willBeValue().getValue() + " " + words.say("sign.unfinished.next"),
                    List.of(new Message.Reply(words.say("sign.all-the-same"), this::close),
                            new Message.Reply(words.say("sign.leave-open"), () -> { }))));
        } else {
            close();
        }
    }

    private void close() {
        String signedBy = who.reads();
        String as = meaning.reads();
        form.busy(true);
        inHand.errands().ask(() -> inHand.session().close(signedBy, as),
                state -> journey.record(state.sheet().run().id()), () -> form.busy(false));
    }
}
