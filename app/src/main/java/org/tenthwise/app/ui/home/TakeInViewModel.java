package org.tenthwise.app.ui.home;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.tenthwise.app.device.FilesInFolders;
import org.tenthwise.app.receiving.Receiving;
import org.tenthwise.app.receiving.Receiving.Delivery;
import org.tenthwise.app.session.Runs;
import org.tenthwise.app.store.Arrivals;
import org.tenthwise.app.text.ArrivalWords;
import org.tenthwise.app.ui.form.Field;
import org.tenthwise.app.ui.form.FormViewModel;
import org.tenthwise.app.ui.shell.LedgerTasks;
import org.tenthwise.app.ui.shell.Navigator;
import org.tenthwise.app.ui.shell.Notice;
import org.tenthwise.app.ui.shell.Notice.NoticeKey;
import org.tenthwise.model.words.Words;

/**
 * Asks which bundle of another station is taken in, and by whom. It is looked through whole and told what would come in
 * before any of it counts; what is refused says why.
 */
public final class TakeInViewModel {

    private static final int MOST = 60;

    private final Receiving receiving;
    private final FilesInFolders folders;
    private final Runs shop;
    private final LedgerTasks tasks;
    private final Words words;
    private final Navigator navigator;
    private final ArrivalWords said;
    private final String where;
    private final Field<Path> file;
    private final Field<String> by;
    private final FormViewModel form;

    public TakeInViewModel(
            Receiving receiving,
            FilesInFolders folders,
            Runs shop,
            LedgerTasks tasks,
            Words words,
            Navigator navigator) {
        this.receiving = receiving;
        this.folders = folders;
        this.shop = shop;
        this.tasks = tasks;
        this.words = words;
        this.navigator = navigator;
        said = new ArrivalWords(words);
        where = words.list(folders.folders().stream().map(Path::toString).toList());
        file = Field.choice(
                "file", words.say("take-in.file.name"), words.say("take-in.file.question"), path -> path.getFileName()
                        .toString());
        file.aboutProperty().set(words.say("take-in.file.where", where));
        by = Field.words("by", words.say("take-in.by.name"), words.say("take-in.by.question"), true, MOST);
        form = new FormViewModel(List.of(file, by), words, words.say("take-in.look"), this::look);
    }

    public FormViewModel form() {
        return form;
    }

    public void load() {
        tasks.run(() -> shop.names().people(), by::offer);
        tasks.run(folders::files, this::offer);
    }

    private void offer(List<Path> files) {
        file.offer(files);
        if (files.isEmpty()) {
            navigator.back();
            navigator.tell(Notice.plain(
                    words.say("take-in.title"), words.say("take-in.file.none", where), words.say("shell.understood")));
        }
    }

    private void look() {
        Path chosen = file.valueProperty().get().orElseThrow();
        form.busy(true);
        tasks.run(() -> receiving.look(chosen), this::tell, () -> form.busy(false));
    }

    /** What would come in; nothing counts before the key is pressed. */
    private void tell(Delivery delivery) {
        List<String> lines = new ArrayList<>();
        lines.add(said.signer(delivery.signer(), delivery.incoming().signerKnown()));
        lines.addAll(said.runs(delivery.arrivals()));
        List<NoticeKey> keys = new ArrayList<>();
        if (delivery.arrivals().addAnything()) {
            keys.add(new NoticeKey(words.say("take-in.act"), () -> take(delivery)));
            keys.add(new NoticeKey(words.say("take-in.not"), () -> {}));
        } else {
            lines.add(said.inShort(delivery.arrivals()));
            keys.add(new NoticeKey(words.say("shell.understood"), () -> {}));
        }
        navigator.tell(new Notice(words.say("take-in.would"), String.join("\n", lines), keys));
    }

    private void take(Delivery delivery) {
        form.busy(true);
        tasks.run(() -> receiving.take(delivery, by.reads().strip()), this::taken, () -> form.busy(false));
    }

    private void taken(Arrivals arrivals) {
        navigator.back();
        navigator.tell(Notice.plain(words.say("take-in.done"), said.inShort(arrivals), words.say("shell.understood")));
    }
}
