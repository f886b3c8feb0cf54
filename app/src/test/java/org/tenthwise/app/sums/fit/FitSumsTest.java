package org.tenthwise.app.sums.fit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tenthwise.app.sums.Asking;
import org.tenthwise.app.sums.Problem;
import org.tenthwise.app.sums.SumInput;
import org.tenthwise.app.sums.SumReply;
import org.tenthwise.app.sums.SumResult;
import org.tenthwise.app.sums.SumValue;
import org.tenthwise.app.sums.Sums;
import org.tenthwise.app.sums.handbook.Handbook;
import org.tenthwise.model.quantity.Unit;

class FitSumsTest {

    private final Sums sums = Handbook.sums();

    /** @param given such as {@code unit=mm diameter=34 zone=H7} */
    private SumReply ask(String sum, String given) {
        Map<String, SumValue> values = new LinkedHashMap<>();
        Arrays.stream(given.split(" "))
                .map(pair -> pair.split("=", 2))
                .forEach(pair -> values.put(pair[0], new SumValue.Text(pair[1])));
        Optional<Unit> unit = Optional.ofNullable(values.remove("unit"))
                .map(SumValue.Text.class::cast)
                .flatMap(plain -> Unit.ofSymbol(plain.text()));
        return sums.ask(sum, new SumInput(unit, values));
    }

