package org.tenthwise.app.ui.record;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;
import org.tenthwise.app.bundle.Scope;
import org.tenthwise.app.device.AskedViewer;
import org.tenthwise.app.export.CsvRecord;
import org.tenthwise.app.export.RecordFormat;
import org.tenthwise.app.handout.Handout;
import org.tenthwise.app.key.NoKey;
import org.tenthwise.app.session.RunSession;
import org.tenthwise.app.store.CouldNotRead;
import org.tenthwise.app.ui.Watch;
import org.tenthwise.app.ui.Workshop;
import org.tenthwise.app.ui.shell.Notice;
import org.tenthwise.model.run.SignedAs;
import org.tenthwise.model.words.Message;

/** A record written as a file from its screen: where it is said to lie, and how it is opened. */
class RecordFileTest {

    @TempDir
    private Path folder;

    @RegisterExtension
    private final Workshop workshop = new Workshop();

    private static final List<RecordFormat> FORMATS = List.of(new CsvRecord());

    private Handout.Bundling bundled = scope -> Optional.empty();
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
                new Handout(FORMATS, writing, scope -> bundled.write(scope), run -> List.of(), viewer),
                workshop.tasks,
                workshop.words,
                workshop,
                watch);
        model.load();
        return model;
    }

    @Test
    void aFileWrittenIsSaidWithItsPlace() {
        RecordViewModel model = model((run, as) -> Path.of(run + "." + as.extension()));
        model.hand(FORMATS.get(0));
        assertEquals(
                "Folder: " + Path.of("").toAbsolutePath() + ". File: LG-2207-C-014.csv",
                workshop.told.get(0).words());
        assertEquals(
                "Folder: " + Path.of("").toAbsolutePath() + ". File: LG-2207-C-014.csv",
                model.writtenProperty().get());
        assertFalse(model.busyProperty().get());
    }

    @Test
    void whileItIsWrittenThatIsSaidAndAKeyPressedAgainWritesNothing() {
        List<String> said = new ArrayList<>();
        List<String> written = new ArrayList<>();
        RecordViewModel[] model = new RecordViewModel[1];
        model[0] = model((run, as) -> {
            said.add(model[0].writtenProperty().get());
            model[0].hand(as);
            written.add(run);
            return folder;
        });
        model[0].hand(FORMATS.get(0));
        assertEquals(List.of("The record is being written."), said);
        assertEquals(1, written.size());
    }

    @Test
    void aBundleIsOfThisRunAndSaidWithItsPlaceAndNothingOpensIt() {
        List<Scope> scopes = new ArrayList<>();
        bundled = scope -> {
            scopes.add(scope);
            return Optional.of(Path.of("b.tenthwise"));
        };
        RecordViewModel model = saved();
        model.bundle();
        assertEquals(List.of(Scope.ofRun("LG-2207-C-014")), scopes);
        Notice told = workshop.told.get(1);
        assertEquals("Bundle saved", told.title());
        assertTrue(told.words().contains("File: b.tenthwise."), told::words);
        assertEquals(1, told.replies().size());
        assertFalse(model.opensFile());
        assertFalse(model.busyProperty().get());
    }

    @Test
    void whyNoBundleIsMadeIsSaid() {
        bundled = scope -> {
            throw new NoKey(Message.of("key.missing", "shop.db-station-key.p12"));
        };
        RecordViewModel model = model((run, as) -> folder);
        model.bundle();
        assertTrue(workshop.told.get(0).words().contains("shop.db-station-key.p12"), workshop.told::toString);
        assertEquals("", model.writtenProperty().get());
        assertFalse(model.busyProperty().get());
    }

    /** The keys under the message that says where the file is. */
    private List<String> keys() {
        return workshop.told.get(0).replies().stream()
                .map(Notice.NoticeKey::label)
                .toList();
    }

    private RecordViewModel saved() {
        RecordViewModel model = model((run, as) -> Path.of("records", run + ".csv"));
        model.hand(FORMATS.get(0));
        return model;
    }

    @Test
    void aFileThatWasSavedIsOpenedFromTheMessageAndFromTheScreen() {
        RecordViewModel model = saved();
        Path file = Path.of("records", "LG-2207-C-014.csv").toAbsolutePath();
        assertEquals(List.of("Open file", "OK"), keys());
        workshop.told.get(0).replies().get(0).then().run();
        viewer.answer(Optional.empty());
        model.openFile();
        assertEquals(List.of(file, file), viewer.asked);
        assertEquals(1, workshop.told.size());
    }

    @Test
    void aSecondTapWhileItIsBeingOpenedOpensNothingMore() {
        RecordViewModel model = saved();
        model.openFile();
        assertTrue(model.openingProperty().get());
        model.openFile();
        assertEquals(1, viewer.asked.size());
        viewer.answer(Optional.empty());
        assertFalse(model.openingProperty().get());
    }

    /** A command of the system is often done before the finger bounces. */
    @Test
    void aSecondTapInTheSameBreathOpensNothingMore() {
        RecordViewModel model = saved();
        model.openFile();
        watch.hold();
        viewer.answer(Optional.empty());
        watch.pass(700);
        model.openFile();
        assertEquals(1, viewer.asked.size());
        watch.pass(100);
        model.openFile();
        assertEquals(2, viewer.asked.size());
    }

    @Test
    void whyAFileWasNotOpenedIsSaidAndItCanBeTriedAgain() {
        RecordViewModel model = saved();
        model.openFile();
        viewer.answer(Optional.of(Message.of("as-said", "No program here opened it.")));
        assertEquals("File not opened", workshop.told.get(1).title());
        assertEquals("No program here opened it.", workshop.told.get(1).words());
        model.openFile();
        assertEquals(2, viewer.asked.size());
    }

    @Test
    void whereNothingOpensFilesNoKeyIsOffered() {
        viewer = AskedViewer.none();
        RecordViewModel model = saved();
        assertEquals(List.of("OK"), keys());
        assertFalse(model.opensFile());
        model.openFile();
        assertEquals(List.of(), viewer.asked);
    }

    @Test
    void beforeAFileIsSavedAndWhileOneIsBeingWrittenNoneIsOpened() {
        List<Boolean> opens = new ArrayList<>();
        RecordViewModel[] model = new RecordViewModel[1];
        model[0] = model((run, as) -> {
            opens.add(model[0].opensFile());
            return folder;
        });
        model[0].openFile();
        model[0].hand(FORMATS.get(0));
        model[0].hand(FORMATS.get(0));
        assertEquals(List.of(false, false), opens);
        assertEquals(List.of(), viewer.asked);
    }

    /** Signed after it was saved: the file says less than the record. */
    @Test
    void aFileFromBeforeTheLastEntryIsNoLongerOffered() {
        RecordViewModel model = saved();
        model.load();
        assertTrue(model.opensFile());
        Workshop.must(() -> session.close("Inspector 1", SignedAs.NOT_ACCEPTED));
        model.load();
        assertFalse(model.opensFile());
        assertEquals("", model.writtenProperty().get());
    }

    @Test
    void aFileThatCouldNotBeWrittenIsSaidAndCanBeTriedAgain() {
        RecordViewModel model = model((run, as) -> {
            throw new CouldNotRead(Message.of("as-said", "The store was taken away."), new IllegalStateException());
        });
        model.hand(FORMATS.get(0));
        assertEquals("The store was taken away.", workshop.told.get(0).words());
        assertEquals("", model.writtenProperty().get());
        assertFalse(model.busyProperty().get());
    }
}
