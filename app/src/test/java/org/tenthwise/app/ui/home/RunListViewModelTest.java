package org.tenthwise.app.ui.home;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.tenthwise.app.history.RunShelf;
import org.tenthwise.app.session.Background;
import org.tenthwise.app.session.RunSession;
import org.tenthwise.app.text.OutcomeWords;
import org.tenthwise.app.ui.Workshop;
import org.tenthwise.app.ui.shell.LedgerTasks;
import org.tenthwise.checklists.catalogue.DemoPart;
import org.tenthwise.model.plan.Answer;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.run.SignedAs;

class RunListViewModelTest {

    private static final Plan CARRIER = DemoPart.SCREW_CARRIER.plan();

    @RegisterExtension
    private final Workshop workshop = new Workshop();

    private RunListViewModel list(RunShelf shelf) {
        return list(shelf, workshop.tasks);
    }

    private RunListViewModel list(RunShelf shelf, LedgerTasks tasks) {
        RunListViewModel list =
                new RunListViewModel(shelf, workshop.shop, tasks, workshop.words, workshop, Workshop.CLOCK);
        list.load();
        return list;
    }

    private static List<String> serials(RunListViewModel list) {
        return list.rowsProperty().get().stream()
                .map(row -> row.summary().run().serial())
                .toList();
    }

    private RunSession on(String machine, String serial) {
        return workshop.begin(CARRIER, serial, "AB-7731", machine, "Setter 2");
    }

    private static void type(RunListViewModel list, String text) {
        text.codePoints().mapToObj(Character::toString).forEach(list.typing()::character);
    }

    @Test
    void openRunsOfTheMachineLastWorkedOnComeFirst() {
        on("Lathe 4", "001");
        on("Lathe 7", "002");
        RunSession third = on("Lathe 4", "003");
        on("Mill 1", "004");
        Workshop.must(() -> third.answer(Answer.YES));
        RunListViewModel list = list(RunShelf.OPEN);
        assertEquals(List.of("003", "001", "004", "002"), serials(list));
        assertEquals(
                List.of("On Lathe 4", "", "On other machines", ""),
                list.rowsProperty().get().stream().map(list::above).toList());
    }

    @Test
    void aRowStaysInItsPlaceUnlessItIsKnownToHaveMoved() {
        on("Lathe 4", "001");
        RunSession second = on("Lathe 4", "002");
        RunListViewModel list = list(RunShelf.OPEN);
        List<RunRow> before = list.rowsProperty().get();
        Workshop.must(() -> second.note("seen"));
        list.load();
        assertTrue(RunListViewModel.isMoreOf(before, list.rowsProperty().get()));
        RunSession first = Workshop.must(() -> workshop.shop.open("LG-2207-C-001"));
        Workshop.must(() -> first.note("seen"));
        list.load();
        assertFalse(RunListViewModel.isMoreOf(before, list.rowsProperty().get()));
        assertTrue(RunListViewModel.isMoreOf(List.of(), before));
        assertFalse(RunListViewModel.isMoreOf(before, before.subList(0, 1)));
    }

    @Test
    void runsOfOneMachineStandUnderNoName() {
        on("Lathe 4", "001");
        on("Lathe 4", "002");
        RunListViewModel list = list(RunShelf.OPEN);
        assertEquals(
                List.of("", ""),
                list.rowsProperty().get().stream().map(list::above).toList());
    }

    @Test
    void closedRunsAreUnderRecordsAndAreLookedAt() {
        RunSession session = workshop.setUp("014");
        Workshop.must(() -> session.close("Inspector 1", SignedAs.NOT_ACCEPTED));
        on("Lathe 4", "015");
        assertEquals(List.of("015"), serials(list(RunShelf.OPEN)));
        RunListViewModel records = list(RunShelf.CLOSED);
        RunRow row = records.rowsProperty().get().get(0);
        assertEquals("Not complete. Not accepted by Inspector 1.", row.where());
        records.goOn(row);
        assertEquals(List.of("record " + session.id()), workshop.asked);
    }

    @Test
    void aLongListComesByThePage() {
        for (int i = 100; i < 130; i++) {
            on("Lathe " + i % 2, String.valueOf(i));
        }
        RunListViewModel list = list(RunShelf.OPEN);
        assertEquals(6, list.rowsProperty().get().size());
        list.more();
        assertEquals(12, list.rowsProperty().get().size());
        for (int page = 0; page < 4; page++) {
            list.more();
        }
        assertEquals(Stream.concat(numbers(129), numbers(128)).toList(), serials(list), "each once, in their order");
    }

