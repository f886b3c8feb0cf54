package org.tenthwise.app;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.tenthwise.app.backup.BackupBook;
import org.tenthwise.app.backup.BackupWords;
import org.tenthwise.app.backup.Backups;
import org.tenthwise.app.backup.CheckedHeads;
import org.tenthwise.app.backup.StoreCare;
import org.tenthwise.app.command.Client;
import org.tenthwise.app.command.Records;
import org.tenthwise.app.command.Streams;
import org.tenthwise.app.command.Tools;
import org.tenthwise.app.device.AttachDisplay;
import org.tenthwise.app.device.AttachPauses;
import org.tenthwise.app.device.AttachStorage;
import org.tenthwise.app.device.Windowing;
import org.tenthwise.app.export.CsvRecord;
import org.tenthwise.app.export.JsonRecord;
import org.tenthwise.app.export.RecordFormat;
import org.tenthwise.app.export.pdf.Paper;
import org.tenthwise.app.export.pdf.PdfRecord;
import org.tenthwise.app.session.Runs;
import org.tenthwise.app.store.Ledger;
import org.tenthwise.app.store.Stores;
import org.tenthwise.app.store.sqlite.SqliteStores;
import org.tenthwise.app.sums.Sums;
import org.tenthwise.app.sums.handbook.Handbook;
import org.tenthwise.app.ui.Screens;
import org.tenthwise.app.ui.about.AboutFacts;
import org.tenthwise.app.ui.record.Handout;
import org.tenthwise.checklists.catalogue.Catalogue;
import org.tenthwise.checklists.catalogue.PlanFolder;
import org.tenthwise.checklists.rules.PlanReader;
import org.tenthwise.model.words.LocaleCustoms;
import org.tenthwise.model.words.Words;

/** Puts the program together. The only class that knows every other. */
final class Wiring {

    private final LastResort lastResort;
    private final Words words;
    private final Stores stores = new SqliteStores();
    private final Clock clock = Clock.systemDefaultZone();
    private final List<RecordFormat> formats;
    private final Sums sums = Handbook.sums();
    private final String version = Optional.ofNullable(Wiring.class.getPackage().getImplementationVersion())
            .orElse("unreleased");

    /** @param place whose paper records are printed on */
    Wiring(LastResort lastResort, Words words, Locale place) {
        this.words = words;
        this.formats =
                List.of(new PdfRecord(words, Paper.of(new LocaleCustoms(place))), new CsvRecord(), new JsonRecord());
        this.lastResort = lastResort;
    }

    Tools tools(Streams streams) {
        return new Tools(client(), stores, clock, words, new PlanReader(), formats, version, sums, streams);
    }

    private Client client() {
        Optional<String> glass = Optional.ofNullable(System.getProperty("glass.platform"))
                .map(way -> (way + " " + System.getProperty("monocle.platform", "")).strip());
        return new DesktopClient(
                new Windowing(System.getenv(), System.getProperty("os.name"), glass),
                new AttachStorage(Path.of(System.getProperty("user.home"))),
                new AttachDisplay(),
                new AttachPauses(),
                lastResort,
                words,
                stores,
                this::care,
                (shell, look, place) -> (ledger, background) -> new Screens(
                                shell,
                                look,
                                new Runs(ledger, clock),
                                background,
                                () -> plans(place),
                                handout(ledger, place),
                                sums,
                                about(place),
                                words,
                                clock)
                        .home());
    }

    private static Catalogue plans(ClientPaths place) throws IOException {
        return place.plans().isPresent() && Files.isDirectory(place.plans().get())
                ? new PlanFolder(place.plans().get()).read().orDemoParts()
                : Catalogue.ofDemoParts();
    }

    private Handout handout(Ledger ledger, ClientPaths place) {
        Records records = new Records(formats, version);
        return new Handout(formats, (run, as) -> records.write(ledger, run, List.of(as), place.records())
                .get(0));
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
        return new Backups(stores, place.store(), new BackupBook(folder.resolve(BackupBook.FILE)), words, clock);
    }

    private AboutFacts about(ClientPaths place) {
        return new AboutFacts(
                version,
                place.store().toAbsolutePath().toString(),
                place.plans().map(folder -> folder.toAbsolutePath().toString()).orElse(words.say("demo.no-plans")),
                () -> place.care()
                        .map(folder -> new BackupWords(words, clock.getZone()).say(backups(place, folder)))
                        .orElse(List.of()));
    }
}
