package org.tenthwise.app.ui.home;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;
import org.tenthwise.app.bundle.BundleFile;
import org.tenthwise.app.bundle.Making;
import org.tenthwise.app.bundle.Scope;
import org.tenthwise.app.bundle.StationBundles;
import org.tenthwise.app.device.FilesInFolders;
import org.tenthwise.app.export.CsvRecord;
import org.tenthwise.app.export.JsonRecord;
import org.tenthwise.app.key.KeyFile;
import org.tenthwise.app.session.Background;
import org.tenthwise.app.store.StationElsewhere;
import org.tenthwise.app.ui.Workshop;
import org.tenthwise.app.ui.form.Field;
import org.tenthwise.app.ui.shell.LedgerTasks;
import org.tenthwise.app.ui.shell.Notice;
import org.tenthwise.model.words.Words;

/** A bundle taken in by touch: nothing of it counts before it was told and said yes to. */
class TakeInViewModelTest {

    private static final String RUN = "LG-2207-C-013";

    @RegisterExtension
    private final Workshop workshop = new Workshop();

    private final List<Notice> told = workshop.told;

    @TempDir
    private Path folder;

    private Path bundle;
    private TakeInViewModel model;

    @BeforeEach
    void aBundleLiesThere() throws Exception {
        Path store = folder.resolve("lathe.db");
        try (StationElsewhere lathe = new StationElsewhere(store, "any")) {
            lathe.make(RUN);
            KeyFile key = KeyFile.beside(store);
            key.make();
            Making making = new Making(place -> List.of(new CsvRecord(), new JsonRecord()), Locale.UK, "0.1.0");
            bundle = new StationBundles(making, lathe.ledger(), key)
                    .write(Scope.ofRun(RUN), folder)
                    .orElseThrow();
        }
        anew();
    }

    /** As the screen is shown anew for each bundle. */
    private void anew() {
        model = new TakeInViewModel(
                workshop.receiving(),
                new FilesInFolders(List.of(folder), "." + BundleFile.ENDING),
                workshop.shop,
                new LedgerTasks(new Background(Runnable::run, Runnable::run), Words.ENGLISH, workshop),
                Words.ENGLISH,
                workshop);
        model.load();
    }

    private void look() {
        first(model.form().fields().get(0));
        model.form().goOn();
        model.form().inHandProperty().get().type();
        "Inspector 1".chars().mapToObj(Character::toString).forEach(model.form()::character);
        model.form().goOn();
    }

    private static <T> void first(Field<T> field) {
        field.choice().choose(field.choice().offeredProperty().get().get(0));
    }

    @Test
    void whatWouldComeInIsToldAndCountsOnlyOnceItIsSaidYesTo() {
        look();
        Notice would = told.get(0);
        assertEquals("What would come in", would.title());
        assertTrue(would.words().contains("which is not known here"), would::words);
        assertTrue(would.words().contains("Run LG-2207-C-013: new, "), would::words);
        assertEquals(List.of(), workshop.ledger().runs());

        would.replies().get(0).then().run();

        assertEquals(1, workshop.ledger().runs().size());
        assertEquals("1 new run, none that went on since.", told.get(1).words());
        anew();
        look();
        assertTrue(told.get(2).words().endsWith("Nothing new: all of it was here."), told::toString);
    }

    @Test
    void leftAloneNothingComesIn() {
        look();
        told.get(0).replies().get(1).then().run();
        assertEquals(0, workshop.ledger().head().seq());
    }

    @Test
    void whatIsRefusedSaysWhy() throws Exception {
        byte[] bytes = Files.readAllBytes(bundle);
        bytes[bytes.length / 2] ^= 1;
        Files.write(bundle, bytes);
        look();
        assertEquals("Not taken in", told.get(0).title());
        assertTrue(told.get(0).words().contains("it was changed"), told::toString);
        assertEquals(0, workshop.ledger().head().seq());
    }
}
