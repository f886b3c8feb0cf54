package org.tenthwise.model.record;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.OffsetDateTime;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tenthwise.model.gauge.Gauge;
import org.tenthwise.model.gauge.GaugeKind;
import org.tenthwise.model.gauge.ReadingDirection;
import org.tenthwise.model.gauge.Setting;
import org.tenthwise.model.plan.Place;
import org.tenthwise.model.plan.Slot;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.run.Entry;
import org.tenthwise.model.run.Pass;
import org.tenthwise.model.run.StepEvent;
import org.tenthwise.model.tolerance.Limits;

/** With how many decimals a size is written, by the rule and by hand. */
class DecimalsTest {

    private static final OffsetDateTime AT = OffsetDateTime.parse("2026-03-02T08:15:00+01:00");

    /** As many as the limits, one behind the reading at the most, and never fewer than were read. */
    @ParameterizedTest
    @CsvSource(
            textBlock =
                    """
            # limits, read,   decimals
            30.021,   30.015,   3
            30.021,   30.0155,  4
            30.021,   30.02,    3
            30.021,   30.0,     2
            30.021,   30,       1
            30.0,     30.015,   3
            30,       30,       0
            """)
    void ofASizeThatIsRead(String limits, String read, int decimals) {
        assertEquals(
                decimals,
                Decimals.of(
                        measured(new Written(read, Unit.MILLIMETRE), Optional.empty()),
                        atMost(limits, Unit.MILLIMETRE)));
    }

    /** The certificate makes nothing finer; the dial on the ring was read with the same gauge. */
    @ParameterizedTest
    @CsvSource(
            textBlock =
                    """
            # limits, certified, zero,   read,    decimals
            1.3755,   1.37502,   0.0000, -0.0003, 4
            30.021,   30.00134,  0.000,  -0.010,  3
            30.021,   30.001,    0.0005, -0.010,  4
            """)
    void ofASizeComparedWithARing(String limits, String certified, String zero, String read, int decimals) {
        Setting ring = Setting.onMaster(
                new Gauge("BG-2", GaugeKind.BORE_GAUGE, Optional.of(ReadingDirection.FALLS_WITH_SIZE)),
                "R-1",
                new Written(certified, Unit.MILLIMETRE),
                new Written(zero, Unit.MILLIMETRE));
        assertEquals(
                decimals,
                Decimals.of(
                        measured(new Written(read, Unit.MILLIMETRE), Optional.of(ring)),
                        atMost(limits, Unit.MILLIMETRE)));
    }

    /** 0.0001 in are 0.0025 mm, so no more than thousandths; 0.001 mm is 0.00004 in. */
    @ParameterizedTest
    @CsvSource(
            textBlock =
                    """
            # limits, of,  read,   in, decimals
            30.021,   mm,  1.1815, in, 3
            1.3755,   in,  34.937, mm, 5
            """)
    void ofASizeReadInTheOtherUnit(String limits, String of, String read, String in, int decimals) {
        assertEquals(
                decimals,
                Decimals.of(
                        measured(new Written(read, Unit.ofSymbol(in).orElseThrow()), Optional.empty()),
                        atMost(limits, Unit.ofSymbol(of).orElseThrow())));
    }

    private static Limits atMost(String upper, Unit unit) {
        return Limits.atMost(new Written(upper, unit));
    }

    private static Measured measured(Written typed, Optional<Setting> setting) {
        return Measured.of(
                new Pass.Reading(
                        new Entry(2, "r", AT, "A", new StepEvent.ReadingTaken(1, "1.1", typed)),
                        "1.1",
                        typed,
                        setting,
                        Optional.empty()),
                new Slot("1.1", Place.named("front"), 1));
    }
}
