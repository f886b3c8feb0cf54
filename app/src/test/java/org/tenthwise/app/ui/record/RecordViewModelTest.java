package org.tenthwise.app.ui.record;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;
import org.tenthwise.app.ProvenElsewhere;
import org.tenthwise.app.SixtyBalloons;
import org.tenthwise.app.device.AskedViewer;
import org.tenthwise.app.export.CsvRecord;
import org.tenthwise.app.export.RecordFormat;
import org.tenthwise.app.handout.Handout;
import org.tenthwise.app.session.RunHeader;
import org.tenthwise.app.session.RunSession;
import org.tenthwise.app.ui.Watch;
import org.tenthwise.app.ui.Workshop;
import org.tenthwise.model.plan.Answer;
import org.tenthwise.model.run.Disposition;
import org.tenthwise.model.run.Document;
import org.tenthwise.model.run.SignedAs;
import org.tenthwise.model.run.StepEvent;

class RecordViewModelTest {

    @TempDir
    private Path folder;

    @RegisterExtension
    private final Workshop workshop = new Workshop();

    private static final List<RecordFormat> FORMATS = List.of(new CsvRecord());

    private AskedViewer viewer = AskedViewer.there();
    private final Watch watch = new Watch();
    private RunSession session;

    @BeforeEach
    void aBoreThatIsPastSize() {
        session = workshop.atTheBore("014", "0.013", "0.015", "0.014", "0.027");
    }

    private RecordViewModel model(Handout.Writing writing) {
        RecordViewModel model = new RecordViewModel(
                session.id(),
                workshop.shop,
                new Handout(FORMATS, writing, scope -> Optional.empty(), run -> List.of(), viewer),
                workshop.tasks,
                workshop.words,
                workshop,
                watch);
        model.load();
        return model;
    }

    @Test
    void everyCharacteristicOfThePlanIsThereMeasuredOrNot() {
        List<RecordRow> rows = model((run, as) -> folder).rowsValue().getValue();
        assertEquals(35, rows.size());
        RecordRow bore = rows.get(12);
        assertEquals("30.000 to 30.021 mm", bore.limits());
        assertEquals("30.027", bore.value());
        assertEquals("Fail", bore.verdict());
        assertEquals("0.006 mm above the upper limit.", bore.distance());
    }

    @Test
    void aRecordLeadsToTheHistoryOfItsPart() {
        model((run, as) -> folder).history();
        assertEquals("history of LG-2207", workshop.asked.get(workshop.asked.size() - 1));
    }

    @Test
    void aRowTellsTheBalloonWhereItIsAnotherNumber() {
        List<RecordRow> plain = model((run, as) -> folder).rowsValue().getValue();
        assertTrue(plain.stream().allMatch(row -> row.balloon().isEmpty()), plain::toString);
        session = workshop.begin(SixtyBalloons.PLAN, "001");
        List<RecordRow> rows = model((run, as) -> folder).rowsValue().getValue();
        assertEquals(
                List.of("", "balloon 20", "balloon 1"),
                rows.stream().limit(3).map(RecordRow::balloon).toList());
        assertTrue(rows.get(1).spoken(workshop.words).contains("balloon 20"));
    }

    @Test
    void whatWasSignedStruckOutAndDoubtedStandsWithItsCharacteristic() {
        Workshop.must(() -> {
            session.strikeOut(session.state().pass().readings().get(0).entry().seq(), "Misread");
            session.dispose(Disposition.USE_AS_IS, "Key fitted", "Inspector 1", "C-1");
            session.flagDoubt("Tip worn?");
            return session.note("Cold start");
        });
        assertEquals(
                "Disposition: use as is, under concession. Key fitted. Inspector 1. Concession number: C-1. One "
                        + "entry struck out. "
                        + "Doubt: Tip worn? (Setter 2). Note: Cold start (Setter 2).",
                model((run, as) -> folder).rowsValue().getValue().get(12).after());
    }

    @Test
    void aRepairIsSaidForGoodWithItsNumberWhileItIsInForce() {
        Workshop.must(() -> session.dispose(Disposition.REPAIR, "Sleeved.", "Design office", "A-7"));
        assertEquals(
                "Disposition: repair. Sleeved. Design office. Approval number: A-7. Repaired: it counts among the "
                        + "concessions.",
                model((run, as) -> folder).rowsValue().getValue().get(12).after());
        Workshop.must(() -> {
            session.readingsFirst(true);
            return session.enter("0.013");
        });
        assertEquals(
                "Signed by Design office: repair. Measured or changed since. Repaired: it counts among the "
                        + "concessions. Measured in 2 rounds.",
                model((run, as) -> folder).rowsValue().getValue().get(12).after());
    }

    /** The reports come days after the run was closed at the machine. */
    @Test
    void aClosedRecordLeadsToTheDocumentsThatAreStillToCome() {
        session = Workshop.must(
                () -> workshop.shop.begin(new RunHeader(ProvenElsewhere.PLAN, "015", "L-1", "Lathe 4", "Setter 2")));
        Workshop.must(() -> {
            session.goTo(41);
            session.documents()
                    .give("CM-1", LocalDate.parse("2020-01-07"), Document.Says.CONFORMS, "Measuring room", List.of());
            return session.close("Setter 2", SignedAs.MACHINED_AND_MEASURED);
        });
        RecordViewModel model = model((run, as) -> folder);
        assertEquals(RecordViewModel.RecordWays.DOCUMENTS, model.onwardsValue().getValue());
        model.documents();
        assertEquals(List.of("documents " + session.id()), workshop.asked);
    }

