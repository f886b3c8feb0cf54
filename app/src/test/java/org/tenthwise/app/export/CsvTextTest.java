package org.tenthwise.app.export;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.tenthwise.app.export.DemoTable.PART;
import static org.tenthwise.app.export.DemoTable.SAMPLE;
import static org.tenthwise.app.export.DemoTable.rows;
import static org.tenthwise.app.export.DemoTable.text;

import java.math.BigDecimal;
import java.util.List;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** How the table is written: its lines, its figures, and free text that is no formula. */
class CsvTextTest {

    @Test
    void linesEndAndBeginAsTheFormatSays() {
        String text = text(Records.whole(PART, SAMPLE));
        assertTrue(text.startsWith("part,revision,serial"), text.substring(0, 40));
        assertTrue(text.endsWith("\r\n"));
        assertEquals(
                text.chars().filter(sign -> sign == '\r').count(),
                text.chars().filter(sign -> sign == '\n').count());
    }

    @Test
    void aNumberIsNeverTouched() {
        List<CSVRecord> rows = rows(Records.whole(PART, Records.failing(PART)));
        assertTrue(rows.stream().anyMatch(row -> row.get("reading").startsWith("-")));
        for (CSVRecord row : rows) {
            for (String column :
                    List.of("reading", "correction", "size", "judged", "distance", "lower-limit", "upper-limit")) {
                String cell = row.get(column);
                assertTrue(
                        cell.isEmpty() || new BigDecimal(cell).toPlainString().equals(cell), column + ": " + cell);
            }
        }
    }

    /**
     * What begins a formula: OWASP Application Security Verification Standard 5.0, 1.2.10, and the full-width forms.
     */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "=1+1",
                "+1",
                "-1",
                "@SUM(A1)",
                "\t=1",
                "\r=1",
                "\n=1",
                "\0=1",
                "\uff1d1",
                "\uff0b1",
                "\uff0d1",
                "\uff201"
            })
    void textThatASpreadsheetWouldRunGetsAnApostrophe(String written) {
        assertEquals("'" + written, CsvText.safe(written));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "a=1", "O'Neil", " =1", "\u2212 0.01"})
    void anyOtherTextStays(String written) {
        assertEquals(written, CsvText.safe(written));
    }

    @Test
    void noFormulaGetsThroughFromFreeText() {
        Records.Walk walk = new Records.Walk(PART.plan(), "=HYPERLINK(\"x\")")
                .add(SAMPLE.begun())
                .addAll(SAMPLE.events());
        assertFalse(rows(walk.evidence()).stream()
                .flatMap(CSVRecord::stream)
                .anyMatch(cell -> cell.startsWith("=") || cell.startsWith("@") || cell.startsWith("+")));
    }

    @Test
    void theSameEvidenceGivesTheSameBytes() {
        assertEquals(text(Records.whole(PART, SAMPLE)), text(Records.whole(PART, Records.passing(PART))));
    }
}
