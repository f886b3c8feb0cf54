package org.tenthwise.app.ui.documents;

import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.tenthwise.app.device.FilesInFolders;
import org.tenthwise.app.session.FiguresReport;
import org.tenthwise.app.ui.form.CurrentRun;
import org.tenthwise.app.ui.form.DocumentFields;
import org.tenthwise.app.ui.form.Field;
import org.tenthwise.app.ui.form.FormViewModel;
import org.tenthwise.app.ui.shell.Navigator;
import org.tenthwise.app.ui.shell.Notice;
import org.tenthwise.model.words.Words;

/** Asks which table of figures is taken, and of which document it is. */
public final class FiguresChoiceViewModel {

    private final CurrentRun run;
    private final FilesInFolders folders;
    private final Words words;
    private final Navigator navigator;
    private final Clock clock;
    private final String where;
    private final Field<Path> file;
    private final DocumentFields document;
    private final FormViewModel form;

    public FiguresChoiceViewModel(
            CurrentRun run, FilesInFolders folders, Words words, Navigator navigator, Clock clock) {
        this.run = run;
        this.folders = folders;
        this.words = words;
        this.navigator = navigator;
        this.clock = clock;
        file = Field.choice(
                "file",
                words.say("documents.file.name"),
                words.say("documents.file.question"),
                path -> path.getFileName().toString());
        where = words.list(folders.folders().stream().map(Path::toString).toList());
        file.aboutProperty().set(words.say("documents.file.where", where));
        document = DocumentFields.of(words);
        form = new FormViewModel(
                List.of(file, document.number(), document.dated(), document.who()),
                words,
                words.say("documents.file.look"),
                this::look);
    }

    public FormViewModel form() {
        return form;
    }

    public void load() {
        run.load((state, known) -> document.offer(state, Stream.empty(), known, words, clock));
        run.tasks().run(folders::files, this::offer);
    }

    private void offer(List<Path> files) {
        file.offer(files);
        if (files.isEmpty()) {
            navigator.back();
            refuse(words.say("documents.file.none", where));
        }
    }

    private void refuse(String why) {
        navigator.tell(Notice.plain(words.say("errand.refused"), why, words.say("shell.understood")));
    }

    private void look() {
        Optional<LocalDate> day = document.day();
        if (day.isEmpty()) {
            refuse(words.say("document.refused.dated"));
            form.goTo(document.dated());
        } else {
            navigator.figures(
                    run.session(),
                    file.valueProperty().get().orElseThrow(),
                    new FiguresReport(
                            document.number().reads(), day.get(), document.who().reads()));
        }
    }
}
