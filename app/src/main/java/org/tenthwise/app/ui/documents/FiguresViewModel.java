package org.tenthwise.app.ui.documents;

import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import org.tenthwise.app.drafting.FiguresText;
import org.tenthwise.app.session.FiguresReport;
import org.tenthwise.app.session.Foreseen;
import org.tenthwise.app.session.RunSession;
import org.tenthwise.app.session.State;
import org.tenthwise.app.text.Objections;
import org.tenthwise.app.ui.keys.Settling;
import org.tenthwise.app.ui.shell.LedgerTasks;
import org.tenthwise.app.ui.shell.Navigator;
import org.tenthwise.checklists.rules.FiguresFile;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.record.Line;
import org.tenthwise.model.words.Words;

/** What a table of figures comes to, before any of it counts. All of it is entered or nothing. */
public final class FiguresViewModel {

    /**
     * What is seen of it.
     *
     * @param said how much of it is taken
     * @param refused a sentence for everything that cannot be; nothing is entered while there is one
     * @param rows what the others come to
     * @param figures by number of the check; empty where nothing can be entered
     */
    public record Seen(
            State state,
            String said,
            List<String> refused,
            List<DocumentRow> rows,
            Map<Integer, List<Written>> figures) {

        boolean mayEnter() {
            return refused.isEmpty() && !figures.isEmpty();
        }
    }

    private final RunSession session;
    private final Path file;
    private final FiguresReport report;
    private final LedgerTasks tasks;
    private final Words words;
    private final Navigator navigator;
    private final Settling seeing;
    private final ReadOnlyObjectWrapper<Optional<Seen>> seen = new ReadOnlyObjectWrapper<>(Optional.empty());
    private boolean busy;

    public FiguresViewModel(
            RunSession session,
            Path file,
            FiguresReport report,
            LedgerTasks tasks,
            Words words,
            Navigator navigator,
            Clock clock) {
        this.session = session;
        this.file = file;
        this.report = report;
        this.tasks = tasks;
        this.words = words;
        this.navigator = navigator;
        this.seeing = new Settling(clock, Settling.LONGER);
    }

    /** Absent until the file was read, and where it cannot be. */
    public ReadOnlyObjectProperty<Optional<Seen>> seenProperty() {
        return seen.getReadOnlyProperty();
    }

    public void load() {
        tasks.run(this::look, now -> {
            seen.set(Optional.of(now));
            seeing.means(now);
        });
    }

    private Seen look() {
        State state = session.state();
        FiguresFile.Reading read = FiguresFile.read(
                FiguresText.of(file),
                state.sheet().plan(),
                Optional.of(state.sheet().run().begun().serial()));
        String name = file.getFileName().toString();
        if (read instanceof FiguresFile.Reading.Bad bad) {
            return new Seen(
                    state,
                    words.say("documents.file.nothing", name),
                    bad.problems().stream()
                            .map(problem -> words.say("documents.file.line", problem.line(), words.say(problem.what())))
                            .toList(),
                    List.of(),
                    Map.of());
        }
        Map<Integer, List<Written>> figures = ((FiguresFile.Reading.Good) read).figures();
        Foreseen foreseen = session.documents().foresee(report, figures);
        List<Line> proven = foreseen.sheet().documents().stream()
                .filter(line -> figures.containsKey(line.step().number()))
                .toList();
        return new Seen(
                state,
                words.say(
                        "documents.file.count",
                        name,
                        proven.size(),
                        foreseen.against().size()),
                proven.stream()
                        .flatMap(line -> refused(line, foreseen).stream())
                        .toList(),
                proven.stream()
                        .filter(line ->
                                !foreseen.against().containsKey(line.step().number()))
                        .map(line -> DocumentRow.of(line, foreseen.sheet(), words))
                        .toList(),
                figures);
    }

    private Optional<String> refused(Line line, Foreseen foreseen) {
        return Optional.ofNullable(foreseen.against().get(line.step().number()))
                .map(why -> words.say(
                        "documents.file.refused",
                        line.step().number(),
                        line.step().name(),
                        new Objections(words).say(why)));
    }

    /** Enters all of it; not before it could be seen. */
    public void enter() {
        if (!busy && seeing.settled()) {
            seen.get().filter(Seen::mayEnter).ifPresent(this::enter);
        }
    }

    private void enter(Seen now) {
        busy = true;
        tasks.ask(
                () -> session.documents().give(report, now.figures()),
                taken -> {
                    navigator.back();
                    navigator.back();
                },
                () -> busy = false);
    }
}
