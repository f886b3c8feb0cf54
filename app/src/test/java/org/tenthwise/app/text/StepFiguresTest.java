package org.tenthwise.app.text;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tenthwise.app.InventedPlans;
import org.tenthwise.checklists.catalogue.DemoPart;
import org.tenthwise.checklists.catalogue.ExamplePart;
import org.tenthwise.checklists.rules.PlanReader;
import org.tenthwise.checklists.rules.PlanReading;
import org.tenthwise.model.gauge.Gauge;
import org.tenthwise.model.gauge.GaugeKind;
import org.tenthwise.model.gauge.ReadingDirection;
import org.tenthwise.model.gauge.Setting;
import org.tenthwise.model.plan.Place;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.plan.Slot;
import org.tenthwise.model.plan.Step;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.record.Finding;
import org.tenthwise.model.record.Measured;
import org.tenthwise.model.record.Sheet;
import org.tenthwise.model.run.Entry;
import org.tenthwise.model.run.Event;
import org.tenthwise.model.run.Pass;
import org.tenthwise.model.run.Run;
import org.tenthwise.model.run.StepEvent;
import org.tenthwise.model.words.Words;

class StepFiguresTest {

    /** Outside diameter of 3.990 to 3.994. */
    private static final String PLAN = InventedPlans.text(
            "mm",
            """
            [[step]]
            number = 1
            operation = 10
            kind = "diameter"
            name = "Pin"
            method = "Round the pin."
            lower = 3.990
            upper = 3.994
            places = [%s]
            combine = "mean"
            drawing_says = "SA"
            guard_band = %s
            cut_again = "too big"
            gauge_kind = "micrometer"
            """);

    private static final OffsetDateTime AT = OffsetDateTime.parse("2026-03-02T08:15:00+01:00");

    /**
     * Value = certified size − (reading − zero) for a gauge whose number falls as the size grows, by hand; then with
     * the places the gauge reads, or those of the limits 30.000 and 30.021 as far as that is one more.
     */
    @ParameterizedTest
    @CsvSource(
            textBlock =
                    """
            # certified, zero,   read,    value
            30.001,      0.000,  -0.010,  30.011
            30.00134,    0.000,  -0.010,  30.011
            30.00134,    0.0005, -0.0005, 30.0023
            30.001,      0.0005, -0.010,  30.0115
            30.0,        0.0,    -0.1,    30.10
            30.0000004,  0.000,  -0.010,  30.010
            """)
    void whatAGaugeWasSetOnIsNoCorrectionAndMakesNoSizeFiner(String certified, String zero, String read, String value) {
        StepFigures.CorrectionAndValue sum = sum(measured(Unit.MILLIMETRE, certified, zero, read));
        assertEquals(new StepFigures.CorrectionAndValue("0", value), sum);
        BigDecimal exact = new BigDecimal(certified).subtract(new BigDecimal(read).subtract(new BigDecimal(zero)));
        assertEquals(figure(value), exact.setScale(figure(value).scale(), RoundingMode.HALF_UP));
    }

    /** Limits of four decimals and a guard band of 0.0001: what is nearer than a gauge can tell is less than that. */
    @ParameterizedTest
    @CsvSource({
        "0.000001, <0.0001",
        "0.00004, 0.00004",
        "0.0000999, <0.0001",
        "0.0001, 0.0001",
        "0.00010001, 0.00010001",
        "0.0002001, 0.0002"
    })
    void aDistanceFinerThanTheReadingIsLessThanItsLastPlace(String exact, String said) {
        StepFigures figures = StepFigures.of(ExamplePart.HOIST_SCREW_BUSH.plan().step(17), 4);
        assertEquals(said, figures.distance(Length.of(exact, Unit.INCH)));
    }

    /** 30.0000004 lies inside the lower limit by less than a gauge can read, and 29.9999996 outside it. */
    @Test
    void aSizeBesideALimitHasThePlacesThatKeepItOnItsSide() {
        assertEquals(
                "30.0000004",
                sum(measured(Unit.MILLIMETRE, "30.0000004", "0.000", "0.000")).value());
        assertEquals(
                "29.9999996",
                sum(measured(Unit.MILLIMETRE, "29.9999996", "0.000", "0.000")).value());
    }

