package org.tenthwise.app.ui;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.Function;
import java.util.stream.Stream;
import org.junit.jupiter.api.extension.AfterEachCallback;
import org.junit.jupiter.api.extension.BeforeEachCallback;
import org.junit.jupiter.api.extension.ExtensionContext;
import org.tenthwise.app.bundle.BundleCheck;
import org.tenthwise.app.bundle.BundleFile;
import org.tenthwise.app.bundle.Making;
import org.tenthwise.app.device.AskedViewer;
import org.tenthwise.app.device.FilesInFolders;
import org.tenthwise.app.drafting.FiguresText;
import org.tenthwise.app.drawing.FolderOfDrawings;
import org.tenthwise.app.export.AccountTable;
import org.tenthwise.app.export.CsvRecord;
import org.tenthwise.app.export.JsonRecord;
import org.tenthwise.app.export.Records;
import org.tenthwise.app.export.SeriesViewCsv;
import org.tenthwise.app.export.pdf.Paper;
import org.tenthwise.app.export.pdf.PdfRecord;
import org.tenthwise.app.export.pdf.RecordLayout;
import org.tenthwise.app.export.pdf.ReportPdf;
import org.tenthwise.app.export.pdf.SeriesViewPdf;
import org.tenthwise.app.export.qif.QifRecord;
import org.tenthwise.app.firstarticle.ReportBook;
import org.tenthwise.app.firstarticle.ReportCsv;
import org.tenthwise.app.firstarticle.ReportFiles;
import org.tenthwise.app.firstarticle.ReportShelf;
import org.tenthwise.app.firstarticle.ReportWorkbook;
import org.tenthwise.app.handout.Handout;
import org.tenthwise.app.handout.ViewHandout;
import org.tenthwise.app.matters.MatterBook;
import org.tenthwise.app.receiving.Receiving;
import org.tenthwise.app.receiving.TrustedStations;
import org.tenthwise.app.series.SeriesSums;
import org.tenthwise.app.session.Background;
import org.tenthwise.app.session.Prompt;
import org.tenthwise.app.session.RunHeader;
import org.tenthwise.app.session.RunSession;
import org.tenthwise.app.session.Runs;
import org.tenthwise.app.session.ShopBook;
import org.tenthwise.app.session.StepsInHand;
import org.tenthwise.app.store.Ledger;
import org.tenthwise.app.store.sqlite.SqliteStores;
import org.tenthwise.app.sums.handbook.Handbook;
import org.tenthwise.app.text.Spoken;
import org.tenthwise.app.ui.about.AboutFacts;
import org.tenthwise.app.ui.form.CurrentRun;
import org.tenthwise.app.ui.shell.LedgerTasks;
import org.tenthwise.checklists.catalogue.Catalogue;
import org.tenthwise.checklists.catalogue.DemoPart;
import org.tenthwise.checklists.catalogue.PlanDesk;
import org.tenthwise.model.plan.Answer;
import org.tenthwise.model.plan.PartId;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.plan.PlanSource;
import org.tenthwise.model.run.Entry;
import org.tenthwise.model.run.Event;
import org.tenthwise.model.run.StepEvent;
import org.tenthwise.model.words.Words;

/**
 * A shop with a ledger in a temporary file, opened anew for each test, runs of the demo parts, and a navigator that
 * notes where it was asked to go. Work is done at once on the thread that asks.
 */
public final class Workshop extends Ways implements BeforeEachCallback, AfterEachCallback {

    /** 25 November 2026, 09:31 at the machine. */
    public static final Clock CLOCK = Clock.fixed(Instant.parse("2026-11-25T08:31:00Z"), ZoneOffset.ofHours(1));

    public final Words words;
    public final LedgerTasks tasks;
    public Runs shop;
    private Path folder;
    private Ledger ledger;

    public Workshop() {
        this(Words.ENGLISH);
    }

    public Workshop(Words words) {
        this.words = words;
        this.tasks = new LedgerTasks(new Background(Runnable::run, Runnable::run), words, this);
    }

