package org.tenthwise.checklists.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertNotNull;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.tenthwise.checklists.catalogue.DemoPart;
import org.tenthwise.model.gauge.GaugeKind;
import org.tenthwise.model.gauge.Uncertainty;
import org.tenthwise.model.plan.Check;
import org.tenthwise.model.plan.Combine;
import org.tenthwise.model.plan.Feature;
import org.tenthwise.model.plan.Mark;
import org.tenthwise.model.plan.OverWiresCheck;
import org.tenthwise.model.plan.PartId;
import org.tenthwise.model.plan.Place;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.plan.SizeCheck;
import org.tenthwise.model.plan.SizeModifier;
import org.tenthwise.model.plan.TemperatureAsked;
import org.tenthwise.model.plan.ThermalData;
import org.tenthwise.model.quantity.Celsius;
import org.tenthwise.model.quantity.Expansion;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.TemperatureRange;
import org.tenthwise.model.quantity.TemperatureScale;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.thread.ScrewThread;
import org.tenthwise.model.thread.ThreadForm;
import org.tenthwise.model.tolerance.Limits;
import org.tenthwise.model.tolerance.Origin;
import org.tenthwise.model.words.Message;

class PlanReaderTest {

    static final String HEAD =
            """
            format = 1
            part = "T-1"
            revision = "A"
            issue = "1"
            name = "Test piece"
            material = "steel"
            drawing = "T-1 sheet 2"
            unit = "in"

            [[operation]]
            number = 10
            name = "Turn"

            [[step]]
            number = 5
            operation = 10
            name = "It"
            method = "So."
            """;

    private static final String DEPTH =
            """
            kind = "depth"
            lower = 0.1240
            upper = 0.1250
            places = ["floor"]
            gauge_kind = "depth-gauge"
            """;

    @Test
    void theHeadIsKeptAsWritten() {
        Plan plan = plan("kind = \"look\"\nwhat = \"Seen.\"\n");
        assertEquals(new PartId("T-1", "A"), plan.part());
        assertEquals(
                List.of("1", "Test piece", "steel", "T-1 sheet 2", ""),
                List.of(plan.issue(), plan.name(), plan.material(), plan.drawing(), plan.remark()));
        assertEquals(Unit.INCH, plan.unit());
        assertEquals(Optional.empty(), plan.outline());
        assertEquals("Turn", plan.operation(10).name());
    }

    /** SHA-256 of the bytes, from the coreutils program sha256sum. */
    @Test
    void thePlanCarriesItsTextAndTheHashOfItsBytes() {
        String text =
                """
                format = 1
                part = "Ø-1"
                revision = "A"
                issue = "1"
                name = "n"
                material = "m"
                drawing = "d"
                unit = "mm"
                operation = [{ number = 1, name = "o" }]
                step = [{ number = 1, operation = 1, kind = "look", name = "s", what = "w" }]
                """;
        Plan plan = assertInstanceOf(PlanReading.Good.class, new PlanReader().read(text))
                .plan();
        assertEquals(text, plan.source().text());
        assertEquals(
                "e01ab153ce487681b40fd270f546b10c193158d78f0a769cc41f39eedde70a60",
                plan.source().sha256());
    }

    @Test
    void aSizeLeftToItselfTakesOneReadingAPlaceAndIsNotCutAgain() {
        SizeCheck size = (SizeCheck)
                check(
                        """
                kind = "depth"
                upper = 0.1250
                places = ["floor", { name = "wall", depth = 0.50, angle = 22.5 }]
                gauge_kind = "depth-gauge"
                """);
        assertEquals(
                new SizeCheck(
                        Feature.DEPTH,
                        Limits.atMost(new Written("0.1250", Unit.INCH)),
                        List.of(
                                Place.named("floor"),
                                new Place(
                                        "wall",
                                        Optional.of(new Written("0.50", Unit.INCH)),
                                        Optional.of(new BigDecimal("22.5")))),
                        1,
                        Combine.EACH,
                        false,
                        new Written("0", Unit.INCH),
                        new Check.Means(GaugeKind.DEPTH_GAUGE, Optional.empty(), Optional.empty())),
                size);
    }

