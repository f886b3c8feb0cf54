package org.tenthwise.app.store;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.tenthwise.app.store.Verification.Fault;
import org.tenthwise.model.run.StepEvent;
import org.tenthwise.model.words.Message;

class RunChainTest {

    private static final OffsetDateTime AT = OffsetDateTime.parse("2026-03-02T07:15:00+01:00");

    private final List<StoredEntry> ledger = new ArrayList<>();

    @Test
    void theHeadIsThePlacesAndTheHashesOfAllEntriesOneAfterTheOther() throws NoSuchAlgorithmException {
        add("run-1", "run-2", "run-1");
        List<StoredEntry> run = run("run-1");

        String start = sha256("Tenthwise run, first page");
        String one = sha256(start + "1 " + run.get(0).hash());
        String two = sha256(one + "3 " + run.get(1).hash());

        assertEquals(new RunHead(2, 3, two), walked(run).head());
        assertEquals(Optional.of(new Before(2, one)), Before.in(run.get(1).body()));
    }

    @Test
    void aRunIsWholeWhateverStandsBetweenItsEntries() {
        add("run-1", "run-2", "shop", "run-1", "run-2", "run-1", "run-1");

        for (String run : List.of("run-1", "run-2", "shop")) {
            RunChain chain = walked(run(run));
            assertEquals(Optional.empty(), chain.fault());
            assertTrue(chain.tied());
        }
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 1, 2, 3, 4})
    void anyEntryLeftOutButTheLastIsFound(int leftOut) {
        add("run-1", "run-1", "run-2", "run-1", "run-1", "run-1", "run-1");
        List<StoredEntry> run = run("run-1");
        long seq = run.get(leftOut + 1).seq();
        run.remove(leftOut);

        RunChain chain = walked(run);

        assertEquals(
                Optional.of(new Fault(
                        Optional.of(seq), Message.of("fault.run-place", seq, leftOut + 2L, "run-1", (long) leftOut))),
                chain.fault());
        assertEquals(leftOut, chain.head().place());
    }

    /** The last entry can be cut off unseen by the run itself: the head that was printed is what shows it. */
    @Test
    void theHeadTellsWhetherTheLastEntryWasCutOff() {
        add("run-1", "run-1", "run-1");
        RunHead whole = walked(run("run-1")).head();

        RunChain cut = walked(run("run-1").subList(0, 2));

        assertEquals(Optional.empty(), cut.fault());
        assertFalse(whole.equals(cut.head()));
    }

    @Test
    void entriesExchangedForOthersAreFoundThoughTheirNumberFits() {
        add("run-1", "run-1", "run-1");
        List<StoredEntry> run = run("run-1");
        String body = run.get(1).body().replace("words 2", "words 9");
        run.set(
                1,
                new StoredEntry(
                        2,
                        "run-1",
                        "note-made",
                        run.get(1).at(),
                        "A",
                        body,
                        run.get(0).hash(),
                        Chain.hash(run.get(0).hash(), body.getBytes(UTF_8))));

        assertEquals(
                "What comes before entry 3 in run run-1 is not what it was written after.",
                walked(run).fault().orElseThrow().why().toString());
    }

    @Test
    void entriesOfBeforeAreVouchedForByTheFirstThatIsTied() {
        ledger.add(untied(1, "run-1"));
        ledger.add(untied(2, "run-2"));
        ledger.add(untied(3, "run-1"));
        assertFalse(walked(run("run-1")).tied());
        add("run-1");

        RunChain chain = walked(run("run-1"));
        assertEquals(Optional.empty(), chain.fault());
        assertTrue(chain.tied());
        assertEquals(3, chain.head().place());

        List<StoredEntry> trimmed = run("run-1");
        trimmed.remove(1);
        assertEquals(
                "Entry 4 is number 3 of run run-1, and 1 come before it.",
                walked(trimmed).fault().orElseThrow().why().toString());
    }

    @Test
    void nothingUntiedFollowsWhatIsTied() {
        add("run-1");
        ledger.add(untied(2, "run-1"));
        add("run-1");

        RunChain chain = walked(run("run-1"));
        assertEquals(
                "Entry 2 does not say what came before it in run run-1.",
                chain.fault().orElseThrow().why().toString());
        assertEquals(1, chain.head().place());
    }

    private void add(String... runs) {
        for (String run : runs) {
            Head head = ledger.isEmpty()
                    ? Head.OF_NOTHING
                    : ledger.get(ledger.size() - 1).asHead();
            ledger.add(StoredEntry.behind(
                    head,
                    walked(run(run)).head(),
                    new NewEntry(run, AT, "A", new StepEvent.NoteMade(0, "words " + (ledger.size() + 1)))));
        }
    }

    /** An entry as releases wrote it that did not tie runs together. */
    private StoredEntry untied(long seq, String run) {
        String before =
                ledger.isEmpty() ? Chain.START : ledger.get(ledger.size() - 1).hash();
        String body = ("{\"run\":\"%s\",\"kind\":\"note-made\",\"at\":\"%s\",\"by\":\"A\",\"event\":{\"step\":0,"
                        + "\"words\":\"%d\"}}")
                .formatted(run, "2026-03-02T07:15:00+01:00", seq);
        return new StoredEntry(
                seq,
                run,
                "note-made",
                "2026-03-02T06:15:00Z",
                "A",
                body,
                before,
                Chain.hash(before, body.getBytes(UTF_8)));
    }

    private List<StoredEntry> run(String run) {
        return new ArrayList<>(
                ledger.stream().filter(entry -> entry.run().equals(run)).toList());
    }

    private static RunChain walked(List<StoredEntry> run) {
        RunChain chain = new RunChain();
        run.forEach(chain::next);
        return chain;
    }

    private static String sha256(String text) throws NoSuchAlgorithmException {
        return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(text.getBytes(UTF_8)));
    }
}
