package org.tenthwise.app.ui.home;

import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import org.tenthwise.app.bundle.Scope;
import org.tenthwise.app.handout.Handout;
import org.tenthwise.app.session.Runs;
import org.tenthwise.app.text.Dates;
import org.tenthwise.app.ui.form.BundleWords;
import org.tenthwise.app.ui.form.Field;
import org.tenthwise.app.ui.form.FormViewModel;
import org.tenthwise.app.ui.shell.LedgerTasks;
import org.tenthwise.app.ui.shell.Navigator;
import org.tenthwise.app.ui.shell.Notice;
import org.tenthwise.model.words.Words;

/** Asks of which runs a bundle is made: those of a part number, those closed on certain days, or both. */
public final class HandOverViewModel {

    private static final int DAYS = 92;

    private final Runs shop;
    private final Handout handout;
    private final LedgerTasks tasks;
    private final Words words;
    private final Navigator navigator;
    private final Field<String> part;
    private final Field<LocalDate> from;
    private final Field<LocalDate> to;
    private final FormViewModel form;

    /** @param clock the days up to today are offered */
    public HandOverViewModel(
            Runs shop, Handout handout, LedgerTasks tasks, Words words, Navigator navigator, Clock clock) {
        this.shop = shop;
        this.handout = handout;
        this.tasks = tasks;
        this.words = words;
        this.navigator = navigator;
        Dates dates = new Dates(words);
        part = Field.choiceIfAny(
                "part", words.say("hand-bundle.part"), words.say("hand-bundle.part.question"), Function.identity());
        from = Field.choiceIfAny(
                "from", words.say("hand-bundle.from"), words.say("hand-bundle.from.question"), dates::day);
        to = Field.choiceIfAny("to", words.say("hand-bundle.to"), words.say("hand-bundle.to.question"), dates::day);
        LocalDate today = LocalDate.now(clock);
        List<LocalDate> days =
                Stream.iterate(today, day -> day.minusDays(1)).limit(DAYS).toList();
        from.offer(days);
        to.offer(days);
        form = new FormViewModel(List.of(part, from, to), words, words.say("hand-bundle.write"), this::write);
    }

    public FormViewModel form() {
        return form;
    }

    public void load() {
        tasks.run(() -> shop.history().parts(), part::offer);
    }

    private void write() {
        Scope scope = new Scope(
                Optional.empty(),
                part.valueProperty().get(),
                from.valueProperty().get(),
                to.valueProperty().get());
        if (scope.isOfNothing()) {
            tell("hand-bundle.of-nothing");
            return;
        }
        form.busy(true);
        tasks.run(() -> handout.bundling().write(scope), this::written, () -> form.busy(false));
    }

    private void written(Optional<Path> file) {
        if (file.isEmpty()) {
            tell("hand-bundle.none");
            return;
        }
        navigator.back();
        navigator.tell(Notice.plain(
                words.say("hand-bundle.written.title"),
                BundleWords.written(words, file.get()),
                words.say("shell.understood")));
    }

    private void tell(String why) {
        navigator.tell(Notice.plain(words.say("hand-bundle.title"), words.say(why), words.say("shell.understood")));
    }
}
