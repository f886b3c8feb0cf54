package org.tenthwise.app.store;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tenthwise.model.run.Entry;
import org.tenthwise.model.run.Event;
import org.tenthwise.model.run.ImportEvent;
import org.tenthwise.model.run.StepEvent;

/** What every ledger does with runs of other stores, whatever lies behind it. */
public abstract class ImportContract {

    private static final String RUN = "LG-2207-C-013";

    @TempDir
    private Path folder;

    private StationElsewhere lathe;
    private StationElsewhere mill;
    private Ledger desk;

    /** A ledger nothing was added to. */
    protected abstract Ledger empty(Path folder) throws Exception;

    @BeforeEach
    final void begin() throws Exception {
        lathe = new StationElsewhere(folder.resolve("lathe.db"), "aa11bb22");
        mill = new StationElsewhere(folder.resolve("mill.db"), "cc33dd44");
        desk = empty(folder);
    }

    @AfterEach
    final void end() {
        lathe.close();
        mill.close();
        desk.close();
    }

    @Test
    void aRunComesInAsItWasStoredAndTheLedgerSaysSo() throws Exception {
        lathe.make(RUN);
        Arrivals came = takeIn(lathe.bundle(RUN));

        assertEquals(Arrivals.What.NEW, came.runs().get(0).what());
        assertEquals(List.of(RUN + "@aa11bb22"), desk.runs());
        assertEquals(lathe.ledger().stored(RUN), desk.stored(RUN + "@aa11bb22"));
        assertEquals(lathe.ledger().entries(RUN), desk.entries(RUN + "@aa11bb22"));
        assertEquals(lathe.ledger().runHead(RUN), desk.runHead(RUN + "@aa11bb22"));
        assertEquals(List.of(), desk.stored(RUN), "it is no run of the desk");
        RunHead head = lathe.ledger().runHead(RUN);
        ImportEvent.Imported said = imports().get(0);
        assertEquals("aa11bb22", said.origin().sign());
        assertEquals(List.of(new ImportEvent.OfRun(RUN, head.place(), head.seq(), head.hash())), said.runs());
        assertTrue(desk.verify().whole());
    }

    @Test
    void runsOfTwoStationsWithOneNameStayApart() throws Exception {
        lathe.make(RUN);
        mill.begin("other");
        mill.make(RUN);
        takeIn(mill.bundle(RUN));
        takeIn(lathe.bundle(RUN));

        assertEquals(List.of(RUN + "@cc33dd44", RUN + "@aa11bb22"), desk.runs());
        assertEquals(lathe.ledger().stored(RUN), desk.stored(RUN + "@aa11bb22"));
        assertEquals(mill.ledger().stored(RUN), desk.stored(RUN + "@cc33dd44"));
        assertTrue(desk.verify().whole());
    }

    @Test
    void theSameFileASecondTimeAddsNothing() throws Exception {
        lathe.make(RUN);
        takeIn(lathe.bundle(RUN));
        Head head = desk.head();

        Arrivals again = takeIn(lathe.bundle(RUN));

        assertFalse(again.addAnything());
        assertEquals(Arrivals.What.SAME, again.runs().get(0).what());
        assertEquals(head, desk.head());
    }

    @Test
    void aLaterFileOfTheSameRunExtendsItAndAnEarlierOneChangesNothing() throws Exception {
        lathe.make(RUN);
        Incoming first = lathe.bundle(RUN);
        lathe.note(RUN, "seen again");
        Incoming second = lathe.bundle(RUN);
        takeIn(first);

        Arrivals.OfRun longer = takeIn(second).runs().get(0);

        assertEquals(Arrivals.What.LONGER, longer.what());
        assertEquals(first.runs().get(0).entries().size(), longer.had());
        assertEquals(lathe.ledger().stored(RUN), desk.stored(RUN + "@aa11bb22"));
        assertFalse(takeIn(first).addAnything());
        assertEquals(lathe.ledger().stored(RUN), desk.stored(RUN + "@aa11bb22"));
        assertTrue(desk.verify().whole());
    }

