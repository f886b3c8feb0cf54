package org.tenthwise.app.export.pdf;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.tenthwise.app.picture.RecordingPen;
import org.tenthwise.model.plan.Step;
import org.tenthwise.model.record.Sheet;
import org.tenthwise.model.words.Words;

/** The pages of a record, laid out once a scene, then looked at from every side. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class RecordPagesTest {

    /** 8¼ pt. */
    private static final double LEAST_LETTERING = 11;

    private final Map<Scene, List<RecordingPen>> kept = new EnumMap<>(Scene.class);

    @ParameterizedTest
    @EnumSource(Scene.class)
    void noTextLiesOnAnotherAndNothingLeavesThePage(Scene scene) {
        List<String> faults = new ArrayList<>();
        List<RecordingPen> drawn = drawn(scene);
        for (int i = 0; i < drawn.size(); i++) {
            int page = i + 1;
            drawn.get(i).faults(Paper.A4.frame()).forEach(fault -> faults.add("page " + page + ": " + fault));
        }
        assertEquals(List.of(), faults);
    }

    @ParameterizedTest
    @EnumSource(
            value = Scene.class,
            names = {"FAILED", "INCH_FAILED", "LONG_NAMES"})
    void onLetterPaperNothingLeavesThePageEither(Scene scene) {
        List<String> faults = PrintedPages.of(Words.ENGLISH, Paper.LETTER, scene.evidence()).stream()
                .flatMap(pen -> pen.faults(Paper.LETTER.frame()).stream())
                .toList();
        assertEquals(List.of(), faults);
    }

    @ParameterizedTest
    @EnumSource(Scene.class)
    void noLetteringIsTooSmallToRead(Scene scene) {
        drawn(scene).stream()
                .flatMap(pen -> pen.lettered().stream())
                .forEach(text ->
                        assertTrue(text.size() >= LEAST_LETTERING, text.text() + " is lettered at " + text.size()));
    }

    @ParameterizedTest
    @EnumSource(Scene.class)
    void aRecordOfAnUnfinishedRunSaysSoOnEveryPage(Scene scene) {
        boolean unfinished = scene.evidence().sheet().run().closed().isEmpty();
        drawn(scene)
                .forEach(pen -> assertEquals(unfinished, PrintedPages.text(pen).contains("The run is not closed.")));
    }

    @ParameterizedTest
    @EnumSource(Scene.class)
    void everyCharacteristicStandsInTheTableAndInTheDetails(Scene scene) {
        List<String> texts =
                drawn(scene).stream().flatMap(pen -> pen.texts().stream()).toList();
        Sheet sheet = scene.evidence().sheet();
        for (Step step : sheet.plan().steps()) {
            long times =
                    texts.stream().filter(String.valueOf(step.number())::equals).count();
            boolean isInTable = step.isOfDrawing()
                    || !sheet.line(step.number()).finding().verdict().passed();
            assertTrue(times >= (isInTable ? 2 : 1), step.number() + " stands " + times + " times");
        }
    }

    /** The heading of a characteristic and its picture are not parted: less than they need may be left empty. */
    @ParameterizedTest
    @EnumSource(
            value = Scene.class,
            names = {"PASSED", "FAILED", "INCH_PASSED", "INCH_FAILED"})
    void noPageOfReadingsButTheLastIsLeftEmptierThanTheNextCharacteristicNeeds(Scene scene) {
        List<RecordingPen> drawn = drawn(scene);
        List<RecordingPen> annex = drawn.subList(2, drawn.size() - 1);
        assertTrue(annex.size() > 2, "hardly any page was looked at");
        for (RecordingPen pen : annex) {
            double foot = pen.lettered().stream()
                    .filter(text -> text.text().startsWith("Run of "))
                    .mapToDouble(text -> text.box().top())
                    .max()
                    .orElseThrow();
            double lowest = pen.lettered().stream()
                    .mapToDouble(text -> text.box().bottom())
                    .filter(bottom -> bottom < foot)
                    .max()
                    .orElseThrow();
            assertTrue(foot - lowest < 360, () -> "%.0f pixels are empty under: %s"
                    .formatted(foot - lowest, PrintedPages.text(pen)));
        }
    }

    /** "Entry" is the head of every table of readings; above it on its page stands what the readings are of. */
    @ParameterizedTest
    @EnumSource(
            value = Scene.class,
            names = {"NOT_BEGUN", "LONG_NAMES", "PROVEN_ELSEWHERE"},
            mode = EnumSource.Mode.EXCLUDE)
    void everyTableOfReadingsNamesItsCharacteristicOnItsPage(Scene scene) {
        List<String> names =
                scene.evidence().sheet().plan().steps().stream().map(Step::name).toList();
        int tables = 0;
        for (RecordingPen pen : drawn(scene)) {
            List<String> texts = pen.texts();
            for (int i = 0; i < texts.size() - 1; i++) {
                if (texts.get(i).equals("Entry") && List.of("Place", "Answer").contains(texts.get(i + 1))) {
                    String above = String.join(" ", texts.subList(0, i));
                    assertTrue(names.stream().anyMatch(above::contains), above);
                    tables++;
                }
            }
        }
        assertTrue(tables > 0, "no table was printed");
    }

    /** Whoever looks at one page alone knows of what it tells. */
    @ParameterizedTest
    @EnumSource(
            value = Scene.class,
            names = {"FAILED", "LAPSED", "INCH_FAILED", "LONG_NAMES"})
    void whatIsToldOfACharacteristicNamesItOnItsPage(Scene scene) {
        List<String> names =
                scene.evidence().sheet().plan().steps().stream().map(Step::name).toList();
        List<String> told = Stream.of("operation", "uncertainty", "found", "expansion", "hold", "disposition")
                .map(fact -> Words.ENGLISH.say("record.fact." + fact))
                .toList();
        int pages = 0;
        for (RecordingPen pen : drawn(scene)) {
            List<String> texts = pen.texts();
            OptionalInt first = IntStream.range(0, texts.size())
                    .filter(i -> told.contains(texts.get(i)) && !texts.contains("Verdict"))
                    .findFirst();
            if (first.isPresent()) {
                String above = String.join(" ", texts.subList(0, first.getAsInt()));
                assertTrue(names.stream().anyMatch(above::contains), above);
                pages++;
            }
        }
        assertTrue(pages > 3, "told on " + pages + " pages");
    }

    private List<RecordingPen> drawn(Scene scene) {
        return kept.computeIfAbsent(scene, any -> PrintedPages.of(Words.ENGLISH, any.evidence()));
    }
}
