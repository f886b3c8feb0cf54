package org.tenthwise.app.text;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tenthwise.checklists.catalogue.DemoPart;
import org.tenthwise.model.gauge.Gauge;
import org.tenthwise.model.gauge.GaugeKind;
import org.tenthwise.model.gauge.Sense;
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
import org.tenthwise.model.run.Run;

class StepFiguresTest {

    private static final OffsetDateTime AT = OffsetDateTime.parse("2026-03-02T08:15:00+01:00");

    /** Value = certified size − (reading − zero) for a gauge whose number falls as the size grows, by hand. */
    @ParameterizedTest
    @CsvSource(textBlock = """
            # certified, zero,   read,    value
            30.001,      0.000,  -0.010,  30.011
            30.00134,    0.000,  -0.010,  30.01134
            30.00134,    0.0005, -0.0005, 30.00234
            30.0,        0.0,    -0.1,    30.1
            30.0000004,  0.000,  -0.010,  30.0100004
            """)
    void whatAGaugeWasSetOnIsNoCorrectionAndThePrintedFiguresAddUp(String certified, String zero, String read, String value) {
        StepFigures.Sum sum = sum(measured(Unit.MILLIMETRE, certified, zero, read));
        assertEquals(new StepFigures.Sum("0", value), sum);
        assertEquals(figure(value), new BigDecimal(certified).subtract(new BigDecimal(read).subtract(new BigDecimal(zero))));
    }

    /** 30.001 − (−0.010 − 0.000) = 30.011, and 0.0012 less for temperature are 30.0098, to the places read 30.010. */
    @Test
    void ofAComparedSizeTheCorrectionAloneIsPrintedAsOne() {
        Measured compared = measured(Unit.MILLIMETRE, "30.001", "0.000", "-0.010");
        Length by = Length.of("-0.0012", Unit.MILLIMETRE);
        assertEquals(new StepFigures.Sum("−0.001", "30.010"),
                sum(new Measured(compared.reading(), compared.slot(), compared.value().plus(by), Optional.of(by))));
    }

    /** A correction for temperature to the nanometre is printed in the places of the reading, and still adds up. */
    @ParameterizedTest
    @CsvSource(textBlock = """
            # read, corrected by, correction, value
            30.015, -0.001189,   −0.001,      30.014
            30.0155, -0.00115,   −0.0011,     30.0144
            30.02,  0.001189,    +0.0012,     30.0212
            30.021, 0.0004,      +0.0004,     30.0214
            30.015, -0.0000004,  −0.0000004,  30.0149996
            """)
    void aCorrectionForTemperatureAddsUpToo(String read, String by, String correction, String value) {
        Measured measured = Measured.of(reading(new Written(read, Unit.MILLIMETRE), Optional.empty()), slot());
        Length corrected = measured.value().plus(Length.of(by, Unit.MILLIMETRE));
        StepFigures.Sum sum = sum(new Measured(measured.reading(), measured.slot(), corrected, Optional.of(Length.of(by, Unit.MILLIMETRE))));
        assertEquals(new StepFigures.Sum(correction, value), sum);
        assertEquals(0, figure(value).compareTo(new BigDecimal(read).add(figure(correction))), sum::toString);
    }

    @Test
    void aReadingThatIsTheSizeHasNothingAdded() {
        assertEquals(new StepFigures.Sum("0", "30.01"),
                sum(Measured.of(reading(new Written("30.01", Unit.MILLIMETRE), Optional.empty()), slot())));
    }

    /** 1.1815 in are 30.0101 mm: a place of an inch is 25 times as coarse. */
    @Test
    void aReadingInInchesIsKnownToOnePlaceLessInMillimetres() {
        assertEquals(new StepFigures.Sum("0", "30.010"),
                sum(Measured.of(reading(new Written("1.1815", Unit.INCH), Optional.empty()), slot())));
    }

    private static StepFigures.Sum sum(Measured measured) {
        return StepFigures.of(finding(), measured).sum(measured);
    }

    private static Measured measured(Unit unit, String certified, String zero, String read) {
        Gauge gauge = new Gauge("BG-2", GaugeKind.BORE_GAUGE, Optional.of(Sense.FALLS_WITH_SIZE));
        return Measured.of(reading(new Written(read, unit), Optional.of(Setting.onMaster(gauge, "MR-30", new Written(certified, unit),
                new Written(zero, unit)))), slot());
    }

    private static Run.Reading reading(Written typed, Optional<Setting> setting) {
        return new Run.Reading(new Entry(2, "r", AT, "A", new Event.ReadingTaken(13, "1.1", typed)), "1.1", typed, setting, Optional.empty());
    }

    private static Slot slot() {
        return new Slot("1.1", Place.named("front"), 1);
    }

    /** Bore Ø30 H7, 30.000 to 30.021. */
    private static Finding finding() {
        Plan plan = DemoPart.SCREW_CARRIER.plan();
        Step bore = plan.step(13);
        Event.Begun begun = new Event.Begun(plan.part(), "1", "L", "M", plan.source());
        return Sheet.of(plan, new Run(List.of(new Entry(1, "r", AT, "A", begun)))).line(bore.number()).finding();
    }

    private static BigDecimal figure(String printed) {
        return new BigDecimal(printed.replace('\u2212', '-').replace("+", ""));
    }
}
