package org.tenthwise.app.command;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.tenthwise.app.key.KeyFile;
import org.tenthwise.app.session.Runs;
import org.tenthwise.app.store.sqlite.SqliteStores;

/** First articles drawn up at a desk that holds nothing but what stations handed over. */
class ImportedReportTest extends ReportsAtHand {

    private Path desk;
    private Path mill;

    @BeforeEach
    void aDeskTakesInWhatTwoStationsMeasured() throws Exception {
        desk = folder.resolve("desk.db");
        mill = folder.resolve("mill.db");
        walked(mill, "7", "");
        walked(store, "1", "");
        again(store, "2", "WA-5-A-1");
        handOver(mill);
        handOver(store);
    }

    private void handOver(Path of) {
        Typed bundle = Typed.line(
                "export", "--store", of, "--part", "WA-5", "--as", "bundle", "--out", folder.resolve("bundles"));
        assertEquals(0, bundle.exit(), bundle::toString);
        Typed taken = Typed.line("import", bundle.out().get(0), "--store", desk, "--by", "Inspector 1");
        assertEquals(0, taken.exit(), taken::toString);
    }

    private static String at(Path station, String run) throws Exception {
        return run + "@" + KeyFile.beside(station).open().shown().fingerprint().substring(0, 8);
    }

    @Test
    void aReportOnThemIsDrawnUpSignedAndWrittenAgainByteForByte() throws Exception {
        String first = at(mill, "WA-5-A-7");
        String second = at(store, "WA-5-A-1");
        Typed drawn = drawnUp(desk, "F-1", "--run", first, "--run", second);
        assertEquals(0, drawn.exit(), drawn::toString);
        assertEquals("Report F-1: Complete.", drawn.out().get(0));
        assertTrue(
                form("F-1", 3).lines().findFirst().orElseThrow().contains("9 Results 7,9 Results 1"), form("F-1", 3));
        assertTrue(form("F-1", 3).contains(",5.020,5.020,"), form("F-1", 3));

        assertEquals(
                0,
                report(desk, "F-1", "--sign", "verified", "--by", "Inspector 1").exit());
        Typed signed = report(desk, "F-1", "--sign", "approved", "--by", "Quality lead");
        assertEquals(0, signed.exit(), signed::toString);

        Path again = folder.resolve("again");
        assertEquals(
                0,
                Typed.line("first-article", "--store", desk, "--identifier", "F-1", "--out", again)
                        .exit());
        List<Path> files = Typed.files(again);
        assertEquals(4, files.size());
        for (Path file : files) {
            assertArrayEquals(
                    Files.readAllBytes(out.resolve("fair").resolve(file.getFileName())), Files.readAllBytes(file));
        }
        assertEquals(0, Typed.line("verify", desk).exit());
    }

    @Test
    void aPartialOneStandsOnTheRunOfItsOwnStation() throws Exception {
        Typed drawn = drawnUp(desk, "F-2", "--run", at(store, "WA-5-A-2"));
        assertEquals(0, drawn.exit(), drawn::toString);
        assertTrue(form("F-2", 1).contains("\"WA-5 A, " + at(store, "WA-5-A-1") + "\""), form("F-2", 1));
    }

    /** The mill measured a part of the same name that it is not. */
    @Test
    void aRunOfAnotherStationCalledAlikeIsNotTakenForIt() throws Exception {
        walked(mill, "1", "");
        handOver(mill);
        Typed refused = drawnUp(desk, "F-2", "--run", at(store, "WA-5-A-2"), "--baseline", at(mill, "WA-5-A-1"));
        assertTrue(refused.trouble().contains("says something else"), refused::toString);
    }

    @Test
    void whatTheStationEntersLaterIsSaidOnceItComesIn() throws Exception {
        drawnUp(desk, "F-1", "--run", at(mill, "WA-5-A-7"));
        Typed before = report(desk, "F-1");
        assertEquals(0, before.exit(), before::toString);
        noted(mill);
        handOver(mill);
        Typed after = report(desk, "F-1");
        assertEquals(1, after.exit(), after::toString);
        assertTrue(after.out().stream().anyMatch(line -> line.contains("since the report was drawn up")));
    }

    private void noted(Path station) throws IOException {
        try (var ledger = new SqliteStores().open(station)) {
            new Runs(ledger, Clock.systemUTC()).open("WA-5-A-7").note("A burr was found later");
        } catch (Exception e) {
            throw new IOException(e);
        }
    }
}
