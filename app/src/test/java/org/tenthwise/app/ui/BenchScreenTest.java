package org.tenthwise.app.ui;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.scene.control.Labeled;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.tenthwise.app.bench.Bench;
import org.tenthwise.app.bench.BenchGroup;
import org.tenthwise.app.bench.BenchKind;
import org.tenthwise.app.bench.ResultRow;
import org.tenthwise.app.session.RunSession;
import org.tenthwise.app.sums.handbook.Handbook;
import org.tenthwise.app.ui.bench.BenchFormState;
import org.tenthwise.app.ui.bench.BenchView;
import org.tenthwise.app.ui.bench.BenchViewModel;
import org.tenthwise.app.ui.bench.SumViewModel;
import org.tenthwise.app.ui.keys.Key;
import org.tenthwise.app.ui.shell.Screen;

/** The list of bench sums and every sum with an answer, on every display. */
class BenchScreenTest extends ScreenTest {

    private static final String SUMS =
            """
            WIRES,         form=metric diameter=12 pitch=1.75 wire=1.100 over_wires=12.500 minor_diameter=9.800
            NEXT_CUT,      'upper=30.000 lower=29.979 sizes=30.050,30.046,30.049 offset_step=0.001 least_cut=0.010 register=radius'
            RUN_OUT,       'readings=0.004,0.001,0.000,0.002,0.006,0.009,0.011,0.008 limit=0.020'
            FIT,           bore_greatest=30.015 bore_least=30.011 plug_greatest=29.993 plug_least=29.991
            TEMPERATURE,   reading=500.035 part_temp=23.7 part_alpha=11.7 gauge_temp=20 gauge_alpha=11.5 u_temp=0.5 u_alpha=1.2
            DRILL_SET,     depth=210 start=30 per_drill=60 chip_clearance=25
            THREAD_LIMITS, form=trapezoidal diameter=40 pitch=7 class=7e
            ZONE,          diameter=30 letter=H grade=7
            SINE_BAR,      sine_by=angle length=127 angle=23.5 stack_error=0.002
            TAPER,         taper_by=rollers over_low=52.140 over_high=58.920 height=75 roller=10
            TAPER_BALLS,   large_ball=40 large_depth=-8 small_ball=32 small_depth=76
            DOVETAIL,      dovetail_by=width side=female angle=60 pin=6 width=40 height=12
            CENTRE_DISTANCE, centres_by=over over=96.305 first=20.01 second=15
            KEYSEAT,       diameter=38.1 width=9.525 height=9.525
            OVER_PINS,     teeth=24 side=external module=2 pressure_angle=30 pin=4 measured=54.200 shift=-0.05
            SPAN,          teeth=24 module=2 pressure_angle=30 over=4 shift=-0.05
            RADIUS,        radius_by=rolls_inside rolls=10 over=60 height=4.2
            BOLT_CIRCLE,   diameter=120 holes=6 start=15
            POSITION,      'dx=0.030,0.042 dy=-0.020,-0.011 zone=0.1 modifier=mmc feature=hole size=10.030 least=10.000 greatest=10.036'
            THREAD_PERCENT, major=12 pitch=1.75 drill=10.2
            GENERAL_TOLERANCE, class=m kind=linear nominal=120
            ACROSS_CORNERS, sides=6 across_flats=24
            STACK,         'tolerances=0.05,0.03,0.02 gap=0.15'
            GAUGE_TOLERANCE, class=X size=20.000 part_tolerance=0.021
            TAILSTOCK,     per_unit=0.05 work_length=240
            CHORDAL,       teeth=24 module=2 pressure_angle=20 addendum=2
            ROUGHNESS,     'rule=16-percent limit=1.6 values=1.52,1.71,1.38'
            ROUGHNESS_SETTINGS, 'parameter=Ra limit=1.6'
            """;

    @RegisterExtension
    private final Workshop workshop = new Workshop(words);

    private Bench bench() {
        return new Bench(Handbook.sums(), words);
    }

    private Screen view(Window window, BenchViewModel model) {
        return new BenchView(model, window.pictures(), words);
    }

    private Screen alone(Window window, BenchKind kind, String figures) {
        BenchViewModel model = BenchViewModel.alone(bench(), words, workshop);
        model.choose(kind);
        fill(model.inHandProperty().get().orElseThrow(), figures);
        return view(window, model);
    }

    /** {@code id=figure} or {@code id=choice}, several figures with a comma between. */
    private static void fill(SumViewModel sum, String figures) {
        for (String one : figures.split(" ")) {
            String[] parts = one.split("=");
            sum.goTo(parts[0]);
            if (sum.shownProperty().get().hand() instanceof BenchFormState.Hand.Choose) {
                sum.choose(parts[1]);
            } else {
                for (String figure : parts[1].split(",")) {
                    figure.chars().mapToObj(Character::toString).forEach(sum::character);
                    sum.enter();
                }
                sum.goTo(parts[0]);
            }
        }
    }

    @Test
    void theListHoldsEverywhere() {
        seen("bench", "list", window -> view(window, BenchViewModel.alone(bench(), words, workshop)));
    }

    @ParameterizedTest(name = "{0}")
    @EnumSource(BenchGroup.class)
    void everyGroupHoldsEverywhere(BenchGroup group) {
        seen("bench", "group-" + group.name().toLowerCase(Locale.ROOT), window -> {
            BenchViewModel model = BenchViewModel.alone(bench(), words, workshop);
            model.open(group);
            return view(window, model);
        });
    }

