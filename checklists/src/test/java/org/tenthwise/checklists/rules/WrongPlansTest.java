package org.tenthwise.checklists.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every file of {@code wrong-plans} gives exactly the problems written beside it, one a line, in the order of the file. */
class WrongPlansTest {

    static Stream<String> names() throws IOException, URISyntaxException {
        try (Stream<Path> files = Files.list(folder())) {
            return files.map(file -> file.getFileName().toString()).filter(name -> name.endsWith(".toml"))
                    .map(name -> name.replace(".toml", "")).sorted().toList().stream();
        }
    }

    @ParameterizedTest
    @MethodSource("names")
    void aWrongPlanGivesEveryProblemWithItsPlace(String name) throws IOException, URISyntaxException {
        List<String> expected = Files.readAllLines(folder().resolve(name + ".txt"));
        PlanReading.Bad bad = assertInstanceOf(PlanReading.Bad.class,
                new PlanReader().read(Files.readString(folder().resolve(name + ".toml"))));
        assertEquals(String.join("\n", expected),
                String.join("\n", bad.problems().stream().map(PlanProblem::toString).toList()));
    }

    @Test
    void thereAreFortyWrongPlansAtLeast() throws IOException, URISyntaxException {
        assertTrue(names().count() >= 40);
    }

    private static Path folder() throws URISyntaxException {
        return Path.of(WrongPlansTest.class.getResource("/wrong-plans").toURI());
    }
}
