package org.tenthwise.app.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.tenthwise.model.quantity.TemperatureScale.CELSIUS;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.tenthwise.app.session.Runs;
import org.tenthwise.app.store.KeptEntries;
import org.tenthwise.app.store.sqlite.SqliteStores;
import org.tenthwise.checklists.catalogue.DemoPart;
import org.tenthwise.model.plan.MeasuredBody;
import org.tenthwise.model.quantity.Degrees;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.run.Pass;

/** Figures of a readings file on a walk: struck out, slips, other units, and those that no sum takes. */
class WalkReadingsTest extends Walking {

    private static String upToTheBore() {
        String sample = DemoPart.SCREW_CARRIER.passingReadings();
        return sample.substring(0, sample.indexOf("[[step]]\nnumber = 14"));
    }

    @Test
    void aReadingIsStruckOutAndTakenAgain() throws Exception {
        Typed typed = walkWith(
                "\"70.04\", \"70.02\"", "{ reading = \"70.40\", struck = \"Jaws not closed.\" }, \"70.04\", \"70.02\"");
        assertEquals(0, typed.exit(), typed::toString);
        try (KeptEntries kept = new SqliteStores().openToRead(store)) {
            assertEquals(
                    List.of("70.40 struck", "70.04", "70.02"),
                    Runs.sheet(kept, "LG-2207-C-014").line(7).passes().get(0).readings().stream()
                            .map(reading ->
                                    reading.typed().text() + (reading.struck().isPresent() ? " struck" : ""))
                            .toList());
        }
    }

    @Test
    void withoutTheTemperaturesThatMatterACheckStaysOpen() throws Exception {
        Typed typed = walkReadings(
                replaced(upToTheBore(), "part_temperature = \"22.8\"\ngauge_temperature = \"20.5\"\n", ""));
        assertEquals(1, typed.exit());
        assertEquals(
                "13|Bore Ø30 H7|30.015 so far|Open|2 temperatures to take.",
                Typed.columns(typed.out().get(12)));
    }

    @Test
    void aTemperatureThatLooksLikeASlipIsRefusedUnlessTheFileSaysThatItIsMeant() throws Exception {
        Typed typed = walkReadings(replaced(upToTheBore(), "\"22.8\"", "\"73.0\""));
        assertEquals(2, typed.exit(), typed::toString);
        assertTrue(typed.trouble().contains(" is far off: about 18\u201323 is expected."), typed.trouble());
        assertEquals(
                1,
                walkReadings(replaced(upToTheBore(), "\"22.8\"", "{ reading = \"73.0\", keep = true }"))
                        .exit());
        try (KeptEntries kept = new SqliteStores().openToRead(store)) {
            assertEquals(
                    Optional.of(Degrees.of("73.0", CELSIUS)),
                    Runs.sheet(kept, "LG-2207-C-014-2").line(13).passes().get(1).temperature(MeasuredBody.PART));
        }
    }

    @Test
    void aReadingThatLooksLikeASlipIsRefusedUnlessTheFileSaysThatItIsMeant() throws Exception {
        Typed typed = walkWith("\"70.04\", \"70.02\"", "\"7.004\", \"70.02\"");
        assertEquals(2, typed.exit(), typed::toString);
        assertTrue(typed.trouble().startsWith("Check 7: 7.004 is far off: about 70.000 is expected."), typed.trouble());
        Typed kept = walkWith("\"70.04\", \"70.02\"", "{ reading = \"7.004\", keep = true }, \"70.02\"");
        assertEquals(1, kept.exit(), kept::toString);
        assertTrue(kept.out().get(6).contains(" 7.004 "), kept.out().get(6));
    }

    @Test
    void aFigureInTheOtherUnitIsKeptAsTypedAndConvertedExactly() throws Exception {
        Typed typed = walkWith("\"70.04\", \"70.02\"", "{ reading = \"2.7575\", unit = \"in\" }, \"70.02\"");
        assertEquals(0, typed.exit(), typed::toString);
        try (KeptEntries kept = new SqliteStores().openToRead(store)) {
            Pass.Reading read = Runs.sheet(kept, "LG-2207-C-014")
                    .line(7)
                    .passes()
                    .get(0)
                    .readings()
                    .get(0);
            assertEquals(new Written("2.7575", Unit.INCH), read.typed());
            // 2.7575 × 25.4 = 70.0405, by hand
            assertEquals(Length.of("70.0405", Unit.MILLIMETRE), read.typed().length());
        }
        // four places of an inch are known to three of a millimetre
        assertTrue(typed.out().get(6).contains(" 70.041 "), typed.out().get(6));
    }

    @Test
    void aMasterFarOffThePlansIsRefused() throws Exception {
        Typed typed = walkReadings(DemoPart.SCREW_CARRIER
                .passingReadings()
                .replaceAll("certified = \"30\\.[0-9]+\"", "certified = \"30.900\""));
        assertEquals(2, typed.exit(), typed::toString);
        assertTrue(
                typed.trouble().startsWith("Check 13: 30.900 is far off: about 30.000 is expected."), typed.trouble());
    }

    /** Wires 0.080 larger than they are said to be make every size come out 0.240 too large. */
    @Test
    void wiresFarOffThePlansAreTakenOnlyWhereTheyAreMeant() throws Exception {
        Typed typed = walkWith("certified = \"3.620\"", "certified = \"3.700\"");
        assertEquals(2, typed.exit(), typed::toString);
        assertTrue(typed.trouble().startsWith("Check 21: 3.700 is far off: about 3.620 is expected."), typed.trouble());
        Typed meant = walkReadings(replaced(
                passing("certified = \"3.620\"", "certified = \"3.700\", keep = true"),
                "\"40.742\", \"40.755\", \"40.749\"",
                "\"40.982\", \"40.995\", \"40.989\""));
        assertEquals(0, meant.exit(), meant::toString);
    }

    @Test
    void aReadingNoSumCanBeDoneWithStopsTheWalkAndKeepsWhatWasTaken() throws Exception {
        Typed typed = walkWith("\"70.04\", \"70.02\"", "\"-70.04\", \"70.02\"");
        assertEquals(
                "Check 7: It must be more than zero. (-70.04) What was taken before it is saved as "
                        + "run LG-2207-C-014. Correct the readings file.",
                typed.trouble());
        assertEquals(0, Typed.line("verify", store).exit());
    }

    @Test
    void everyProblemOfAReadingsFileIsALine() throws Exception {
        Path readings = file("r.toml", replaced(passing("serial = \"014\"\n", ""), "\"70.04\"", "70.04"));
        Typed typed = walk("LG-2207", readings);
        assertEquals(2, typed.exit());
        assertEquals(2, typed.err().size(), typed.err()::toString);
        assertTrue(typed.err().stream().allMatch(line -> line.startsWith(readings + ":")));
        assertFalse(Files.exists(store));
    }
}
