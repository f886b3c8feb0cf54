package org.tenthwise.app.export.pdf;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.tenthwise.app.export.Evidence;
import org.tenthwise.app.export.Records;
import org.tenthwise.app.picture.RecordingPen;
import org.tenthwise.app.store.Occasions;
import org.tenthwise.app.text.TestLanguage;
import org.tenthwise.checklists.catalogue.DemoPart;
import org.tenthwise.checklists.catalogue.ExamplePart;
import org.tenthwise.checklists.rules.ReadingsFile;
import org.tenthwise.model.run.Event;
import org.tenthwise.model.run.SignedAs;
import org.tenthwise.model.words.Words;

/** What a printed record says. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class RecordWordsTest {

    private final Map<Scene, List<RecordingPen>> kept = new EnumMap<>(Scene.class);

    @ParameterizedTest
    @EnumSource(Scene.class)
    void everyPageHasItsNumberAndTheRemarkOfThePlan(Scene scene) {
        List<RecordingPen> drawn = drawn(scene);
        for (int i = 0; i < drawn.size(); i++) {
            says(
                    PrintedPages.text(drawn.get(i)),
                    "Page %d of %d".formatted(i + 1, drawn.size()),
                    "Invented part, for trying out");
        }
    }

    @Test
    void aStruckOutReadingStaysWithItsReasonItsPersonAndItsTime() {
        says(
                all(Scene.UNFINISHED),
                "46.40",
                "Struck out: Gauge stood on a chip; wiped and measured again. (Setter 2, 2026-11-25 ");
    }

    @Test
    void aCorrectionForTemperatureStandsWithWhatItRestsOn() {
        says(
                all(Scene.PASSED),
                "temperature, part 23.4 °C",
                "Corrected to 20 °C:",
                "16.2 ± 10 % in 1e-6 per °C",
                "Corrected to 20 °C, the reference temperature of ISO 1: checks 9, 13, 32. "
                        + "All others stand as they were measured or worked out.");
    }

    @Test
    void whereTemperatureDoesNotMatterThatIsSaid() {
        says(all(Scene.PASSED), "Temperature can be ignored");
    }

    @Test
    void aPartWithAConcessionIsNeverCalledAPass() {
        says(first(Scene.CONCEDED), "Conforms with one concession. Accepted by Inspector 1.");
        says(all(Scene.CONCEDED), "26 Pocket width: use as is, under concession.");
    }

    @Test
    void whatIsSignedAgainstSaysSoOnEveryPage() {
        ReadingsFile sample = Records.passing(DemoPart.SCREW_CARRIER);
        Evidence against = Records.walk(
                        DemoPart.SCREW_CARRIER, sample, sample.events().size() - 2)
                .add(new Event.Closed("Setter 2", SignedAs.MACHINED_AND_MEASURED))
                .add(new Event.Signed("Inspector 1", SignedAs.NOT_ACCEPTED))
                .evidence();
        PrintedPages.of(Words.ENGLISH, against)
                .forEach(pen -> says(PrintedPages.text(pen), "Conforms. Not accepted by Inspector 1."));
    }

    /** Twelve of its checks are for the first piece, or every fifth. */
    @Test
    void aPieceInProcessIsNoFirstPartAndLacksWhatIsNotAskedOfIt() {
        ExamplePart pin = ExamplePart.GATE_ROLLER_PIN;
        Event.Begun begun = new Event.Begun(
                pin.plan().part(),
                "003",
                "LT-341",
                "Lathe 6",
                pin.plan().source(),
                false,
                Occasions.inProcess(3),
                Optional.empty());
        Evidence evidence = new Records.Walk(pin.plan(), "Setter 3").add(begun).evidence();
        String page = PrintedPages.text(PrintedPages.of(Words.ENGLISH, evidence).get(0));
        says(page, "Inspection record", "The 12 checks of the plan that are not in this run have no result here.");
        assertFalse(page.contains("Every check of the plan"), page);
        assertFalse(page.contains("First-part record"), page);
    }

    @Test
    void whatPassedWhatIsOutLeftUncutConcededAndUnsettledAddUpToAllCharacteristics() {
        says(
                first(Scene.FAILED),
                "Does not conform, 3 set-up checks carried on: 3 of 24 characteristics out; 1 left "
                        + "uncut; 8 under concession; 3 not settled. Not accepted by Inspector 1.",
                "10 of 24 characteristics passed, 1 of them after a repair and so under concession");
    }

    @Test
    void theSameAddsUpInGermanAndSaysOnceOfHowMany() {
        says(
                PrintedPages.text(PrintedPages.of(TestLanguage.GERMAN.words(), Scene.FAILED.evidence())
                        .get(0)),
                "Nicht konform, 3 Rüstprüfungen mit Weiterarbeit: 3 von 24 Merkmalen mit Abweichung; 1 nicht "
                        + "nachgeschnitten; 8 mit Sonderfreigabe; 3 nicht abgeschlossen. Nicht angenommen von");
    }

    @Test
    void whatPassedIsCountedByClass() {
        says(
                first(Scene.PASSED),
                "24 of 24 characteristics passed; also 9 of 9 set-up checks, 2 of 2 in-process checks.");
    }

    @Test
    void aStepThatIsNoCharacteristicIsCalledByItsClass() {
        says(
                all(Scene.FAILED),
                "they are no requirements of the drawing 3 Inserts new",
                "8 OD, roughed",
                "8 OD, roughed in process");
    }

    @Test
    void whyACheckIsOpenOrUnprovenIsSaidBesideIt() {
        says(
                all(Scene.LAPSED),
                "Open 3 to go",
                "Unproven: 4.60. A reading is far off: no verdict from it.",
                "Unproven far off");
    }

    /** 1065 to the point of a drill of 8 is 1065 − 4 / tan 59° = 1062.597; 104.5 is allowed. */
    @Test
    void aFigureFarOffThatIsPastSizeIsAFailAndSaysBoth() {
        says(all(Scene.LAPSED), "Fail far off 958.1 over");
    }

    @Test
    void whatLapsedIsSaidToHaveLapsed() {
        says(
                all(Scene.LAPSED),
                "26 Pocket width: use as is, under concession. Lapsed with entry",
                "Not signed: what Setter 2, Inspector 2, Inspector 1 signed has lapsed.");
    }

    /** 1.3750 − (−0.00095 − 0.0000) = 1.37595: nothing is corrected. */
    @Test
    void whatAGaugeWasSetOnStandsWithTheReading() {
        says(all(Scene.INCH_FAILED), "Reading Correction Size", "MR-1375 = 1.3750 zero 0.0000 dial goes down");
    }

    @Test
    void aDistanceStandsBesideItsVerdictWithoutTheUnitOfTheTable() {
        String all = all(Scene.INCH_FAILED);
        says(all, "0.0004 over");
        assertFalse(all.matches(".*(Pass|Fail|Cut again|Unproven) in 0.*"), all);
    }

    /** −0.002648 for temperature and −0.187933 for the grooves, together −0.190581; each rounded for print. */
    @Test
    void ofTwoCorrectionsTheSumStandsWithItsPartsNamed() {
        says(all(Scene.WARM_GROOVES), "−0.191 temp. −0.003 contact −0.188 32.497");
    }

    @Test
    void aRepairStandsBesideWhatPassedAfterIt() {
        says(
                all(Scene.WARM_GROOVES),
                "Conforms with one concession.",
                "1 of 1 characteristics passed, 1 of them after a repair and so under concession.",
                "Round 2, after a repair.",
                "1 Root: repair. Measured or changed since, first with entry",
                "Approval number: A-7. Repaired: it counts among the concessions.");
    }

    @Test
    void theRecordNamesItsPlanAndTheHeadOfItsRunWhole() {
        Evidence passed = Scene.PASSED.evidence();
        says(
                all(Scene.PASSED),
                passed.sheet().plan().source().sha256(),
                passed.head().hash());
    }

    @Test
    void aLongTextIsThereToItsLastWord() {
        long names = List.of(all(Scene.LONG_NAMES).split("\\s+")).stream()
                .filter("Spindelmutter"::equals)
                .count();
        assertTrue(names >= 120, names + " of 120 are left of a note");
    }

    /** An indicator shows no size, and nothing is set on or corrected: the place has that room, on one line. */
    @Test
    void aTurnIsPrintedWithoutTheColumnsOfASize() {
        String all = all(Scene.FAILED);
        says(all, "half-way from jaw 1 to jaw 2, near the jaws 0.027 ");
        assertFalse(all.contains("near the jaws 0.027 0 0.027"), all);
    }

    @ParameterizedTest
    @EnumSource(
            value = Scene.class,
            names = {"PASSED", "INCH_PASSED"})
    void whoAcceptedStandsOnOnePageWithWhoBeganAndWhenItWasClosed(Scene scene) {
        List<String> signed = drawn(scene).stream()
                .map(PrintedPages::text)
                .filter(text -> text.contains("Started by Setter"))
                .toList();
        assertEquals(1, signed.size());
        says(signed.get(0), "Closed Setter", "Accepted by Inspector 1. 2026-", "the run was closed with it");
    }

    /**
     * 1.4990 and 1.5006, their middle 1.4998, wanted a third in from 1.5000 of 1.4938 to 1.5000: 0.0019 off, by steps
     * of 0.0002 on diameter 0.0018.
     */
    @Test
    void whatIsToBeDoneStandsWithACharacteristicWhileTheRunIsOpen() {
        says(all(Scene.INCH_FAILED), "To do Change the X offset by −0.0009 in on radius.");
    }

    @Test
    void nothingIsToBeDoneInARunThatIsClosed() {
        assertTrue(Scene.LAPSED.evidence().sheet().run().closed().isPresent());
        assertFalse(all(Scene.LAPSED).contains("To do "), all(Scene.LAPSED));
    }

    private static void says(String text, String... words) {
        for (String said : words) {
            assertTrue(text.contains(said), () -> "\"%s\" is not said in: %s".formatted(said, text));
        }
    }

    private String first(Scene scene) {
        return PrintedPages.text(drawn(scene).get(0));
    }

    private String all(Scene scene) {
        return drawn(scene).stream().map(PrintedPages::text).collect(Collectors.joining(" "));
    }

    private List<RecordingPen> drawn(Scene scene) {
        return kept.computeIfAbsent(scene, any -> PrintedPages.of(Words.ENGLISH, any.evidence()));
    }
}