    @Test
    void inWhateverOrderFilesComeTheSameIsThereInTheEnd() throws Exception {
        lathe.make("A");
        lathe.make("B");
        Incoming early = lathe.bundle("A");
        lathe.note("A", "seen again");
        List<Incoming> files = List.of(lathe.bundle("B", "A"), early, lathe.bundle("A"));
        for (List<Integer> order : List.of(List.of(0, 1, 2), List.of(2, 1, 0), List.of(1, 0, 2))) {
            try (Ledger other = empty(folder.resolve("order-" + order.get(0) + order.get(1)))) {
                for (int file : order) {
                    other.takeIn(files.get(file), StationElsewhere.AT, "Inspector 1");
                }
                assertEquals(lathe.ledger().stored("A"), other.stored("A@aa11bb22"));
                assertEquals(lathe.ledger().stored("B"), other.stored("B@aa11bb22"));
                assertTrue(other.verify().whole());
            }
        }
    }

    @Test
    void aRunWithOtherEntriesIsRefusedByTheFirstThatDiffers() throws Exception {
        lathe.make(RUN);
        takeIn(lathe.bundle(RUN));
        try (StationElsewhere rebuilt = new StationElsewhere(folder.resolve("rebuilt.db"), "aa11bb22")) {
            rebuilt.ledger()
                    .append(
                            RUN,
                            StationElsewhere.AT,
                            "Setter 1",
                            lathe.ledger().entries(RUN).get(0).event());
            rebuilt.ledger().append(RUN, StationElsewhere.AT, "Setter 1", note("otherwise"));
            rebuilt.putAway(RUN);

            assertEquals(
                    "Run LG-2207-C-013 is here with other entries: the first that differs is number 2 of the "
                            + "run, entry 2 there. One of the two was changed or rebuilt. "
                            + "Nothing came in; ask at the station.",
                    refused(rebuilt.bundle(RUN)));
        }
    }

    @Test
    void aLedgerThatWasPutBackAndWentAnotherWayIsRefused() throws Exception {
        lathe.make("A");
        lathe.make("B");
        takeIn(lathe.bundle("A", "B"));
        try (StationElsewhere back = new StationElsewhere(folder.resolve("back.db"), "aa11bb22")) {
            back.make("A");
            back.make("C");
            assertTrue(
                    refused(back.bundle("C")).contains("does not fit the entries that came in from that store before"));
        }
    }

    @Test
    void aRunThatCameUnderOneKeyIsNotTakenUnderAnother() throws Exception {
        lathe.make(RUN);
        takeIn(lathe.bundle(RUN));
        Incoming there = lathe.bundle(RUN);
        Incoming other = new Incoming(there.bundle(), "ee".repeat(32), there.store(), true, there.runs());

        assertTrue(refused(other).startsWith("Run LG-2207-C-013 came in before, sealed with another key (aa11bb22)"));
    }

    @Test
    void twoStoresUnderOneKeyHaveSignsOfTheirOwn() throws Exception {
        lathe.make(RUN);
        takeIn(lathe.bundle(RUN));
        try (StationElsewhere second = new StationElsewhere(folder.resolve("second.db"), "aa11bb22")) {
            second.begin("x");
            second.make(RUN);
            takeIn(second.bundle(RUN));
            assertEquals(List.of(RUN + "@aa11bb22", RUN + "@aa11bb22-2"), desk.runs());
        }
    }

    @Test
    void aRunThatIsNotClosedStaysOutAndOneThatWasPutAwayComesIn() throws Exception {
        lathe.begin("open");
        lathe.begin("away");
        lathe.putAway("away");

        Arrivals came = takeIn(lathe.bundle("open", "away"));

        assertEquals(
                List.of(Arrivals.What.OPEN, Arrivals.What.NEW),
                came.runs().stream().map(Arrivals.OfRun::what).toList());
        assertEquals(List.of("away@aa11bb22"), desk.runs());
    }

    @Test
    void nothingComesInFromItself() throws Exception {
        lathe.make(RUN);
        Head head = lathe.ledger().head();
        NotImported refusal = assertThrows(
                NotImported.class, () -> lathe.ledger().takeIn(lathe.bundle(RUN), StationElsewhere.AT, "Inspector 1"));
        assertEquals("Run LG-2207-C-013 was made in this store. Nothing came in.", refusal.getMessage());
        assertEquals(head, lathe.ledger().head());
    }

