package org.tenthwise.checklists.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.tenthwise.checklists.rules.RequirementRead.from;
import static org.tenthwise.checklists.rules.RequirementRead.limits;
import static org.tenthwise.checklists.rules.RequirementRead.problems;
import static org.tenthwise.checklists.rules.RequirementRead.read;
import static org.tenthwise.checklists.rules.RequirementRead.requirement;
import static org.tenthwise.checklists.rules.RequirementRead.step;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tenthwise.model.compute.roughness.AcceptanceRule;
import org.tenthwise.model.gauge.GaugeKind;
import org.tenthwise.model.plan.AngleCheck;
import org.tenthwise.model.plan.AskedCheck;
import org.tenthwise.model.plan.Check;
import org.tenthwise.model.plan.DocumentCheck;
import org.tenthwise.model.plan.IndicatedCheck;
import org.tenthwise.model.plan.OverWiresCheck;
import org.tenthwise.model.plan.PositionCheck;
import org.tenthwise.model.plan.ScaleCheck;
import org.tenthwise.model.plan.SizeCheck;
import org.tenthwise.model.plan.Step;
import org.tenthwise.model.tolerance.MaterialModifier;
import org.tenthwise.model.words.Words;

/** Tolerance classes: ISO 286-2:2010; thread: ISO 965-1, as the sums give them; general tolerances: ISO 2768-1. */
class RequirementTest {