    private static Stream<String> numbers(int from) {
        return Stream.iterate(from, i -> i >= 100, i -> i - 2).map(String::valueOf);
    }

    @Test
    void aRunIsFoundByPartSerialLotOrPersonHoweverItIsTyped() {
        workshop.begin(CARRIER, "001", "AB-7731", "Lathe 4", "Setter 2");
        workshop.begin(DemoPart.WINCH_BARREL_END.plan(), "002", "CD-1", "Lathe 4", "Turner 5");
        RunListViewModel list = list(RunShelf.OPEN);
        for (String typed : List.of("wb-1", "002", "cd", "turner 5", "WB 02")) {
            list.find("");
            type(list, typed);
            assertEquals(List.of("002"), serials(list), typed);
        }
        list.find("nobody");
        assertEquals(List.of(), serials(list));
        assertEquals(
                "No run here has nobody in its part number, its serial, its lot or the name of a person.", list.none());
        list.find("");
        assertEquals(List.of("002", "001"), serials(list));
    }

    @ParameterizedTest
    @ValueSource(strings = {"0.012", "-0.012", "\u22120,5", "29.985"})
    void aFigureThatFindsNothingIsSaidNotToBeTaken(String figure) {
        workshop.setUp("014");
        RunListViewModel list = list(RunShelf.OPEN);
        list.find(figure);
        assertEquals(
                "No run here has " + figure + " in its part number, its serial, its lot or the name of a person."
                        + " A reading from a gauge is not taken here: continue a run first.",
                list.none());
    }

    private static void scan(RunListViewModel list, String text) {
        type(list, text);
        list.typing().enter();
    }

    @Test
    void whatAScannerTypesGoesOnWithTheRunOfThatSerial() {
        on("Lathe 4", "SN-1");
        on("Lathe 4", "SN-10");
        RunListViewModel list = list(RunShelf.OPEN);
        scan(list, "sn-1");
        assertEquals(List.of("run LG-2207-C-SN-1"), workshop.asked, "though the other serial holds it");
        scan(list, "LG-2207 SN-10 AB-7731");
        assertEquals(List.of("run LG-2207-C-SN-1", "run LG-2207-C-SN-10"), workshop.asked, "and begins anew");
    }

    /** What is not the serial may be on the label of a piece whose run is not begun. */
    @ParameterizedTest
    @ValueSource(strings = {"00", "02", "0020", "LG-2207", "AB-7731", "Setter 2", "LG-2207 02", "002 Setter 2"})
    void theOnlyRunFoundIsNotGoneOnWithUnlessTheSerialWasScanned(String scanned) {
        on("Lathe 4", "002");
        scan(list(RunShelf.OPEN), scanned);
        assertEquals(List.of(), workshop.asked);
    }

    @Test
    void anEnterBeforeTheStoreAnsweredGoesOnWithWhatWasScannedAndNothingElse() {
        on("Lathe 4", "001");
        Deque<Runnable> toDo = new ArrayDeque<>();
        RunListViewModel list = list(
                RunShelf.OPEN, new LedgerTasks(new Background(toDo::add, Runnable::run), workshop.words, workshop));
        answer(toDo);
        assertEquals(List.of("001"), serials(list));
        scan(list, "002");
        assertEquals(List.of("001"), serials(list));
        answer(toDo);
        assertEquals(List.of(), workshop.asked);
        scan(list, "001");
        assertEquals(List.of(), workshop.asked);
        answer(toDo);
        assertEquals(List.of("run LG-2207-C-001"), workshop.asked);
    }

    @Test
    void anEnterIsForgottenWhenMoreIsTyped() {
        on("Lathe 4", "001");
        Deque<Runnable> toDo = new ArrayDeque<>();
        RunListViewModel list = list(
                RunShelf.OPEN, new LedgerTasks(new Background(toDo::add, Runnable::run), workshop.words, workshop));
        scan(list, "002");
        type(list, "001");
        answer(toDo);
        assertEquals(List.of("001"), serials(list));
        assertEquals(List.of(), workshop.asked);
    }

