package org.tenthwise.app.ui.deed;

import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.tenthwise.app.session.State;
import org.tenthwise.app.text.Sentences;
import org.tenthwise.app.ui.form.CurrentRun;
import org.tenthwise.app.ui.form.DocumentFields;
import org.tenthwise.app.ui.form.Field;
import org.tenthwise.app.ui.form.StepForm;
import org.tenthwise.app.ui.form.Suggestions;
import org.tenthwise.app.ui.shell.Navigator;
import org.tenthwise.app.ui.shell.Notice;
import org.tenthwise.model.plan.DocumentCheck;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.run.Document;
import org.tenthwise.model.words.Words;

/**
 * What a document says of the step in hand: the verdict first, then number, date and who says so. What was entered for
 * another step of the run lies ready, as one report often proves several.
 */
public final class DocumentForm extends StepForm {

    private static final int MOST_FIGURES = 200;
    private static final String BETWEEN_FIGURES = "[\\s;]+";

    private final Clock clock;
    private final Field<Document.Says> says;
    private final Field<String> figures;
    private final DocumentFields document;
    private Unit unit = Unit.MILLIMETRE;

    public DocumentForm(CurrentRun inHand, Words words, Navigator navigator, Clock clock) {
        super(words.say("document.title"), inHand, words, navigator);
        this.clock = clock;
        says = Field.choice(
                "says",
                words.say("document.says.name"),
                words.say("document.says.question"),
                said -> words.say("document.says.key", said));
        figures = Field.words(
                "figures",
                words.say("document.figures.name"),
                words.say("document.figures.question"),
                true,
                MOST_FIGURES);
        document = DocumentFields.of(words);
        asks(words.say("document.act"), says, figures, document.number(), document.dated(), document.who());
        figures.askedProperty().set(false);
        says.valueProperty().subscribe(chosen -> chosen.ifPresent(this::chosen));
        form().leadsOn(document.who(), clock);
    }

    private void chosen(Document.Says said) {
        figures.askedProperty().set(said == Document.Says.FIGURES);
        document.number().askedProperty().set(said != Document.Says.NOT_YET);
    }

    @Override
    protected void offer(State state, Suggestions known) {
        DocumentCheck check = state.inHand().check().asDocument().orElseThrow();
        unit = state.sheet().plan().unit(state.inHand());
        says.offer(Stream.of(
                        Document.Says.CONFORMS,
                        Document.Says.FIGURES,
                        Document.Says.DOES_NOT_CONFORM,
                        Document.Says.NOT_YET)
                .filter(said -> said != Document.Says.FIGURES || check.limits().isPresent())
                .toList());
        document.offer(state, Stream.of(check.where(), check.specified().supplier()), known, words, clock);
        form().aboutProperty().set(words.say("words.about", state.inHand().number()));
    }

    /** What is most likely compared with the document; all else stands on the run screen. */
    @Override
    protected List<String> notes(State state) {
        DocumentCheck check = state.inHand().check().asDocument().orElseThrow();
        String specification = check.specified().specification();
        return Stream.of(
                        check.where().isEmpty() ? "" : words.say("document.where", check.where()),
                        specification.isEmpty() ? "" : words.say("document.specification", specification),
                        new Sentences(words).limits(state.inHand()))
                .filter(note -> !note.isEmpty())
                .toList();
    }

    @Override
    protected void act() {
        Document.Says said = says.valueProperty().get().orElseThrow();
        Optional<LocalDate> day = document.day();
        Optional<List<Written>> read =
                said == Document.Says.FIGURES ? figures(figures.reads()) : Optional.of(List.of());
        if (day.isEmpty()) {
            refuse(document.dated(), "document.refused.dated");
        } else if (read.isEmpty()) {
            refuse(figures, "document.refused.figures");
        } else {
            String numbered =
                    said == Document.Says.NOT_YET ? "" : document.number().reads();
            String by = document.who().reads();
            ask(session -> session.documents().give(numbered, day.get(), said, by, read.get()));
        }
    }

    private void refuse(Field<?> field, String why) {
        navigator.tell(Notice.plain(words.say("errand.refused"), words.say(why), words.say("shell.understood")));
        form().goTo(field);
    }

    /** Absent where one of them is no figure. */
    private Optional<List<Written>> figures(String typed) {
        List<Optional<Written>> read = Stream.of(typed.strip().split(BETWEEN_FIGURES))
                .map(figure -> Written.typed(figure, unit))
                .toList();
        return read.stream().allMatch(Optional::isPresent)
                ? Optional.of(read.stream().flatMap(Optional::stream).toList())
                : Optional.empty();
    }
}
