package org.tenthwise.app;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import javafx.application.Platform;
import javafx.stage.Screen;
import org.tenthwise.app.backup.BackupBook;
import org.tenthwise.app.backup.BackupWish;
import org.tenthwise.app.backup.StoreCare;
import org.tenthwise.app.command.Client;
import org.tenthwise.app.demo.DemoWalk;
import org.tenthwise.app.device.Display;
import org.tenthwise.app.device.KeptLook;
import org.tenthwise.app.device.Pauses;
import org.tenthwise.app.device.Storage;
import org.tenthwise.app.device.Windowing;
import org.tenthwise.app.export.RecordName;
import org.tenthwise.app.session.Runs;
import org.tenthwise.app.store.Ledger;
import org.tenthwise.app.store.Stores;
import org.tenthwise.app.text.Sentences;
import org.tenthwise.app.text.Spoken;
import org.tenthwise.app.ui.picture.ScreenFaces;
import org.tenthwise.app.ui.shell.Shell;
import org.tenthwise.app.ui.theme.Look;
import org.tenthwise.app.ui.theme.LookStore;
import org.tenthwise.app.ui.theme.Theme;
import org.tenthwise.checklists.catalogue.DemoPart;
import org.tenthwise.checklists.rules.ReadingsFile;
import org.tenthwise.checklists.rules.SampleReader;
import org.tenthwise.checklists.rules.SampleReading;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.record.Sheet;
import org.tenthwise.model.run.Entry;
import org.tenthwise.model.run.Event;
import org.tenthwise.model.run.ShopEvent;
import org.tenthwise.model.words.Words;

/** The client in a window, or, for a walk by itself, in one nobody sees. */
final class DesktopClient implements Client {

    private static final int ROUNDS = 4;

    private final Windowing windowing;
    private final Storage storage;
    private final Display display;
    private final Pauses pauses;
    private final LastResort lastResort;
    private final Spoken spoken;
    private final boolean languageNamed;
    private final Stores stores;
    private final CareOf care;
    private final ScreensOf screens;

    /** @param languageNamed whether the language spoken was asked for: then it goes before the one that was kept */
    DesktopClient(
            Windowing windowing,
            Storage storage,
            Display display,
            Pauses pauses,
            LastResort lastResort,
            Spoken spoken,
            boolean languageNamed,
            Stores stores,
            CareOf care,
            ScreensOf screens) {
        this.windowing = windowing;
        this.storage = storage;
        this.display = display;
        this.pauses = pauses;
        this.lastResort = lastResort;
        this.spoken = spoken;
        this.languageNamed = languageNamed;
        this.stores = stores;
        this.care = care;
        this.screens = screens;
    }

    /** What is started over an open ledger, for a shell, a look and the place where files lie. */
    interface ScreensOf {
        ClientSession.FirstScreen of(Shell shell, Look look, ClientPaths place);
    }

    /** Who looks after the store; absent where nobody need. */
    interface CareOf {
        Optional<StoreCare> of(ClientPaths place);
    }

    @Override
    public boolean hasDisplay() {
        return windowing.hasDisplay();
    }

    @Override
    public void open(Optional<Path> store, Optional<Path> plans, BackupWish backups) throws Exception {
        Path own = storage.folder();
        LedgerThread thread = new LedgerThread();
        ClientPaths place = new ClientPaths(
                store.orElseGet(() -> own.resolve("tenthwise.db")),
                Optional.of(plans.orElseGet(() -> own.resolve("plans"))),
                storage.records(),
                Optional.of(own));
        backups.keepIn(new BackupBook(own.resolve(BackupBook.FILE)));
        show(place, new KeptLook(own.resolve("look.properties"), thread), thread);
    }

    @Override
    public void openDemo(Path store, Path records) throws Exception {
        show(
                new ClientPaths(store, Optional.empty(), records, Optional.empty()),
                LookStore.inMemory(LookStore.Kept.PLAIN),
                new LedgerThread());
    }

    private void show(ClientPaths place, LookStore looks, LedgerThread thread) throws Exception {
        Window window = new Window(display);
        try {
            ClientSession opened = open(window, place, looks, thread);
            pauses.onPause(() -> finish(thread));
            window.awaitClosed();
            lastResort.leadNowhere();
            opened.end();
        } finally {
            thread.end();
            window.close();
        }
    }

    /** From the background a tablet may take the client away without asking. */
    private void finish(LedgerThread thread) {
        try {
            thread.rest();
        } catch (Exception e) {
            lastResort.uncaughtException(Thread.currentThread(), e);
        }
    }