    private static void answer(Deque<Runnable> toDo) {
        while (!toDo.isEmpty()) {
            toDo.remove().run();
        }
    }

    @Test
    void aRunWhosePlanCannotBeReadIsOneRowThatSaysSo() {
        on("Lathe 4", "001");
        workshop.beginUnreadable("7");
        RunListViewModel list = list(RunShelf.OPEN);
        assertEquals(List.of("7", "001"), serials(list));
        assertEquals(
                "The plan kept with it cannot be read by this release. Its entries are safe.",
                list.rowsProperty().get().get(0).where());
        list.goOn(list.rowsProperty().get().get(0));
        assertEquals(1, workshop.told.size());
        assertEquals(List.of(), workshop.asked);
    }

    @Test
    void nothingIsSaidOfRunsBeforeTheStoreWasRead() {
        Deque<Runnable> toDo = new ArrayDeque<>();
        RunListViewModel list = list(
                RunShelf.OPEN, new LedgerTasks(new Background(toDo::add, Runnable::run), workshop.words, workshop));
        assertEquals("The store is being read.", list.none());
        toDo.remove().run();
        assertEquals("No run is started yet. Start a part.", list.none());
    }

    @Test
    void whatCameForWordsTypedBeforeIsNotShownForThoseTypedSince() {
        on("Lathe 4", "001");
        on("Lathe 4", "012");
        Deque<Runnable> toDo = new ArrayDeque<>();
        Deque<Runnable> toShow = new ArrayDeque<>();
        RunListViewModel list =
                list(RunShelf.OPEN, new LedgerTasks(new Background(toDo::add, toShow::add), workshop.words, workshop));
        type(list, "01");
        answer(toDo);
        toShow.remove().run();
        toShow.remove().run();
        assertTrue(serials(list).isEmpty());
        toShow.remove().run();
        assertEquals(List.of("012", "001"), serials(list));
    }

    @Test
    void whereAllRunsAreClosedThatIsSaid() {
        RunSession session = workshop.setUp("014");
        Workshop.must(() -> session.close("Inspector 1", SignedAs.NOT_ACCEPTED));
        assertEquals(
                "No run is open. Start a part; closed runs are under Records.",
                list(RunShelf.OPEN).none());
    }

    @Test
    void aRunPutAwayLiesByItselfAndLooksLikeNoClosedOne() {
        RunSession session = workshop.setUp("014");
        Workshop.must(() -> session.shelf().putAway("Setter 3", "Started twice"));
        assertEquals(List.of(), list(RunShelf.OPEN).rowsProperty().get());
        RunListViewModel records = list(RunShelf.CLOSED);
        assertEquals(List.of(), records.rowsProperty().get());
        assertEquals("No run is closed yet.", records.none());
        records.list(RunShelf.PUT_AWAY);
        RunRow row = records.rowsProperty().get().get(0);
        assertEquals("Put away", row.place());
        assertEquals("Neither closed nor accepted", row.where());
        assertEquals(Optional.empty(), row.standing());
        assertEquals(
                "Put away by Setter 3 (Started twice), neither closed nor accepted.",
                new OutcomeWords(workshop.words).outcome(session.state().sheet()),
                "what is left to measure on it matters to nobody");
        records.goOn(row);
        assertEquals(List.of("record " + session.id()), workshop.asked);
        Workshop.must(() -> session.shelf().takeUp());
        records.list(RunShelf.PUT_AWAY);
        assertEquals("No run is put away.", records.none());
    }

    /** The store may answer for what was asked before only after another list was asked for. */
    @Test
    void rowsOfAnotherListAreNeverShown() {
        RunSession away = workshop.setUp("014");
        Workshop.must(() -> away.shelf().putAway("Setter 3", "Started twice"));
        RunSession closed = workshop.setUp("015");
        Workshop.must(() -> closed.close("Inspector 1", SignedAs.NOT_ACCEPTED));
        List<Runnable> toShow = new ArrayList<>();
        RunListViewModel records = list(
                RunShelf.CLOSED, new LedgerTasks(new Background(Runnable::run, toShow::add), workshop.words, workshop));
        records.list(RunShelf.PUT_AWAY);
        Collections.reverse(toShow);
        toShow.forEach(Runnable::run);
        assertEquals(List.of("014"), serials(records));
    }
}