    private String at(SumReply reply, String key) {
        SumResult answer = assertInstanceOf(SumResult.class, reply, reply::toString);
        return Asking.at(answer, key);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
        # published: Shigley's Mechanical Engineering Design, 9th ed., Example 7-7
        limits             | unit=mm diameter=34 zone=H11 | greatest 34.160 least 34.000 upper_deviation 0.160 lower_deviation 0
        limits             | diameter=34 zone=c11         | greatest 33.880 least 33.720 upper_deviation -0.120 lower_deviation -0.280
        fit                | unit=mm diameter=34 hole_zone=H11 shaft_zone=c11 | clearance_greatest 0.440 clearance_least 0.120 plug_least 33.720
        # from memory, ISO 286-2:2010: odd width halved, size off the whole millimetre
        limits             | diameter=34.5 zone=js7       | upper_deviation 0.0125 lower_deviation -0.0125 greatest 34.5125
        limits             | diameter=0.8 zone=h6         | least 0.794
        # published: Shigley's Mechanical Engineering Design, instructor's solutions, Problem 7-24,
        # 1.5 in H7/s6; its limits from memory
        fit                | unit=in bore_greatest=1.501 bore_least=1.500 plug_greatest=1.5023 plug_least=1.5017 | clearance_greatest -0.0007 clearance_least -0.0023
        # constructed by hand: 50.01 · 11.5e-6 · 7 and 50 · 11.5e-6 · 15
        fit                | unit=mm bore_greatest=50.01 bore_least=50.01 plug_greatest=50 plug_least=50 bore_temp=27 bore_alpha=11.5 plug_temp=35 plug_alpha=11.5 | clearance_now 0.005401 clearance_least 0.010
        # constructed by hand: a bore of 25.021 and 25, 10 degrees warm, grows by 0.00300252 and 0.003; the plug stays
        fit                | diameter=25 hole_zone=H7 shaft_zone=h6 bore_temp=30 bore_alpha=12 | clearance_now 0.003 clearance_now_least 0.003 clearance_now_greatest 0.037003
        # published: Machinery's Handbook, 31st ed., Table 8a, RC4 over 1.19 to 1.97
        inch-fit           | unit=in diameter=1.5 class=RC4 | hole_greatest 1.5016 hole_least 1.5 shaft_greatest 1.499 shaft_least 1.498 clearance_greatest 0.0036 clearance_least 0.001
        # published: Narayana, Kannaiah and Venkata Reddy, Machine Drawing, 3rd ed., Table 15.3
        standard-tolerance | diameter=450 grade=IT7       | tolerance 0.063 delta 0.023 step_over 400 step_up_to 500
        """)
    void resultsAreTheOnesListed(String sum, String given, String expected) {
        SumReply reply = ask(sum, given);
        String[] words = expected.split(" ");
        for (int i = 0; i < words.length; i += 2) {
            String key = words[i];
            BigDecimal figure = new BigDecimal(at(reply, key));
            int places = Math.max(6, new BigDecimal(words[i + 1]).scale());
            assertEquals(
                    new BigDecimal(words[i + 1]).setScale(places, RoundingMode.HALF_EVEN),
                    figure.setScale(places, RoundingMode.HALF_EVEN),
                    () -> key + " in " + reply);
        }
    }

    @ParameterizedTest
    @CsvSource({"H7,g6,clearance", "H7,k6,transition", "H7,s6,interference", "H7,h6,clearance"})
    void kindIsInWords(String hole, String shaft, String kind) {
        assertEquals(kind, at(ask("fit", "diameter=25 hole_zone=%s shaft_zone=%s".formatted(hole, shaft)), "kind"));
    }

    @Test
    void halfMicrometresAreKeptAndSaidToBeSo() {
        SumResult answer = (SumResult) ask("limits", "diameter=20 zone=js7");
        assertEquals("0.010500", at(answer, "upper_deviation"));
        assertTrue(answer.notes().get(0).toString().contains("rounded down"), answer::toString);
    }

    @Test
    void withoutTemperaturesNothingIsSaidOfNow() {
        SumResult answer = (SumResult) ask("fit", "diameter=25 hole_zone=H7 shaft_zone=g6");
        assertTrue(Asking.found(answer, "clearance_now").isEmpty());
        assertTrue(answer.notes().isEmpty());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
        plug goes in only because | diameter=30 hole_zone=H7 shaft_zone=k6 bore_temp=200 bore_alpha=12
        burns the skin            | diameter=30 hole_zone=H7 shaft_zone=k6 bore_temp=200 bore_alpha=12
        may seize                 | diameter=30 hole_zone=H7 shaft_zone=g6 plug_temp=90 plug_alpha=12
        """)
    void temperatureThatTurnsTheFitAboutIsNoted(String words, String given) {
        SumResult answer = assertInstanceOf(SumResult.class, ask("fit", given));
        assertTrue(answer.notes().stream().anyMatch(note -> note.toString().contains(words)), answer::toString);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
        limits             | unit=in diameter=1 zone=H7             | unit
        limits             | diameter=0 zone=H7                     | diameter
        limits             | diameter=500.001 zone=H7               | diameter is 500.001: Size 500.001 mm has no ISO 286 tolerance class
        limits             | diameter=0.9 zone=js14                 | zone is "js14": IT14 is not for 0.9 mm
        limits             | diameter=ten zone=H7                   | diameter
        limits             | diameter=10                            | zone is missing
        limits             | diameter=10 zone=Q7                    | zone is "Q7"
        limits             | diameter=20 zone=t7                    | over 24
        limits             | diameter=20 zone=H7 class=RC4          | class
        fit                | unit=mm diameter=10 hole_zone=h7 shaft_zone=g6 | capital
        fit                | diameter=10 hole_zone=H7 shaft_zone=G6 | small
        fit                | diameter=10 hole_zone=H7               | shaft_zone is missing
        fit                | diameter=10 hole_zone=H7 shaft_zone=g6 bore_least=3 | not by both
        fit                | unit=mm bore_greatest=9 bore_least=10 plug_greatest=8 plug_least=7 | wrong way round
        fit                | bore_greatest=9 bore_least=9 plug_greatest=8 plug_least=7 | unit is missing
        fit                | diameter=10 hole_zone=H7 shaft_zone=g6 plug_temp=30 | plug_alpha is missing
        fit                | diameter=10 hole_zone=H7 shaft_zone=g6 plug_temp=-300 plug_alpha=11 | -300
        inch-fit           | unit=mm diameter=10 class=RC4          | unit
        fit                | diameter=500.001 hole_zone=H7 shaft_zone=g6 | diameter is 500.001
        fit                | diameter=0.9 hole_zone=H7 shaft_zone=h14 | shaft_zone is "h14": IT14 is not for 0.9 mm
        inch-fit           | diameter=1 class=RC12                  | class is "RC12"
        inch-fit           | diameter=200 class=RC1                 | diameter is 200: Size 200 is outside the table
        inch-fit           | diameter=0.2 class=LT3                 | diameter is 0.2: LT3 is not tabulated for 0.2 in: ANSI B4.1 gives it for sizes over 0.24
        standard-tolerance | diameter=10 grade=IT19                 | grade is "IT19"
        standard-tolerance | diameter=0.9 grade=IT14                | grade is "IT14": IT14 is not for 0.9 mm
        standard-tolerance | diameter=500.001 grade=IT7             | diameter is 500.001
        """)
    void whatCannotBeIsRefusedWithKeyAndValue(String sum, String given, String words) {
        Problem problem = assertInstanceOf(Problem.class, ask(sum, given));
        assertTrue(problem.why().toString().contains(words), () -> problem.why().toString());
    }
}
