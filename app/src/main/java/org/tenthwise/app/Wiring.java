package org.tenthwise.app;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;
import javafx.application.Platform;
import org.tenthwise.app.backup.BackupBook;
import org.tenthwise.app.backup.BackupWords;
import org.tenthwise.app.backup.Backups;
import org.tenthwise.app.backup.CheckedHeads;
import org.tenthwise.app.backup.StoreCare;
import org.tenthwise.app.bundle.BundleCheck;
import org.tenthwise.app.bundle.BundleFile;
import org.tenthwise.app.bundle.Making;
import org.tenthwise.app.bundle.StationBundles;
import org.tenthwise.app.command.Client;
import org.tenthwise.app.command.Records;
import org.tenthwise.app.command.Streams;
import org.tenthwise.app.command.Tools;
import org.tenthwise.app.device.AttachDisplay;
import org.tenthwise.app.device.AttachPauses;
import org.tenthwise.app.device.AttachStorage;
import org.tenthwise.app.device.FilesInFolders;
import org.tenthwise.app.device.SystemViewer;
import org.tenthwise.app.device.Viewer;
import org.tenthwise.app.device.Windowing;
import org.tenthwise.app.drafting.FiguresText;
import org.tenthwise.app.drawing.DrawingPages;
import org.tenthwise.app.drawing.FolderOfDrawings;
import org.tenthwise.app.export.AccountTable;
import org.tenthwise.app.export.CsvRecord;
import org.tenthwise.app.export.Evidence;
import org.tenthwise.app.export.Exporter;
import org.tenthwise.app.export.JsonRecord;
import org.tenthwise.app.export.RecordFormat;
import org.tenthwise.app.export.SeriesViewCsv;
import org.tenthwise.app.export.SeriesViewFormat;
import org.tenthwise.app.export.pdf.Paper;
import org.tenthwise.app.export.pdf.PdfRecord;
import org.tenthwise.app.export.pdf.RecordLayout;
import org.tenthwise.app.export.pdf.ReportPdf;
import org.tenthwise.app.export.pdf.SeriesViewPdf;
import org.tenthwise.app.export.qif.QifRecord;
import org.tenthwise.app.firstarticle.ReportBook;
import org.tenthwise.app.firstarticle.ReportCsv;
import org.tenthwise.app.firstarticle.ReportFiles;
import org.tenthwise.app.firstarticle.ReportFormat;
import org.tenthwise.app.firstarticle.ReportShelf;
import org.tenthwise.app.firstarticle.ReportWorkbook;
import org.tenthwise.app.handout.Handout;
import org.tenthwise.app.handout.ViewHandout;
import org.tenthwise.app.kept.KeptShop;
import org.tenthwise.app.kept.KeptSteps;
import org.tenthwise.app.key.KeyFile;
import org.tenthwise.app.key.KeyWords;
import org.tenthwise.app.matters.MatterBook;
import org.tenthwise.app.receiving.Receiving;
import org.tenthwise.app.receiving.TrustedStations;
import org.tenthwise.app.seal.SealedStores;
import org.tenthwise.app.series.SeriesSums;
import org.tenthwise.app.session.Background;
import org.tenthwise.app.session.Runs;
import org.tenthwise.app.session.ShopBook;
import org.tenthwise.app.session.StepsInHand;
import org.tenthwise.app.store.Ledger;
import org.tenthwise.app.store.Stores;
import org.tenthwise.app.store.sqlite.SqliteStores;
import org.tenthwise.app.sums.Sums;
import org.tenthwise.app.sums.handbook.Handbook;
import org.tenthwise.app.text.Spoken;
import org.tenthwise.app.ui.Fittings;
import org.tenthwise.app.ui.Screens;
import org.tenthwise.app.ui.about.AboutFacts;
import org.tenthwise.checklists.catalogue.Catalogue;
import org.tenthwise.checklists.catalogue.PlanDesk;
import org.tenthwise.checklists.catalogue.PlanFolder;
import org.tenthwise.checklists.rules.PlanReader;
import org.tenthwise.model.words.LocaleCustoms;
import org.tenthwise.model.words.Words;

/** Puts the program together. The only class that knows every other. */
final class Wiring {

