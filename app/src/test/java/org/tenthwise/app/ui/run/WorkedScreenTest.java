package org.tenthwise.app.ui.run;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Arrays;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tenthwise.app.InventedPlans;
import org.tenthwise.app.text.Sentences;
import org.tenthwise.app.ui.Workshop;
import org.tenthwise.model.record.Finding;
import org.tenthwise.model.verdict.VerdictKind;
import org.tenthwise.model.worked.WorkedWay;

/**
 * A size worked out of readings in each of the ways there are, invented; figures by hand as in the tests of the ways.
 */
class WorkedScreenTest extends RunAtHand {

    static final String EVERY_WAY =
            """
            [[step]]
            number = 1
            operation = 10
            kind = "worked"
            name = "Taper of the cone"
            method = "As the sheet says."
            by = "two-diameters"
            apart = 20
            lower = 2.8
            upper = 2.9
            places = ["one"]
            gauge_kind = "micrometer"
            gauge = "G-1"

            [[step]]
            number = 2
            operation = 10
            kind = "worked"
            name = "Angle of the ramp"
            method = "As the sheet says."
            by = "sine-bar"
            bar = 100
            nominal = "30°"
            plus_minus = "0°10'"
            places = ["one"]
            gauge_kind = "gauge-blocks"
            gauge = "G-1"

            [[step]]
            number = 3
            operation = 10
            kind = "worked"
            name = "Taper over rollers"
            method = "As the sheet says."
            by = "rollers"
            height = 40
            end = "small-down"
            nominal = "6°"
            plus_minus = "0°05'"
            places = ["one"]
            gauge_kind = "micrometer"
            gauge = "G-1"

            [[step]]
            number = 4
            operation = 10
            kind = "worked"
            name = "Taper of the seat"
            method = "As the sheet says."
            by = "balls"
            small_ball = 32.000
            large_ball = 40.000
            lower = 5.7
            upper = 5.8
            places = ["one"]
            gauge_kind = "depth-micrometer"
            gauge = "G-1"

            [[step]]
            number = 5
            operation = 10
            kind = "worked"
            name = "Radius by its chord"
            method = "As the sheet says."
            by = "chord"
            chord = 24
            lower = 25.0
            upper = 26.0
            places = ["one"]
            gauge_kind = "depth-micrometer"
            gauge = "G-1"

            [[step]]
            number = 6
            operation = 10
            kind = "worked"
            name = "Radius over rolls"
            method = "As the sheet says."
            by = "rolls"
            roll = 10
            arc = "convex"
            lower = 36.0
            upper = 37.0
            places = ["one"]
            gauge_kind = "micrometer"
            gauge = "G-1"

            [[step]]
            number = 7
            operation = 10
            kind = "worked"
            name = "Dovetail"
            method = "As the sheet says."
            by = "dovetail"
            angle = "55°"
            pin = 8
            height = 12
            side = "male"
            lower = 39.95
            upper = 40.05
            places = ["one"]
            gauge_kind = "micrometer"
            gauge = "G-1"

            [[step]]
            number = 8
            operation = 10
            kind = "worked"
            name = "Keyway"
            method = "As the sheet says."
            by = "keyway"
            depth_from = "crest"
            width = 8
            lower = 3.9
            upper = 4.1
            places = ["one"]
            gauge_kind = "micrometer"
            gauge = "G-1"

            [[step]]
            number = 9
            operation = 10
            kind = "worked"
            name = "Groove"
            method = "As the sheet says."
            by = "vee"
            angle = "60°"
            pin = 8
            lower = 7.8
            upper = 7.9
            places = ["one"]
            gauge_kind = "micrometer"
            gauge = "G-1"

            [[step]]
            number = 10
            operation = 10
            kind = "worked"
            name = "Spline over pins"
            method = "As the sheet says."
            by = "over-pins"
            teeth = 24
            module = 2
            pressure_angle = 30
            pin = 4
            side = "external"
            lower = 54.150
            upper = 54.250
            places = ["one"]
            gauge_kind = "micrometer"
            gauge = "G-1"

            [[step]]
            number = 11
            operation = 10
            kind = "worked"
            name = "Span of four teeth"
            method = "As the sheet says."
            by = "span"
            teeth = 24
            module = 2
            pressure_angle = 20
            over = 3
            lower = 15.40
            upper = 15.45
            places = ["one"]
            gauge_kind = "micrometer"
            gauge = "G-1"

            [[step]]
            number = 12
            operation = 10
            kind = "worked"
            name = "Centres over plugs"
            method = "As the sheet says."
            by = "centres"
            read = "over"
            first = 20.01
            second = 15
            lower = 78.75
            upper = 78.85
            places = ["one"]
            gauge_kind = "micrometer"
            gauge = "G-1"
            """;

    @BeforeEach
    void begin() throws Exception {
        beginARunOf(InventedPlans.inMillimetres(EVERY_WAY));
    }

    private Finding finding() {
        return run.session.state().line().finding();
    }

    private void read(String figures) {
        Arrays.stream(figures.split(" "))
                .forEach(figure -> Workshop.must(() -> {
                    run.enter(figure);
                    return true;
                }));
    }

    @ParameterizedTest
    @CsvSource({
        "1, 31.000 30.000",
        "2, 50.02",
        "3, 52.314 56.508",
        "4, 76.00 -8.00",
        "5, 3.00",
        "6, 64.00",
        "7, 63.37",
        "8, 30.00 26.06",
        "9, 5.20",
        "10, 54.218",
        "11, 15.43",
        "12, 96.305"
    })
    void everyWayPassesAndFailsAndHoldsEverywhere(int step, String passes) throws Exception {
        run.session.goTo(step);
        String way = run.session
                .state()
                .line()
                .step()
                .check()
                .asWorked()
                .orElseThrow()
                .by()
                .way()
                .key();
        assertEquals(WorkedWay.values()[step - 1].key(), way);
        assertEquals(VerdictKind.OPEN, finding().verdict().standing());
        seen("run", "worked-" + way + "-open", this::screen);
        read(passes);
        assertEquals(VerdictKind.PASS, finding().verdict().standing(), () -> new Sentences(words).distance(finding()));
        seen("run", "worked-" + way + "-pass", this::screen);
    }

    @ParameterizedTest
    @CsvSource({
        "1, 31.000 29.900",
        "2, 50.60",
        "3, 52.314 56.700",
        "4, 76.00 -6.00",
        "5, 2.80",
        "6, 65.00",
        "7, 63.60",
        "8, 30.00 25.60",
        "9, 5.00",
        "10, 54.050",
        "11, 15.30",
        "12, 96.600"
    })
    void outsideItsLimitsEveryWayFails(int step, String fails) throws Exception {
        run.session.goTo(step);
        read(fails);
        assertEquals(VerdictKind.FAIL, finding().verdict().standing(), () -> new Sentences(words).distance(finding()));
    }
}
