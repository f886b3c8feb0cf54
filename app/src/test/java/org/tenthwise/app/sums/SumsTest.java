package org.tenthwise.app.sums;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Supplier;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.tenthwise.app.sums.handbook.Handbook;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.words.Message;

class SumsTest {

    private record Fixed(String name, Supplier<SumResult> answer) implements Sum {

        @Override
        public SumDescription description() {
            return describedAs(name);
        }

        @Override
        public SumResult of(SumInput given) {
            return answer.get();
        }
    }

    private static final SumResult ANSWER =
            describedAs("fixed").in(Unit.MILLIMETRE).done();

    private static SumDescription describedAs(String name) {
        return SumDescription.named(name).takes(Input.length("d"), Input.name("zone"));
    }

    private static Supplier<SumResult> failing(RuntimeException trouble) {
        return () -> {
            throw trouble;
        };
    }

    private static SumReply ask(Supplier<SumResult> answer, Map<String, String> given) {
        return new Sums(List.of(new Fixed("fixed", answer))).ask("fixed", Asking.given(Unit.MILLIMETRE, given));
    }

    private static String refused(Supplier<SumResult> answer, Map<String, String> given) {
        return assertInstanceOf(Problem.class, ask(answer, given)).why().toString();
    }

    @Test
    void aSumIsFoundByItsName() {
        assertEquals(ANSWER, ask(() -> ANSWER, Map.of("d", "1")));
        assertEquals(
                "calc is \"fxied\": it is one of fixed",
                assertInstanceOf(
                                Problem.class,
                                new Sums(List.of(new Fixed("fixed", () -> ANSWER)))
                                        .ask("fxied", Asking.given(Unit.MILLIMETRE, Map.of())))
                        .why()
                        .toString());
    }

    @Test
    void keysASumDoesNotTakeAreNamedAllAtOnce() {
        Problem problem =
                assertInstanceOf(Problem.class, ask(() -> ANSWER, Map.of("d", "1", "zoen", "H7", "size", "3")));
        assertEquals(
                "fixed takes no size, zoen: it takes d, zone", problem.why().toString());
        assertEquals(Optional.of("size"), problem.key());
    }

    @Test
    void twoSumsOfOneNameAreRefused() {
        Sum one = new Fixed("fixed", () -> ANSWER);
        assertThrows(IllegalStateException.class, () -> new Sums(List.of(one, one)));
    }

    @Test
    void whateverASumThrowsIsARefusal() {
        assertEquals(
                "zone is \"Q7\"",
                refused(
                        failing(new CannotAnswer(Input.name("zone"), Message.of("as-said", "zone is \"Q7\""))),
                        Map.of()));
        assertEquals(
                "Lower limit 2 is above upper limit 1",
                refused(failing(new IllegalArgumentException("Lower limit 2 is above upper limit 1")), Map.of()));
        for (RuntimeException trouble :
                List.of(new IllegalArgumentException(), new ArithmeticException(), new IllegalStateException())) {
            assertEquals(
                    "The sum fixed cannot be worked out with these inputs: "
                            + trouble.getClass().getSimpleName(),
                    refused(failing(trouble), Map.of()));
        }
        assertEquals(
                "The sum fixed cannot be worked out with these inputs: Division by zero",
                refused(failing(new ArithmeticException("Division by zero")), Map.of()));
    }

    static List<String> everySum() {
        return List.copyOf(Handbook.sums().names());
    }

    /** Whatever is put under every key of a sum, and under none, a sum answers or refuses in a sentence of one line. */
    @ParameterizedTest
    @MethodSource("everySum")
    void everySumOfTheShopAnswersOrRefusesInWords(String name) {
        assertTrue(name.matches("[a-z0-9]+(-[a-z0-9]+)*"), name);
        Sums sums = Handbook.sums();
        Problem none = assertInstanceOf(
                Problem.class, sums.ask(name, Asking.given(Unit.MILLIMETRE, Map.of("no-such-key", "1"))));
        Set<String> keys = new TreeSet<>(List.of(none.why()
                .toString()
                .substring(none.why().toString().indexOf(": it takes ") + 11)
                .split(", ")));
        for (SumValue typed : List.of(
                new SumValue.Text("0"),
                new SumValue.Text("-1"),
                new SumValue.Text("1"),
                new SumValue.Text("2.5"),
                new SumValue.Text("1e29"),
                new SumValue.Text("1e-29"),
                new SumValue.Text("H7"),
                new SumValue.Many(List.of()),
                new SumValue.Many(List.of(new SumValue.Text("1"))),
                new SumValue.Many(List.of(new SumValue.Text("1"), new SumValue.Text("1"))),
                new SumValue.Many(
                        List.of(new SumValue.Many(List.of(new SumValue.Many(List.of(new SumValue.Text("3"))))))),
                new SumValue.Many(List.of(new SumValue.Fields(Map.of()))),
                new SumValue.Fields(Map.of()),
                new SumValue.Neither("null"))) {
            answeredOrRefused(name, keys, typed, sums);
        }
    }

    private static void answeredOrRefused(String name, Set<String> keys, SumValue typed, Sums sums) {
        Map<String, SumValue> all = new TreeMap<>();
        keys.forEach(key -> all.put(key, typed));
        List<Map<String, SumValue>> tries = new ArrayList<>(List.of(Map.of(), all));
        keys.forEach(key -> {
            Map<String, SumValue> without = new TreeMap<>(all);
            without.remove(key);
            tries.add(without);
            tries.add(Map.of(key, typed));
        });
        for (Map<String, SumValue> given : tries) {
            for (Optional<Unit> unit : List.of(Optional.of(Unit.INCH), Optional.<Unit>empty())) {
                if (sums.ask(name, new SumInput(unit, given)) instanceof Problem problem) {
                    assertTrue(
                            !problem.why().toString().isBlank()
                                    && problem.why().toString().lines().count() == 1
                                    && !problem.why().toString().contains("Exception")
                                    && !problem.why().toString().contains("does not come out with"),
                            () -> "%s given %s: %s"
                                    .formatted(name, given, problem.why().toString()));
                }
            }
        }
    }
}
