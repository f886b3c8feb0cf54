package org.tenthwise.app.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.tenthwise.checklists.editing.PlanText;

/** Lists are invented. */
class DraftPlanTest {

    @TempDir
    private Path folder;

    private Path list(String text) throws Exception {
        return Files.writeString(folder.resolve("list.csv"), text);
    }

    private Typed draft(Path list) {
        return Typed.line("draft", list, "--out", folder.resolve("plan.toml"), "--unit", "mm", "--part", "T-9");
    }

    private PlanText plan() throws Exception {
        return PlanText.of(Files.readString(folder.resolve("plan.toml"))).orElseThrow();
    }

    @ParameterizedTest
    @ValueSource(strings = {",", ";", "\t"})
    void aListBecomesADraftWhateverPartsItsCells(String between) throws Exception {
        Typed typed =
                draft(list("\uFEFFNo.,Requirement,Zone\r\n12,Ø30 H7,C4\r\n13,R6 ±0.2,\r\n".replace(",", between)));
        assertEquals(0, typed.exit(), typed.err()::toString);
        assertEquals(Optional.of("12"), plan().list("step").get(0).says("balloon"));
        assertEquals(Optional.of("T-9"), plan().head().says("part"));
        assertTrue(String.join("\n", typed.out()).contains("2 lines, none refused"), typed.out()::toString);
    }

    @Test
    void aQuotedCellMayHaveLinesAndCommas() throws Exception {
        assertEquals(
                0,
                draft(list("No.,Requirement\n1,\"Ø40.00\n39.98\"\n2,\"12,5 ±0,05\"\n"))
                        .exit());
        assertEquals(Optional.of("Ø40.00\n39.98"), plan().list("step").get(0).says("requirement"));
    }

    @Test
    void whatIsRefusedIsToldWithItsLineAndTheRestIsTaken() throws Exception {
        Typed typed = draft(list("No.,Requirement\n1,4x45°\n2,30 ±0.1\n"));
        assertEquals(1, typed.exit());
        assertTrue(typed.out().get(0).startsWith("line 2: 1, 4x45°: refused, "), typed.out()::toString);
        assertEquals(
                List.of(true, false),
                plan().list("step").stream()
                        .map(step -> step.says("refused").isPresent())
                        .toList());
    }

    @Test
    void aFileThatIsThereIsNotWrittenOver() throws Exception {
        Files.writeString(folder.resolve("plan.toml"), "mine");
        Typed typed = draft(list("No.,Requirement\n1,30 ±0.1\n"));
        assertEquals(2, typed.exit());
        assertEquals("mine", Files.readString(folder.resolve("plan.toml")));
    }

    @Test
    void whatIsNoListIsSaidInOneLine() throws Exception {
        assertEquals(2, draft(list("Size,Tolerance\n1,2\n")).exit());
        assertEquals(2, draft(folder.resolve("gone.csv")).exit());
        assertEquals(
                2,
                draft(Files.write(folder.resolve("l.csv"), "No.;Ø".getBytes(StandardCharsets.ISO_8859_1)))
                        .exit());
        assertFalse(Files.exists(folder.resolve("plan.toml")));
        assertEquals(
                2,
                Typed.line("draft", list("No.,Requirement\n"), "--out", "x", "--unit", "ell")
                        .exit());
    }

    /** Without the line nobody finds it among hundreds. */
    @Test
    void aQuotationMarkThatNeverClosesIsSaidWithItsLine() throws Exception {
        Typed typed = draft(list("No.,Requirement\n1,30 ±0.1\n2,\".5 ±.01\n3,31\n"));
        assertEquals(2, typed.exit());
        assertTrue(String.join("\n", typed.err()).contains("line 3: a quotation mark opens"), typed.err()::toString);
        assertFalse(Files.exists(folder.resolve("plan.toml")));
    }

    @Test
    void twoColumnsOfOneMeaningAreNamed() throws Exception {
        Typed typed = draft(list("No.,Balloon,Requirement\n1,2,30 ±0.1\n"));
        assertEquals(2, typed.exit());
        assertTrue(String.join("\n", typed.err()).contains("\"No.\" and \"Balloon\""), typed.err()::toString);
    }

    @Test
    void whatIsLeftToSayIsNamedByCheck() throws Exception {
        draft(list("No.,Requirement\n1,Ø30 H7\n"));
        Typed typed = Typed.line("check", folder.resolve("plan.toml"));
        assertEquals(1, typed.exit());
        for (String key : List.of("revision", "operation", "places", "method")) {
            assertTrue(String.join("\n", typed.out()).contains('"' + key + "\" is missing"), typed.out()::toString);
        }
    }
}