    @Test
    void aSumIsTwoTouchesAway() {
        for (BenchKind kind : BenchKind.values()) {
            BenchViewModel model = BenchViewModel.alone(bench(), words, workshop);
            run(() -> {
                Window window = window(Display.DAY);
                window.shell().show(view(window, model));
                press(window.scene(), "bench-group-" + key(kind.group()));
                press(window.scene(), "bench-" + key(kind));
            });
            assertEquals(
                    kind, model.inHandProperty().get().map(SumViewModel::kind).orElseThrow());
        }
    }

    private static String key(Enum<?> word) {
        return word.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(textBlock = SUMS)
    void aSumWithItsAnswerHoldsEverywhere(BenchKind kind, String figures) {
        seen("bench", key(kind), window -> alone(window, kind, figures));
    }

    /** Nothing is used on the machine whose caution lies on another page, and where no page is left, no result is. */
    @ParameterizedTest(name = "{0}")
    @CsvSource(textBlock = SUMS)
    void theHeadlineAndTheFirstResultsAndEveryCautionAreInSight(BenchKind kind, String figures) {
        List<String> faults = new ArrayList<>();
        for (Display display : displays()) {
            run(() -> {
                Window window = window(display);
                BenchViewModel model = BenchViewModel.alone(bench(), words, workshop);
                model.choose(kind);
                SumViewModel sum = model.inHandProperty().get().orElseThrow();
                fill(sum, figures);
                window.shell().show(view(window, model));
                settle(window.scene());
                List<String> rows = rows(window.scene());
                List<String> cautions = sum.shownProperty().get().found().cautions();
                int results = sum.shownProperty().get().found().rows().size() - 1;
                boolean isAll = !shown(window.scene().lookup("#line #later"));
                boolean isCut = isAll && !values(window.scene()).containsAll(values(sum));
                if (isCut
                        || !shown(window.scene().lookup("#headline"))
                        || !rows.containsAll(cautions.subList(0, Math.min(2, cautions.size())))
                        || !isAll && cautions.isEmpty() && rows.size() < Math.min(3, results)) {
                    faults.add(display.name() + ": " + rows);
                }
            });
        }
        assertEquals(List.of(), faults);
    }

    /** Of every result but the headline. */
    private static List<String> values(SumViewModel sum) {
        return sum.shownProperty().get().found().rows().stream()
                .skip(1)
                .map(ResultRow::value)
                .toList();
    }

    /** Every figure and word that is seen under the headline. */
    private static List<String> values(Scene scene) {
        return scene.lookup("#facts").lookupAll(".label").stream()
                .filter(ScreenTest::shown)
                .map(label -> ((Labeled) label).getText())
                .toList();
    }

    /** What is written in the rows that are seen. */
    private static List<String> rows(Scene scene) {
        return scene.lookup("#facts") instanceof Parent facts
                ? facts.getChildrenUnmodifiable().stream()
                        .filter(row -> row.isVisible() && !(row instanceof Key))
                        .map(row -> row instanceof Labeled label ? label.getText() : row.toString())
                        .toList()
                : List.of();
    }

    /** The unit stands beside the last figure, on the one line that several have on their key. */
    @Test
    void ofSeveralFiguresTheLastAreWholeOnTheirKey() {
        List<String> faults = new ArrayList<>();
        for (Display display : displays()) {
            run(() -> {
                Window window = window(display);
                window.shell()
                        .show(alone(
                                window, BenchKind.NEXT_CUT, "upper=30.000 lower=29.979 sizes=30.050,30.046,30.049"));
                settle(window.scene());
                Labeled value = (Labeled) window.scene().lookup("#field-sizes .key-line");
                String seen = value.getText();
                if (!seen.endsWith("30.049 mm")
                        || value.getHeight() > 2 * value.getFont().getSize()) {
                    faults.add(display.name() + ": " + seen);
                }
            });
        }
        assertEquals(List.of(), faults);
    }

    @Test
    void somethingToChooseHoldsEverywhere() {
        seen("bench", "choose", window -> alone(window, BenchKind.ZONE, "diameter=30 letter=JS"));
    }

    @Test
    void aWallNoEvenCutBringsInHoldsEverywhere() {
        seen(
                "bench",
                "next-cut-uneven",
                window ->
                        alone(window, BenchKind.NEXT_CUT, "side=inside upper=30.021 lower=30.000 sizes=29.854,29.990"));
    }

    @Test
    void aRefusalHoldsEverywhere() {
        seen("bench", "refused", window -> alone(window, BenchKind.NEXT_CUT, "upper=29.979 lower=30.000 sizes=30.050"));
    }

    @Test
    void aSumBesideTheRunHoldsEverywhere() {
        RunSession session = workshop.atTheBore("014", "-0.013");
        seen("bench", "beside-run", window -> {
            BenchViewModel model =
                    BenchViewModel.beside(session, session.state(), bench(), words, workshop, workshop.tasks);
            return view(window, model);
        });
        seen("bench", "list-beside-run", window -> {
            BenchViewModel model =
                    BenchViewModel.beside(session, session.state(), bench(), words, workshop, workshop.tasks);
            model.list();
            return view(window, model);
        });
    }
}