    @Test
    void kindLimitsNameAndGaugeFollowFromTheWordsOfTheDrawing() {
        Step step = step(requirement("Ø30 H7") + "places = [\"front\"]\nmaster = 30.000\n");
        SizeCheck check = assertInstanceOf(SizeCheck.class, step.check());
        assertEquals("bore", check.feature().key());
        assertEquals("30.000 30.021", limits(step));
        assertEquals("Ø30 H7", from(step));
        assertEquals("Ø30 H7", step.name());
        assertEquals(GaugeKind.BORE_GAUGE, check.means().orElseThrow().kind());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
            Ø12 h6         | diameter  | 11.989 12.000 | Ø12 h6
            25 H9          | width     | 25.000 25.052 | 25 H9
            25 h9          | thickness | 24.948 25.000 | 25 h9
            12.5 ±0.1      | length    | 12.4 12.6     |
            R6 ±0.2        | radius    | 5.8 6.2       |
            R4             | radius    | 3.5 4.5       | ISO 2768-m
            30             | length    | 29.8 30.2     | ISO 2768-m
            12 MAX         | length    | - 12          |
            □ 16 ±0.1      | flats     | 15.9 16.1     |
            ↧ 12 ±0.2      | depth     | 11.8 12.2     |
            ⌴ Ø11 ±0.2     | counterbore | 10.8 11.2   |
            12,5 ±0,1      | length    | 12.4 12.6     |
            """)
    void aSizeIsOfItsFeature(String text, String feature, String limits, String from) {
        Step step = step(requirement(text) + "places = [\"there\"]\n");
        assertEquals(
                feature,
                assertInstanceOf(SizeCheck.class, step.check()).feature().key());
        assertEquals(limits, limits(step));
        assertEquals(Optional.ofNullable(from).orElse(""), from(step));
    }

    @Test
    void anAngleIsReadInItsOwnMarks() {
        Step step = step(requirement("30°30′ ±0°15′") + "places = [\"there\"]\n");
        assertInstanceOf(AngleCheck.class, step.check());
        assertEquals("30°15′ 30°45′", limits(step));
        assertEquals("44 46", limits(step(requirement("45° ±1°") + "places = [\"there\"]\n")));
    }

    @Test
    void anExternalThreadIsReadOverWiresAndAnInternalOneByALimitGauge() {
        Step thread = step(requirement("M10x1.5-6g") + "places = [\"there\"]\nwire = 0.895\n");
        assertInstanceOf(OverWiresCheck.class, thread.check());
        assertEquals("8.862 8.994", limits(thread));
        Step nut = step(requirement("M6x1-6H") + "go = \"Through.\"\nnot_go = \"Two turns.\"\n");
        assertInstanceOf(AskedCheck.GoNotGo.class, nut.check());
    }

    @Test
    void aNoteIsLookedAt() {
        Check check = step(requirement("REMOVE ALL BURRS")).check();
        assertEquals(
                "REMOVE ALL BURRS",
                assertInstanceOf(AskedCheck.VisualCheck.class, check).what());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
            Ra 1.6           | µm  | - 1.6 |            | roughness-tester
            Ra 1.6 MAX       | µm  | - 1.6 | max        | roughness-tester
            Rz 6.3 16 %      | µm  | - 6.3 | 16-percent | roughness-tester
            U Ra 1.6 L Ra 0.8 | µm | 0.8 1.6 |          | roughness-tester
            HRC 32-36        | HRC | 32 36 |            | hardness-tester
            650 HV10 MIN     | HV10 | 650 - |           | hardness-tester
            45 ±5 N·m        | N·m | 40 50 |            | torque-wrench
            3.0 kg MAX       | kg  | - 3.0 |            | weighing-scale
            """)
    void aFigureOnAScaleFollowsWithItsUnitAndItsRule(
            String text, String unit, String limits, String rule, String gauge) {
        Step step = step(requirement(text) + "places = [\"there\"]\n");
        ScaleCheck check = assertInstanceOf(ScaleCheck.class, step.check());
        assertEquals(limits, limits(step));
        assertEquals(unit, check.limits().unit().symbol());
        assertEquals(Optional.ofNullable(rule), check.rule().map(AcceptanceRule::key));
        assertEquals(gauge, check.means().orElseThrow().kind().key());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
            ↗ 0.02 A-B | CIRCULAR_RUN_OUT | A-B
            ⌰ 0.02 A   | TOTAL_RUN_OUT    | A
            ⟂ 0.02 A   | SQUARENESS       | A
            ∥ 0.02 B   | PARALLELISM      | B
            ⏥ 0.02     | FLATNESS         |
            ⌯ 0.02 A B | SYMMETRY         | A B
            """)
    void whatAnIndicatorShowsFollowsWithItsDatumAndItsZone(String text, IndicatedCheck.Of of, String datum) {
        String by = datum == null ? "" : "datum_by = \"centres\"\n";
        Step step = step(requirement(text) + by + "places = [\"a\", \"b\"]\ngauge_kind = \"dial-indicator\"\n");
        IndicatedCheck check = assertInstanceOf(IndicatedCheck.class, step.check());
        assertEquals(of, check.of());
        assertEquals(Optional.ofNullable(datum), check.datum());
        assertEquals("- 0.02", limits(step));
    }

    @Test
    void aRoundZoneOfAPositionFollowsWithItsModifier() {
        Step step = step(requirement("2X ⌖ Ø0.2 A B")
                + "holes = [{name = \"1\", x = 10, y = 0}, {name = \"2\", x = -10, y = 0}]\n"
                + "gauge_kind = \"coordinate-machine\"\n");
        PositionCheck check = assertInstanceOf(PositionCheck.class, step.check());
        assertEquals("0.2", check.zone().text());
        assertEquals(MaterialModifier.NONE, check.modifier());
        assertEquals(2, step.drawing().instances().count());
        String problems =
                problems(requirement("⌖ Ø0.2 Ⓜ A B") + "x = 10\ny = 0\ngauge_kind = \"coordinate-machine\"\n");
        assertTrue(problems.contains("size_step"), problems);
    }

    /** No indicator shows a cylinder about an axis, a bonus, a projected zone or a form: they are proven elsewhere. */
    @ParameterizedTest
    @CsvSource({
        "⟂ Ø0.02 A, 0.02",
        "∥ 0.05 Ⓜ A, 0.05",
        "⌖ 0.1 A B, 0.1",
        "⌖ Ø0.1 Ⓟ 20 A, 0.1",
        "⌖ Ø0.1 A (M), 0.1",
        "⌭ 0.01, 0.01",
        "○ 0.01, 0.01",
        "⌓ 0.1 A, 0.1",
        "◎ Ø0.1 A, 0.1",
        "∠ 0.05 A, 0.05",
        "⏤ 0.1, 0.1"
    })
    void anyOtherFrameIsADocumentWithItsZone(String text, String zone) {
        Check check = step(requirement(text)).check();
        assertEquals(text, assertInstanceOf(DocumentCheck.class, check).what());
        assertEquals(
                zone, check.judgedAgainst().orElseThrow().upper().orElseThrow().text());
    }

    @ParameterizedTest
    @CsvSource({
        "BREAK ALL EDGES 0.2 TO 0.4, chamfer, 0.2 0.4",
        "⌵ Ø12 ±0.2, hole, 11.8 12.2",
        "⌒ 25 ±0.2, length, 24.8 25.2"
    })
    void edgesCountersinksAndArcsAreSizesThatLeaveTheirShapeOpen(String text, String shape, String limits) {
        String asked = requirement(text) + "places = [\"there\"]\ngauge_kind = \"coordinate-machine\"\n";
        assertTrue(problems(asked).contains("shape"), problems(asked));
        String side = shape.equals("chamfer") ? "" : "side = \"inside\"\n";
        assertEquals(limits, limits(step(asked + "shape = \"" + shape + "\"\n" + side)));
    }

    @Test
    void aCountFollowsAndEachIsRead() {
        Step step = step(requirement("4X R2 ±0.2"));
        assertEquals(4, step.drawing().instances().count());
        assertEquals(4, assertInstanceOf(SizeCheck.class, step.check()).places().size());
    }

    @Test
    void whereTheStepSaysTheKindItsPartOfTheWordsCounts() {
        String hole = requirement("Ø6.6 ±0.1 THRU ⌴ Ø11 ±0.2 ↧ 6.4 ±0.2");
        assertEquals("6.2 6.6", limits(step("kind = \"depth\"\n" + hole + "places = [\"there\"]\n")));
        assertEquals(
                "12.4 12.6",
                limits(step("kind = \"diameter\"\n" + requirement("Ø12.5 ±0.1") + "places = [\"there\"]\n")));
    }

    @Test
    void whatWasReadIsToldBeforeItCounts() {
        PlanReading.Good good =
                assertInstanceOf(PlanReading.Good.class, read(requirement("30") + "places = [\"there\"]\n"));
        assertEquals(
                List.of("check 5: \"30\" is read as length, kind \"size\": 29.8 to 30.2 mm, from ISO 2768-m "
                        + "(general tolerance of the drawing)"),
                good.requirements().stream().map(Words.ENGLISH::say).toList());
        PlanReading.Good written = assertInstanceOf(
                PlanReading.Good.class,
                read("kind = \"size\"\nfeature = \"length\"\ngauge_kind = \"caliper\"\nname = \"L\"\nlower = 29.8\n"
                        + "upper = 30.2\n" + requirement("30 all over, see sheet 2") + "places = [\"there\"]\n"));
        assertEquals(List.of(), written.requirements());
    }

    /** Whoever leaves the sign out says by the kind what the figure is of. */
    @ParameterizedTest
    @CsvSource({"bore", "diameter", "width", "depth"})
    void aFigureWithoutASignIsWhatTheStepSaysItIs(String kind) {
        assertEquals(
                "11.9 12.1",
                limits(step("kind = \"" + kind + "\"\ngauge_kind = \"caliper\"\n" + requirement("12 ±0.1")
                        + "places = [\"there\"]\n")));
    }
}
