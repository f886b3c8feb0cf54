package org.tenthwise.app.bundle;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TimeZone;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.tenthwise.app.export.Evidence;
import org.tenthwise.app.export.RecordFormat;
import org.tenthwise.app.export.Records;
import org.tenthwise.app.export.pdf.Archived;
import org.tenthwise.app.export.pdf.Paper;
import org.tenthwise.app.export.pdf.PdfRecord;
import org.tenthwise.app.export.pdf.RecordLayout;
import org.tenthwise.app.export.qif.QifFile;
import org.tenthwise.app.history.RunName;
import org.tenthwise.app.key.KeyFile;
import org.tenthwise.app.receiving.Receiving;
import org.tenthwise.app.receiving.TrustedStations;
import org.tenthwise.app.seal.SealedStores;
import org.tenthwise.app.store.Arrivals;
import org.tenthwise.app.store.KeptEntries;
import org.tenthwise.app.store.Ledger;
import org.tenthwise.app.store.Stores;
import org.tenthwise.app.store.sqlite.SqliteStores;
import org.tenthwise.checklists.catalogue.DemoPart;
import org.tenthwise.checklists.catalogue.ExamplePart;
import org.tenthwise.checklists.rules.ReadingsFile;
import org.tenthwise.checklists.rules.SampleReader;
import org.tenthwise.checklists.rules.SampleReading;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.run.Event;
import org.tenthwise.model.words.Words;

/**
 * Every run of every part that comes along, right, wrong and with slips, handed out twice in every format and as a
 * bundle, at the station and at a desk that took it in: the same to the byte each time, wherever and whenever.
 */
class EveryRunHandedOverTest {

    private static final String VERSION = "0.1.0";
    private static final OffsetDateTime AT = OffsetDateTime.parse("2026-11-25T07:31:12.345678+01:00");
    private static final Clock CLOCK = Clock.fixed(Instant.parse("2026-12-01T08:15:00Z"), ZoneOffset.UTC);
    private static final Stores STORES = new SealedStores(new SqliteStores());

    @TempDir
    private static Path folder;

    private static final List<String> RUNS = new ArrayList<>();
    private static Ledger station;
    private static KeptEntries again;
    private static Ledger desk;

    @BeforeAll
    static void oneStoreWithAllOfThem() throws Exception {
        station = STORES.open(folder.resolve("station.db"));
        for (DemoPart part : DemoPart.values()) {
            walk(part.plan(), List.of(part.passingReadings(), part.failingReadings()));
        }
        for (ExamplePart part : ExamplePart.values()) {
            walk(part.plan(), List.of(part.passingReadings(), part.failingReadings(), part.readingsWithSlips()));
        }
        again = STORES.openToRead(folder.resolve("station.db"));
        desk = STORES.open(folder.resolve("desk.db"));
    }

    @AfterAll
    static void shut() {
        again.close();
        desk.close();
        station.close();
    }

    private static void walk(Plan plan, List<String> samples) throws Exception {
        for (String sample : samples) {
            ReadingsFile readings = ((SampleReading.Good) new SampleReader().read(sample, plan)).sample();
            String run = plan.part().number() + "-" + (RUNS.size() + 1);
            station.append(run, AT, readings.by(), readings.begun());
            for (Event event : readings.events()) {
                station.append(run, AT.plusMinutes(1), readings.by(), event);
            }
            RUNS.add(run);
        }
    }

    static List<String> runs() {
        return List.copyOf(RUNS);
    }

    private static List<RecordFormat> formats() {
        return Stream.concat(
                        Stream.of(new PdfRecord(new RecordLayout(Words.ENGLISH, Paper.A4, Records.DATA))),
                        Records.DATA.stream())
                .toList();
    }

    /** Made anew each time, so that nothing is left over from the time before. */
    private static Making making() {
        return new Making(place -> formats(), Locale.ENGLISH, VERSION);
    }

