package org.tenthwise.app.export;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.tenthwise.model.quantity.TemperatureScale.CELSIUS;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.BooleanNode;
import com.fasterxml.jackson.databind.node.IntNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.LongNode;
import com.fasterxml.jackson.databind.node.NullNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.databind.node.TextNode;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.tenthwise.app.InventedPlans;
import org.tenthwise.model.gauge.Gauge;
import org.tenthwise.model.gauge.GaugeKind;
import org.tenthwise.model.gauge.ReadingDirection;
import org.tenthwise.model.gauge.Setting;
import org.tenthwise.model.plan.Aim;
import org.tenthwise.model.plan.Answer;
import org.tenthwise.model.plan.MeasuredBody;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.plan.Question;
import org.tenthwise.model.plan.Register;
import org.tenthwise.model.quantity.Degrees;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.run.Disposition;
import org.tenthwise.model.run.Event;
import org.tenthwise.model.run.ShopEvent;
import org.tenthwise.model.run.StepEvent;

/** Walks over every node of a record: whatever is changed, taken out or put in there must be found. */
class EveryNodeOfARecordTest {

    private static final Plan PLAN = InventedPlans.inMillimetres(
            """
            [[step]]
            number = 1
            operation = 10
            kind = "confirm"
            name = "Jaws"
            what = "Jaws clean."

            [[step]]
            number = 2
            operation = 10
            kind = "bore"
            name = "Bore"
            drawing = "20 H7"
            method = "Two ways."
            lower = 20.000
            upper = 20.021
            places = ["0°", "90°"]
            gauge_kind = "bore-gauge"
            master = 20.000
            uncertainty = "bore gauge on a ring"
            guard_band = 0.001
            temperature = "ask"

            [[step]]
            number = 3
            operation = 10
            kind = "diameter"
            name = "Outside"
            method = "Micrometer."
            lower = 29.980
            upper = 30.000
            places = ["free end", "shoulder end"]
            cut_again = "too big"
            gauge_kind = "micrometer"
            temperature = "not-asked"

            [[uncertainty]]
            name = "bore gauge on a ring"
            expanded = 0.002

            [temperature]
            part_expansion = 13.0
            shop_least = 18
            shop_greatest = 26
            """);

    private final ObjectMapper json = new ObjectMapper();
    private final RecordCheck check = new RecordCheck();
    private final ObjectNode record = record();
    private final List<String> unseen = new ArrayList<>();
    private int aimed;