    /** 30.001 − (−0.010 − 0.000) = 30.011, and 0.0012 less for temperature are 30.0098, to the places read 30.010. */
    @Test
    void ofAComparedSizeTheCorrectionAloneIsPrintedAsOne() {
        Measured compared = measured(Unit.MILLIMETRE, "30.001", "0.000", "-0.010");
        Length by = Length.of("-0.0012", Unit.MILLIMETRE);
        assertEquals(
                new StepFigures.CorrectionAndValue("−0.001", "30.010"),
                sum(new Measured(
                        compared.reading(), compared.slot(), compared.value().plus(by), Optional.of(by))));
    }

    /** A correction for temperature to the nanometre is printed in the places of the reading, and still adds up. */
    @ParameterizedTest
    @CsvSource(
            textBlock =
                    """
            # read, corrected by, correction, value
            30.015, -0.001189,   −0.001,      30.014
            30.0155, -0.00115,   −0.0011,     30.0144
            30.02,  0.001189,    +0.0012,     30.0212
            30.021, 0.0004,      +0.0004,     30.0214
            30.01,  0.0004,      +0.0004,     30.010
            30.015, -0.0000004,  −0.0000004,  30.015
            """)
    void aCorrectionForTemperatureAddsUpToo(String read, String by, String correction, String value) {
        Measured measured = Measured.of(reading(new Written(read, Unit.MILLIMETRE), Optional.empty()), slot());
        Length corrected = measured.value().plus(Length.of(by, Unit.MILLIMETRE));
        StepFigures.CorrectionAndValue sum = sum(new Measured(
                measured.reading(), measured.slot(), corrected, Optional.of(Length.of(by, Unit.MILLIMETRE))));
        assertEquals(new StepFigures.CorrectionAndValue(correction, value), sum);
        BigDecimal added = new BigDecimal(read).add(figure(correction));
        assertEquals(figure(value), added.setScale(figure(value).scale(), RoundingMode.HALF_UP), sum::toString);
    }

    /** The limits have three decimals, one more than it was read with. */
    @Test
    void aReadingThatIsTheSizeHasNothingAdded() {
        assertEquals(
                new StepFigures.CorrectionAndValue("0", "30.010"),
                sum(Measured.of(reading(new Written("30.01", Unit.MILLIMETRE), Optional.empty()), slot())));
    }

    /** 1.1815 in are 30.0101 mm: a place of an inch is 25 times as coarse. */
    @Test
    void aReadingInInchesIsKnownToOnePlaceLessInMillimetres() {
        assertEquals(
                new StepFigures.CorrectionAndValue("0", "30.010"),
                sum(Measured.of(reading(new Written("1.1815", Unit.INCH), Optional.empty()), slot())));
    }

