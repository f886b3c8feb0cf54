package org.tenthwise.app.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.tenthwise.checklists.catalogue.ExamplePart;

/** What whoever fills a customer's form finds in its fields. */
class FilledFormsTest extends ReportsAtHand {

    private static final Pattern CORRECTED =
            Pattern.compile("corrected to 20 °C from 30\\.\\d+ to 30\\.\\d+, part at 22\\.8 °C, gauge at 20\\.5 °C");

    private Typed ofTheScrewCarrier(String readings, Object... more) {
        walk("LG-2207", readings);
        return report(store, "F-1", together(List.of("--part", "LG-2207", "--by", "Planner 1"), List.of(more)));
    }

    private Map<String, String> balloon(String number) throws IOException {
        return rows("F-1", 3).stream()
                .filter(row -> row.get("5 Char. no.").equals(number))
                .findFirst()
                .orElseThrow();
    }

    /** Somebody who reads the bore again in the warm finds another figure than field 9. */
    @Test
    void aSizeBroughtToTwentyDegreesSaysFromWhichReadingsAndTemperatures() throws IOException {
        ofTheScrewCarrier("LG-2207-pass");
        assertEquals("30.010 to 30.014", balloon("13").get("9 Results"));
        String more = balloon("13").get("12 Additional data");
        assertTrue(CORRECTED.matcher(more).matches(), more);
        assertEquals("", balloon("28").get("12 Additional data"));
    }

    @Test
    void toolingIsTheSizeOfALimitGaugeOrTheNumberOfOneMadeForThePart() throws IOException {
        ofTheScrewCarrier("LG-2207-pass");
        assertEquals("Limit gauge Ø8 +0.2/0", balloon("19").get("10 Designed/qualified tooling"));
        assertEquals("Gauge TR-40", balloon("24").get("10 Designed/qualified tooling"));
        assertEquals("", balloon("13").get("10 Designed/qualified tooling"));
    }

    @Test
    void theEarlierEditionHasSignatureAndDateInTheirPlace() throws IOException {
        walked(store, "1", "");
        drawnUp(store, "F-1", "--edition", "B");
        report(store, "F-1", "--sign", "verified", "--by", "Inspector 1");
        Map<String, String> first = rows("F-1", 3).get(0);
        assertEquals(
                List.of("5", "6", "7", "8", "9", "10", "11", "12", "13", "14"),
                form("F-1", 3).lines().findFirst().stream()
                        .flatMap(heads -> Pattern.compile(",").splitAsStream(heads))
                        .map(head -> head.split(" ")[0])
                        .filter(number -> number.matches("\\d+"))
                        .toList());
        assertEquals("Inspector 1", first.get("12 Signature"));
        assertTrue(first.get("13 Date").matches("\\d{4}-\\d\\d-\\d\\d"), first::toString);
        assertTrue(form("F-1", 2).lines().findFirst().orElseThrow().endsWith("13 Comments,14 Signature,15 Date"));
    }

    @Test
    void aGaugeStandsWithItsCertificateAndItsDueDay() throws IOException {
        walked(store, "1", "");
        drawnUp(store, "F-1");
        Map<String, String> first = rows("F-1", 3).get(0);
        assertEquals("MC-1", first.get("gauge"));
        assertEquals("MC-1: K-77", first.get("gauge certificate"));
        assertEquals("MC-1: 2099-01-31", first.get("gauge due"));
        assertEquals("", first.get("12 Additional data"));
    }

    @Test
    void whatWasReadWithAGaugePastItsDueDaySaysSo() throws IOException {
        ofTheScrewCarrierWith(
                "certificate = \"K-5797\"\ndue = \"2038-02-28\"", "certificate = \"K-9\"\ndue = \"2020-01-31\"");
        assertEquals("CA-1 was past its due day, 2020-01-31", balloon("28").get("12 Additional data"));
    }

    private void ofTheScrewCarrierWith(String insteadOf, String something) throws IOException {
        walkWith(insteadOf, something);
        report(store, "F-1", "--part", "LG-2207", "--by", "Planner 1");
    }

    /** By hand: the fourth lies 0.401 off in X, so 0.80 of 0.25 at the most. */
    @Test
    void ofSeveralHolesEachPositionIsThereWhereOneIsOut() throws IOException {
        ExamplePart pin = ExamplePart.GATE_ROLLER_PIN;
        walk(
                file("plan.toml", pin.planText()),
                file(
                        "readings.toml",
                        replaced(pin.passingReadings(), "\"24.75\", \"-24.80\"", "\"25.15\", \"-24.80\"")));
        report(store, "F-1", "--part", "GR-341", "--by", "Planner 1");
        assertTrue(
                balloon("28").get("9 Results").matches("1: 0\\.\\d+; 2: 0\\.\\d+; 3: 0\\.\\d+; 4: 0\\.8\\d+"),
                balloon("28")::toString);
    }

    @Test
    void ofSeveralHolesTheLeastAndTheGreatestPositionAreThereAndHowFarTheOneThatDecidesMayGo() throws IOException {
        ExamplePart pin = ExamplePart.GATE_ROLLER_PIN;
        walk(file("plan.toml", pin.planText()), file("readings.toml", pin.passingReadings()));
        report(store, "F-1", "--part", "GR-341", "--by", "Planner 1");
        assertTrue(balloon("28").get("9 Results").matches("0\\.\\d+ to 0\\.103"), balloon("28")::toString);
        assertTrue(balloon("28").get("12 Additional data").endsWith("0.103 may be 0.25 mm with the bonus of size"));
    }

    @Test
    void whatNobodyReadByItselfSaysOfWhichCharacteristicsItIsMade() throws IOException {
        ExamplePart pin = ExamplePart.GATE_ROLLER_PIN;
        walk(file("plan.toml", pin.planText()), file("readings.toml", pin.passingReadings()));
        report(store, "F-1", "--part", "GR-341", "--by", "Planner 1");
        assertTrue(balloon("38").get("12 Additional data").matches("worked out of .*\\d.*"), balloon("38")::toString);
    }
}
