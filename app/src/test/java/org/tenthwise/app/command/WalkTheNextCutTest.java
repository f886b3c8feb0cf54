package org.tenthwise.app.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.tenthwise.app.InventedPlans;
import org.tenthwise.app.session.MachineRack;
import org.tenthwise.app.session.Runs;
import org.tenthwise.app.store.KeptEntries;
import org.tenthwise.app.store.sqlite.SqliteStores;
import org.tenthwise.app.text.Advice;
import org.tenthwise.model.plan.Aim;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.record.Line;
import org.tenthwise.model.run.ShopEvent;
import org.tenthwise.model.words.Words;

/**
 * What a walk says of the next cut and the ones before, and what it takes of a machine: an invented bush, bored in one
 * to three passes.
 */
class WalkTheNextCutTest extends Walking {

    private static final String BUSH = InventedPlans.text(
            "mm",
            """
            [[step]]
            number = 1
            operation = 10
            kind = "bore"
            name = "Bore"
            method = "Both ends."
            lower = 30.000
            upper = 30.021
            places = ["front", "back"]
            gauge_kind = "inside-micrometer"
            cut_again = "too small"
            """);
    private static final String BUSH_READ =
            """
            format = 1
            part = "T-1"
            revision = "A"
            serial = "1"
            lot = "L-1"
            machine = "Lathe 4"
            register = "radius"
            by = "Setter 1"

            [[gauge]]
            id = "IM-1"
            kind = "inside-micrometer"

            [[step]]
            number = 1
            gauge = "IM-1"
            """;

    private Typed bush(String read) throws Exception {
        return walk(file("p.toml", BUSH), file("r.toml", BUSH_READ + read));
    }

    /** From 29.800 to 30.0105 is 0.210; 0.420 came off, and what the register counts is said with it, once. */
    @Test
    void whatTheLastCutTookOffIsToldOnceOfScrapToo() throws Exception {
        Typed typed = walk(
                file("p.toml", BUSH),
                file(
                        "r.toml",
                        BUSH_READ.replace("register = \"radius\"", "register = \"diameter\"")
                                + """
                readings = ["30.220", "30.220"]
                [[step.pass]]
                readings = ["29.800", "29.800"]
                why = "cut"
                """));
        String said = typed.out().get(0);
        assertTrue(
                said.endsWith("Asked 0.210, came off 0.420. Twice as much: if no more was typed in, the X offset is "
                        + "on radius. Correct the "
                        + "machine setting before the next cut."),
                said);
        assertEquals(said.indexOf("came off"), said.lastIndexOf("came off"), said);
    }

    /**
     * By whole 0.002 on diameter: from 29.702 to 30.0105 is 0.308 and 0.160 came off; from 29.862 to 30.0105 is 0.148,
     * 0.130 came off, and 0.018 is left; the register shows half.
     */
    @Test
    void whatTheScreenSaysOfTheNextCutIsSaidHereTooAndWhatTheOnesBeforeTookOff() throws Exception {
        Typed typed = bush(
                """
                readings = ["29.990", "29.994"]
                [[step.pass]]
                readings = ["29.700", "29.704"]
                why = "cut"
                [[step.pass]]
                readings = ["29.860", "29.864"]
                why = "cut"
                """);
        assertEquals(1, typed.exit(), typed::toString);
        try (KeptEntries kept = new SqliteStores().openToRead(store)) {
            Line line = Runs.sheet(kept, "T-1-A-1").line(1);
            assertEquals(
                    Optional.of(new Written("0.009", Unit.MILLIMETRE).length()),
                    line.finding().proposal().orElseThrow().offset());
            String row = Typed.columns(typed.out().get(0));
            assertTrue(
                    row.startsWith(
                            "1|Bore|29.990|Cut again|0.010 mm below the lower limit. Cut 1: asked 0.154, came off "
                                    + "0.080. On radius. Asked 0.074, came off 0.065. "),
                    row);
            assertTrue(row.endsWith(new Advice(Words.of(Locale.ENGLISH)).next(line)), row);
            assertTrue(row.contains("+0.009 mm"), row);
        }
    }

    @Test
    void aShortPassIsCutOnOnlyWithAReason() throws Exception {
        String earlier = "readings = [\"30.010\", \"30.012\"]\n[[step.pass]]\nreadings = [\"29.860\"]\nwhy = \"cut\"\n";
        assertEquals(2, bush(earlier).exit());
        Files.delete(store);
        assertEquals(
                0,
                bush(earlier
                                + "cut_on_these = \"Back end is not bored yet.\"\n[close]\nby = \"Setter "
                                + "1\"\nmeaning = \"machined and measured\"\n")
                        .exit());
        try (KeptEntries kept = new SqliteStores().openToRead(store)) {
            Line line = Runs.sheet(kept, "T-1-A-1").line(1);
            assertEquals(
                    List.of("back"),
                    line.earlier().get(0).proposal().orElseThrow().unread().stream()
                            .map(slot -> slot.place().name())
                            .toList());
        }
    }

    @Test
    void aRegisterThatTheStoreHasTheOtherWayIsRefused() throws Exception {
        bush("readings = [\"30.010\", \"30.012\"]\n");
        Typed typed = walk(
                folder.resolve("p.toml"),
                file(
                        "r.toml",
                        replaced(replaced(BUSH_READ, "radius", "diameter"), "serial = \"1\"", "serial = \"2\"")));
        assertEquals(2, typed.exit());
        assertEquals(
                "The store and the readings file disagree on whether the X offset of Lathe 4 is on "
                        + "diameter or on radius. Find out at the machine which is right; nothing was taken.",
                typed.trouble());
    }

    /**
     * A third in from 30.000 is 30.007, the middle 30.0105: on it hangs what the next run on the machine is told to
     * cut.
     */
    @Test
    void aReadingsFileThatSaysNothingOfTheUsualAimLeavesTheOneOfTheShop() throws Exception {
        Path plan = file("p.toml", BUSH);
        String said =
                replaced(BUSH_READ, "by =", "usual_aim = \"third\"\nby =") + "readings = [\"29.860\", \"29.864\"]\n";
        walk(plan, file("r1.toml", said));
        walk(
                plan,
                file(
                        "r2.toml",
                        replaced(replaced(said, "usual_aim = \"third\"\n", ""), "serial = \"1\"", "serial = \"2\"")));
        try (KeptEntries kept = new SqliteStores().openToRead(store)) {
            assertEquals(
                    Optional.of(Aim.ByLimits.THIRD),
                    Runs.sheet(kept, "T-1-A-2").run().usualAim());
            assertEquals(
                    Optional.of(Aim.ByLimits.THIRD),
                    new MachineRack(kept).find("Lathe 4").map(ShopEvent.MachineKnown::usual));
        }
    }
}
