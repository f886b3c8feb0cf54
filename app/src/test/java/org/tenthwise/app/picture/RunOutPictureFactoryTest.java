package org.tenthwise.app.picture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.tenthwise.app.text.RunOutAtHand;
import org.tenthwise.app.ui.picture.Sheets;
import org.tenthwise.model.plan.Holding;
import org.tenthwise.model.words.Words;

/** What is drawn of a run-out as it stands: moves only while there is something to move, and only at what moves. */
class RunOutPictureFactoryTest {

    private static final Frame RUN = Frame.screen(646, 313, 1);
    private static final String[] TOWARDS_ONE_AND_TWO = {"0.032", "0.024", "0.000", "0.008"};
    private static final String[] INSIDE = {"0.012", "0.006", "0.000", "0.006"};
    /**
     * 0.014 towards jaw 1 near the jaws; far out 0.036 towards half-way from jaw 2 to jaw 3; both with a little form.
     */
    private static final String[] NEAR = {"0.029", "0.024", "0.014", "0.005", "0.001", "0.004", "0.014", "0.025"};

    private static final String[] FAR = {"-0.026", "0.001", "0.025", "0.036", "0.026", "-0.001", "-0.025", "-0.036"};

    private final Sheets sheets = new Sheets();

    private static Picture picture(RunOutAtHand atHand) {
        return new Pictures(Words.of(Locale.ENGLISH))
                .of(atHand.sheet(), atHand.line())
                .orElseThrow();
    }

    private static List<String> texts(RunOutAtHand atHand) {
        return RecordingPen.of(picture(atHand), RUN).texts();
    }

    /** Nobody trues up by a run that takes nothing any more, nor what someone signed for as it stands. */
    @Test
    void onceItIsSignedForOrTheRunIsClosedNoJawIsToldToMove() {
        List<String> open = texts(RunOutAtHand.one(Holding.FOUR_JAW).near(TOWARDS_ONE_AND_TWO));
        List<String> signed = texts(
                RunOutAtHand.one(Holding.FOUR_JAW).near(TOWARDS_ONE_AND_TWO).signedFor());
        List<String> closed = texts(
                RunOutAtHand.one(Holding.FOUR_JAW).near(TOWARDS_ONE_AND_TWO).closed());
        assertFalse(signed.contains("loosen"), signed::toString);
        assertTrue(open.contains("loosen"), open::toString);
        assertFalse(closed.contains("loosen"), closed::toString);
    }

    @Test
    void ofFourJawsOneGoesInAndTheOneOppositeIsLoosened() {
        List<String> texts = texts(RunOutAtHand.one(Holding.FOUR_JAW).near(TOWARDS_ONE_AND_TWO));
        assertTrue(
                texts.containsAll(List.of("in 0.016", "in 0.008", "loosen", "jaw 1", "jaw 2", "read this way")),
                texts::toString);
        assertEquals(2, texts.stream().filter("loosen"::equals).count());
    }

    @ParameterizedTest
    @EnumSource(value = Holding.class, mode = EnumSource.Mode.EXCLUDE, names = "FOUR_JAW")
    void whatCannotBeMovedByAJawShowsNoMove(Holding holding) {
        List<String> texts = texts(RunOutAtHand.one(holding).near(TOWARDS_ONE_AND_TWO));
        assertFalse(
                texts.stream()
                        .anyMatch(text -> text.startsWith("in ") || text.startsWith("shim ") || text.equals("loosen")),
                texts::toString);
        assertEquals(
                holding.jaws(),
                Stream.of("1", "2", "3", "4").filter(texts::contains).count(),
                texts::toString);
        assertEquals(
                holding == Holding.FACE_PLATE || holding == Holding.STEADY,
                texts.contains("mallet 0.018"),
                texts::toString);
    }

    @ParameterizedTest
    @EnumSource(Holding.class)
    void whatPassedShowsNoMoveAndNoWay(Holding holding) {
        List<String> texts = texts(RunOutAtHand.one(holding).near(INSIDE).nearSwept("0.012", "0.000"));
        assertFalse(
                texts.stream()
                        .anyMatch(text -> text.startsWith("in ")
                                || text.startsWith("mallet ")
                                || text.equals("loosen")
                                || text.equals("read this way")
                                || text.equals("stays after the move")),
                texts::toString);
        assertTrue(texts.containsAll(List.of("run-out 0.012", "highest", "lowest")), texts::toString);
    }

