package org.tenthwise.model.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Stream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.From;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class BalloonNumberTest {

    private static final List<String> ROW = List.of(
            "1", "2", "3", "3.1", "3.2", "3.10", "9", "10", "12", "12A", "12B", "12B.1", "100", "A1", "A2", "A10");

    @Test
    void balloonsStandInTheOrderOfTheDrawing() {
        List<BalloonNumber> shuffled =
                new ArrayList<>(ROW.stream().map(BalloonNumber::new).toList());
        Collections.shuffle(shuffled, new Random(12));
        assertEquals(ROW, shuffled.stream().sorted().map(BalloonNumber::text).toList());
    }

    @Test
    void capitalsTellNoTwoApart() {
        assertTrue(new BalloonNumber("12a").isSame(new BalloonNumber("12A")));
        assertFalse(new BalloonNumber("12a").isSame(new BalloonNumber("12B")));
        assertTrue(new BalloonNumber("12a").compareTo(new BalloonNumber("12B")) < 0);
        assertTrue(new BalloonNumber("12A").compareTo(new BalloonNumber("12b")) < 0);
    }

    @ParameterizedTest
    @ValueSource(strings = {"1", "12A", "3.1", "4(a)", "12-1", "1/2", "ÄÖ1"})
    void whatGoesIntoABalloon(String text) {
        assertTrue(BalloonNumber.canBe(text));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", " ", "12 A", "123456789", "⌀30", "-1", "12\n", "*", "(4)"})
    void whatDoesNot(String text) {
        assertFalse(BalloonNumber.canBe(text));
    }

    @Property
    void theOrderIsOne(
            @ForAll @From("balloons") BalloonNumber a,
            @ForAll @From("balloons") BalloonNumber b,
            @ForAll @From("balloons") BalloonNumber c) {
        assertEquals(Integer.signum(a.compareTo(b)), -Integer.signum(b.compareTo(a)));
        assertEquals(a.equals(b), a.compareTo(b) == 0);
        if (a.compareTo(b) <= 0 && b.compareTo(c) <= 0) {
            assertTrue(a.compareTo(c) <= 0);
        }
    }

    @Provide
    Arbitrary<BalloonNumber> balloons() {
        return Arbitraries.strings()
                .withChars("0129.AaB-")
                .ofMinLength(1)
                .ofMaxLength(BalloonNumber.LONGEST)
                .filter(BalloonNumber::canBe)
                .map(BalloonNumber::new);
    }

    private static List<String> gaps(String... balloons) {
        return BalloonGap.in(Stream.of(balloons).map(BalloonNumber::new).toList()).stream()
                .map(gap -> gap.row() + gap.first() + (gap.isOne() ? "" : "-" + gap.last()))
                .toList();
    }

    @Test
    void whatIsMissingInTheRowIsNamed() {
        assertEquals(List.of("14"), gaps("12", "13", "15"));
        assertEquals(List.of(), gaps("3", "1", "2.1", "2.2", "4a"));
        assertEquals(List.of("5-7", "9"), gaps("10", "8", "4"));
        assertEquals(List.of("A2", "b3"), gaps("A1", "a3", "b2", "B4"));
        assertEquals(List.of(), gaps("A", "B", "D"));
        assertEquals(List.of(), gaps());
    }

    @Test
    void ofFourThereIsNoFifth() {
        assertThrows(IllegalArgumentException.class, () -> new Instances(4, Optional.of(5), Instances.Report.EACH));
        assertTrue(new Instances(4, Optional.empty(), Instances.Report.EACH).areSeveral());
        assertFalse(new Instances(4, Optional.of(4), Instances.Report.EACH).areSeveral());
    }
}
