package org.tenthwise.app.export.pdf;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.tenthwise.app.export.Evidence;
import org.tenthwise.app.export.Records;
import org.tenthwise.app.picture.Drawing;
import org.tenthwise.app.picture.Lettering;
import org.tenthwise.app.picture.Picture;
import org.tenthwise.app.picture.RecordingPen;
import org.tenthwise.app.text.Words;
import org.tenthwise.checklists.catalogue.DemoPart;
import org.tenthwise.checklists.rules.Sample;
import org.tenthwise.model.plan.Step;
import org.tenthwise.model.run.Event;
import org.tenthwise.model.run.SignedAs;

/** Laid out once a scene, then looked at from every side. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class RecordPagesTest {

    /** 8¼ pt. */
    private static final double LEAST_LETTERING = 11;

    private final RecordPages pages = new RecordPages(Words.of(Locale.ENGLISH), new Lettering());
    private final Map<Scene, List<RecordingPen>> kept = new EnumMap<>(Scene.class);

    /** A leaf as a picture, to be looked at by a pen that keeps what it draws. */
    private record Page(Leaf leaf) implements Picture {

        @Override
        public void draw(Drawing drawing) {
            leaf.draw(drawing);
        }

        @Override
        public String spoken() {
            return "";
        }
    }

    @ParameterizedTest
    @EnumSource(Scene.class)
    void noTextLiesOnAnotherAndNothingLeavesThePage(Scene scene) {
        List<String> faults = new ArrayList<>();
        List<RecordingPen> drawn = drawn(scene);
        for (int i = 0; i < drawn.size(); i++) {
            int page = i + 1;
            drawn.get(i).faults(Leaf.FRAME).forEach(fault -> faults.add("page " + page + ": " + fault));
        }
        assertEquals(List.of(), faults);
    }

    @ParameterizedTest
    @EnumSource(Scene.class)
    void noLetteringIsTooSmallToRead(Scene scene) {
        drawn(scene).stream().flatMap(pen -> pen.lettered().stream()).forEach(text ->
                assertTrue(text.size() >= LEAST_LETTERING, text.text() + " is lettered at " + text.size()));
    }

    @ParameterizedTest
    @EnumSource(Scene.class)
    void everyPageHasItsNumberAndTheRemarkOfThePlan(Scene scene) {
        List<RecordingPen> drawn = drawn(scene);
        for (int i = 0; i < drawn.size(); i++) {
            String text = text(drawn.get(i));
            assertTrue(text.contains("Page %d of %d".formatted(i + 1, drawn.size())), text);
            assertTrue(text.contains("Invented part, for trying out"), text);
        }
    }

    @ParameterizedTest
    @EnumSource(Scene.class)
    void aRecordOfAnUnfinishedRunSaysSoOnEveryPage(Scene scene) {
        boolean unfinished = scene.evidence().sheet().run().closed().isEmpty();
        drawn(scene).forEach(pen -> assertEquals(unfinished, text(pen).contains("The run is not closed.")));
    }

    @ParameterizedTest
    @EnumSource(Scene.class)
    void everyCharacteristicStandsInTheTableAndInTheDetails(Scene scene) {
        List<String> texts = drawn(scene).stream().flatMap(pen -> pen.texts().stream()).toList();
        for (Step step : scene.evidence().sheet().plan().steps()) {
            long times = texts.stream().filter(String.valueOf(step.number())::equals).count();
            assertTrue(times >= 2, step.number() + " stands " + times + " times");
        }
    }

    @Test
    void aStruckOutReadingStaysWithItsReasonItsPersonAndItsTime() {
        String text = all(Scene.UNFINISHED);
        assertTrue(text.contains("46.40"), text);
        assertTrue(text.contains("Struck out: Gauge stood on a chip; wiped and measured again. (Setter 2, 2026-11-25 "), text);
    }

    @Test
    void aCorrectionForTemperatureStandsWithWhatItRestsOn() {
        String text = all(Scene.PASSED);
        assertTrue(text.contains("temperature, part 23.4 °C"), text);
        assertTrue(text.contains("Brought to 20 °C by"), text);
        assertTrue(text.contains("16.2 ± 10 % in 1e-6 per °C"), text);
        assertTrue(text.contains("Corrected for temperature, each with its own figures: characteristic 9, 13, 32."), text);
        assertTrue(text.contains("Temperature does not matter here"), text);
    }

    @Test
    void aPartWithAConcessionIsNeverCalledAPass() {
        String first = text(drawn(Scene.CONCEDED).get(0));
        assertTrue(first.contains("Conforms with one concession. Accepted by Inspector 1."), first);
        assertTrue(all(Scene.CONCEDED).contains("26 Pocket width: use as it is, by concession."), all(Scene.CONCEDED));
    }

    @Test
    void whatIsSignedAgainstSaysSoInItsHeadingOnEveryPageAndAmongTheSignatures() {
        Sample sample = Records.passing(DemoPart.SCREW_CARRIER);
        Evidence against = Records.walk(DemoPart.SCREW_CARRIER, sample, sample.events().size() - 1)
                .add(new Event.Closed("Setter 2", SignedAs.MACHINED_AND_MEASURED))
                .add(new Event.Signed("Inspector 1", SignedAs.NOT_ACCEPTED)).evidence();
        List<RecordingPen> drawn = pages.of(against).stream().map(leaf -> RecordingPen.of(new Page(leaf), Leaf.FRAME)).toList();
        drawn.forEach(pen -> assertTrue(text(pen).contains("Conforms. Not accepted by Inspector 1."), text(pen)));
        String all = drawn.stream().map(RecordPagesTest::text).collect(Collectors.joining(" "));
        assertTrue(all.contains("Machined and measured by Setter 2."), all);
        assertTrue(all.contains("24 of 24 characteristics passed; beside them 9 of 9 set-up steps, 2 of 2 steps in process."), all);
    }

    @Test
    void whatPassedWhatIsOutLeftUncutConcededAndUnsettledAddUpToAllCharacteristics() {
        String first = text(drawn(Scene.FAILED).get(0));
        assertTrue(first.contains("Does not conform, 3 set-up steps carried on: 3 of 24 characteristics out; 1 of 24 characteristics still to be cut; "
                + "8 of 24 characteristics by concession; 3 of 24 characteristics not settled."), first);
        assertTrue(first.contains("10 of 24 characteristics passed, 1 of them after a repair and so by concession"), first);
    }

    @Test
    void aStepThatIsNoCharacteristicIsCalledByItsClass() {
        String all = all(Scene.FAILED);
        assertTrue(all.contains("3 Tips, new set-up"), all);
        assertTrue(all.contains("8 Outside, roughed in process, MC-3"), all);
        assertTrue(all.contains("Class in process"), all);
    }

    @Test
    void whatLapsedAndWhyACheckIsOpenOrUnprovenAreSaidBesideIt() {
        String all = all(Scene.LAPSED);
        assertTrue(all.contains("Open 3 to take"), all);
        assertTrue(all.contains("Unproven: 4.60. A figure is far off: nothing is judged from it."), all);
        assertTrue(all.contains("Unproven far off"), all);
        assertTrue(all.contains("Fail far off 958.1 over"), all);
        assertTrue(all.contains("26 Pocket width: use as it is, by concession. Lapsed with entry"), all);
        assertTrue(all.contains("Not signed: what Setter 2, Inspector 2, Inspector 1 signed has lapsed."), all);
    }

    /** 1.3750 − (−0.00095 − 0.0000) = 1.37595: nothing is corrected. */
    @Test
    void whatAGaugeWasSetOnStandsInAColumnOfItsOwn() {
        String all = all(Scene.INCH_FAILED);
        assertTrue(all.contains("Reading Set on Correction Size"), all);
        assertTrue(all.contains("MR-1375 = 1.3750 zero 0.0000 number falls −0.00095 0 1.37595"), all);
        assertTrue(all.contains("0.0004 over"), all);
        assertTrue(all.contains("0.0049 inside"), all);
        assertFalse(all.matches(".*(Pass|Fail|Cut again|Unproven) in 0.*"), all);
    }

    /** −0.002648 for temperature and −0.187933 for the grooves, together −0.190581; each rounded for print. */
    @Test
    void ofTwoCorrectionsTheSumStandsWithItsPartsNamed() {
        String all = all(Scene.WARM_GROOVES);
        assertTrue(all.contains("−0.191 heat −0.003 contact −0.188 32.497"), all);
    }

    @Test
    void aRepairStandsBesideWhatPassedAfterIt() {
        String all = all(Scene.WARM_GROOVES);
        assertTrue(all.contains("Conforms with one concession."), all);
        assertTrue(all.contains("1 of 1 characteristics passed, 1 of them after a repair and so by concession."), all);
        assertTrue(all.contains("Pass 2, after a repair."), all);
        assertTrue(all.contains("1 Root: repair. Measured or changed since, first with entry"), all);
        assertTrue(all.contains("Number of the approval: A-7. Repaired: it counts among the concessions."), all);
    }

    @Test
    void theRecordNamesItsPlanAndTheHeadOfItsRunWhole() {
        String text = all(Scene.PASSED);
        assertTrue(text.contains(Scene.PASSED.evidence().sheet().plan().source().sha256()), text);
        assertTrue(text.contains(Scene.PASSED.evidence().head().hash()), text);
    }

    @Test
    void aLongTextIsThereToItsLastWord() {
        long names = List.of(all(Scene.LONG_NAMES).split("\\s+")).stream().filter("Spindelmutter"::equals).count();
        assertTrue(names >= 120, names + " of 120 are left of a note");
    }

    private String all(Scene scene) {
        return drawn(scene).stream().map(RecordPagesTest::text).collect(Collectors.joining(" "));
    }

    private static String text(RecordingPen pen) {
        return String.join(" ", pen.texts());
    }

    private List<RecordingPen> drawn(Scene scene) {
        return kept.computeIfAbsent(scene, any -> pages.of(any.evidence()).stream()
                .map(leaf -> RecordingPen.of(new Page(leaf), Leaf.FRAME)).toList());
    }
}