    @Test
    void aSignerThatBecomesKnownIsSaidOnceAndNothingElseIsAdded() throws Exception {
        lathe.make(RUN);
        Incoming unknown = lathe.bundle(RUN);
        takeIn(unknown);
        Incoming known = new Incoming(unknown.bundle(), unknown.key(), unknown.store(), true, unknown.runs());

        assertTrue(takeIn(known).becomesKnown());
        assertFalse(takeIn(known).addAnything());
        assertEquals(
                List.of(false, true),
                imports().stream().map(ImportEvent.Imported::signerKnown).toList());
        assertTrue(desk.verify().whole());
    }

    @Test
    void whateverIsChangedInAnEntryNothingOfItComesIn() throws Exception {
        lathe.make("A");
        lathe.make("B");
        Incoming good = lathe.bundle("A", "B");
        Random random = new Random(20261201);
        for (int i = 0; i < 400; i++) {
            Incoming bad = mutated(good, random);
            if (bad.equals(good)) {
                continue;
            }
            int trial = i;
            assertThrows(
                    NotImported.class,
                    () -> desk.takeIn(bad, StationElsewhere.AT, "Inspector 1"),
                    () -> "trial " + trial);
            assertEquals(Head.OF_NOTHING, desk.head());
            assertEquals(List.of(), desk.runs());
        }
        takeIn(good);
        assertEquals(2, desk.runs().size());
    }

    /** One thing changed: an entry left out from the middle, twice, out of its place, or with another letter. */
    private static Incoming mutated(Incoming good, Random random) {
        List<Incoming.OfRun> runs = new ArrayList<>(good.runs());
        int which = random.nextInt(runs.size());
        List<StoredEntry> entries = new ArrayList<>(runs.get(which).entries());
        int at = random.nextInt(entries.size() - 1);
        StoredEntry entry = entries.get(at);
        switch (random.nextInt(9)) {
            case 0 -> entries.remove(at);
            case 1 -> entries.add(at, entry);
            case 2 -> entries.set(at, entries.set(at + 1, entry));
            case 3 ->
                entries.set(
                        at,
                        with(entry, entry.seq() + 1 + random.nextInt(500), entry.run(), entry.body(), entry.hash()));
            case 4 -> entries.set(at, with(entry, entry.seq(), entry.run() + "x", entry.body(), entry.hash()));
            case 5 ->
                entries.set(at, with(entry, entry.seq(), entry.run(), letter(entry.body(), random), entry.hash()));
            case 6 ->
                entries.set(at, with(entry, entry.seq(), entry.run(), entry.body(), letter(entry.hash(), random)));
            case 7 -> {
                String body = letter(entry.body(), random);
                String hash = Chain.hash(entry.previous(), body.getBytes(UTF_8));
                entries.set(at, with(entry, entry.seq(), entry.run(), body, hash)); // and its hash made to fit
            }
            default ->
                entries.set(
                        at,
                        new StoredEntry(
                                entry.seq(),
                                entry.run(),
                                entry.kind(),
                                entry.at(),
                                entry.by() + "x",
                                entry.body(),
                                entry.previous(),
                                entry.hash()));
        }
        runs.set(which, new Incoming.OfRun(runs.get(which).run(), entries));
        return new Incoming(good.bundle(), good.key(), good.store(), false, runs);
    }

    private static StoredEntry with(StoredEntry was, long seq, String run, String body, String hash) {
        return new StoredEntry(seq, run, was.kind(), was.at(), was.by(), body, was.previous(), hash);
    }

    private static String letter(String text, Random random) {
        int at = random.nextInt(text.length());
        return text.substring(0, at) + (char) (text.charAt(at) ^ 1) + text.substring(at + 1);
    }

    private Arrivals takeIn(Incoming incoming) throws Exception {
        return desk.takeIn(incoming, StationElsewhere.AT.plusDays(1), "Inspector 1");
    }

    /** Why it was; and nothing of the desk was changed. */
    private String refused(Incoming incoming) {
        Head head = desk.head();
        List<String> runs = desk.runs();
        NotImported refusal = assertThrows(NotImported.class, () -> takeIn(incoming));
        assertEquals(head, desk.head());
        assertEquals(runs, desk.runs());
        return refusal.getMessage();
    }

    private List<ImportEvent.Imported> imports() {
        return desk.entries(Entry.SHOP).stream()
                .flatMap(entry -> entry.event().as(ImportEvent.Imported.class).stream())
                .toList();
    }

    private static Event note(String words) {
        return new StepEvent.NoteMade(1, words);
    }
}