    @Test
    void theMasterOfABoreGaugeKeepsItsPlaces() {
        SizeCheck bore = (SizeCheck)
                check(
                        """
                kind = "bore"
                lower = 1.3750
                upper = 1.3760
                places = ["front"]
                readings_each = 3
                drawing_says = "SX"
                cut_again = "too small"
                guard_band = 0.00010
                gauge_kind = "bore-gauge"
                gauge = "BG-5"
                master = 1.3750
                """);
        assertEquals(
                new Check.Means(
                        GaugeKind.BORE_GAUGE, Optional.of("BG-5"), Optional.of(new Written("1.3750", Unit.INCH))),
                bore.with());
        assertEquals(
                List.of("1.1", "1.2", "1.3"),
                bore.slots().stream().map(slot -> slot.key()).toList());
        assertEquals(new Written("0.00010", Unit.INCH), bore.guardBand());
        assertEquals(true, bore.cutAgain());
        assertEquals(Combine.LARGEST, bore.combine());
        assertEquals(Optional.of(SizeModifier.SX), bore.drawingSays());
    }

    @Test
    void aWayOfMeasuringHasItsUncertaintyAndTheGuardBandCanBeTheSame() {
        String named =
                """
                [[uncertainty]]
                name = "depth gauge"
                expanded = 0.0004

                [[step]]""";
        Plan plan = assertInstanceOf(
                        PlanReading.Good.class,
                        new PlanReader()
                                .read(
                                        HEAD.replace("[[step]]", named)
                                                + """
                kind = "depth"
                upper = 0.1250
                places = ["floor"]
                gauge_kind = "depth-gauge"
                uncertainty = "depth gauge"
                guard_band = "uncertainty"
                """))
                .plan();
        SizeCheck size = (SizeCheck) plan.step(5).check();
        assertEquals(
                Optional.of(new Uncertainty("depth gauge", new Written("0.0004", Unit.INCH), new BigDecimal(2))),
                size.with().uncertainty());
        assertEquals(new Written("0.0004", Unit.INCH), size.guardBand());
    }

    /** √(0.0005²/12 + 0.0002²) = 0.00024664 in; twice that, rounded up to two figures, is 0.00050 in. By hand. */
    @Test
    void anUncertaintyCanBePutTogetherFromItsSources() {
        String named =
                """
                [[uncertainty]]
                name = "depth gauge"
                components = [{ kind = "resolution", value = 0.0005 }, { kind = "normal", value = 0.0004, k = 2 }]

                [[step]]""";
        Plan plan = assertInstanceOf(
                        PlanReading.Good.class,
                        new PlanReader()
                                .read(
                                        HEAD.replace("[[step]]", named)
                                                + """
                kind = "depth"
                upper = 0.1250
                places = ["floor"]
                gauge_kind = "depth-gauge"
                uncertainty = "depth gauge"
                """))
                .plan();
        assertEquals(
                Optional.of(new Uncertainty("depth gauge", new Written("0.00050", Unit.INCH), new BigDecimal("2.00"))),
                ((SizeCheck) plan.step(5).check()).with().uncertainty());
    }

    /**
     * 16.2 stands in the table of materials; 11.5 for steel, where the plan says nothing else, is that of JCGM 100,
     * H.1.
     */
    @Test
    void aPlanSaysHowPartAndGaugeGrowAndHowWarmTheShopGets() {
        ThermalData climate = heated("part_material = \"aluminium bronze CuAl10Ni5Fe4\"", "")
                .climate()
                .orElseThrow();
        assertEquals(Expansion.of("16.2"), climate.part().expansion());
        assertEquals(Expansion.of("11.5"), climate.gauge().expansion());
        assertEquals(
                "steel, as the plan says nothing else", climate.gauge().source().toString());
        assertEquals(new TemperatureRange(Celsius.of("18"), Celsius.of("23.5")), climate.shop());
        assertEquals(
                new ThermalData.Growth(Expansion.of("13.0"), Message.of("plan.grows.said")),
                heated("part_expansion = 13.0", "").climate().orElseThrow().part());
    }

