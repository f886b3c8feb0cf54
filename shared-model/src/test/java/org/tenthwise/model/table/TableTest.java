package org.tenthwise.model.table;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

class TableTest {

    @Test
    void figuresStandUnderTheirHeadingsAndRemarksAndBlankLinesAreNoRows() {
        Table table = Table.beside(TableTest.class, "two-rows.csv");
        assertEquals(
                List.of("1", "2.5"),
                table.rows().stream().map(row -> row.get("diameter")).toList());
        assertEquals(List.of("0.25", "0.2"), Table.several(table.rows().get(0).get("pitches")));
        assertEquals(List.of(), Table.several(table.rows().get(1).get("pitches")));
    }

    @Test
    void aRowThatIsTooShortIsFound() {
        String message = assertThrows(IllegalStateException.class, () -> Table.beside(TableTest.class, "short-row.csv"))
                .getMessage();
        assertTrue(message.contains("1 figures under 2 headings: 2.5"), message);
    }

    @Test
    void aTableThatIsNotThereIsFound() {
        assertThrows(IllegalStateException.class, () -> Table.beside(TableTest.class, "none.csv"));
    }
}
