package org.tenthwise.app.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.tenthwise.app.store.Ledger;
import org.tenthwise.app.store.sqlite.SqliteStores;
import org.tenthwise.checklists.catalogue.DemoPart;

/**
 * A walk and the store it writes to: what it already holds, what is no store, and trouble with a file before anything
 * is kept.
 */
class WalkStoreTest extends Walking {

    @Test
    void oneStoreHoldsManyRuns() throws Exception {
        walk("LG-2207", "LG-2207-pass");
        walk("WB-118", "WB-118-pass");
        Typed again = walk("LG-2207", "LG-2207-pass");
        assertEquals(0, again.exit());
        assertEquals(6, Typed.files(out).size());
        assertTrue(Typed.files(out).stream()
                .anyMatch(file -> file.getFileName().toString().startsWith("LG-2207-C-014-2-")));
        assertEquals(
                "Serial 014 has earlier runs in this store: LG-2207-C-014",
                again.out().get(again.out().size() - 1));
    }

    @Test
    void aPlanWithAnotherTextUnderOneIssueIsNotWalked() throws Exception {
        walk("LG-2207", "LG-2207-pass");
        Path changed = file("changed.toml", DemoPart.SCREW_CARRIER.planText() + "\n# changed\n");
        Typed typed = walk(changed.toString(), "LG-2207-pass");
        assertEquals(2, typed.exit());
        assertTrue(
                typed.err()
                        .get(0)
                        .startsWith("Run LG-2207-C-014 was started with another text of LG-2207 rev C, issue 9."),
                typed.err()::toString);
    }

    @Test
    void aGaugeTheStoreKnowsTheOtherWayRoundIsRefused() throws Exception {
        walk("LG-2207", "LG-2207-pass");
        assertEquals(
                "The store and the readings file disagree on which way the dial of gauge BG-2 goes. "
                        + "Find out on its ring which is right; nothing was taken.",
                walkWith("sense = \"rises\"", "sense = \"falls\"").trouble());
    }

    @Test
    void troubleWithAFileIsFoundBeforeAnythingIsKept() throws Exception {
        Path empty = Files.createFile(folder.resolve("empty.toml"));
        assertEquals(
                empty + " is empty. Give a file with something in it.",
                walk("LG-2207", empty).trouble());
        assertEquals(
                "There is no readings file LG-2207-pas. The demo readings included are those of LG-2207 and "
                        + "WB-118, with -pass or -fail added.",
                walk("LG-2207", "LG-2207-pas").trouble());
        assertEquals(
                "There is no plan file LG-2208. The demo plans included are LG-2207 and WB-118.",
                walk("LG-2208", "LG-2207-pass").trouble());
        Files.writeString(out, "mine");
        assertEquals(
                out + " is a file. Give a folder to write into; it is made where there is none.",
                walk("LG-2207", "LG-2207-pass").trouble());
        assertEquals(2, walk("WB-118", "LG-2207-pass").exit());
        assertFalse(Files.exists(store));
        assertEquals("mine", Files.readString(out));
    }

    @Test
    void whatIsNoStoreIsLeftAsItIs() throws Exception {
        store = file("plan.toml", DemoPart.SCREW_CARRIER.planText());
        assertEquals(
                "plan.toml is not a Tenthwise store. It was left as it is. Give the path of a store.",
                walk("LG-2207", "LG-2207-pass").trouble());
        assertEquals(DemoPart.SCREW_CARRIER.planText(), Files.readString(store));
        store = Files.createDirectory(folder.resolve("folder"));
        assertEquals(
                "folder is not a Tenthwise store. It was left as it is. Give the path of a store.",
                walk("LG-2207", "LG-2207-pass").trouble());
        try (Stream<Path> left = Files.list(store)) {
            assertEquals(0, left.count());
        }
    }

    @Test
    void aStoreHeldByAnotherIsNotWrittenTo() throws Exception {
        try (Ledger held = new SqliteStores().open(store)) {
            assertEquals(
                    "s.db is in use by another Tenthwise. Nothing was written to it from here. Close the other one, "
                            + "then open it "
                            + "again.",
                    walk("LG-2207", "LG-2207-pass").trouble());
            assertEquals(0, held.head().seq());
        }
    }
}