    /**
     * A short run that has a little of everything: readings, a gauge set, answers, a strike, a doubt, a note, a second
     * pass, a repair, a concession, a cut asked for and taken, and one that is too uneven to be offered.
     */
    private ObjectNode record() {
        Setting bore = Setting.onMaster(
                new Gauge("BG-1", GaugeKind.BORE_GAUGE, Optional.of(ReadingDirection.FALLS_WITH_SIZE)),
                "R-20",
                mm("20.001"),
                mm("0.000"));
        Evidence evidence = new Records.Walk(PLAN, "Setter 1")
                .add(new Event.Begun(PLAN.part(), "1", "L-1", "Lathe 4", PLAN.source()))
                .add(new StepEvent.Answered(1, Question.CONFIRMED, Answer.YES))
                .add(new StepEvent.GaugeSet(2, bore))
                .add(new StepEvent.ReadingTaken(2, "1.1", mm("-0.011")))
                .add(new StepEvent.ReadingTaken(2, "1.1", mm("-0.012")))
                .add(new Event.StruckOut(5, "Dirt."))
                .add(new StepEvent.ReadingTaken(2, "2.1", mm("-0.004")))
                .add(new StepEvent.TemperatureTaken(2, MeasuredBody.PART, Degrees.of("22.5", CELSIUS)))
                .add(new StepEvent.TemperatureTaken(2, MeasuredBody.GAUGE, Degrees.of("20.5", CELSIUS)))
                .add(new StepEvent.DoubtFlagged(2, "Which end?"))
                .add(new StepEvent.NoteMade(0, "Night shift."))
                .add(new StepEvent.PassBegun(2, StepEvent.PassBegun.Why.CUT))
                .add(new StepEvent.ReadingTaken(2, "1.1", mm("-0.060")))
                .add(new StepEvent.DispositionSigned(
                        2, Disposition.REPAIR, "Sleeved.", "Design office", Optional.of("A-7")))
                .add(new StepEvent.ReadingTaken(2, "1.1", mm("-0.060")))
                .add(new StepEvent.ReadingTaken(2, "2.1", mm("-0.061")))
                .add(new StepEvent.DispositionSigned(
                        2, Disposition.USE_AS_IS, "Agreed.", "Design office", Optional.of("C-1")))
                .add(new StepEvent.GaugeSet(
                        3, Setting.direct(new Gauge("MC-1", GaugeKind.MICROMETER, Optional.empty()))))
                .add(new ShopEvent.MachineKnown("Lathe 4", Register.RADIUS, Aim.ByLimits.MIDDLE))
                .add(new StepEvent.ReadingTaken(3, "1.1", mm("30.120")))
                .add(new StepEvent.ReadingTaken(3, "2.1", mm("30.124")))
                .add(new StepEvent.PassBegun(3, StepEvent.PassBegun.Why.CUT))
                .add(new StepEvent.ReadingTaken(3, "1.1", mm("29.985")))
                .add(new StepEvent.ReadingTaken(3, "2.1", mm("30.011")))
                .evidence();
        try {
            return (ObjectNode) json.readTree(ReadBack.text(new JsonRecord(), evidence));
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
    }

    private static Written mm(String figure) {
        return new Written(figure, Unit.MILLIMETRE);
    }

    @Test
    void nothingIsChangedTakenOutOrPutInUnseen() throws IOException {
        assertEquals(
                Optional.empty(),
                check.check(new ByteArrayInputStream(json.writeValueAsBytes(record)))
                        .found()
                        .fault());
        assertEquals(
                List.of(true, true, true, true),
                Stream.of("offset_change", "safe_cut", "asked", "came_off")
                        .map(key -> record.findValue(key) != null)
                        .toList());
        walk("", record);
        assertEquals(List.of(), unseen);
        assertTrue(aimed > 1_000, () -> "only %d changes were made".formatted(aimed));
    }

    private void walk(String path, JsonNode node) throws IOException {
        if (node instanceof ObjectNode object) {
            object.put("approved", true);
            seen(path + "/approved put in");
            object.remove("approved");
            List<String> names = new ArrayList<>();
            object.fieldNames().forEachRemaining(names::add);
            for (String name : names) {
                walk(path + "/" + name, object.get(name));
                JsonNode was = object.get(name);
                for (JsonNode other : others(was)) {
                    object.set(name, other);
                    seen(path + "/" + name + " made " + other);
                }
                object.remove(name);
                seen(path + "/" + name + " taken out");
                object.set(name, was);
            }
        } else if (node instanceof ArrayNode array) {
            array.add("approved");
            seen(path + " added to");
            array.remove(array.size() - 1);
            for (int i = 0; i < array.size(); i++) {
                walk(path + "/" + i, array.get(i));
                JsonNode was = array.remove(i);
                seen(path + "/" + i + " taken out");
                array.insert(i, was);
            }
        }
    }

    private static List<JsonNode> others(JsonNode node) {
        JsonNodeFactory make = JsonNodeFactory.instance;
        if (node.isTextual()) {
            String text = node.textValue();
            return List.of(
                    TextNode.valueOf(text + "0"),
                    TextNode.valueOf(""),
                    NullNode.instance,
                    make.arrayNode().add(text));
        }
        if (node.isNumber()) {
            return List.of(
                    LongNode.valueOf(node.longValue() + 1),
                    TextNode.valueOf(node.asText()),
                    make.numberNode(node.doubleValue()));
        }
        if (node.isBoolean()) {
            return List.of(
                    BooleanNode.valueOf(!node.booleanValue()),
                    TextNode.valueOf(node.asText()),
                    IntNode.valueOf(node.booleanValue() ? 1 : 0));
        }
        return Stream.<JsonNode>of(
                        NullNode.instance, make.objectNode(), make.arrayNode(), TextNode.valueOf(node.toString()))
                .filter(other -> !other.equals(node))
                .toList();
    }

    private void seen(String change) throws IOException {
        aimed++;
        if (check.check(new ByteArrayInputStream(json.writeValueAsBytes(record)))
                .found()
                .whole()) {
            unseen.add(change);
        }
    }
}
