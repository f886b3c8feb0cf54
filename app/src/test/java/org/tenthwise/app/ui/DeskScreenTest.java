package org.tenthwise.app.ui;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;
import org.tenthwise.app.bundle.BundleFile;
import org.tenthwise.app.device.FilesInFolders;
import org.tenthwise.app.history.RunShelf;
import org.tenthwise.app.store.ImportCheck;
import org.tenthwise.app.store.StationElsewhere;
import org.tenthwise.app.text.ArrivalWords;
import org.tenthwise.app.ui.form.FormView;
import org.tenthwise.app.ui.home.HandOverViewModel;
import org.tenthwise.app.ui.home.MattersKeyModel;
import org.tenthwise.app.ui.home.RecordsView;
import org.tenthwise.app.ui.home.RunListViewModel;
import org.tenthwise.app.ui.home.TakeInViewModel;
import org.tenthwise.app.ui.record.Caution;
import org.tenthwise.app.ui.record.RecordView;
import org.tenthwise.app.ui.record.RecordViewModel;
import org.tenthwise.app.ui.shell.Notice;
import org.tenthwise.app.ui.shell.Notice.NoticeKey;

/** A desk at which runs of two stations with one name are looked at, on every display. */
class DeskScreenTest extends ScreenTest {

    private static final String RUN = "LG-2207-C-013";

    @RegisterExtension
    private final Workshop workshop = new Workshop(words);

    @TempDir
    private Path folder;

    private void takeIn() {
        Workshop.must(() -> {
            try (StationElsewhere lathe = new StationElsewhere(folder.resolve("lathe.db"), "3f9c0a1b");
                    StationElsewhere mill = new StationElsewhere(folder.resolve("mill.db"), "77d2e845")) {
                lathe.make(RUN);
                mill.begin("other");
                mill.make(RUN);
                mill.putAway("other");
                workshop.ledger().takeIn(lathe.bundle(RUN), StationElsewhere.AT.plusDays(1), "Inspector 1");
                return workshop.ledger().takeIn(mill.bundle(RUN, "other"), StationElsewhere.AT, "Inspector 1");
            }
        });
    }

    @Test
    void recordsOfTwoStationsHoldEverywhere() {
        takeIn();
        assertTrue(workshop.shop.isDesk());
        seen(
                "desk",
                "records",
                window -> new RecordsView(
                        new RunListViewModel(
                                RunShelf.CLOSED, workshop.shop, workshop.tasks, words, workshop, Workshop.CLOCK),
                        new MattersKeyModel(workshop.matterBook(), workshop.tasks, words, workshop),
                        words,
                        window.pictures(),
                        workshop));
    }

    /** What it came to is no word of this desk's while anybody could have made it. */
    @Test
    void aRunOfAStationThatIsNotKnownIsListedAsSuchFirst() {
        takeIn();
        RunListViewModel list =
                new RunListViewModel(RunShelf.CLOSED, workshop.shop, workshop.tasks, words, workshop, Workshop.CLOCK);
        list.load();
        list.rowsProperty().get().forEach(row -> {
            assertTrue(row.where().startsWith(words.say("sheet.caution.station")), row::where);
            assertEquals(Optional.empty(), row.standing(), row::where);
        });
        assertEquals(2, list.rowsProperty().get().size());
    }

    @Test
    void aRecordThatCameInHoldsEverywhereAndIsOnlyLookedAt() {
        takeIn();
        RecordViewModel model = record();
        model.load();
        assertEquals(RecordViewModel.RecordWays.NOTHING, model.onwardsValue().getValue());
        assertEquals(
                List.of(words.say("sheet.caution.station"), words.say("sheet.caution.unsealed")),
                model.cautions().stream().map(Caution::head).toList());
        seen("desk", "record", window -> new RecordView(record(), words, window.pictures(), workshop));
    }

    private RecordViewModel record() {
        return new RecordViewModel(
                RUN + "@3f9c0a1b", workshop.shop, Workshop.handout(), workshop.tasks, words, workshop, Workshop.CLOCK);
    }

    @Test
    void ofWhichRunsABundleIsMadeIsAskedEverywhere() {
        takeIn();
        seen("desk", "hand-over", window -> {
            HandOverViewModel model = new HandOverViewModel(
                    workshop.shop, Workshop.handout(), workshop.tasks, words, workshop, Workshop.CLOCK);
            return FormView.titled(words.say("hand-bundle.title"), model.form(), words, workshop::back, model::load);
        });
    }

    @Test
    void whichBundleIsAskedEverywhere() {
        Workshop.must(() -> Files.writeString(folder.resolve("LG-2207-C-013-76-1a2b3c4d.tenthwise"), "none"));
        Workshop.must(() -> Files.writeString(folder.resolve("WB-118-80-99aabbcc.tenthwise"), "none"));
        seen("desk", "take-in", window -> {
            TakeInViewModel model = new TakeInViewModel(
                    workshop.receiving(),
                    new FilesInFolders(List.of(folder), "." + BundleFile.ENDING),
                    workshop.shop,
                    workshop.tasks,
                    words,
                    workshop);
            return FormView.titled(words.say("take-in.title"), model.form(), words, workshop::back, model::load);
        });
    }

    @Test
    void whatWouldComeInIsToldEverywhere() throws Exception {
        try (StationElsewhere lathe = new StationElsewhere(folder.resolve("lathe.db"), "3f9c0a1b")) {
            lathe.make(RUN);
            lathe.begin("LG-2207-C-014");
            ArrivalWords said = new ArrivalWords(words);
            List<String> lines = said.runs(ImportCheck.of(workshop.ledger(), lathe.bundle(RUN, "LG-2207-C-014")));
            String told = said.signer("3f9c 0a1b 77d2 e845", false) + "\n" + String.join("\n", lines);
            seen(
                    "desk",
                    "would-come-in",
                    window -> new RecordsView(
                            new RunListViewModel(
                                    RunShelf.CLOSED, workshop.shop, workshop.tasks, words, workshop, Workshop.CLOCK),
                            new MattersKeyModel(workshop.matterBook(), workshop.tasks, words, workshop),
                            words,
                            window.pictures(),
                            workshop),
                    window -> window.shell()
                            .tell(new Notice(
                                    words.say("take-in.would"),
                                    told,
                                    List.of(
                                            new NoticeKey(words.say("take-in.act"), () -> {}),
                                            new NoticeKey(words.say("take-in.not"), () -> {})))));
        }
    }
}
