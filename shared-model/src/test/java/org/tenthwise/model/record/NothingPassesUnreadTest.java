package org.tenthwise.model.record;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.tenthwise.model.compute.expression.Expression;
import org.tenthwise.model.compute.roughness.AcceptanceRule;
import org.tenthwise.model.gauge.GaugeKind;
import org.tenthwise.model.plan.AngleCheck;
import org.tenthwise.model.plan.AskedCheck;
import org.tenthwise.model.plan.CalculatedCheck;
import org.tenthwise.model.plan.Check;
import org.tenthwise.model.plan.Combine;
import org.tenthwise.model.plan.DocumentCheck;
import org.tenthwise.model.plan.Feature;
import org.tenthwise.model.plan.IndicatedCheck;
import org.tenthwise.model.plan.OverWiresCheck;
import org.tenthwise.model.plan.PlugFeel;
import org.tenthwise.model.plan.PlugFitCheck;
import org.tenthwise.model.plan.PositionCheck;
import org.tenthwise.model.plan.PositionReading;
import org.tenthwise.model.plan.ProofOf;
import org.tenthwise.model.plan.ScaleCheck;
import org.tenthwise.model.plan.Specified;
import org.tenthwise.model.plan.TruePlace;
import org.tenthwise.model.plan.WorkedCheck;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.thread.ScrewThread;
import org.tenthwise.model.thread.ThreadForm;
import org.tenthwise.model.tolerance.FeatureOfSize;
import org.tenthwise.model.tolerance.Limits;
import org.tenthwise.model.tolerance.MaterialModifier;
import org.tenthwise.model.verdict.VerdictKind;
import org.tenthwise.model.worked.RollersOnTaper;

/** Whatever kind of check there is or will be: while nothing is read or answered it is open. */
class NothingPassesUnreadTest {

    private static final Check BORE = Bench.size(Feature.BORE, "30.000", "30.021", Combine.EACH, 1);

    static List<Check> oneOfEachKind() {
        return List.of(
                new AskedCheck.Confirm("Chuck key out."),
                new AskedCheck.VisualCheck("No chatter."),
                new AskedCheck.GoNotGo("Enters.", "Does not.", Optional.empty()),
                Bench.runOut("0.02", 4, "0", "90", "180", "270"),
                BORE,
                new AngleCheck(
                        Limits.between(minutes("29°30′"), minutes("30°30′")),
                        Bench.places(1),
                        1,
                        Combine.EACH,
                        minutes("0°"),
                        Bench.with(GaugeKind.BEVEL_PROTRACTOR),
                        Optional.empty()),
                new ScaleCheck(
                        Limits.atMost(new Written("1.6", Unit.named("µm"))),
                        Bench.places(1),
                        1,
                        Combine.EACH,
                        new Written("0", Unit.named("µm")),
                        Bench.with(GaugeKind.CALIPER),
                        Optional.of(AcceptanceRule.SIXTEEN_PERCENT)),
                new IndicatedCheck(
                        IndicatedCheck.Of.TOTAL_RUN_OUT,
                        Optional.of("A"),
                        Optional.empty(),
                        Limits.atMost(Bench.mm("0.02")),
                        Bench.places(2),
                        Bench.mm("0"),
                        Bench.with(GaugeKind.LEVER_INDICATOR)),
                new WorkedCheck(
                        new RollersOnTaper(Bench.mm("40"), true),
                        Limits.between(minutes("5°55′"), minutes("6°05′")),
                        Bench.places(1),
                        Combine.EACH,
                        minutes("0°00′"),
                        Bench.with(GaugeKind.MICROMETER),
                        Optional.empty(),
                        Optional.empty()),
                new DocumentCheck(ProofOf.ELSEWHERE, "", "supplier", Optional.empty(), Specified.NOTHING),
                new PositionCheck(
                        Bench.mm("0.1"),
                        MaterialModifier.MMC,
                        FeatureOfSize.HOLE,
                        Optional.of(1),
                        PositionReading.X_AND_Y,
                        List.of(new TruePlace(Optional.empty(), Bench.mm("20"), Bench.mm("15"))),
                        List.of("entry", "exit"),
                        Bench.with(GaugeKind.CALIPER),
                        Optional.empty()),
                new PlugFitCheck(
                        1,
                        Limits.atMost(Bench.mm("0.030")),
                        Bench.places(1),
                        PlugFeel.FREELY,
                        Bench.with(GaugeKind.MICROMETER)),
                new CalculatedCheck(
                        Expression.of("a"),
                        List.of(new CalculatedCheck.Use("a", 1, CalculatedCheck.By.EACH)),
                        List.of(1),
                        Limits.between(Bench.mm("19"), Bench.mm("21"))),
                new OverWiresCheck(
                        new ScrewThread(ThreadForm.METRIC, Bench.length("20"), Bench.length("2.5"), 1),
                        Limits.between(Bench.mm("18.2"), Bench.mm("18.3")),
                        Optional.empty(),
                        Optional.empty(),
                        Bench.places(1),
                        1,
                        Combine.EACH,
                        false,
                        Bench.mm("0"),
                        Bench.with(GaugeKind.MICROMETER_OVER_WIRES)));
    }

    private static Written minutes(String text) {
        return Written.typed(text, Unit.MINUTE_OF_ARC).orElseThrow();
    }

    @ParameterizedTest
    @MethodSource("oneOfEachKind")
    void aCheckAtWhichNothingWasDoneIsOpen(Check check) {
        assertEquals(
                VerdictKind.OPEN,
                new Bench().step(BORE).step(check).finding(2).verdict().standing());
    }

    @Test
    void everyKindOfCheckIsAmongThem() {
        assertEquals(
                kinds(Check.class).collect(Collectors.toSet()),
                oneOfEachKind().stream().map(Object::getClass).collect(Collectors.toSet()));
    }

    private static Stream<Class<?>> kinds(Class<?> of) {
        return of.isSealed()
                ? Stream.of(of.getPermittedSubclasses()).flatMap(NothingPassesUnreadTest::kinds)
                : Stream.of(of);
    }
}