    private static byte[] bytes(RecordFormat format, Evidence evidence) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        format.write(evidence, out);
        return out.toByteArray();
    }

    private static Path bundle(KeptEntries kept, String run, String to) throws Exception {
        return new StationBundles(making(), kept, KeyFile.beside(folder.resolve("station.db")))
                .write(Scope.ofRun(run), Files.createDirectories(folder.resolve(to)))
                .orElseThrow();
    }

    @Test
    void allPartsThatComeAlongAreHere() {
        assertEquals(2 * DemoPart.values().length + 3 * ExamplePart.values().length, RUNS.size());
        Set<String> parts = new TreeSet<>();
        RUNS.forEach(run -> parts.add(run.replaceAll("-\\d+$", "")));
        assertEquals(Set.of("LG-2207", "WB-118", "WS-407", "GR-341", "HB-226"), parts);
    }

    @ParameterizedTest
    @MethodSource("runs")
    void isTheSameToTheByteEachTimeAndWhereItWasTakenIn(String run) throws Exception {
        Path first = bundle(station, run, "first");
        byte[] drawing = bytes(Records.DATA.get(2), Evidence.of(station, run, VERSION));
        elsewhere(() -> {
            Path second = bundle(again, run, "second");
            assertEquals(first.getFileName(), second.getFileName());
            sameFiles(first, second);
            assertArrayEquals(Files.readAllBytes(first), Files.readAllBytes(second), "bundle");
            assertArrayEquals(drawing, bytes(Records.DATA.get(2), Evidence.of(again, run, VERSION)), "drawing.csv");
        });
        try (BundleFile bundle = BundleFile.open(first)) {
            Manifest.OfRun of = bundle.manifest().runs().get(0);
            Archived.check(bundle.bytes(of.file(Manifest.RECORD + "pdf")));
            assertEquals(
                    List.of(),
                    QifFile.of(new String(bundle.bytes(of.file(Manifest.RECORD + "qif")), UTF_8))
                            .faults());
            if (Evidence.of(station, run, VERSION).sheet().run().closed().isPresent()) {
                assertTrue(takeIn(first).addAnything());
                sameAtTheDesk(bundle, of, run, drawing);
            } else {
                assertFalse(takeIn(first).addAnything(), "one that is not closed stays at its station");
            }
        }
    }

    private static void sameFiles(Path first, Path second) throws Exception {
        try (BundleFile one = BundleFile.open(first);
                BundleFile other = BundleFile.open(second)) {
            for (Manifest.OfFile file : one.manifest().files()) {
                assertArrayEquals(one.bytes(file.name()), other.bytes(file.name()), file.name());
            }
        }
    }

    private static Arrivals takeIn(Path bundle) throws Exception {
        Receiving receiving = new Receiving(
                desk,
                new BundleCheck(new Making(place -> List.of(Records.DATA.get(0)), Locale.ENGLISH, VERSION)),
                TrustedStations.of(folder.resolve("desk.db"), List.of()),
                CLOCK);
        return receiving.take(receiving.look(bundle), "Inspector 1");
    }

    private static void sameAtTheDesk(BundleFile bundle, Manifest.OfRun of, String run, byte[] drawing)
            throws Exception {
        String sign = KeyFile.beside(folder.resolve("station.db"))
                .open()
                .shown()
                .fingerprint()
                .substring(0, 8);
        Evidence here = Evidence.of(desk, RunName.imported(run, sign), VERSION);
        List<String> compared = new ArrayList<>();
        for (RecordFormat format : formats()) {
            byte[] there = format.isWhole() ? bundle.bytes(of.file(Manifest.RECORD + format.extension())) : drawing;
            assertArrayEquals(there, bytes(format, here), format.extension());
            compared.add(format.extension());
        }
        assertEquals(List.of("pdf", "csv", "json", "drawing.csv", "qif"), compared);
        assertTrue(
                new StationBundles(making(), desk, KeyFile.beside(folder.resolve("desk.db")))
                        .write(Scope.ofRun(RunName.imported(run, sign)), folder)
                        .isEmpty(),
                "its own station signs for it");
    }

    private interface Work {
        void done() throws Exception;
    }

    /** In another zone of time, and where another language is spoken. */
    private static void elsewhere(Work work) throws Exception {
        TimeZone zone = TimeZone.getDefault();
        Locale locale = Locale.getDefault();
        TimeZone.setDefault(TimeZone.getTimeZone("Pacific/Auckland"));
        Locale.setDefault(Locale.forLanguageTag("ar-EG"));
        try {
            work.done();
        } finally {
            TimeZone.setDefault(zone);
            Locale.setDefault(locale);
        }
    }
}
