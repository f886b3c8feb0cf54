package org.tenthwise.app.ui.history;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.tenthwise.app.history.Sought;
import org.tenthwise.app.history.SoughtBy;
import org.tenthwise.app.picture.Frame;
import org.tenthwise.app.picture.Point;
import org.tenthwise.app.picture.chart.CourseSheet;
import org.tenthwise.app.series.Characteristic;
import org.tenthwise.app.series.Followed;
import org.tenthwise.app.series.SeriesSums;
import org.tenthwise.app.sums.handbook.Handbook;
import org.tenthwise.app.text.SeriesSentences;
import org.tenthwise.app.ui.Workshop;

/** One characteristic over the parts: which part is looked at, and what may be said of them. */
class CourseViewModelTest {

    private static final Sought OF_PART = Sought.ALL.with(SoughtBy.PART_NUMBER, PartsMade.PART);
    private static final Frame SHEET = Frame.screen(890, 480, 1);

    @RegisterExtension
    private final Workshop workshop = new Workshop();

    private CourseViewModel model(Sought sought) {
        Characteristic journal =
                new Followed(workshop.shop.history()).of(OF_PART).get(0).characteristic();
        CourseViewModel model = new CourseViewModel(
                sought,
                Optional.of(journal),
                workshop.shop,
                new SeriesSums(Handbook.sums()),
                Workshop.views(),
                workshop.tasks,
                workshop.words,
                workshop);
        model.load();
        return model;
    }

    private static CourseSheet sheet(CourseViewModel model) {
        return model.stateProperty().get().orElseThrow();
    }

    private static PartCard card(CourseViewModel model) {
        return model.cardProperty().get().orElseThrow();
    }

    private static String told(CourseViewModel model) {
        return sheet(model).told().toString();
    }

    private PartsMade parts() {
        return new PartsMade(workshop);
    }

    @Test
    void aTouchShowsThatPartAndLeadsToItsRecord() {
        parts().bores(PartsMade.plan(), "Setter 2", 12, 16, 23, 9);
        CourseViewModel model = model(OF_PART);
        model.touch(SHEET, new Point(620, 200));
        assertEquals("Part 3 of 4, serial 003", card(model).title());
        assertEquals("30.023 mm", card(model).size());
        assertTrue(card(model)
                .about()
                .containsAll(
                        List.of("limits 30.000 to 30.021 mm", "0.002 mm over the upper limit", "Setter 2", "Lathe 4")));
        assertTrue(card(model).picture().isPresent());
        model.record();
        assertTrue(
                workshop.asked.get(workshop.asked.size() - 1).startsWith("record T-1-A-003"), workshop.asked::toString);
    }

    @Test
    void whatWasStruckOutIsNoPartAndNothingIsSaidOfIt() {
        parts().bores(PartsMade.plan(), "Setter 2", 12, 16);
        workshop.strikeLastReadingOf("T-1-A-002", 1);
        CourseViewModel model = model(OF_PART);
        assertEquals(1, sheet(model).series().points().size());
        assertTrue(
                sheet(model).leftOut().toString().contains("002"), sheet(model).leftOut()::toString);
    }

    @Test
    void nothingIsWorkedOutOfPartsPickedByWhatTheyCameTo() {
        parts().bores(PartsMade.plan(), "Setter 2", 2, 19, 5, 25, 1, 26, 9, 3, 28, 12, 22, 21);
        CourseViewModel model = model(OF_PART.with(SoughtBy.VERDICT, "pass"));
        assertEquals(List.of(), sheet(model).told());
        assertEquals(List.of(), sheet(model).capability());
        assertTrue(sheet(model).picture().process().isEmpty());
        assertTrue(sheet(model).since().contains("nothing can be worked out"), sheet(model)::since);
    }

    @Test
    void whatIsToldIsOfThePartsSinceTheLastBreakAlone() {
        parts().bores(PartsMade.plan(), "Setter 2", 16, 15, 12)
                .bores(PartsMade.plan("1", "30.000", "30.021", "", "MC-9"), "Setter 2", 20, 19, 18, 16, 15, 14);
        CourseViewModel model = model(OF_PART);
        assertEquals(
                "Since the last change: 6 parts, serial 004 to 009",
                sheet(model).since());
        assertTrue(told(model).contains("over 6 parts"), told(model));
        assertFalse(told(model).contains("over 9 parts"), told(model));
        model.changeAcross();
        assertEquals("All 9 parts", sheet(model).since());
        assertTrue(told(model).contains("over 9 parts"), told(model));
    }