    /** Points and turn that contradict each other, and what is form alone, name no move either. */
    @Test
    void whatIsNotToBeMovedShowsNoMove() {
        List<String> contradiction = texts(
                RunOutAtHand.one(Holding.FOUR_JAW).near(TOWARDS_ONE_AND_TWO).nearSwept("0.021", "0.000"));
        List<String> form = texts(RunOutAtHand.one(Holding.FOUR_JAW).near("0.0260", "-0.0105", "-0.0050", "-0.0105"));
        assertFalse(Stream.of(contradiction, form)
                .flatMap(List::stream)
                .anyMatch(text -> text.startsWith("in ") || text.equals("loosen")));
    }

    @Test
    void placesWithoutJawsAreCountedFromTheMark() {
        List<String> texts = texts(RunOutAtHand.one(Holding.COLLET).near("0.032", "0.024"));
        assertTrue(
                texts.containsAll(List.of("mark", "mark + 90\u00b0", "mark + 180\u00b0", "mark + 270\u00b0")),
                texts::toString);
    }

    @Test
    void twoSectionsHaveTheJawsAtTheNearOneAndTheMalletFarOut() {
        RunOutAtHand atHand = RunOutAtHand.two(Holding.FOUR_JAW)
                .near(NEAR)
                .nearSwept("0.030", "0.000")
                .far(FAR)
                .farSwept("0.036", "-0.037");
        RunOutSections sections = (RunOutSections) picture(atHand);
        assertEquals(
                List.of("near the jaws, 20", "far out, 150"),
                sections.sections().stream()
                        .map(RunOutSections.SectionRing::name)
                        .toList());
        RunOutPicture near = sections.sections().get(0).ring();
        RunOutPicture far = sections.sections().get(1).ring();
        assertEquals(
                List.of("in 0.014", "", "loosen", ""),
                near.jaws().stream().map(RunOutPicture.Jaw::words).toList());
        assertTrue(near.hints().tap().isEmpty() && !near.hints().farOut());
        assertTrue(far.hints().tap().isPresent() && far.hints().farOut());
        assertTrue(far.jaws().stream().allMatch(jaw -> jaw.words().isEmpty()));
        assertEquals("run-out 0.030", near.movement().orElseThrow().words());
        assertEquals("run-out 0.073", far.movement().orElseThrow().words());
    }

    @Test
    void picturesAreSavedToBeLookedAt() {
        save(
                "two-sections",
                RunOutAtHand.two(Holding.FOUR_JAW)
                        .near(NEAR)
                        .nearSwept("0.030", "0.000")
                        .far(FAR)
                        .farSwept("0.036", "-0.037"));
        save("two-sections-open", RunOutAtHand.two(Holding.FOUR_JAW).near(NEAR));
        save(
                "two-sections-passed",
                RunOutAtHand.two(Holding.FOUR_JAW).nearSwept("0.010", "0.000").farSwept("0.012", "-0.001"));
        save(
                "three-jaws",
                RunOutAtHand.one(Holding.THREE_JAW).near(TOWARDS_ONE_AND_TWO).nearSwept("0.034", "-0.002"));
        save(
                "face-plate",
                RunOutAtHand.one(Holding.FACE_PLATE).near(TOWARDS_ONE_AND_TWO).nearSwept("0.034", "-0.002"));
        save("passed", RunOutAtHand.one(Holding.FOUR_JAW).near(INSIDE).nearSwept("0.012", "0.000"));
    }

    private void save(String name, RunOutAtHand atHand) {
        for (Palette palette : Palette.values()) {
            assertTrue(Sheets.inked(sheets.save("run-out-found-" + name, picture(atHand), RUN, palette)) > 1000);
            assertTrue(Sheets.inked(sheets.save(
                            "run-out-found-" + name + "-150", picture(atHand), Frame.screen(600, 285, 1.5), palette))
                    > 1000);
        }
    }
}
