package org.tenthwise.checklists.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.verdict.VerdictKind;

/** The examples of {@code plan-file.md} are sound, and it names every kind of step. */
class PlanFileGuideTest {

    private static final Pattern EXAMPLE = Pattern.compile("```toml\n(.*?)```", Pattern.DOTALL);

    @Test
    void theExamplesAreSound() throws IOException {
        List<String> examples = EXAMPLE.matcher(guide())
                .results()
                .map((MatchResult found) -> found.group(1))
                .toList();
        assertEquals(4, examples.size());
        Plan plan = assertInstanceOf(PlanReading.Good.class, new PlanReader().read(examples.get(0)))
                .plan();
        ReadingsFile sample = assertInstanceOf(SampleReading.Good.class, new SampleReader().read(examples.get(1), plan))
                .sample();
        assertEquals(Map.of(1, VerdictKind.PASS), sample.expected());
        Plan further = assertInstanceOf(PlanReading.Good.class, new PlanReader().read(examples.get(2)))
                .plan();
        ReadingsFile more = assertInstanceOf(
                        SampleReading.Good.class, new SampleReader().read(examples.get(3), further))
                .sample();
        assertEquals(Map.of(1, VerdictKind.FAIL, 3, VerdictKind.PASS), more.expected());
    }

    @Test
    void everyKindOfStepIsThere() throws IOException {
        String guide = guide();
        for (String kind : new StepKinds().names()) {
            assertTrue(guide.contains("`" + kind + "`"), kind);
        }
    }

    private static String guide() throws IOException {
        return Files.readString(Path.of("plan-file.md"));
    }
}
