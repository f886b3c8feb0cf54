package org.tenthwise.model.record;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.tenthwise.model.record.Bench.length;
import static org.tenthwise.model.record.Bench.mm;
import static org.tenthwise.model.record.Bench.places;
import static org.tenthwise.model.record.Bench.with;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tenthwise.model.gauge.GaugeKind;
import org.tenthwise.model.plan.Answer;
import org.tenthwise.model.plan.AskedCheck;
import org.tenthwise.model.plan.Check;
import org.tenthwise.model.plan.Combine;
import org.tenthwise.model.plan.Feature;
import org.tenthwise.model.plan.OverWiresCheck;
import org.tenthwise.model.plan.Question;
import org.tenthwise.model.plan.SizeCheck;
import org.tenthwise.model.plan.ThermalData;
import org.tenthwise.model.quantity.Celsius;
import org.tenthwise.model.quantity.Expansion;
import org.tenthwise.model.quantity.TemperatureRange;
import org.tenthwise.model.quantity.TemperatureScale;
import org.tenthwise.model.run.StepEvent;
import org.tenthwise.model.thread.ScrewThread;
import org.tenthwise.model.thread.ThreadForm;
import org.tenthwise.model.tolerance.Limits;
import org.tenthwise.model.verdict.Verdict;
import org.tenthwise.model.verdict.VerdictKind;
import org.tenthwise.model.words.Message;

/** What is said of one place beside the verdict of its check. Bores of 20.000 to 20.021, guard band 0.002. By hand. */
class ReadingByItselfTest {

    @Test
    void eachPlaceHasAVerdictOfItsOwn() {
        Finding finding = new Bench()
                .step(bore(Combine.EACH))
                .read(1, "20.010", "19.990", "20.020", "20.024")
                .finding(1);
        assertEquals(
                List.of(VerdictKind.PASS, VerdictKind.CUT_AGAIN, VerdictKind.UNPROVEN, VerdictKind.FAIL),
                alone(finding));
    }

    @Test
    void whereSeveralAreJudgedTogetherNoneHasOne() {
        Finding finding =
                new Bench().step(bore(Combine.MEAN)).read(1, "20.010", "20.010").finding(1);
        assertEquals(List.of(), alone(finding));
    }

    @Test
    void whatHasNoSizeForWantOfATemperatureIsOpenAtEveryPlace() {
        ThermalData.Growth growth = new ThermalData.Growth(Expansion.of("16.2"), Message.of("as-said", "by hand"));
        ThermalData shop = new ThermalData(
                growth, growth, new TemperatureRange(Celsius.of("18"), Celsius.of("35")), TemperatureScale.CELSIUS);
        Bench bench = new Bench().in(shop).step(bore(Combine.EACH)).read(1, "20.010", "20.050");
        assertEquals(List.of(VerdictKind.OPEN, VerdictKind.OPEN), alone(bench.finding(1)));
        bench.at(1, "20", "20");
        assertEquals(List.of(VerdictKind.PASS, VerdictKind.FAIL), alone(bench.finding(1)));
    }

    @Test
    void besideAFigureThatIsFarOffNothingIsShownToBeInOrStillToCut() {
        Finding finding = new Bench()
                .step(bore(Combine.EACH))
                .read(1, "20.010", "19.990", "20.024", "2.001")
                .finding(1);
        assertEquals(
                List.of(VerdictKind.UNPROVEN, VerdictKind.UNPROVEN, VerdictKind.FAIL, VerdictKind.UNPROVEN),
                alone(finding));
    }

    /** 18.236 over 20.400; the wire of 1.443 has its bottom at 20.400 − 2 · 1.443 = 17.514. */
    @ParameterizedTest
    @CsvSource({"17.514, UNPROVEN", "17.513, PASS"})
    void aReadingWithItsWireOnTheRootProvesNothing(String root, VerdictKind standing) {
        Finding finding = new Bench()
                .step(thread(Optional.of(root), Optional.empty()))
                .did(new StepEvent.GaugeSet(1, Bench.wires("1.443")))
                .read(1, "20.400")
                .finding(1);
        assertEquals(List.of(standing), alone(finding));
    }

    @Test
    void whatIsOnlyAskedHasNoReadingToSpeakFor() {
        Finding asked = new Bench()
                .step(new AskedCheck.Confirm("gripped"))
                .did(new StepEvent.Answered(1, Question.CONFIRMED, Answer.YES))
                .finding(1);
        Measured other = ((SizeFinding)
                        new Bench().step(bore(Combine.EACH)).read(1, "20.010").finding(1))
                .measured()
                .get(0);
        assertEquals(Optional.empty(), asked.alone(other));
        assertEquals(length("20.010"), other.value());
    }

    private static List<VerdictKind> alone(Finding finding) {
        List<Measured> measured =
                finding instanceof SizeFinding size ? size.measured() : ((OverWiresFinding) finding).measured();
        return measured.stream()
                .map(finding::alone)
                .flatMap(Optional::stream)
                .map(Verdict::standing)
                .toList();
    }

    private static Check bore(Combine combine) {
        return new SizeCheck(
                Feature.BORE,
                Limits.between(mm("20.000"), mm("20.021")),
                places(4),
                1,
                combine,
                true,
                mm("0.002"),
                with(GaugeKind.INSIDE_MICROMETER));
    }

    /** The root of the plan leaves the wire room; the one to be measured, from 10.000 to 17.500, may not. */
    @Test
    void aReadingThatWaitsForARootToBeMeasuredIsOpenWhateverThePlanGives() {
        Bench bench = new Bench()
                .step(Bench.size(Feature.DIAMETER, "10.000", "17.520", Combine.EACH, 1))
                .step(thread(Optional.of("17.000"), Optional.of(1)))
                .did(new StepEvent.GaugeSet(2, Bench.wires("1.443")))
                .read(2, "20.400");
        assertEquals(VerdictKind.OPEN, bench.finding(2).verdict().standing());
        assertEquals(List.of(VerdictKind.OPEN), alone(bench.finding(2)));
        bench.read(1, "17.514").read(2, "20.400");
        assertEquals(List.of(VerdictKind.UNPROVEN), alone(bench.finding(2)));
    }

    private static Check thread(Optional<String> root, Optional<Integer> rootStep) {
        return new OverWiresCheck(
                new ScrewThread(ThreadForm.METRIC, length("20"), length("2.5"), 1),
                Limits.between(mm("18.2"), mm("18.3")),
                root.map(Bench::mm),
                rootStep,
                places(1),
                1,
                Combine.EACH,
                true,
                mm("0.002"),
                with(GaugeKind.MICROMETER_OVER_WIRES));
    }
}
