package org.tenthwise.app.command;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.tenthwise.checklists.catalogue.ExamplePart;

/** The whole drawings that come along, as a person at the command line tries them. */
class ExamplePartsTest {

    @TempDir
    private Path folder;

    private Path file(ExamplePart part, String ending) throws IOException {
        for (Map.Entry<String, String> file : part.files().entrySet()) {
            Path path = folder.resolve(file.getKey());
            Files.createDirectories(path.getParent());
            Files.writeString(path, file.getValue());
        }
        return part.files().keySet().stream()
                .filter(name -> name.endsWith(ending))
                .map(folder::resolve)
                .findFirst()
                .orElseThrow();
    }

    private Path plan(ExamplePart part) throws IOException {
        return file(part, part.plan().part().number() + "-" + part.plan().part().revision() + ".toml");
    }

    /** What the part is made of and put through has no number on these drawings. */
    @ParameterizedTest
    @EnumSource(ExamplePart.class)
    void aCheckFindsNoErrorAndOnlyWhatNoNumberBelongsTo(ExamplePart part) throws Exception {
        Typed typed = Typed.line("check", plan(part));
        assertEquals(0, typed.exit(), typed.err()::toString);
        assertEquals(2, typed.out().size(), typed.out()::toString);
        assertTrue(typed.out().get(1).contains("without a balloon"), typed.out()::toString);
    }

    @ParameterizedTest
    @EnumSource(ExamplePart.class)
    void wherePartAndPapersAreRightItConforms(ExamplePart part) throws Exception {
        walks(part, "-pass.readings.toml", 0);
    }

    @ParameterizedTest
    @EnumSource(ExamplePart.class)
    void whatIsWrongIsWhatTheReadingsExpect(ExamplePart part) throws Exception {
        Typed typed = walks(part, "-fail.readings.toml", 1);
        assertTrue(typed.out().stream().noneMatch(line -> line.contains("expects")), typed.out()::toString);
    }

    @ParameterizedTest
    @EnumSource(ExamplePart.class)
    void aSlipThatStandsIsNotPassed(ExamplePart part) throws Exception {
        Typed typed = walks(part, "-slips.readings.toml", 1);
        assertTrue(typed.out().stream().noneMatch(line -> line.contains("expects")), typed.out()::toString);
    }

    /** Every format of the record is whole, and proves itself. */
    private Typed walks(ExamplePart part, String readings, int exit) throws Exception {
        Path out = folder.resolve("out");
        Typed typed = Typed.line(
                "walk",
                plan(part),
                "--readings",
                file(part, readings),
                "--store",
                folder.resolve("s.db"),
                "--out",
                out);
        assertEquals(exit, typed.exit(), () -> typed.out() + "\n" + typed.err());
        List<String> formats = new ArrayList<>();
        for (Path record : Typed.files(out)) {
            String name = record.getFileName().toString();
            formats.add(name.substring(name.lastIndexOf('.')));
            if (name.endsWith(".json")) {
                assertEquals(0, Typed.line("verify", record).exit());
            } else {
                assertTrue(
                        Files.readAllLines(record).size() > part.plan().steps().size());
            }
        }
        assertEquals(List.of(".csv", ".json"), formats.stream().sorted().toList());
        return typed;
    }

    /** What the planner wrote that the issue affects is what a comparison of the two issues proposes. */
    @Test
    void theIssueBeforeOfTheWinchShaftShowsWhatToCheckAgain() throws Exception {
        Path before = file(ExamplePart.WINCH_SHAFT, "WS-407-C-issue-1.toml");
        Typed typed = Typed.line("compare", before, plan(ExamplePart.WINCH_SHAFT));
        assertEquals(1, typed.exit());
        assertEquals(
                List.of(
                        "From WS-407 rev C, issue 1 to WS-407 rev C, issue 2",
                        "17, check 39: Spline, over pins - check again",
                        "  requirement, words of the drawing: was 54.28/54.18, now 54.25/54.15",
                        "  requirement, lower limit: was 54.18 mm, now 54.15 mm",
                        "  requirement, upper limit: was 54.28 mm, now 54.25 mm",
                        "52, check 51: Rim gear, span over 6 - check again",
                        "  new",
                        "Proposed to be checked again, 2 characteristics: 17, 52. "
                                + "A person confirms each, and each that is left out.",
                        "Plans do not show another place, machine, tool, program or source of material: ask."),
                typed.out());
        assertTrue(ExamplePart.WINCH_SHAFT.planText().contains("affected = [\"17\", \"52\"]"));
    }

    /** What no callout can say, the list says so. */
    @ParameterizedTest
    @EnumSource(ExamplePart.class)
    void everyLineOfTheListIsReadOrTheListSaysWhyNot(ExamplePart part) {
        List<String> rows = part.characteristics().lines().skip(1).toList();
        byte[] texts = rows.stream()
                .map(row -> row.split(",", -1)[1])
                .collect(Collectors.joining("\n"))
                .getBytes(UTF_8);
        ByteArrayOutputStream said = new ByteArrayOutputStream();
        String unit = part.plan().unit().symbol();
        Typed.piped("callout", new ByteArrayInputStream(texts), said, "--unit", unit, "--general", general(part));
        List<String> answers = said.toString(UTF_8).lines().toList();
        assertEquals(rows.size(), answers.size());
        for (int i = 0; i < rows.size(); i++) {
            boolean saysWhy = !rows.get(i).endsWith(",");
            assertEquals(saysWhy, answers.get(i).contains("\"refused\""), rows.get(i) + ": " + answers.get(i));
        }
    }

    private static String general(ExamplePart part) {
        return part.planText()
                .lines()
                .filter(line -> line.startsWith("tolerance = "))
                .map(line -> line.split("\"")[1])
                .findFirst()
                .orElseThrow();
    }
}