    /** What the screens in {@code window} are built with. */
    public Fittings fittings(ScreenTest.Window window) {
        return fittings(window, Catalogue::ofDemoParts, spoken -> handout(), CLOCK);
    }

    public Fittings fittings(
            ScreenTest.Window window, Callable<Catalogue> plans, Function<Spoken, Handout> handout, Clock clock) {
        Spoken spoken = window.spoken();
        return new Fittings(
                window.shell(),
                window.look(),
                shop,
                new Background(Runnable::run, Runnable::run),
                plans,
                Optional.of(new PlanDesk(folder.resolve("plans"))),
                new FolderOfDrawings(folder.resolve("plans")),
                new FilesInFolders(List.of(folder.resolve("plans")), FiguresText.ENDING),
                receiving(),
                bundles(),
                new Background(Runnable::run, Runnable::run),
                () -> handout.apply(spoken),
                Workshop::views,
                articles(),
                matterBook(),
                Handbook.sums(),
                () -> new AboutFacts("0.1.0", "here", "there", List::of, Optional::empty, List::of),
                Optional.empty(),
                spoken,
                clock);
    }

    /** Says where a view would lie, and writes none. */
    public static ViewHandout views() {
        SeriesSums sums = new SeriesSums(Handbook.sums());
        return new ViewHandout(
                List.of(new SeriesViewPdf(sums, Words.ENGLISH, Paper.A4, "Tenthwise 0.1.0"), new SeriesViewCsv(sums)),
                (view, as) -> Path.of(view.name() + "." + as.extension()));
    }

    /** What is open over the runs of the shop. */
    public MatterBook matterBook() {
        return new MatterBook(ledger, CLOCK);
    }

    /** The first-article reports of the shop, with all their forms. */
    public ReportShelf articles() {
        return new ReportShelf(
                ledger,
                CLOCK,
                new ReportBook("0.1.0"),
                new ReportFiles(Stream.concat(
                                Stream.of(new ReportPdf(words, Paper.A4), new ReportWorkbook(words)),
                                ReportCsv.all().stream())
                        .toList()),
                folder.resolve("records"));
    }

    /** Takes bundles in, those of anybody. */
    public Receiving receiving() {
        return new Receiving(
                ledger,
                new BundleCheck(new Making(language -> List.of(new CsvRecord(), new JsonRecord()), Locale.UK, "0.1.0")),
                TrustedStations.of(folder.resolve("shop.db"), List.of()),
                CLOCK);
    }

    /** Bundles lie beside the ledger. */
    public FilesInFolders bundles() {
        return new FilesInFolders(List.of(folder), "." + BundleFile.ENDING);
    }

    public Ledger ledger() {
        return ledger;
    }

    /** Says where a record would lie, and writes none. */
    public static Handout handout() {
        return new Handout(
                List.of(
                        new PdfRecord(new RecordLayout(Words.ENGLISH, Paper.A4, Records.DATA)),
                        new CsvRecord(),
                        new JsonRecord(),
                        new AccountTable(),
                        new QifRecord()),
                (run, as) -> Path.of(run),
                scope -> Optional.of(Path.of("bundle")),
                run -> List.of(),
                AskedViewer.none());
    }

    @Override
    public void beforeEach(ExtensionContext test) throws Exception {
        folder = Files.createTempDirectory("workshop");
        ledger = new SqliteStores().open(folder.resolve("shop.db"));
        shop = new Runs(ledger, CLOCK);
    }

