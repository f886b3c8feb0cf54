package org.tenthwise.checklists.catalogue;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.tenthwise.checklists.rules.ReadingsFile;
import org.tenthwise.checklists.rules.SampleReader;
import org.tenthwise.checklists.rules.SampleReading;
import org.tenthwise.model.plan.BalloonNumber;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.plan.Step;
import org.tenthwise.model.record.DrawingAccount;
import org.tenthwise.model.record.Sheet;
import org.tenthwise.model.run.Entry;
import org.tenthwise.model.run.Event;
import org.tenthwise.model.run.Run;
import org.tenthwise.model.verdict.VerdictKind;

/** Whole drawings as plans. The verdicts expected stand in the readings, judged by hand. */
class ExamplePartTest {

    private static final OffsetDateTime AT = OffsetDateTime.parse("2026-11-25T09:00:00+01:00");

    @ParameterizedTest
    @EnumSource(ExamplePart.class)
    void thePlanIsSoundSaysThatItIsInventedAndHasAnOutline(ExamplePart part) {
        Plan plan = part.plan();
        assertEquals("Invented part, for trying out", plan.remark());
        assertTrue(plan.outline().isPresent());
    }

    @ParameterizedTest
    @EnumSource(ExamplePart.class)
    void everyLineOfTheListHasItsLineInTheAccountAndNoNumberIsMissing(ExamplePart part) {
        Map<String, String> listed = listed(part);
        DrawingAccount account = DrawingAccount.of(sheet(part.plan(), read(part, part.passingReadings())));
        assertTrue(listed.size() >= 40, () -> "only " + listed.size());
        assertEquals(List.of(), account.gaps());
        assertEquals(
                listed.keySet(),
                account.lines().stream()
                        .flatMap(line -> line.balloon().stream())
                        .map(BalloonNumber::text)
                        .collect(Collectors.toSet()));
    }

    /** The list and the plan have the same words of the drawing. */
    @ParameterizedTest
    @EnumSource(ExamplePart.class)
    void thePlanSaysOfEachWhatTheListSays(ExamplePart part) {
        Plan plan = part.plan();
        assertEquals(
                listed(part),
                plan.steps().stream()
                        .filter(Step::isOfDrawing)
                        .filter(step -> step.drawing().balloon().isPresent())
                        .collect(Collectors.toMap(
                                step -> step.drawing().balloon().orElseThrow().text(),
                                step -> step.drawing().requirement(),
                                (one, other) -> one,
                                TreeMap::new)));
    }

    @ParameterizedTest
    @EnumSource(ExamplePart.class)
    void ofTwentyCharacteristicsNineteenAreFoundAtTheWork(ExamplePart part) {
        List<Step> numbered = part.plan().steps().stream()
                .filter(Step::isOfDrawing)
                .filter(step -> step.drawing().balloon().isPresent())
                .toList();
        long byDocument = numbered.stream()
                .filter(step -> step.check().asDocument().isPresent())
                .count();
        assertTrue(20 * byDocument <= numbered.size(), byDocument + " of " + numbered.size());
    }

    @ParameterizedTest
    @EnumSource(ExamplePart.class)
    void everythingPassesWhereThePartConforms(ExamplePart part) {
        ReadingsFile sample = read(part, part.passingReadings());
        compare(part.plan(), sample);
        assertEquals(Set.of(VerdictKind.PASS), Set.copyOf(sample.expected().values()));
    }

    @ParameterizedTest
    @EnumSource(ExamplePart.class)
    void whatIsOutsideIsFoundToBe(ExamplePart part) {
        compare(part.plan(), read(part, part.failingReadings()));
    }

    /** A part as a shop has it: no more than a quarter of its checks stand otherwise than passed, some of them open. */
    @ParameterizedTest
    @EnumSource(ExamplePart.class)
    void aPartThatFailsPassesInMost(ExamplePart part) {
        Collection<VerdictKind> expected =
                read(part, part.failingReadings()).expected().values();
        long passed = expected.stream().filter(kind -> kind == VerdictKind.PASS).count();
        assertTrue(4 * passed >= 3L * expected.size(), () -> passed + " of " + expected.size());
        assertTrue(expected.containsAll(Set.of(VerdictKind.FAIL, VerdictKind.OPEN, VerdictKind.UNPROVEN)));
    }