    private PartsMade drifting() {
        return parts().bores(PartsMade.plan(), "Setter 2", 20, 19, 18, 16, 15, 14, 12, 11, 10);
    }

    @Test
    void aDriftSaysWhenToMeasureAgain() {
        drifting();
        CourseViewModel model = model(OF_PART);
        assertTrue(
                told(model)
                        .contains("Measure again after 5 more parts at the latest, counted from serial 009;"
                                + " at once when anything is changed."),
                told(model));
        assertTrue(sheet(model).picture().drift().orElseThrow().before().isPresent());
    }

    private static List<SeriesSentences.Told> against(CourseViewModel model) {
        return sheet(model).told().stream()
                .filter(told -> told.weight() == SeriesSentences.Weight.AGAINST)
                .toList();
    }

    /** Never by colour alone: it has the mark of a failure and is in bold. */
    @Test
    void whatContradictsStrikesTheEye() {
        parts().bores(PartsMade.plan(), "Setter 2", 2, 19, 5, 17, 1, 20, 9, 3, 18, 12, 2, 21);
        CourseViewModel model = model(OF_PART);
        assertEquals(1, against(model).size());
        assertTrue(against(model).get(0).sentence().startsWith("Contradicts 1.33: Cpk "), told(model));
        assertTrue(against(model).get(0).sentence().contains("from 12 parts"), told(model));
    }

    /** Far out a per cent says nothing, and of one part nothing is said of many. */
    @Test
    void farOutIsSaidByHowFarAndOfOnePartNothingOfMany() {
        parts().part(PartsMade.plan(), "Setter 2", "AB-7731", "31.5");
        CourseViewModel model = model(OF_PART);
        assertTrue(told(model).contains("Furthest from the middle: 1.479 mm over the upper limit."), told(model));
        assertTrue(told(model).contains("1 of 1 out. Too few parts to say more."), told(model));
        assertFalse(told(model).contains("%"), told(model));
    }

    /** What was cut is what the tool does; a size that was put right since may hide it. */
    @Test
    void aDriftIsFirstSoughtInTheSizesAsTheyWereCut() {
        drifting();
        CourseViewModel model = model(OF_PART);
        assertEquals("9 parts, sizes as cut", model.count());
        assertEquals("Drift, sizes as cut", sheet(model).told().get(0).head());
        model.changeSize();
        assertEquals("9 parts, final sizes", model.count());
        assertTrue(told(model).contains("Final sizes can hide wear"), told(model));
        assertFalse(told(model).contains("Measure again"), told(model));
    }

    /** The tool or the gauge is another meanwhile: what the parts before it showed is no advice any more. */
    @Test
    void ofPartsBeforeABreakNothingIsSaidOfPartsToCome() {
        PartsMade made = drifting();
        made.bores(PartsMade.plan("1", "30.000", "30.021", "", "MC-9"), "Setter 2", 12);
        CourseViewModel model = model(OF_PART);
        model.touch(SHEET, new Point(150, 200));
        assertTrue(told(model).contains("a part"), told(model));
        assertFalse(told(model).contains("Measure again"), told(model));
        assertTrue(sheet(model).picture().drift().orElseThrow().before().isEmpty());
    }

    /** Parts that were made since are out of sight, and the numbers are those of a selection. */
    @Test
    void ofSomeOfThePartsNothingIsSaidOfPartsToCome() {
        drifting();
        CourseViewModel model = model(OF_PART.with(SoughtBy.TO, "2026-11-25"));
        assertTrue(told(model).contains("a part"), told(model));
        assertFalse(told(model).contains("Measure again"), told(model));
        assertTrue(sheet(model).picture().drift().orElseThrow().before().isEmpty());
    }

    /** Fifty at a time; before the first of them lie others. */
    @Test
    void earlierPartsComeWithAPictureOfTheirOwn() {
        parts().bores(PartsMade.plan(), "Setter 2", PartsMade.scattered(60));
        CourseViewModel model = model(OF_PART);
        assertEquals(10, sheet(model).from());
        for (int i = 0; i < 50; i++) {
            model.earlier();
        }
        assertEquals(0, sheet(model).from());
        assertEquals("Part 10 of 60, serial 010", card(model).title());
        assertEquals("10", sheet(model).picture().spots().get(9).number());
        assertTrue(model.hasEarlier());
    }

    @Test
    void aViewIsHandedOutAndItSaysWhere() {
        parts().bores(PartsMade.plan(), "Setter 2", 12);
        CourseViewModel model = model(OF_PART);
        model.hand(model.formats().get(0));
        assertEquals("history-course-T-1-13.pdf", workshop.told.get(0).words());
    }
}