    /**
     * Mean and distance by hand; read apart from each other they still come to the limit, and stand where the verdict
     * has them.
     */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
            # guard | readings                    | verdict   | mean    | distance
            0       | 3.9936 3.9937               | Pass      | 3.99365 | 0.00035 mm inside the upper limit.
            0.0003  | 3.9936 3.9937               | Pass      | 3.99365 | 0.00035 mm inside the upper limit.
            0.0004  | 3.9936 3.9937               | Unproven  | 3.99365 | 0.00035 mm inside the upper limit.
            0.0003  | 3.9937 3.9937               | Pass      | 3.9937  | 0.0003 mm inside the upper limit.
            0       | 3.9940 3.9941               | Cut again | 3.99405 | 0.00005 mm above the upper limit.
            0       | 3.9936 3.9936 3.9936 3.9937 | Pass      | 3.993625 | 0.000375 mm inside the upper limit.
            0       | 3.9936 3.9937 3.9937        | Pass      | 3.99367 | 0.00033 mm inside the upper limit.
            0       | 3.994 3.994 3.994 3.995     | Cut again | 3.99425 | 0.00025 mm above the upper limit.
            """)
    void aMeanIsPrintedWithThePlacesItsVerdictHangsOn(
            String guardBand, String readings, String verdict, String mean, String distance) {
        Finding finding = mean(guardBand, readings.split(" "));
        Sentences sentences = new Sentences(Words.of(Locale.ENGLISH));
        assertEquals(verdict, sentences.standing(finding));
        assertEquals(mean, sentences.value(finding));
        assertEquals(distance, sentences.distance(finding));
    }

    /** A correction to the nanometre can put a size next to an edge of the guard band: 3.994 less 0.0003 is 3.9937. */
    @Test
    void aSizeBesideAnEdgeOfTheGuardBandIsNotPrintedOnIt() {
        StepFigures figures = StepFigures.of(mean("0.0003", "3.9930", "3.9930"));
        assertEquals("3.99370004", figures.size(Length.of("3.99370004", Unit.MILLIMETRE)));
        assertEquals("0.00029996", figures.distance(Length.of("0.00029996", Unit.MILLIMETRE)));
        assertEquals("3.9937", figures.size(Length.of("3.9937", Unit.MILLIMETRE)));
        assertEquals("3.9932", figures.size(Length.of("3.99324", Unit.MILLIMETRE)));
    }

    private static Finding mean(String guardBand, String... readings) {
        PlanReading.Good read =
                (PlanReading.Good) new PlanReader().readKept(PLAN.formatted(places(readings.length), guardBand));
        Plan plan = read.plan();
        List<Event> events = new ArrayList<>(List.of(
                new Event.Begun(plan.part(), "1", "L", "M", plan.source()),
                new StepEvent.GaugeSet(1, Setting.direct(new Gauge("MC-1", GaugeKind.MICROMETER, Optional.empty())))));
        List<Slot> slots = plan.step(1).check().slots();
        for (int i = 0; i < readings.length; i++) {
            events.add(new StepEvent.ReadingTaken(1, slots.get(i).key(), new Written(readings[i], Unit.MILLIMETRE)));
        }
        return found(plan, 1, events);
    }

    private static String places(int count) {
        return IntStream.rangeClosed(1, count)
                .mapToObj("\"place %d\""::formatted)
                .collect(Collectors.joining(", "));
    }

    private static Finding found(Plan plan, int step, List<Event> events) {
        List<Entry> entries = IntStream.range(0, events.size())
                .mapToObj(i -> new Entry(i + 1, "r", AT, "A", events.get(i)))
                .toList();
        return Sheet.of(plan, new Run(entries)).line(step).finding();
    }

    private static StepFigures.CorrectionAndValue sum(Measured measured) {
        return StepFigures.of(finding()).sum(measured);
    }

    private static Measured measured(Unit unit, String certified, String zero, String read) {
        Gauge gauge = new Gauge("BG-2", GaugeKind.BORE_GAUGE, Optional.of(ReadingDirection.FALLS_WITH_SIZE));
        return Measured.of(
                reading(
                        new Written(read, unit),
                        Optional.of(Setting.onMaster(
                                gauge, "MR-30", new Written(certified, unit), new Written(zero, unit)))),
                slot());
    }

    private static Pass.Reading reading(Written typed, Optional<Setting> setting) {
        return new Pass.Reading(
                new Entry(2, "r", AT, "A", new StepEvent.ReadingTaken(13, "1.1", typed)),
                "1.1",
                typed,
                setting,
                Optional.empty());
    }

    private static Slot slot() {
        return new Slot("1.1", Place.named("front"), 1);
    }

    /** Bore Ø30 H7, 30.000 to 30.021. */
    private static Finding finding() {
        Plan plan = DemoPart.SCREW_CARRIER.plan();
        Step bore = plan.step(13);
        Event.Begun begun = new Event.Begun(plan.part(), "1", "L", "M", plan.source());
        return Sheet.of(plan, new Run(List.of(new Entry(1, "r", AT, "A", begun))))
                .line(bore.number())
                .finding();
    }

    private static BigDecimal figure(String printed) {
        return new BigDecimal(printed.replace('\u2212', '-').replace("+", ""));
    }
}