    private final LastResort lastResort;
    private final Spoken spoken;
    private final boolean languageNamed;
    private final Stores stores = new SealedStores(new SqliteStores());
    private final Map<Path, BackupBook> backupBooks = new ConcurrentHashMap<>();
    private final Clock clock = Clock.systemDefaultZone();
    private final Sums sums = Handbook.sums();
    private final String version = Optional.ofNullable(Wiring.class.getPackage().getImplementationVersion())
            .orElse("unreleased");

    /** @param languageNamed whether the language spoken was asked for when the program was started */
    Wiring(LastResort lastResort, Spoken spoken, boolean languageNamed) {
        this.spoken = spoken;
        this.languageNamed = languageNamed;
        this.lastResort = lastResort;
    }

    Tools tools(Streams streams) {
        return new Tools(
                client(),
                stores,
                clock,
                spoken.words(),
                new PlanReader(),
                formats(),
                views(),
                making(),
                reports(),
                version,
                sums,
                streams);
    }

    /** In the language spoken now, on the paper of the place. */
    private List<RecordFormat> formats() {
        return formats(layout());
    }

    private static List<RecordFormat> formats(RecordLayout layout) {
        return Stream.concat(Stream.of(new PdfRecord(layout)), data().stream()).toList();
    }

    private Making making() {
        return new Making(
                place -> formats(layout(spoken.languages().words(place).lettered(), place)), spoken.place(), version);
    }

    /** What is read by programs; those that are whole are inside the printed record too. */
    private static List<RecordFormat> data() {
        return List.of(new CsvRecord(), new JsonRecord(), new AccountTable(), new QifRecord());
    }

    /** The forms of a first-article report, as they are handed over. */
    private List<ReportFormat> reports() {
        return Stream.concat(
                        Stream.of(
                                new ReportPdf(spoken.words(), Paper.of(new LocaleCustoms(spoken.place()))),
                                new ReportWorkbook(spoken.words())),
                        ReportCsv.all().stream())
                .toList();
    }

    private RecordLayout layout() {
        return layout(spoken.words(), spoken.place());
    }

    private static RecordLayout layout(Words words, Locale place) {
        return new RecordLayout(words, Paper.of(new LocaleCustoms(place)), data());
    }

    private Client client() {
        Windowing windowing = windowing();
        Viewer viewer = viewer(windowing);
        return new DesktopClient(
                windowing,
                new AttachStorage(Path.of(System.getProperty("user.home"))),
                new AttachDisplay(),
                new AttachPauses(),
                lastResort,
                spoken,
                languageNamed,
                stores,
                this::care,
                (shell, look, place) -> (ledger, background) -> new Screens(new Fittings(
                                shell,
                                look,
                                new Runs(ledger, clock, shopBook(place), steps(place)),
                                background,
                                () -> plans(place),
                                place.plans().map(PlanDesk::new),
                                place.plans()
                                        .<DrawingPages>map(FolderOfDrawings::new)
                                        .orElse(DrawingPages.NONE),
                                figures(place),
                                new Receiving(
                                        ledger,
                                        new BundleCheck(making()),
                                        TrustedStations.of(place.store(), List.of()),
                                        clock),
                                bundles(place),
                                aside("drawing"),
                                () -> handout(ledger, place, viewer),
                                () -> views(ledger, place),
                                new ReportShelf(
                                        ledger,
                                        clock,
                                        new ReportBook(version),
                                        new ReportFiles(reports()),
                                        place.records()),
                                new MatterBook(ledger, clock),
                                sums,
                                () -> about(place),
                                place.care().map(this::backupBook),
                                spoken,
                                clock))
                        .open());
    }

    private static Windowing windowing() {
        Optional<String> glass = Optional.ofNullable(System.getProperty("glass.platform"))
                .map(way -> (way + " " + System.getProperty("monocle.platform", "")).strip());
        return new Windowing(System.getenv(), System.getProperty("os.name"), glass);
    }

    /** What it waits for keeps neither the ledger nor the end of the program waiting. */
    private static Background aside(String name) {
        return new Background(
                work -> {
                    Thread thread = new Thread(work, name);
                    thread.setDaemon(true);
                    thread.start();
                },
                Platform::runLater);
    }

    private static Viewer viewer(Windowing windowing) {
        return new SystemViewer(
                windowing,
                System.getProperty("os.name"),
                Optional.ofNullable(System.getenv("PATH")).orElse(""),
                aside("viewer"));
    }

