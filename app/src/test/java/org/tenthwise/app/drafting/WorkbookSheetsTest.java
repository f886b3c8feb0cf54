package org.tenthwise.app.drafting;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.dhatim.fastexcel.VisibilityState;
import org.dhatim.fastexcel.Worksheet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.tenthwise.checklists.drafting.Drafted;
import org.tenthwise.checklists.drafting.Drafter;
import org.tenthwise.checklists.editing.PlanText;
import org.tenthwise.model.callout.CalloutReader;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.words.Message;
import org.tenthwise.model.words.Refused;
import org.tenthwise.model.words.Words;

/** Which sheets, rows and cells of a workbook are the list. Lists are invented. */
class WorkbookSheetsTest extends WorkbookWritten {

    @Test
    void theSheetWithTheHeadingsIsTakenWhereverItStands() throws IOException {
        Path file = file(book -> {
            book.newWorksheet("Notes").value(0, 0, "Nothing here");
            Worksheet sheet = headed(book, "List");
            sheet.value(1, 0, "1");
        });
        assertEquals(List.of("No.", "Requirement"), ListFile.rows(file).get(0));
    }

    /** Half of a drawing must not be left out because it stands on a second sheet, nor on one that is hidden. */
    @ParameterizedTest
    @EnumSource
    void twoSheetsOfCharacteristicsAreNotGuessedBetween(VisibilityState second) throws IOException {
        Refused refused = refused(file(book -> {
            headed(book, "Sheet 1");
            book.newWorksheet("Notes").value(0, 0, "Nothing here");
            headed(book, "Sheet 2").setVisibilityState(second);
        }));
        assertEquals("list.several-sheets", refused.why().key());
        assertEquals(List.of("Sheet 1", "Sheet 2"), refused.why().values().get("1"));
    }

    @Test
    void theOnlySheetWithHeadingsIsTakenThoughItIsHidden() throws IOException {
        Path file = file(book -> {
            book.newWorksheet("Notes").value(0, 0, "Nothing here");
            Worksheet sheet = headed(book, "List");
            sheet.value(1, 0, "1");
            sheet.setVisibilityState(VisibilityState.HIDDEN);
        });
        assertEquals(List.of("No.", "Requirement"), ListFile.rows(file).get(0));
    }

    /** Hidden by a filter, a line is still one of the drawing. */
    @Test
    void hiddenRowsAndColumnsAreTakenIn() throws IOException {
        Path file = sheet(sheet -> {
            sheet.value(1, 0, "1");
            sheet.value(1, 1, "30 ±0.1");
            sheet.value(2, 0, "2");
            sheet.value(2, 1, "40 ±0.1");
            sheet.hideRow(1);
            sheet.hideColumn(1);
        });
        assertEquals(
                List.of(List.of("No.", "Requirement"), List.of("1", "30 ±0.1"), List.of("2", "40 ±0.1")),
                ListFile.rows(file));
    }

    /** A merged cell says what it says once: the lines beside it that lack a number or a requirement are refused. */
    @Test
    void ofAMergedCellTheFirstLineHasWhatItSays() throws IOException {
        Path file = sheet(sheet -> {
            sheet.value(1, 0, "1");
            sheet.value(1, 1, "30 ±0.1");
            sheet.value(2, 1, "40 ±0.1");
            sheet.range(1, 0, 2, 0).merge();
            sheet.value(3, 0, "2");
            sheet.value(3, 1, "50 ±0.1");
            sheet.value(4, 0, "3");
            sheet.range(3, 1, 4, 1).merge();
        });
        List<Drafted.CameOf> lines = new Drafter(new CalloutReader(Unit.MILLIMETRE, Optional.empty()), Words.ENGLISH)
                .of(PlanText.of("").orElseThrow(), ListFile.rows(file))
                .lines();
        assertEquals(
                List.of("", "draft.missing", "", "draft.missing"),
                lines.stream()
                        .map(line -> line.refused().map(Message::key).orElse(""))
                        .toList());
        assertEquals(
                List.of("30 ±0.1", "40 ±0.1", "50 ±0.1", ""),
                lines.stream().map(Drafted.CameOf::requirement).toList());
    }

    /** A list is taken whole or not at all. */
    @ParameterizedTest
    @CsvSource({"19_999, 0, true", "20_000, 0, false", "1, 499, true", "1, 500, false"})
    void whatStandsBelowOrBesideAnyListIsNotLeftOut(String row, int column, boolean taken) throws IOException {
        int at = Integer.parseInt(row.replace("_", ""));
        Path file = sheet(sheet -> sheet.value(at, column, "7"));
        if (taken) {
            List<List<String>> rows = ListFile.rows(file);
            assertEquals(at + 1, rows.size());
            assertEquals("7", rows.get(at).get(column));
        } else {
            assertEquals("list.too-long", refusal(file));
        }
    }

    /** A frame drawn down to the last line of the sheet holds nothing. */
    @Test
    void whatIsOnlyShadedBelowTheListIsNoLineOfIt() throws IOException {
        Path file = sheet(sheet -> {
            sheet.value(1, 0, "1");
            sheet.style(30_000, 0).fillColor("FFFF00").set();
            sheet.style(1, 600).fillColor("FFFF00").set();
        });
        assertEquals(List.of("1"), ListFile.rows(file).get(1).subList(0, 1));
        assertEquals(2, ListFile.rows(file).size());
    }
}
