package org.tenthwise.app.export;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tenthwise.app.InventedPlans;
import org.tenthwise.model.gauge.Gauge;
import org.tenthwise.model.gauge.GaugeKind;
import org.tenthwise.model.gauge.Setting;
import org.tenthwise.model.plan.Aim;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.plan.Register;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.run.Event;
import org.tenthwise.model.run.ShopEvent;
import org.tenthwise.model.run.StepEvent;

/**
 * What the records have of the next cut, of the modifier of the drawing and of who cut on half a pass. Bore and slot of
 * 30.000 to 30.021.
 */
class NextCutInRecordsTest {

    private static final String REASON = "Back end is not bored yet.";
    private static final String STEP =
            """
            [[step]]
            number = 1
            operation = 10
            kind = "%s"
            name = "Size"
            method = "Both ends."
            lower = 30.000
            upper = 30.021
            places = ["front", "back"]
            gauge_kind = "inside-micrometer"
            cut_again = "too small"
            """;

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
        # kind | the plan says       | register | front  | back   | next cut: 29.862 to 30.0105 is 0.1485, 29.9995 to
        # there 0.011
        bore   |                     | RADIUS   | 29.860 | 29.864 | {"offset_change":"0.074","register":"radius"}
        bore   |                     | DIAMETER | 29.860 | 29.864 | {"offset_change":"0.148","register":"diameter"}
        bore   |                     |          | 29.860 | 29.864 | {"offset_change":"0.148","register":"size"}
        width  |                     | RADIUS   | 29.860 | 29.864 | {"offset_change":"0.148","register":"size"}
        bore   |                     | DIAMETER | 29.900 | 29.990 | {"safe_cut":"0.031","reason":"uneven"}
        bore   | least_cut = 0.006   | DIAMETER | 29.999 | 30.000 | {"safe_cut":"0.021","reason":"below-least-cut"}
        bore   | drawing_says = "SX" | DIAMETER | 29.900 | 29.990 | {"offset_change":"0.020","register":"diameter"}
        """)
    void eachPassHasTheCutThatWasOfferedAfterItOrWhyThereWasNone(
            String kind, String says, Register register, String front, String back, String cut) throws IOException {
        Records.Walk walk = walk(kind, Optional.ofNullable(says), Optional.ofNullable(register))
                .add(read("1.1", front))
                .add(read("2.1", back));
        Evidence evidence = walk.add(new StepEvent.PassBegun(1, StepEvent.PassBegun.Why.CUT))
                .add(read("1.1", "30.010"))
                .evidence();
        JsonNode passes = ReadBack.json(evidence).at("/result/characteristics/0/passes");
        assertEquals(new ObjectMapper().readTree(cut), passes.path(0).path("next_cut"));
        assertTrue(passes.path(1).path("next_cut").isMissingNode());
        assertEquals(Optional.empty(), ReadBack.check(json(evidence)).found().fault());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            nullValues = "-",
            textBlock =
                    """
        # kind | register | front  | back   | front  | back   | the cut, of the means: 29.862 to 29.997, 29.945 to
        # 29.980
        bore   | DIAMETER | 29.860 | 29.864 | 29.996 | 29.998 | {"number":1,"asked":"0.148","came_off":"0.135","register":"diameter"}
        bore   | RADIUS   | 29.860 | 29.864 | 29.996 | 29.998 | {"number":1,"asked":"0.074","came_off":"0.0675","register":"radius"}
        bore   | -        | 29.860 | 29.864 | 29.996 | 29.998 | {"number":1,"asked":"0.148","came_off":"0.135","register":"size"}
        width  | RADIUS   | 29.860 | 29.864 | 29.996 | 29.998 | {"number":1,"asked":"0.148","came_off":"0.135","register":"size"}
        bore   | DIAMETER | 29.900 | 29.990 | 29.935 | 30.025 | {"number":1,"asked_at_most":"0.031","came_off":"0.035","register":"diameter"}
        """)
    void eachPassHasWhatTheCutBeforeItWasToTakeOffAndTookOff(
            String kind, Register register, String front, String back, String frontAfter, String backAfter, String cut)
            throws IOException {
        Evidence evidence = walk(kind, Optional.empty(), Optional.ofNullable(register))
                .add(read("1.1", front))
                .add(read("2.1", back))
                .add(new StepEvent.PassBegun(1, StepEvent.PassBegun.Why.CUT))
                .add(read("1.1", frontAfter))
                .add(read("2.1", backAfter))
                .evidence();
        JsonNode passes = ReadBack.json(evidence).at("/result/characteristics/0/passes");
        JsonNode due = new ObjectMapper().readTree(cut);
        assertTrue(passes.path(0).path("cut").isMissingNode());
        assertEquals(due, passes.path(1).path("cut"));
        assertEquals(Optional.empty(), ReadBack.check(json(evidence)).found().fault());
        String changed = json(evidence).replace("\"came_off\" : \"0.", "\"came_off\" : \"1.");
        assertTrue(ReadBack.check(changed).found().fault().isPresent());
        CSVRecord row = ReadBack.rows(evidence).get(3);
        assertEquals(
                List.of(
                        "2",
                        "1",
                        due.path("asked").asText(),
                        due.path("asked_at_most").asText(),
                        due.path("came_off").asText(),
                        due.path("register").asText()),
                Stream.of("pass", "cut", "cut-asked", "cut-asked-at-most", "cut-came-off", "register")
                        .map(row::get)
                        .toList());
    }

    /** What the JSON record has of the next cut, the table has in every row of the pass it followed. */
    @ParameterizedTest
    @CsvSource(
            nullValues = "-",
            textBlock =
                    """
        # register, front,  back,   offset change, safe cut, no cut for, counted by
        RADIUS,     29.860, 29.864, 0.074,         -,        -,          radius
        -,          29.860, 29.864, 0.148,         -,        -,          size
        DIAMETER,   29.900, 29.990, -,             0.031,    uneven,     -
        """)
    void theTableHasTheNextCutToo(
            Register register, String front, String back, String change, String safe, String reason, String counted) {
        Evidence evidence = walk("bore", Optional.empty(), Optional.ofNullable(register))
                .add(read("1.1", front))
                .add(read("2.1", back))
                .evidence();
        for (CSVRecord row : ReadBack.rows(evidence)) {
            assertEquals(
                    Stream.of(change, safe, reason, counted)
                            .map(due -> due == null ? "" : due)
                            .toList(),
                    Stream.of("offset-change", "safe-cut", "no-cut-for", "register")
                            .map(row::get)
                            .toList());
        }
    }

    /**
     * The machine was found to count radii after the second cut: 0.010 is on diameter, and so is what came off before
     * it in the same row.
     */
    @Test
    void aRowOfTheTableCountsAllItsCutsInOneWay() {
        Event cut = new StepEvent.PassBegun(1, StepEvent.PassBegun.Why.CUT);
        Evidence evidence = walk("bore", Optional.empty(), Optional.of(Register.DIAMETER))
                .add(read("1.1", "29.862"))
                .add(read("2.1", "29.862"))
                .add(cut)
                .add(read("1.1", "30.000"))
                .add(read("2.1", "29.998"))
                .add(cut)
                .add(new ShopEvent.MachineKnown("Lathe 4", Register.RADIUS, Aim.ByLimits.MIDDLE))
                .add(read("1.1", "30.010"))
                .add(read("2.1", "30.008"))
                .evidence();
        assertEquals(
                List.of("   0.148 diameter", "1 0.148 0.137 0.011 diameter", "2 0.0055 0.005  radius"),
                ReadBack.rows(evidence).stream()
                        .map(row -> Stream.of("cut", "cut-asked", "cut-came-off", "offset-change", "register")
                                .map(row::get)
                                .collect(Collectors.joining(" ")))
                        .distinct()
                        .toList());
    }

    /**
     * 0.040 more metal than before the cut, where 0.021 is the tolerance: one of the readings is wrong, and the screen
     * tells no amount either.
     */
    @Test
    void noAmountIsHandedOutAfterACutThatIsReadAsHavingLeftMoreMetal() {
        Evidence evidence = walk("bore", Optional.empty(), Optional.of(Register.DIAMETER))
                .add(read("1.1", "29.900"))
                .add(read("2.1", "29.900"))
                .add(new StepEvent.PassBegun(1, StepEvent.PassBegun.Why.CUT))
                .add(read("1.1", "29.860"))
                .add(read("2.1", "29.860"))
                .evidence();
        JsonNode passes = ReadBack.json(evidence).at("/result/characteristics/0/passes");
        assertEquals("0.110", passes.path(0).at("/next_cut/offset_change").asText());
        assertEquals("-0.040", passes.path(1).at("/cut/came_off").asText());
        assertTrue(passes.path(1).path("next_cut").isMissingNode());
        CSVRecord row = ReadBack.rows(evidence).get(3);
        assertEquals(
                List.of("2", "", "", ""),
                Stream.of("pass", "offset-change", "safe-cut", "no-cut-for")
                        .map(row::get)
                        .toList());
        assertEquals(Optional.empty(), ReadBack.check(json(evidence)).found().fault());
    }

    @Test
    void whoCutOnHalfAPassStandsInEveryRecord() {
        Evidence evidence = walk("bore", Optional.empty(), Optional.of(Register.DIAMETER))
                .add(read("1.1", "29.860"))
                .add(new StepEvent.CutOnThese(1, REASON))
                .add(new StepEvent.PassBegun(1, StepEvent.PassBegun.Why.CUT))
                .evidence();
        JsonNode result = ReadBack.json(evidence).path("result");
        assertEquals(
                "[{\"place\":\"back\",\"repeat\":1}]",
                result.at("/characteristics/0/passes/0/next_cut/unread").toString());
        assertEquals(REASON, result.at("/notes/0/cut-on-these").asText());
        assertEquals("Setter 1", result.at("/notes/0/by").asText());
        assertTrue(ReadBack.text(new CsvRecord(), evidence).contains(REASON));
        assertEquals(Optional.empty(), ReadBack.check(json(evidence)).found().fault());
    }

    @Test
    void anAmountThatWasChangedInAFileIsFound() {
        Evidence evidence = walk("bore", Optional.empty(), Optional.of(Register.DIAMETER))
                .add(read("1.1", "29.860"))
                .add(read("2.1", "29.864"))
                .evidence();
        String changed = json(evidence).replace("\"offset_change\" : \"0.148\"", "\"offset_change\" : \"0.184\"");
        assertTrue(changed.contains("0.184"));
        assertTrue(ReadBack.check(changed).found().fault().isPresent());
    }

    @Test
    void recordsNameTheModifierOfTheDrawing() {
        Evidence evidence = walk("bore", Optional.of("drawing_says = \"SN\""), Optional.empty())
                .add(read("1.1", "30.010"))
                .add(read("2.1", "30.012"))
                .evidence();
        assertEquals(
                "SN",
                ReadBack.json(evidence).at("/result/characteristics/0/modifier").textValue());
        assertEquals("SN", ReadBack.rows(evidence).get(0).get("modifier"));
    }

    @Test
    void withoutAModifierNoneIsNamed() {
        Evidence evidence = walk("bore", Optional.empty(), Optional.empty())
                .add(read("1.1", "30.010"))
                .add(read("2.1", "30.012"))
                .evidence();
        assertEquals(
                "",
                ReadBack.json(evidence).at("/result/characteristics/0/modifier").asText());
        assertEquals("", ReadBack.rows(evidence).get(0).get("modifier"));
    }

    private static Records.Walk walk(String kind, Optional<String> says, Optional<Register> register) {
        Plan plan = InventedPlans.inMillimetres(STEP.formatted(kind) + says.orElse("") + "\n");
        Records.Walk walk = new Records.Walk(plan, "Setter 1")
                .add(new Event.Begun(plan.part(), "1", "L-1", "Lathe 4", plan.source()));
        register.ifPresent(counts -> walk.add(new ShopEvent.MachineKnown("Lathe 4", counts, Aim.ByLimits.MIDDLE)));
        return walk.add(new StepEvent.GaugeSet(
                1, Setting.direct(new Gauge("IM-1", GaugeKind.INSIDE_MICROMETER, Optional.empty()))));
    }

    private static Event read(String slot, String figure) {
        return new StepEvent.ReadingTaken(1, slot, new Written(figure, Unit.MILLIMETRE));
    }

    private static String json(Evidence evidence) {
        return ReadBack.text(new JsonRecord(), evidence);
    }
}
