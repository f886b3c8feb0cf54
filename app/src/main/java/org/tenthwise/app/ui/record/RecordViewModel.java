package org.tenthwise.app.ui.record;

import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.value.ObservableValue;
import org.tenthwise.app.bundle.Scope;
import org.tenthwise.app.export.RecordFormat;
import org.tenthwise.app.handout.Handout;
import org.tenthwise.app.history.RunName;
import org.tenthwise.app.session.CameFrom;
import org.tenthwise.app.session.RunProof;
import org.tenthwise.app.session.RunSession;
import org.tenthwise.app.session.Runs;
import org.tenthwise.app.story.StepStory;
import org.tenthwise.app.story.StoryChapter;
import org.tenthwise.app.text.OutcomeWords;
import org.tenthwise.app.ui.form.BundleWords;
import org.tenthwise.app.ui.keys.Settling;
import org.tenthwise.app.ui.shell.LedgerTasks;
import org.tenthwise.app.ui.shell.Navigator;
import org.tenthwise.app.ui.shell.Notice;
import org.tenthwise.app.ui.shell.Notice.NoticeKey;
import org.tenthwise.model.record.Sheet;
import org.tenthwise.model.verdict.VerdictKind;
import org.tenthwise.model.words.Message;
import org.tenthwise.model.words.Words;

/** The record of one run, looked up anew each time it is shown, and what came of handing it out. */
public final class RecordViewModel {

    private final String run;
    private final Runs shop;
    private final Handout handout;
    private final LedgerTasks tasks;
    private final Words words;
    private final Navigator navigator;
    private final ReadOnlyObjectWrapper<Optional<Sheet>> sheet = new ReadOnlyObjectWrapper<>(Optional.empty());
    private final ReadOnlyStringWrapper written = new ReadOnlyStringWrapper("");
    private Optional<CameFrom> from = Optional.empty();
    private List<Caution> cautions = List.of();
    private boolean unsealed;
    private Optional<Path> file = Optional.empty();
    private final Settling again;
    private final ReadOnlyBooleanWrapper busy = new ReadOnlyBooleanWrapper(false);
    private final ReadOnlyBooleanWrapper opening = new ReadOnlyBooleanWrapper(false);
    private final ReadOnlyObjectWrapper<Optional<Integer>> opened = new ReadOnlyObjectWrapper<>(Optional.empty());

    public RecordViewModel(
            String run, Runs shop, Handout handout, LedgerTasks tasks, Words words, Navigator navigator, Clock clock) {
        this.run = run;
        this.shop = shop;
        this.handout = handout;
        this.tasks = tasks;
        this.words = words;
        this.navigator = navigator;
        this.again = new Settling(clock, Settling.LONGER);
    }

    /** Absent until it was loaded. */
    public ReadOnlyObjectProperty<Optional<Sheet>> sheetProperty() {
        return sheet.getReadOnlyProperty();
    }

    /** What the record says of the characteristics of its part. */
    public ObservableValue<String> outcomeValue() {
        return sheet.map(kept -> kept.map(new OutcomeWords(words)::outcome).orElse(""));
    }

    /** Who signed for it, or that nobody did. */
    public ObservableValue<String> signedValue() {
        return sheet.map(kept -> kept.map(new OutcomeWords(words)::signed).orElse(""));
    }

    /** What must be known before what the record says; none in the usual case. */
    public List<Caution> cautions() {
        return cautions;
    }

    /** What can be done with the run. */
    public enum RecordWays {
        GO_ON,
        /** Nothing is signed or handed over before it is taken up again. */
        LOOK,
        SIGN_AGAIN,
        /** Closed, and part of it is proven elsewhere, by documents that come later. */
        DOCUMENTS,
        /** Made at another station, where whatever is added is entered. */
        NOTHING
    }

    /** What can be done with the run; before it was loaded as with one that is closed. */
    public ObservableValue<RecordWays> onwardsValue() {
        return sheet.map(kept -> RunName.of(run).isImported()
                ? RecordWays.NOTHING
                : kept.map(RecordViewModel::onwards).orElse(RecordWays.SIGN_AGAIN));
    }

    private static RecordWays onwards(Sheet kept) {
        if (kept.run().closed().isPresent()) {
            return isProvenElsewhere(kept) ? RecordWays.DOCUMENTS : RecordWays.SIGN_AGAIN;
        }
        return kept.putAway().isPresent() ? RecordWays.LOOK : RecordWays.GO_ON;
    }

    private static boolean isProvenElsewhere(Sheet kept) {
        return kept.documents().stream().anyMatch(line -> !line.step().check().isInOrder());
    }

    /** How many characteristics stand how, in words, those of which there are none left out. */
    public ObservableValue<List<Count>> countsValue() {
        return sheet.map(kept -> kept.map(this::counts).orElse(List.of()));
    }

    /** Characteristics that stand alike. */
    public record Count(VerdictKind standing, String words) {}

    private List<Count> counts(Sheet kept) {
        List<Count> counts = new ArrayList<>();
        for (VerdictKind standing : VerdictKind.values()) {
            long count = kept.count(standing);
            if (count > 0) {
                counts.add(new Count(standing, words.say("sheet.count", count, words.say("verdict", standing))));
            }
        }
        return counts;
    }

    /** Who made it, where, when, and who signed it, a line each. */
    public ObservableValue<List<String>> factsValue() {
        return sheet.map(
                kept -> kept.map(new RecordFacts(from, unsealed, words)::of).orElse(List.of()));
    }

