package org.tenthwise.model.callout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.tolerance.GeneralTolerance;
import org.tenthwise.model.words.Refused;

/** Every text of {@code callouts.csv}, each with the parts its rows have. */
class CalloutFileTest {

    private static final List<String> NAMES = List.of("general: ", "title block: ");

    @TestFactory
    Stream<DynamicTest> everyTextIsReadAsItsRowsSay() {
        Map<String, List<Map<String, String>>> byText = new LinkedHashMap<>();
        CalloutRows.all().forEach(row -> byText.computeIfAbsent(
                        row.get("unit") + "|" + row.get("context") + "|" + row.get("text"), text -> new ArrayList<>())
                .add(row));
        return byText.entrySet().stream()
                .map(text -> DynamicTest.dynamicTest(
                        text.getKey().replace("\n", "\\n"), () -> requireSame(text.getValue())));
    }

    @Test
    void theFileIsReadWhole() {
        assertEquals(174, CalloutRows.all().size());
        assertTrue(CalloutRows.all().stream().noneMatch(row -> row.get("source").isBlank()));
    }

    private static void requireSame(List<Map<String, String>> rows) {
        Map<String, String> first = rows.get(0);
        if (first.get("kind").equals("reject")) {
            assertThrows(Refused.class, () -> read(first), first.get("note"));
            return;
        }
        assertEquals(
                rows.stream().map(CalloutFileTest::expected).toList(),
                read(first).parts().stream().map(CalloutFileTest::found).toList());
    }

    private static Callout read(Map<String, String> row) {
        Unit unit = Unit.ofSymbol(row.get("unit")).orElseThrow();
        String context = row.get("context");
        Optional<GeneralTolerance> general = NAMES.stream()
                .filter(context::startsWith)
                .findFirst()
                .map(name -> GeneralTolerance.ofText(context.substring(name.length()), unit));
        CalloutReader reader = new CalloutReader(unit, general);
        return context.equals("column: surface") ? reader.readSurface(row.get("text")) : reader.read(row.get("text"));
    }

    private static List<String> expected(Map<String, String> row) {
        return List.of(row.get("kind"), row.get("nominal"), row.get("lower"), row.get("upper"), row.get("count"));
    }

    private static List<String> found(CalloutPart part) {
        return List.of(
                part.kind().key(),
                text(part, part.nominal()),
                text(part, part.lower()),
                text(part, part.upper()),
                part.count().map(String::valueOf).orElse(""));
    }

    private static String text(CalloutPart part, Optional<BigDecimal> figure) {
        return figure.map(part::decimal).orElse("");
    }
}
