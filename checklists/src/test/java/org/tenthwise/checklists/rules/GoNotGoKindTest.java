package org.tenthwise.checklists.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tenthwise.model.gauge.LimitGaugeForm;
import org.tenthwise.model.plan.AskedCheck;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.quantity.Written;

class GoNotGoKindTest {

    private static final String ENDS =
            """
            kind = "go-not-go"
            go = "Enters over the full length."
            not_go = "Enters."
            """;

    private static AskedCheck.GoNotGo gauge(String keys) {
        return assertInstanceOf(AskedCheck.GoNotGo.class, PlanText.check(ENDS + keys));
    }

    @Test
    void theCertificateOfAPlugSaysWhatItAccepts() {
        AskedCheck.GoNotGo plug = gauge(
                """
                gauge = "LP-1"
                gauge_form = "plug"
                go_size = 0.7502
                not_go_size = 0.7508
                lower = 0.7500
                upper = 0.7510
                """);
        assertEquals(Optional.of(LimitGaugeForm.PLUG), plug.form());
        assertEquals(
                new Written("0.7502", Unit.INCH), plug.certified().orElseThrow().least());
        assertEquals(
                new Written("0.7508", Unit.INCH), plug.certified().orElseThrow().greatest());
    }

    /** One worn gauge does not keep a whole plan from the machine; what it is worth is said instead. */
    @Test
    void aWornGoIsTakenAndRemarkedOn() {
        String worn = ENDS
                + """
                gauge = "LP-1"
                gauge_form = "plug"
                go_size = 0.7498
                not_go_size = 0.7508
                lower = 0.7500
                upper = 0.7510
                """;
        Plan plan = assertInstanceOf(PlanReading.Good.class, new PlanReader().read(PlanText.HEAD + worn))
                .plan();
        assertEquals(1, said(plan));
        assertEquals(
                0,
                said(assertInstanceOf(
                                PlanReading.Good.class,
                                new PlanReader().read(PlanText.HEAD + worn.replace("0.7498", "0.7500")))
                        .plan()));
    }

    private static long said(Plan plan) {
        return PlanRemarks.of(plan).stream()
                .filter(message -> message.key().equals("plan.remark.lets-through"))
                .count();
    }

    @Test
    void theFormAloneIsEnoughAndNothingIsToo() {
        assertEquals(
                Optional.of(LimitGaugeForm.TEMPLATE),
                gauge("gauge_form = \"template\"").form());
        assertEquals(Optional.empty(), gauge("").form());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
            gauge_form = "plug"; go_size = 0.7489; not_go_size = 0.7508; lower = 0.75; upper = 0.751      | further outside
            gauge_form = "plug"; go_size = 0.7502; not_go_size = 0.7521; lower = 0.75; upper = 0.751      | further outside
            gauge_form = "ring"; go_size = 0.7502; not_go_size = 0.7508; lower = 0.75; upper = 0.751      | above its NOT GO
            go_size = 0.7502; not_go_size = 0.7508; lower = 0.75; upper = 0.751                           | gauge_form
            gauge_form = "template"; go_size = 0.7502; not_go_size = 0.7508; lower = 0.75; upper = 0.751  | gauge_form
            gauge_form = "plug"; go_size = 0.7502; lower = 0.75; upper = 0.751                            | "not_go_size" is missing
            gauge_form = "plug"; go_size = 0.7502; not_go_size = 0.7508; lower = 0.75                     | "upper" is missing
            gauge_form = "plug"; go_size = 0.7502; not_go_size = 0.7508; lower = 0.751; upper = 0.75      | below
            gauge_form = "cone"                                                                           | cannot be "cone"
            """)
    void whatDoesNotHoldIsRefused(String keys, String said) {
        PlanReading.Bad bad = assertInstanceOf(
                PlanReading.Bad.class, new PlanReader().read(PlanText.HEAD + ENDS + keys.replace("; ", "\n")));
        assertTrue(
                bad.problems().toString().contains(said), () -> bad.problems().toString());
    }
}