    public ObservableValue<List<RecordRow>> rowsValue() {
        return sheet.map(kept -> kept.map(there -> there.lines().stream()
                        .map(line -> RecordRow.of(line, there.run(), words))
                        .toList())
                .orElse(List.of()));
    }

    /** The step whose row is open; one at a time. */
    public ReadOnlyObjectProperty<Optional<Integer>> openedProperty() {
        return opened.getReadOnlyProperty();
    }

    /** Opens the row of {@code step}, or shuts it. */
    public void open(int step) {
        opened.set(opened.get().equals(Optional.of(step)) ? Optional.empty() : Optional.of(step));
    }

    /** What lies behind the row of {@code step}. */
    List<StoryChapter> story(int step) {
        return sheet.get()
                .map(kept -> StepStory.inRecord(kept, kept.line(step), shop.now(), words)
                        .chapters())
                .orElse(List.of());
    }

    /** That a file is being written, or where the one written last is; empty before one was. */
    public ReadOnlyStringProperty writtenProperty() {
        return written.getReadOnlyProperty();
    }

    /** Whether a file is being written, or a screen opened. */
    public ReadOnlyBooleanProperty busyProperty() {
        return busy.getReadOnlyProperty();
    }

    public void load() {
        tasks.run(() -> new Loaded(shop.sheet(run), shop.cameFrom(run), shop.proof(run)), this::loaded);
    }

    private record Loaded(Sheet sheet, Optional<CameFrom> from, RunProof proof) {}

    private void loaded(Loaded now) {
        from = now.from();
        cautions = Caution.of(now.proof(), from, words);
        unsealed = now.proof().isUnsealed();
        loaded(now.sheet());
    }

    /** A file of what stood there before is no longer the record. */
    private void loaded(Sheet kept) {
        int entries = kept.run().entries().size();
        if (sheet.get()
                .filter(before -> before.run().entries().size() != entries)
                .isPresent()) {
            file = Optional.empty();
            written.set("");
        }
        sheet.set(Optional.of(kept));
    }

    /** What the record can be handed out as. */
    public List<RecordFormat> formats() {
        return handout.formats();
    }

    /** The pages as they are printed. */
    public void pages() {
        navigator.pages(run);
    }

    public void hand(RecordFormat as) {
        if (!busy.get()) {
            busy.set(true);
            file = Optional.empty();
            written.set(words.say("sheet.writing"));
            tasks.run(() -> handout.writing().write(run, as), this::written, this::done);
        }
    }

    /** Writes all there is of the run, for a desk that takes it in. */
    public void bundle() {
        if (!busy.get()) {
            busy.set(true);
            file = Optional.empty();
            written.set(words.say("sheet.writing"));
            tasks.run(() -> handout.bundling().write(Scope.ofRun(run)).orElseThrow(), this::bundled, this::done);
        }
    }

    private void bundled(Path as) {
        written.set(BundleWords.written(words, as));
        navigator.tell(
                Notice.plain(words.say("hand-bundle.written.title"), written.get(), words.say("shell.understood")));
    }

    /** Nothing is being written any more, whether it was or could not be. */
    private void done() {
        busy.set(false);
        if (written.get().equals(words.say("sheet.writing"))) {
            written.set("");
        }
    }

    private void written(Path as) {
        Path whole = as.toAbsolutePath().normalize();
        file = Optional.of(whole);
        written.set(words.say("sheet.written", whole.getParent(), whole.getFileName()));
        NoticeKey understood = new NoticeKey(words.say("shell.understood"), () -> {});
        navigator.tell(new Notice(
                words.say("sheet.written.title"),
                written.get(),
                opensFile()
                        ? List.of(new NoticeKey(words.say("sheet.open-file"), this::openFile), understood)
                        : List.of(understood)));
    }

    /** Whether the file written last is the record as it stands and can be opened here. */
    public boolean opensFile() {
        return file.isPresent() && handout.viewer().isThere();
    }

    /** Whether a file is being opened. */
    public ReadOnlyBooleanProperty openingProperty() {
        return opening.getReadOnlyProperty();
    }

    /** Opens the file written last beside the client; a second tap in the same breath opens no second one. */
    public void openFile() {
        if (opensFile() && !opening.get() && again.settled()) {
            opening.set(true);
            handout.viewer().open(file.orElseThrow(), this::fileOpened);
        }
    }

    private void fileOpened(Optional<Message> whyNot) {
        opening.set(false);
        again.means(new Object());
        whyNot.ifPresent(why -> navigator.tell(
                Notice.plain(words.say("sheet.not-opened"), words.say(why), words.say("shell.understood"))));
    }

    public void goOn() {
        open(navigator::run);
    }

    public void handOver() {
        open(session -> navigator.say(Navigator.Saying.HAND_OVER, session));
    }

    public void sign() {
        open(navigator::sign);
    }

    /** What was found of its part number over all runs. */
    public void history() {
        sheet.get().ifPresent(kept -> navigator.historyOf(kept.plan().part().number()));
    }

    /** What documents prove of it. */
    public void documents() {
        open(navigator::documents);
    }

    /** Whether documents prove any of it; before it was loaded not. */
    public boolean hasDocuments() {
        return sheet.get().filter(kept -> !kept.documents().isEmpty()).isPresent();
    }

    private void open(Consumer<RunSession> then) {
        if (!busy.get()) {
            busy.set(true);
            tasks.run(() -> shop.open(run), then, () -> busy.set(false));
        }
    }
}