    @Override
    public void afterEach(ExtensionContext test) throws Exception {
        ledger.close();
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(file);
            }
        }
    }

    /** From here on it is the shop that keeps this of itself. */
    public void keepIn(ShopBook book) {
        shop = new Runs(ledger, CLOCK, book, StepsInHand.inMemory());
    }

    /** From here on nothing can be written. */
    public void loseTheLedger() {
        ledger.close();
    }

    /** Does what may not fail here. */
    public static <T> T must(Callable<T> work) {
        try {
            return work.call();
        } catch (Exception e) {
            throw new AssertionError(e);
        }
    }

    public RunSession begin(DemoPart part, String serial) {
        return begin(part.plan(), serial);
    }

    public RunSession begin(Plan plan, String serial) {
        return begin(plan, serial, "AB-7731", "Lathe 4", "Setter 2");
    }

    public RunSession begin(Plan plan, String serial, String lot, String machine, String by) {
        return must(() -> shop.begin(new RunHeader(plan, serial, lot, machine, by)));
    }

    /** The screen carrier, set up and trued. */
    public RunSession setUp(String serial) {
        return setUp(DemoPart.SCREW_CARRIER.plan(), serial);
    }

    /** The same by a plan of a few words more. */
    public RunSession setUp(Plan plan, String serial) {
        RunSession session = begin(plan, serial);
        return must(() -> {
            for (int step : new int[] {1, 2, 3, 5}) {
                session.goTo(step);
                session.answer(Answer.YES);
            }
            session.goTo(4);
            session.turn().sweep(false);
            for (int section = 0; section < 2; section++) {
                for (String read : "0.004 0.001 0.000 0.002 0.006 0.009 0.011 0.008".split(" ")) {
                    session.enter(read);
                }
            }
            return session;
        });
    }

    /**
     * The screen carrier at its bore, part and gauge at 20 °C; {@code readings} from a gauge set on a 30.000 master.
     */
    public RunSession atTheBore(String serial, String... readings) {
        RunSession session = setUp(serial);
        return must(() -> {
            session.goTo(13);
            if (session.state().asked() instanceof Prompt.WhichSense) {
                session.gauge().tellSense(false);
            }
            session.gauge().setOtherwise(false);
            session.enter("30.000");
            session.enter("");
            session.gauge().confirmSense(true);
            session.enter("20");
            session.enter("20");
            for (String reading : readings) {
                session.keep(reading);
            }
            return session;
        });
    }

    /** From a bore that passed to the thread: plug in, turned round and true, drills ready. */
    public static RunSession toTheThread(RunSession session) {
        return must(() -> {
            session.goTo(14);
            session.enter("29.990");
            session.enter("29.990");
            session.answer(Answer.FREELY);
            session.goTo(15);
            for (String swept : "0.002 0.000 0.003 0.000".split(" ")) {
                session.enter(swept);
            }
            for (int drills : new int[] {16, 17}) {
                session.goTo(drills);
                session.answer(Answer.YES);
            }
            session.goTo(21);
            return session;
        });
    }

    public CurrentRun inHand(RunSession session) {
        return new CurrentRun(session, shop, tasks);
    }

    /** A run whose kept plan this release cannot read. */
    public void beginUnreadable(String serial) {
        must(() -> ledger.append(
                "X-1-A-" + serial,
                OffsetDateTime.now(CLOCK),
                "Setter 2",
                new Event.Begun(
                        new PartId("X-1", "A"),
                        serial,
                        "",
                        "Lathe 4",
                        new PlanSource("format = 99\n", "ab".repeat(32)))));
    }

    /** Strikes out what was read last at a step of a run. */
    public void strikeLastReadingOf(String run, int step) {
        must(() -> {
            RunSession session = shop.open(run);
            Entry last = session.state().sheet().run().entries().stream()
                    .filter(entry -> entry.event() instanceof StepEvent.ReadingTaken taken && taken.step() == step)
                    .reduce((one, other) -> other)
                    .orElseThrow();
            return session.strikeOut(last.seq(), "a chip under the gauge");
        });
    }

    /** Whether every entry of the ledger is as it was written. */
    public boolean isWhole() {
        return ledger.verify().whole();
    }

    /** How many runs the ledger holds. */
    public int runs() {
        return ledger.runs().size();
    }

    /** How many entries the ledger holds. */
    public long kept() {
        return ledger.head().seq();
    }
}