    /** 9.0 in 1e-6 per °F is 16.2 per °C, 64.4 °F is 18 °C and 77 °F is 25 °C, each exactly. */
    @Test
    void aPlanInInchesMayHaveItsTemperaturesInDegreesFahrenheit() {
        String table = "[temperature]\ndegrees = \"F\"\npart_expansion = 9.0\nshop_least = 64.4\nshop_greatest = "
                + "77\n\n[[step]]";
        ThermalData climate = assertInstanceOf(
                        PlanReading.Good.class, new PlanReader().read(HEAD.replace("[[step]]", table) + DEPTH))
                .plan()
                .climate()
                .orElseThrow();
        assertEquals(TemperatureScale.FAHRENHEIT, climate.scale());
        assertEquals(
                0, new BigDecimal("16.2").compareTo(climate.part().expansion().millionths()));
        assertEquals(Expansion.of("11.5"), climate.gauge().expansion());
        assertEquals(0, new BigDecimal("18").compareTo(climate.shop().least().degrees()));
        assertEquals(0, new BigDecimal("25").compareTo(climate.shop().greatest().degrees()));
    }

    @Test
    void temperaturesAreAskedForUnlessThePlanHasNoSuchTableOrSaysOtherwise() {
        assertEquals(
                TemperatureAsked.WHERE_IT_MATTERS,
                heated("part_expansion = 13.0", "").step(5).temperatureAsked());
        assertEquals(
                TemperatureAsked.ALWAYS,
                heated("part_expansion = 13.0", "temperature = \"ask\"\n")
                        .step(5)
                        .temperatureAsked());
        assertEquals(
                TemperatureAsked.NEVER,
                heated("part_expansion = 13.0", "temperature = \"not-asked\"\n")
                        .step(5)
                        .temperatureAsked());
        Plan cold = plan(DEPTH);
        assertEquals(TemperatureAsked.NEVER, cold.step(5).temperatureAsked());
        assertEquals(Optional.empty(), cold.climate());
    }

    private static Plan heated(String part, String ofTheStep) {
        String table =
                "[temperature]\ndegrees = \"C\"\n%s\nshop_least = 18\nshop_greatest = 23.5\n\n[[step]]".formatted(part);
        return assertInstanceOf(
                        PlanReading.Good.class,
                        new PlanReader().read(HEAD.replace("[[step]]", table) + DEPTH + ofTheStep))
                .plan();
    }

    /**
     * 1/2-13 UNC-2A: pitch diameter 0.4485 to 0.4435 in, ASME B1.1, Table 2A (in Machinery's Handbook, 31st ed., the
     * same).
     */
    @Test
    void aThreadByItsDesignationBringsItsGeometryAndItsLimits() {
        OverWiresCheck over = (OverWiresCheck)
                check(
                        """
                kind = "thread-over-wires"
                designation = "1/2-13 UNC-2A"
                wire = 0.0444
                places = ["middle"]
                """);
        assertEquals(ThreadForm.UNIFIED, over.thread().form());
        assertEquals(Length.of("0.5", Unit.INCH), over.thread().diameter());
        assertEquals(
                new Limits(
                        Optional.of(new Written("0.4435", Unit.INCH)),
                        Optional.of(new Written("0.4485", Unit.INCH)),
                        Optional.of(new Origin("1/2-13 UNC-2A", Message.of("plan.limits-by.formula", "ASME B1.1")))),
                over.pitchDiameter());
    }

    @Test
    void limitsWrittenBesideADesignationAreThoseOfTheDrawing() {
        OverWiresCheck over = (OverWiresCheck)
                check(
                        """
                kind = "thread-over-wires"
                designation = "1 1/2-8 STUB ACME-2G"
                lower = 1.4347
                upper = 1.4527
                wire = 0.0700
                places = ["middle"]
                """);
        assertEquals(
                Limits.between(new Written("1.4347", Unit.INCH), new Written("1.4527", Unit.INCH)),
                over.pitchDiameter());
        assertEquals(ThreadForm.STUB_ACME, over.thread().form());
    }