    /** A store that is thrown away is no shop's: it is not new, and what is said of it goes with it. */
    private static ShopBook shopBook(ClientPaths place) {
        return place.care()
                .<ShopBook>map(folder -> new KeptShop(folder.resolve(KeptShop.FILE)))
                .orElseGet(() -> ShopBook.inMemory(ShopBook.Shop.NOBODYS));
    }

    private static StepsInHand steps(ClientPaths place) {
        return place.care()
                .<StepsInHand>map(folder -> new KeptSteps(folder.resolve(KeptSteps.FILE)))
                .orElseGet(StepsInHand::inMemory);
    }

    /** One for all who write in the file. */
    private BackupBook backupBook(Path folder) {
        return backupBooks.computeIfAbsent(folder, care -> new BackupBook(care.resolve(BackupBook.FILE)));
    }

    private static Catalogue plans(ClientPaths place) throws IOException {
        return place.plans().isPresent() && Files.isDirectory(place.plans().get())
                ? new PlanFolder(place.plans().get()).read().orDemoParts()
                : Catalogue.ofDemoParts();
    }

    private Handout handout(Ledger ledger, ClientPaths place, Viewer viewer) {
        List<RecordFormat> formats = formats();
        Records records = new Records(formats, version);
        RecordLayout layout = layout();
        return new Handout(
                formats,
                (run, as) ->
                        records.write(ledger, run, List.of(as), place.records()).get(0),
                scope -> new StationBundles(making(), ledger, KeyFile.beside(place.store()))
                        .write(scope, place.records()),
                run -> layout.pages(records.evidence(ledger, run)),
                viewer);
    }

    private ViewHandout views(Ledger ledger, ClientPaths place) {
        return new ViewHandout(views(), (view, as) -> new Exporter()
                .export(view.name(), as.extension(), out -> as.write(ledger.history(), view, out), place.records()));
    }

    /** What views over parts are handed out as. */
    private List<SeriesViewFormat> views() {
        SeriesSums ofSeries = new SeriesSums(sums);
        return List.of(
                new SeriesViewPdf(
                        ofSeries, spoken.words(), Paper.of(new LocaleCustoms(spoken.place())), Evidence.tool(version)),
                new SeriesViewCsv(ofSeries));
    }

    private Optional<StoreCare> care(ClientPaths place) {
        return place.care()
                .map(folder -> new StoreCare(
                        stores,
                        place.store(),
                        new CheckedHeads(folder.resolve(CheckedHeads.FILE)),
                        backups(place, folder)));
    }

    private Backups backups(ClientPaths place, Path folder) {
        return new Backups(stores, place.store(), backupBook(folder), spoken::words, clock);
    }

    /** The folder of plans, and the one with the store. */
    private static FilesInFolders figures(ClientPaths place) {
        return new FilesInFolders(
                Stream.concat(
                                place.plans().stream(),
                                Stream.of(place.store().toAbsolutePath().resolveSibling("")))
                        .map(folder -> folder.toAbsolutePath().normalize())
                        .distinct()
                        .toList(),
                FiguresText.ENDING);
    }

    /** The one with the store, that of plans, and the one backups go to: a stick, as a rule. */
    private FilesInFolders bundles(ClientPaths place) {
        return new FilesInFolders(
                Stream.of(
                                Stream.of(place.store().toAbsolutePath().resolveSibling("")),
                                place.plans().stream(),
                                place
                                        .care()
                                        .flatMap(care ->
                                                backupBook(care).settings().folder())
                                        .stream())
                        .flatMap(folders -> folders)
                        .map(folder -> folder.toAbsolutePath().normalize())
                        .distinct()
                        .toList(),
                "." + BundleFile.ENDING);
    }

    private AboutFacts about(ClientPaths place) {
        return new AboutFacts(
                version,
                place.store().toAbsolutePath().toString(),
                place.plans()
                        .map(folder -> folder.toAbsolutePath().toString())
                        .orElse(spoken.words().say("demo.no-plans")),
                () -> new KeyWords(spoken.words()).say(KeyFile.beside(place.store())),
                () -> KeyFile.beside(place.store()).renew(),
                () -> place.care()
                        .map(folder -> new BackupWords(spoken.words(), clock.getZone()).say(backups(place, folder)))
                        .orElse(List.of()));
    }
}