    /**
     * A slip that was struck out does no harm. One that was meant to stand never passes: out, or unproven where metal
     * is left.
     */
    @ParameterizedTest
    @EnumSource(ExamplePart.class)
    void aSlipThatStandsNeverPasses(ExamplePart part) {
        ReadingsFile sample = read(part, part.readingsWithSlips());
        compare(part.plan(), sample);
        assertEquals(
                Set.of(VerdictKind.PASS, VerdictKind.UNPROVEN, VerdictKind.FAIL),
                Set.copyOf(sample.expected().values()));
    }

    /** Each way to work a size out, of those there are. */
    @Test
    void everyWayToWorkASizeOutIsOnADrawing() {
        assertEquals(
                Set.of(
                        "two-diameters",
                        "sine-bar",
                        "rollers",
                        "balls",
                        "chord",
                        "rolls",
                        "dovetail",
                        "keyway",
                        "vee",
                        "over-pins",
                        "span",
                        "centres"),
                Arrays.stream(ExamplePart.values())
                        .flatMap(part -> part.planText().lines())
                        .filter(line -> line.startsWith("by = \""))
                        .map(line -> line.split("\"")[1])
                        .filter(by -> !by.startsWith("Planner"))
                        .collect(Collectors.toSet()));
    }

    @ParameterizedTest
    @EnumSource(ExamplePart.class)
    void noReadingWasTakenBehindAClosedHoldPoint(ExamplePart part) {
        for (String readings : List.of(part.passingReadings(), part.failingReadings(), part.readingsWithSlips())) {
            assertTrue(sheet(part.plan(), read(part, readings)).lines().stream()
                    .noneMatch(line -> line.held() && line.passes().stream().anyMatch(pass -> !pass.isEmpty())));
        }
    }

    /** What only asks whether work may go on is answered yes throughout. */
    @Test
    void everyKindOfCheckIsSeenToPassAndToFail() {
        Set<String> passing = new TreeSet<>();
        Set<String> failing = new TreeSet<>();
        for (ExamplePart part : ExamplePart.values()) {
            Map<Integer, VerdictKind> bad = read(part, part.failingReadings()).expected();
            for (Step step : part.plan().steps()) {
                String kind = step.check().key();
                passing.add(kind);
                if (bad.get(step.number()) == VerdictKind.FAIL) {
                    failing.add(kind);
                }
            }
        }
        passing.remove("confirm");
        failing.remove("confirm");
        assertEquals(passing, failing);
    }

    @ParameterizedTest
    @EnumSource(ExamplePart.class)
    void itsFilesAreThoseOfAFolderOfPlans(ExamplePart part) {
        assertEquals(
                5 + Math.max(0, part.plan().issues().size() - 1), part.files().size());
        part.files().values().forEach(text -> assertTrue(!text.isBlank()));
        assertEquals(
                part.planText(),
                part.files()
                        .get(part.plan().part().number() + "-"
                                + part.plan().part().revision() + ".toml"));
    }

    private static void compare(Plan plan, ReadingsFile sample) {
        Sheet sheet = sheet(plan, sample);
        assertEquals(
                plan.steps().stream().map(Step::number).collect(Collectors.toSet()),
                sample.expected().keySet());
        assertAll(sheet.lines().stream()
                .map(line -> () -> assertEquals(
                        sample.expected().get(line.step().number()),
                        line.finding().verdict().standing(),
                        "check " + line.step().number())));
        assertEquals(sample.outcome(), Optional.of(sheet.outcome()));
    }

    /** Requirement by number; no field of the lists has a comma. */
    private static Map<String, String> listed(ExamplePart part) {
        return part.characteristics()
                .lines()
                .skip(1)
                .map(line -> line.split(",", -1))
                .collect(Collectors.toMap(row -> row[0], row -> row[1], (one, other) -> one, TreeMap::new));
    }

    private static ReadingsFile read(ExamplePart part, String readings) {
        SampleReading reading = new SampleReader().read(readings, part.plan());
        return assertInstanceOf(SampleReading.Good.class, reading, reading::toString)
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