    /** 20 H7: +21/0 µm; 20 js7: ±10.5 µm (ISO 286-2). */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
            bore     | H7  | 20.000  | 20.021  | Ø20 H7
            diameter | js7 | 19.9895 | 20.0105 | Ø20 js7
            width    | H7  | 20.000  | 20.021  | 20 H7
            """)
    void aZoneGivesBothLimits(String kind, String zone, String lower, String upper, String designation) {
        String text = HEAD.replace("unit = \"in\"", "unit = \"mm\"")
                + """
                kind = "%s"
                nominal = 20
                zone = "%s"
                places = ["front"]
                gauge_kind = "caliper"
                """
                        .formatted(kind, zone);
        Plan plan = assertInstanceOf(PlanReading.Good.class, new PlanReader().read(text))
                .plan();
        assertEquals(
                new Limits(
                        Optional.of(new Written(lower, Unit.MILLIMETRE)),
                        Optional.of(new Written(upper, Unit.MILLIMETRE)),
                        Optional.of(new Origin(designation, Message.of("as-said", "ISO 286-2")))),
                ((SizeCheck) plan.step(5).check()).limits());
    }

    /** 8 threads to the inch are a pitch of 1/8 in = 3.175 mm; 7 1/2 one of 25.4/7.5 = 3.386666666667 mm. */
    @Test
    void threadsToTheInchBecomeAPitch() {
        assertEquals(
                new ScrewThread(
                        ThreadForm.STUB_ACME,
                        Length.of("38.1", Unit.MILLIMETRE),
                        Length.of("3.175", Unit.MILLIMETRE),
                        1),
                thread("threads_per_inch = 8\nwire = 0.0700").thread());
        assertEquals(
                Length.of("3.386666666667", Unit.MILLIMETRE),
                thread("threads_per_inch = 7.5\nwire = 0.0700").thread().pitch());
    }

    /** Least and greatest wire of a 1/8 in Stub Acme: 0.447214 P = 0.05590 in and 0.596588 P = 0.07457 in, by hand. */
    @Test
    void aWireJustInsideTheWindowIsTaken() {
        assertEquals(
                "0.0560",
                thread("pitch = 0.125\nwire = 0.0560")
                        .with()
                        .reference()
                        .orElseThrow()
                        .text());
        assertEquals(
                "0.0745",
                thread("pitch = 0.125\nwire = 0.0745")
                        .with()
                        .reference()
                        .orElseThrow()
                        .text());
    }

    @Test
    void anOutlineIsReadInTheUnitOfThePlan() {
        PlanReading.Good good = assertInstanceOf(
                PlanReading.Good.class,
                new PlanReader()
                        .read(HEAD
                                + "at = [0.5, 1.0]\nkind = \"look\"\nwhat = \"Seen.\"\n\n[outline]\noutside "
                                + "= [[0, 1], [2, 1]]\n"));
        assertEquals(
                Length.of("50.8", Unit.MILLIMETRE),
                good.plan().outline().orElseThrow().length());
        assertEquals(
                Optional.of(new Mark(Length.of("12.7", Unit.MILLIMETRE), Length.of("25.4", Unit.MILLIMETRE))),
                good.plan().step(5).mark());
    }

    @ParameterizedTest
    @EnumSource(DemoPart.class)
    void aPlanWithLinesMissingOrMixedUpIsReadOrRefusedButNeverBringsTheReaderDown(DemoPart part) {
        Random random = new Random(7);
        List<String> lines = part.planText().lines().toList();
        for (int i = 0; i < 15; i++) {
            List<String> spoiled = new ArrayList<>(lines);
            spoiled.remove(random.nextInt(spoiled.size()));
            spoiled.set(random.nextInt(spoiled.size()), lines.get(random.nextInt(lines.size())));
            assertNotNull(new PlanReader().read(String.join("\n", spoiled)));
        }
    }

    private static OverWiresCheck thread(String pitchAndWire) {
        return (OverWiresCheck) check(
                """
                kind = "thread-over-wires"
                form = "stub-acme"
                diameter = 1.5
                %s
                lower = 1.4347
                upper = 1.4527
                places = ["middle"]
                """
                        .formatted(pitchAndWire));
    }

    static Check check(String keys) {
        return plan(keys).step(5).check();
    }

    private static Plan plan(String keys) {
        return assertInstanceOf(PlanReading.Good.class, new PlanReader().read(HEAD + keys))
                .plan();
    }
}
