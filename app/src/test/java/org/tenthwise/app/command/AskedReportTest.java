package org.tenthwise.app.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tenthwise.checklists.catalogue.ExamplePart;

/** What a report is asked for in a file, as somebody writes it by hand. */
class AskedReportTest extends Walking {

    @BeforeEach
    void aPartIsMeasured() throws IOException {
        ExamplePart part = ExamplePart.GATE_ROLLER_PIN;
        walk(file("plan.toml", part.planText()), file("readings.toml", part.passingReadings()));
    }

    private Typed asked(String text, Object... more) throws IOException {
        List<Object> line = new ArrayList<>(List.of("first-article", "--store", store, "--out", out.resolve("fair")));
        line.addAll(List.of("--identifier", "F-1", "--part", "GR-341", "--by", "Planner 1"));
        line.addAll(List.of("--asked", file("asked.toml", text)));
        line.addAll(List.of(more));
        return Typed.line(line.toArray());
    }

    private String firstForm() throws IOException {
        for (Path file : Typed.files(out.resolve("fair"))) {
            if (file.toString().endsWith("form-1.csv")) {
                return Files.readString(file);
            }
        }
        throw new AssertionError("no form 1");
    }

    @Test
    void whatTheFileSaysStandsOnTheFormsUnlessAnOptionSaysOtherwise() throws IOException {
        asked(
                """
                order = "PO-77"
                organization = "Invented works"
                changes = ["change 12"]
                """,
                "--order",
                "PO-78");
        String form = firstForm();
        assertTrue(form.contains("Invented works"), form);
        assertTrue(form.contains("change 12"), form);
        assertTrue(form.contains("PO-78") && !form.contains("PO-77"), form);
    }

    @ParameterizedTest
    @CsvSource({"true, Assembly", "false, Detail part"})
    void anAssemblyIsWhatTheFileCallsOne(String said, String onForm) throws IOException {
        Typed typed = asked("assembly = " + said);
        assertEquals(1, typed.exit(), typed::toString);
        assertTrue(firstForm().contains("," + onForm), firstForm());
    }

    /** Taken for no, it would let a report on an assembly be complete without its index. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "assembly = \"true\" | the value of \"assembly\" is to be true or false, without quotes.",
                "assembly = 1 | the value of \"assembly\" is to be true or false, without quotes.",
                "order = 77 | the value of \"order\" is to be text, in quotes.",
                "changes = \"change 12\" | the value of \"changes\" is to be a list of texts, as [\"12\", \"12A\"].",
                "affected = [7] | the value of \"affected\" is to be text, in quotes."
            })
    void whatIsWrittenOtherwiseIsRefusedAndNothingIsDrawnUp(String text, String why) throws IOException {
        Typed typed = asked(text);
        assertEquals(2, typed.exit(), typed::toString);
        assertTrue(typed.trouble().endsWith(why), typed::toString);
        assertTrue(Typed.line("first-article", "--store", store, "--out", out, "--identifier", "F-1")
                .trouble()
                .startsWith("There is no report F-1"));
    }

    @Test
    void aKeyThatNoReportKnowsIsRefused() throws IOException {
        assertTrue(asked("supplier = \"77\"").trouble().contains("has a key \"supplier\" that a report does not know"));
    }
}
