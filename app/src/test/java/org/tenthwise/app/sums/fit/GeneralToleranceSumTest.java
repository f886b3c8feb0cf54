package org.tenthwise.app.sums.fit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tenthwise.app.sums.Asking;
import org.tenthwise.app.sums.Problem;
import org.tenthwise.app.sums.SumInput;
import org.tenthwise.app.sums.SumReply;
import org.tenthwise.app.sums.SumResult;
import org.tenthwise.app.sums.SumValue;
import org.tenthwise.app.sums.handbook.Handbook;

class GeneralToleranceSumTest {

    private static SumReply ask(String given) {
        Map<String, SumValue> values = new LinkedHashMap<>();
        Arrays.stream(given.split(" "))
                .map(pair -> pair.split("=", 2))
                .forEach(pair -> values.put(pair[0], new SumValue.Text(pair[1])));
        return Handbook.sums().ask("general-tolerance", SumInput.written(values));
    }

    /** DIN ISO 2768 T1, sheet General Tolerances, three copies that agree. */
    @ParameterizedTest
    @CsvSource({
        "unit=mm class=c kind=linear nominal=120, 0.8, Table 1",
        "class=f kind=radius nominal=6, 0.5, Table 2",
        "unit=mm class=c kind=angle nominal=500, 10, Table 3"
    })
    void theFigureOfTheTableComesOutAsItStandsThere(String given, String tolerance, String table) {
        SumResult answer = assertInstanceOf(SumResult.class, ask(given));
        assertEquals(tolerance, Asking.at(answer, "tolerance"));
        assertTrue(answer.basis().toString().contains(table));
    }

    @ParameterizedTest
    @CsvSource({
        "unit=in class=m kind=linear nominal=1, in mm",
        "class=m kind=linear nominal=0.4, must state one",
        "class=v kind=linear nominal=3, must state one",
        "class=k kind=linear nominal=3, one of",
        "class=m kind=bore nominal=3, one of",
        "class=m kind=linear nominal=-3, more than zero",
        "class=m kind=linear, nominal is missing"
    })
    void whatHasNoToleranceIsRefusedWithTheKey(String given, String said) {
        Problem problem = assertInstanceOf(Problem.class, ask(given));
        assertTrue(problem.why().toString().contains(said), () -> problem.why().toString());
    }
}
