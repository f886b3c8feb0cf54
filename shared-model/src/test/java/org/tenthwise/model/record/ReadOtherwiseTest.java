package org.tenthwise.model.record;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tenthwise.model.gauge.GaugeKind;
import org.tenthwise.model.gauge.Uncertainty;
import org.tenthwise.model.plan.Check;
import org.tenthwise.model.plan.Combine;
import org.tenthwise.model.plan.Feature;
import org.tenthwise.model.plan.SizeCheck;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.run.Disposition;
import org.tenthwise.model.run.Event;
import org.tenthwise.model.run.StepEvent;
import org.tenthwise.model.run.StepEvent.PassBegun.Why;

/** Which round contradicts the one before. A tenth of 0.021 is 0.0021, and two readings of it 0.0042. */
class ReadOtherwiseTest {

    private static Bench bore() {
        SizeCheck bore = Bench.size(Feature.BORE, "30.000", "30.021", Combine.EACH, 2);
        return new Bench().step(bore).step(bore);
    }

    private static StepEvent.PassBegun begun(Why why) {
        return new StepEvent.PassBegun(1, why);
    }

    /** The size of before, and its place. */
    private static String told(Bench bench) {
        Sheet sheet = bench.sheet();
        return ReadOtherwise.of(sheet.line(1), sheet.run())
                .map(found -> found.before().raw().millimetres().toPlainString() + " at "
                        + found.before().slot().place().name())
                .orElse("");
    }

    @Test
    void aSecondRoundThatCannotBeOfTheSameBoreNamesTheFirstWhereItDiffersMost() {
        Bench bench = bore().read(1, "29.986", "29.987").did(begun(Why.MEASURED_AGAIN));
        assertEquals("", told(bench), "nothing is read again yet");
        assertEquals("29.986 at place 1", told(bench.read(1, "30.009")));
        bench.did(new StepEvent.ReadingTaken(1, "2.1", mm("30.020")));
        assertEquals("29.987 at place 2", told(bench));
    }

    @ParameterizedTest
    @CsvSource({"30.0152, ''", "30.0153, 30.011 at place 1", "30.0068, ''", "30.0067, 30.011 at place 1"})
    void withoutAnUncertaintyAFifthOfTheToleranceIsMeasuring(String again, String told) {
        assertEquals(
                told,
                told(bore().read(1, "30.011").did(begun(Why.MEASURED_AGAIN)).read(1, again)));
    }

    @ParameterizedTest
    @CsvSource({"30.0170, ''", "30.0171, 30.011 at place 1"})
    void withOneTwiceThatIs(String again, String told) {
        SizeCheck bare = Bench.size(Feature.BORE, "30.000", "30.021", Combine.EACH, 2);
        SizeCheck bore = new SizeCheck(
                bare.feature(),
                bare.limits(),
                bare.places(),
                1,
                Combine.EACH,
                true,
                mm("0"),
                new Check.Means(
                        GaugeKind.MICROMETER,
                        Optional.empty(),
                        Optional.empty(),
                        Optional.of(new Uncertainty("bore", mm("0.003"), BigDecimal.valueOf(2)))));
        assertEquals(
                told,
                told(new Bench()
                        .step(bore)
                        .read(1, "30.011")
                        .did(begun(Why.MEASURED_AGAIN))
                        .read(1, again)));
    }

    @Test
    void overAnythingThatWasDoneToTheWorkNothingIsCompared() {
        List<UnaryOperator<Bench>> done = List.of(
                bench -> bench.did(begun(Why.CUT)),
                bench -> bench.did(begun(Why.MOVED)),
                bench -> bench.did(
                        new StepEvent.DispositionSigned(1, Disposition.REWORK, "honed", "Foreman 1", Optional.empty())),
                // of another check, where one cut brings in both
                bench -> bench.read(2, "29.900", "29.900")
                        .did(new StepEvent.PassBegun(2, Why.CUT))
                        .did(begun(Why.MEASURED_AGAIN)),
                bench -> bench.did(begun(Why.MEASURED_AGAIN)).did(begun(Why.CUT)));
        for (UnaryOperator<Bench> work : done) {
            assertEquals("", told(work.apply(bore().read(1, "29.986", "29.987")).read(1, "30.009", "30.010")));
        }
    }

    /** Two that agree may both be of a gauge that slipped: it stays until one is struck out. */
    @Test
    void itStaysOverAThirdRoundUntilTheWrongOneIsStruckOut() {
        Bench bench = bore().read(1, "29.986");
        long wrong = bench.last();
        bench.did(begun(Why.MEASURED_AGAIN)).read(1, "30.009");
        bench.did(begun(Why.MEASURED_AGAIN)).read(1, "30.010");
        assertEquals("29.986 at place 1", told(bench));
        assertEquals("", told(bench.did(new Event.StruckOut(wrong, "Misread"))));
    }

    /** Cut from 29.900 and then 29.870: that round is known to be wrong, and is told as that. */
    @Test
    void aRoundThatTheCutContradictsIsNotToldTwice() {
        assertEquals(
                "",
                told(bore().read(1, "29.900", "29.900")
                        .did(begun(Why.CUT))
                        .read(1, "29.870", "29.870")
                        .did(begun(Why.MEASURED_AGAIN))
                        .read(1, "29.990", "29.990")));
    }

    @Test
    void aFigureThatIsFarOffIsNoSize() {
        assertEquals(
                "", told(bore().read(1, "2.9986").did(begun(Why.MEASURED_AGAIN)).read(1, "30.009")));
    }

    private static Written mm(String figure) {
        return Written.of(new BigDecimal(figure), Unit.MILLIMETRE);
    }
}