    private ClientSession open(Window window, ClientPaths place, LookStore looks, LedgerThread thread)
            throws Exception {
        ClientSession opened = window.open(
                size -> {
                    Look look = new Look(looks);
                    speakAsKept(look);
                    Shell shell = new Shell(
                            new Theme(look, new ScreenFaces()),
                            spoken.words(),
                            size.width(),
                            size.height(),
                            Screen.getPrimary().getDpi());
                    return new ClientSession(
                            shell,
                            look,
                            spoken,
                            stores,
                            place.store(),
                            care.of(place),
                            thread,
                            screens.of(shell, look, place));
                },
                made -> made.shell().scene());
        lastResort.leadTo(() -> Platform.runLater(opened.shell()::trouble));
        Platform.runLater(opened::begin);
        return opened;
    }

    private void speakAsKept(Look look) {
        if (!languageNamed) {
            look.languageProperty().get().flatMap(spoken.languages()::find).ifPresent(spoken::speak);
        }
    }

    /** The shop the demo is walked in knows the certificates of its gauges. */
    private void tellTheShop(ReadingsFile sample, Path store) throws Exception {
        try (Ledger shop = stores.open(store)) {
            for (Event event : sample.events()) {
                if (event.as(ShopEvent.CalibrationKnown.class).isPresent()) {
                    shop.append(Entry.SHOP, OffsetDateTime.now(), sample.by(), event);
                }
            }
        }
    }

    @Override
    public List<String> walkDemo(Path folder, Consumer<String> along) throws Exception {
        withoutDisplay();
        Plan plan = DemoPart.SCREW_CARRIER.plan();
        ReadingsFile sample =
                ((SampleReading.Good) new SampleReader().read(DemoPart.SCREW_CARRIER.passingReadings(), plan)).sample();
        Path store = free(folder);
        tellTheShop(sample, store);
        Path pictures = Files.createDirectories(folder.resolve("pictures"));
        LedgerThread thread = new LedgerThread();
        Window window = new Window(Display.plain());
        try {
            ClientSession opened = open(
                    window,
                    new ClientPaths(store, Optional.empty(), folder, Optional.empty()),
                    LookStore.inMemory(LookStore.Kept.PLAIN),
                    thread);
            List<Path> taken = new DemoWalk(
                            opened.shell().scene(),
                            opened.look().nightProperty(),
                            () -> rest(thread, window),
                            spoken.words(),
                            plan,
                            sample,
                            pictures,
                            along)
                    .walk();
            Sheet sheet = thread.ask(() -> {
                List<String> runs = opened.ledger().runs();
                return Runs.sheet(opened.ledger(), runs.get(runs.size() - 1));
            });
            Path record = folder.resolve(thread.ask(() -> RecordName.of(
                    sheet.run().id(), opened.ledger().runHead(sheet.run().id()))));
            opened.end();
            if (!sheet.conformsUncontested()) {
                throw new IllegalStateException("The walk ended with: " + new Sentences(spoken.words()).outcome(sheet));
            }
            return said(sheet, store, record, pictures, taken);
        } finally {
            thread.end();
            window.close();
        }
    }

    /** @param record the name of its files without their endings */
    private List<String> said(Sheet sheet, Path store, Path record, Path pictures, List<Path> taken) {
        Words words = spoken.words();
        List<String> files = Stream.of(".pdf", ".csv", ".json")
                .map(ending -> record + ending)
                .toList();
        return List.of(
                words.say(
                        "demo.walked",
                        sheet.plan().part().number(),
                        sheet.plan().part().revision(),
                        sheet.run().begun().serial(),
                        sheet.lines().size(),
                        new Sentences(words).outcome(sheet)),
                words.say("demo.walked.store", store),
                words.say("demo.walked.record", files),
                words.say("demo.walked.pictures", pictures, taken.size()));
    }

    /** A name nothing lies under yet, so that no walk gets into the store of another. */
    private static Path free(Path folder) {
        return IntStream.iterate(1, i -> i + 1)
                .mapToObj(i -> folder.resolve(i == 1 ? "demo.db" : "demo-%s.db".formatted(i)))
                .filter(path -> Files.notExists(path))
                .findFirst()
                .orElseThrow();
    }

    /** Has JavaFX draw into memory; before its first class is touched. */
    private static void withoutDisplay() {
        System.setProperty("glass.platform", "Monocle");
        System.setProperty("monocle.platform", "Headless");
        System.setProperty("prism.order", "sw");
        System.setProperty("java.awt.headless", "true");
    }

    /** Several times, as what comes back from the one thread may give work to the other. */
    private static void rest(LedgerThread thread, Window window) {
        try {
            for (int i = 0; i < ROUNDS; i++) {
                thread.rest();
                window.rest();
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException("The walk was broken off", e);
        } catch (Exception e) {
            throw new IllegalStateException("The ledger does not come to rest", e);
        }
    }
}
