package org.tenthwise.checklists.catalogue;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.tenthwise.checklists.rules.ReadingsFile;
import org.tenthwise.checklists.rules.SampleReader;
import org.tenthwise.checklists.rules.SampleReading;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.plan.Step;
import org.tenthwise.model.record.OverWiresFinding;
import org.tenthwise.model.record.PlugFitFinding;
import org.tenthwise.model.record.Sheet;
import org.tenthwise.model.run.Entry;
import org.tenthwise.model.run.Event;
import org.tenthwise.model.run.Run;
import org.tenthwise.model.verdict.VerdictKind;

/** Runs the samples of the demo parts through the sheet. The verdicts expected stand in the samples, judged by hand. */
class SampleVerdictTest {

    private static final OffsetDateTime AT = OffsetDateTime.parse("2026-11-25T09:00:00+01:00");

    @ParameterizedTest
    @EnumSource(DemoPart.class)
    void everythingPassesOnThePassingSample(DemoPart part) {
        ReadingsFile sample = read(part, DemoPart::passingReadings);
        compare(part.plan(), sample);
        assertEquals(Set.of(VerdictKind.PASS), Set.copyOf(sample.expected().values()));
    }

    @ParameterizedTest
    @EnumSource(DemoPart.class)
    void theFailingSampleFailsWhereItSays(DemoPart part) {
        compare(part.plan(), read(part, DemoPart::failingReadings));
    }

    @ParameterizedTest
    @EnumSource(DemoPart.class)
    void noReadingWasTakenBehindAClosedHoldPoint(DemoPart part) {
        for (Function<DemoPart, String> readings :
                List.<Function<DemoPart, String>>of(DemoPart::passingReadings, DemoPart::failingReadings)) {
            Sheet sheet = sheet(part.plan(), read(part, readings));
            assertTrue(sheet.lines().stream()
                    .noneMatch(line -> line.held() && line.passes().stream().anyMatch(pass -> !pass.isEmpty())));
        }
    }

    @Test
    void betweenThemTheFailingSamplesEndInEveryWord() {
        assertEquals(
                Set.of(VerdictKind.values()),
                Stream.of(DemoPart.values())
                        .flatMap(part -> read(part, DemoPart::failingReadings).expected().values().stream())
                        .collect(Collectors.toSet()));
    }

    @Test
    void thePlugsContradictTheGaugesBothWays() {
        PlugFitFinding sticks = (PlugFitFinding)
                sheet(DemoPart.SCREW_CARRIER.plan(), read(DemoPart.SCREW_CARRIER, DemoPart::failingReadings))
                        .line(14)
                        .finding();
        PlugFitFinding enters = (PlugFitFinding)
                sheet(DemoPart.WINCH_BARREL_END.plan(), read(DemoPart.WINCH_BARREL_END, DemoPart::failingReadings))
                        .line(11)
                        .finding();
        assertEquals(Optional.of(PlugFitFinding.Contradiction.STICKS_YET_MEASURES_CLEAR), sticks.contradiction());
        assertEquals(Optional.of(PlugFitFinding.Contradiction.ENTERS_YET_MEASURES_TIGHT), enters.contradiction());
    }

    @Test
    void theBestWireOfTheHandbookRestsOnTheRootOfTheStubThread() {
        Plan plan = DemoPart.WINCH_BARREL_END.plan();
        OverWiresFinding best =
                (OverWiresFinding) sheet(plan, read(DemoPart.WINCH_BARREL_END, DemoPart::failingReadings))
                        .line(22)
                        .finding();
        OverWiresFinding bigger =
                (OverWiresFinding) sheet(plan, read(DemoPart.WINCH_BARREL_END, DemoPart::passingReadings))
                        .line(22)
                        .finding();
        assertTrue(best.bottoms());
        assertTrue(!bigger.bottoms());
    }

    private static void compare(Plan plan, ReadingsFile sample) {
        Sheet sheet = sheet(plan, sample);
        assertEquals(
                plan.steps().stream().map(Step::number).collect(Collectors.toSet()),
                sample.expected().keySet());
        Map<Integer, VerdictKind> found = sheet.lines().stream()
                .collect(Collectors.toMap(
                        line -> line.step().number(),
                        line -> line.finding().verdict().standing()));
        assertAll(plan.steps().stream()
                .map(step -> () -> assertEquals(
                        sample.expected().get(step.number()), found.get(step.number()), "check " + step.number())));
        assertEquals(sample.outcome(), Optional.of(sheet.outcome()));
    }

    private static ReadingsFile read(DemoPart part, Function<DemoPart, String> readings) {
        return assertInstanceOf(SampleReading.Good.class, new SampleReader().read(readings.apply(part), part.plan()))
                .sample();
    }

    private static Sheet sheet(Plan plan, ReadingsFile sample) {
        List<Entry> entries = new ArrayList<>();
        entries.add(new Entry(1, "r", AT, sample.by(), sample.begun()));
        for (Event event : sample.events()) {
            entries.add(new Entry(entries.size() + 1, "r", AT, sample.by(), event));
        }
        return Sheet.of(plan, new Run(entries));
    }
}
