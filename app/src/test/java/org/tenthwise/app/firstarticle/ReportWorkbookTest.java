package org.tenthwise.app.firstarticle;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.StreamSupport;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.tenthwise.checklists.catalogue.ExamplePart;
import org.tenthwise.model.record.Measured;
import org.tenthwise.model.run.ReportAsked;
import org.tenthwise.model.words.Words;

/** The workbook, read by another library than the one that wrote it. */
class ReportWorkbookTest {

    private static byte[] written(ArticleReport report) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        new ReportWorkbook(Words.ENGLISH).write(report, out);
        return out.toByteArray();
    }

    private static List<Cell> cells(XSSFSheet sheet) {
        List<Cell> cells = new ArrayList<>();
        for (Row row : sheet) {
            StreamSupport.stream(row.spliterator(), false).forEach(cells::add);
        }
        return cells;
    }

    @ParameterizedTest
    @EnumSource
    void threeSheetsHoldTheFormsAndEveryCellIsText(ExamplePart part) throws Exception {
        ArticleReport report = Reports.of(part, ReportAsked.Edition.C, part.passingReadings(), part.failingReadings());
        try (XSSFWorkbook workbook = new XSSFWorkbook(new ByteArrayInputStream(written(report)))) {
            assertEquals(3, workbook.getNumberOfSheets());
            for (int i = 0; i < 3; i++) {
                XSSFSheet sheet = workbook.getSheetAt(i);
                assertEquals("Form " + (i + 1), sheet.getSheetName());
                List<Cell> cells = cells(sheet);
                cells.forEach(cell -> {
                    assertEquals(CellType.STRING, cell.getCellType(), cell::toString);
                    assertEquals("@", cell.getCellStyle().getDataFormatString());
                });
                assertTrue(cells.stream().anyMatch(cell -> cell.getStringCellValue()
                        .equals("This report does not release the part and is no release certificate.")));
            }
            FormTable form = new CharacteristicForm(report.article(), Words.ENGLISH).whole();
            List<String> all = cells(workbook.getSheetAt(2)).stream()
                    .map(Cell::getStringCellValue)
                    .toList();
            form.rows().forEach(row -> row.forEach(text -> assertTrue(all.contains(text), text)));
        }
    }

    /** Of what was read once and is the size itself: 20.010 is never 20.01. */
    @ParameterizedTest
    @EnumSource
    void figuresStandAsTheyWereTyped(ExamplePart part) {
        ArticleReport report = Reports.of(part, ReportAsked.Edition.C, part.passingReadings());
        ResultText texts = new ResultText(Words.ENGLISH);
        List<String> compared = new ArrayList<>();
        report.article().characteristics().forEach(one -> one.results().forEach(result -> {
            List<Measured> measured =
                    result.checked().map(checked -> checked.measured()).orElse(List.of());
            if (measured.size() == 1
                    && measured.get(0).isAsRead()
                    && measured.get(0).reading().typed().unit().isOfLength()
                    && result.checked()
                            .orElseThrow()
                            .line()
                            .finding()
                            .check()
                            .asDimension()
                            .isPresent()) {
                assertEquals(measured.get(0).reading().typed().text(), texts.of(result));
                compared.add(texts.of(result));
            }
        }));
        assertTrue(compared.size() > 3, compared::toString);
    }

    @Test
    void whatBeginsLikeAFormulaIsTextAndNotWorkedOut() throws Exception {
        ExamplePart part = ExamplePart.GATE_ROLLER_PIN;
        byte[] workbook = written(Reports.of(part, ReportAsked.Edition.C, part.passingReadings()));
        try (XSSFWorkbook read = new XSSFWorkbook(new ByteArrayInputStream(workbook))) {
            assertTrue(cells(read.getSheetAt(0)).stream()
                    .anyMatch(cell -> cell.getCellType() == CellType.STRING
                            && cell.getStringCellValue().contains("=ECN 12")));
        }
    }

    @Test
    void twoOfTheSameReportAreTheSameBytes() throws Exception {
        ExamplePart part = ExamplePart.WINCH_SHAFT;
        byte[] one = written(Reports.of(part, ReportAsked.Edition.C, part.passingReadings()));
        Thread.sleep(20);
        assertArrayEquals(one, written(Reports.of(part, ReportAsked.Edition.C, part.passingReadings())));
    }
}
