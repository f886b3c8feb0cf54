package org.tenthwise.checklists.format;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.dataformat.toml.TomlMapper;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.tenthwise.checklists.catalogue.DemoPart;
import org.tomlj.Toml;
import org.tomlj.TomlArray;
import org.tomlj.TomlParseResult;
import org.tomlj.TomlTable;

/** The two parsers read every file that comes along alike, and no file, however spoiled, brings the reader down. */
class BothParsersTest {

    private static final int SPOILED_COPIES = 20;
    private static final String SPANNERS = "\"'[]{}=.,#\n_e-+0x\u0000\uD83D";

    static Stream<String> texts() {
        return Stream.of(DemoPart.values()).flatMap(part -> Stream.<Function<DemoPart, String>>of(
                        DemoPart::planText, DemoPart::passingReadings, DemoPart::failingReadings)
                .map(text -> text.apply(part)));
    }

    @ParameterizedTest
    @MethodSource("texts")
    void bothReadTheSame(String text) throws JsonProcessingException {
        TomlParseResult positions = Toml.parse(text);
        assertTrue(positions.errors().isEmpty());
        compare(positions, new TomlMapper().readTree(text), "");
        assertInstanceOf(TomlReading.Readable.class, new TomlText().read(text));
    }

    @ParameterizedTest
    @MethodSource("texts")
    void aSpoiledTextIsReadOrRefusedButNeverBringsTheReaderDown(String text) {
        Random random = new Random(text.length());
        TomlText reader = new TomlText();
        for (int i = 0; i < SPOILED_COPIES; i++) {
            StringBuilder spoiled = new StringBuilder(text);
            for (int slips = 0; slips < 1 + random.nextInt(3); slips++) {
                int at = random.nextInt(spoiled.length());
                switch (random.nextInt(3)) {
                    case 0 -> spoiled.deleteCharAt(at);
                    case 1 -> spoiled.insert(at, SPANNERS.charAt(random.nextInt(SPANNERS.length())));
                    default -> spoiled.setCharAt(at, spoiled.charAt(random.nextInt(spoiled.length())));
                }
            }
            assertNotNull(reader.read(spoiled.toString()), spoiled.toString());
        }
    }

    private static void compare(Object seen, JsonNode value, String where) {
        if (seen instanceof TomlTable table) {
            Set<String> names = new TreeSet<>();
            value.fieldNames().forEachRemaining(names::add);
            assertEquals(new TreeSet<>(table.keySet()), names, where);
            names.forEach(name -> compare(table.get(List.of(name)), value.get(name), where + "/" + name));
        } else if (seen instanceof TomlArray array) {
            assertEquals(array.size(), value.size(), where);
            for (int i = 0; i < array.size(); i++) {
                compare(array.get(i), value.get(i), where + "/" + i);
            }
        } else if (seen instanceof Number number) {
            assertEquals(number.doubleValue(), value.doubleValue(), where);
        } else if (seen instanceof Boolean truth) {
            assertEquals(truth, value.booleanValue(), where);
        } else {
            assertEquals(seen, value.textValue(), where);
        }
    }
}
