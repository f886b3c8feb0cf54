package org.tenthwise.checklists.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.tenthwise.checklists.rules.PlanText.HEAD;
import static org.tenthwise.checklists.rules.PlanText.check;
import static org.tenthwise.checklists.rules.PlanText.plan;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tenthwise.model.plan.OverWiresCheck;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.plan.SizeCheck;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.thread.ScrewThread;
import org.tenthwise.model.thread.ThreadForm;
import org.tenthwise.model.tolerance.Limits;
import org.tenthwise.model.tolerance.Origin;
import org.tenthwise.model.words.Message;

/** Threads and zones by their designation, with what the standards give. */
class PlanByStandardsTest {

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
}