    /** A report may be there long before the work at the machine is done. */
    @Test
    void anOpenRecordLeadsToThemTooWhereThereAreAny() {
        assertFalse(model((run, as) -> folder).hasDocuments());
        session = workshop.begin(ProvenElsewhere.PLAN, "016");
        RecordViewModel model = model((run, as) -> folder);
        assertTrue(model.hasDocuments());
        assertEquals(RecordViewModel.RecordWays.GO_ON, model.onwardsValue().getValue());
    }

    /** What was only answered was not measured. */
    @Test
    void aCheckThatIsAnsweredAgainIsSaidToBeChecked() {
        Workshop.must(() -> {
            session.goTo(1);
            session.again(StepEvent.PassBegun.Why.MEASURED_AGAIN);
            return session.answer(Answer.YES);
        });
        assertEquals(
                "Checked in 2 rounds.",
                model((run, as) -> folder).rowsValue().getValue().get(0).after());
    }

    private static List<String> opened(RecordViewModel model, int step) {
        return model.story(step).stream()
                .flatMap(chapter -> chapter.lines().stream())
                .map(line ->
                        String.join(" | ", line.counts() ? "COUNTS" : "GONE", line.words(), line.when(), line.person()))
                .toList();
    }

    @Test
    void behindARowStandsWhatWasTakenHowByWhomAndWhatNoMoreCounts() {
        Workshop.must(() -> {
            session.strikeOut(session.state().pass().readings().get(0).entry().seq(), "Misread");
            session.enter("0.012");
            return session.dispose(Disposition.USE_AS_IS, "Key fitted", "Inspector 1", "C-1");
        });
        List<String> said = opened(model((run, as) -> folder), 13);
        assertTrue(
                said.contains("GONE | at 8, 0°: 30.013, read 0.013 (BG-2). Struck out by Setter 2: Misread."
                        + " | 09:31 | Setter 2"),
                said::toString);
        assertEquals(
                4,
                said.stream()
                        .filter(line -> line.startsWith("COUNTS | at ") && line.contains(", read "))
                        .count(),
                said::toString);
        assertTrue(said.stream().anyMatch(line -> line.contains(": 30.012, read 0.012 (BG-2)")), said::toString);
        assertEquals(
                1,
                said.stream()
                        .filter(line -> line.contains("set on ring 30.000") && line.endsWith("Setter 2"))
                        .count(),
                said::toString);
        assertTrue(
                said.contains("COUNTS | use as is, under concession. Key fitted. Concession number: C-1."
                        + " | 09:31 | Inspector 1"),
                said::toString);
    }

    @Test
    void oneRowIsOpenAtATimeAndTheSamePressShutsIt() {
        RecordViewModel model = model((run, as) -> folder);
        model.open(13);
        model.open(4);
        assertEquals(Optional.of(4), model.openedProperty().get());
        model.open(4);
        assertEquals(Optional.empty(), model.openedProperty().get());
    }

    @Test
    void anUnfinishedRunCanBeGoneOnWithHandedOverOrClosed() {
        RecordViewModel model = model((run, as) -> folder);
        assertEquals(RecordViewModel.RecordWays.GO_ON, model.onwardsValue().getValue());
        model.goOn();
        model.handOver();
        model.sign();
        assertEquals(List.of("run LG-2207-C-014", "say HAND_OVER LG-2207-C-014", "sign LG-2207-C-014"), workshop.asked);
    }

    /** Nothing is signed in it before it is taken up again. */
    @Test
    void aRunPutAwayIsOnlyLookedAt() {
        Workshop.must(() -> session.shelf().putAway("Setter 3", "Started twice"));
        RecordViewModel model = model((run, as) -> folder);
        assertEquals(RecordViewModel.RecordWays.LOOK, model.onwardsValue().getValue());
        model.goOn();
        assertEquals(List.of("run LG-2207-C-014"), workshop.asked);
        Workshop.must(() -> session.shelf().takeUp());
        model.load();
        assertEquals(RecordViewModel.RecordWays.GO_ON, model.onwardsValue().getValue());
    }

    @Test
    void aClosedRunIsCalledWhatItIs() {
        Workshop.must(() -> session.close("Inspector 1", SignedAs.NOT_ACCEPTED));
        RecordViewModel model = model((run, as) -> folder);
        assertEquals(RecordViewModel.RecordWays.SIGN_AGAIN, model.onwardsValue().getValue());
        assertEquals(
                "Does not conform: 1 of 24 characteristics out; 23 characteristics, 4 set-up checks, 2 "
                        + "in-process checks not settled.",
                model.outcomeValue().getValue());
        assertEquals("Not accepted by Inspector 1.", model.signedValue().getValue());
        assertTrue(model.factsValue()
                .getValue()
                .contains("Not accepted by Inspector 1. Closed with it, 25 Nov 2026, 09:31"));
    }
}
