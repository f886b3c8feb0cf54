package org.tenthwise.app.ui.more;

import java.util.List;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import org.tenthwise.app.session.RunSession;
import org.tenthwise.app.session.State;
import org.tenthwise.app.story.StepStory;
import org.tenthwise.app.story.StoryChapter;
import org.tenthwise.app.text.BesideVerdict;
import org.tenthwise.app.ui.form.StepCard;
import org.tenthwise.app.ui.shell.Deed;
import org.tenthwise.app.ui.shell.LedgerTasks;
import org.tenthwise.app.ui.shell.Navigator;
import org.tenthwise.model.words.Words;

/** What else there is to say of the step in hand, and its story. Screen thread only. */
public final class MoreViewModel {

    /**
     * @param card the step and how it stands
     * @param chapters what was done, how it is judged, what holds it and what was said
     */
    public record Shown(State state, StepCard card, List<StoryChapter> chapters) {
        public Shown {
            chapters = List.copyOf(chapters);
        }
    }

    private final RunSession session;
    private final LedgerTasks tasks;
    private final Navigator navigator;
    private final Words words;
    private final ReadOnlyObjectWrapper<Shown> shown;

    /** @param start state of {@code session} when the screen is made */
    public MoreViewModel(RunSession session, State start, LedgerTasks tasks, Navigator navigator, Words words) {
        this.session = session;
        this.tasks = tasks;
        this.navigator = navigator;
        this.words = words;
        this.shown = new ReadOnlyObjectWrapper<>(of(start));
    }

    public ReadOnlyObjectProperty<Shown> shownProperty() {
        return shown.getReadOnlyProperty();
    }

    /** Looks again, after another screen had the session. */
    public void refresh() {
        tasks.run(session::state, state -> shown.set(of(state)));
    }

    /** The sums of the bench with the figures of the step in hand. */
    public void bench() {
        navigator.bench(session);
    }

    /** Whether the plan says where on its drawing the step is. */
    public static boolean isOnDrawing(Shown shown) {
        return shown.state().isOnDrawing();
    }

    /** The piece of the drawing the step is about. */
    public void drawing() {
        navigator.drawing(session);
    }

    /** Whether documents prove any of the run. */
    public static boolean hasDocuments(Shown shown) {
        return !shown.state().sheet().documents().isEmpty();
    }

    /** What documents prove of the run. */
    public void documents() {
        navigator.documents(session);
    }

    /** What was found of this part number over all runs. */
    public void history() {
        navigator.historyOf(shown.get().state().sheet().plan().part().number());
    }

    public void putAway() {
        navigator.form(Deed.PUT_AWAY, session);
    }

    public void back() {
        navigator.back();
    }

    private Shown of(State state) {
        BesideVerdict.Split beside = new BesideVerdict(words)
                .of(state.sheet(), state.line(), state.asked().isClosed());
        return new Shown(
                state,
                StepCard.of(state, words, beside.shown()),
                StepStory.of(state, words).chapters());
    }
}
