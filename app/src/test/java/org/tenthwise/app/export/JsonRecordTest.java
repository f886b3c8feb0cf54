package org.tenthwise.app.export;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tenthwise.checklists.catalogue.DemoPart;
import org.tenthwise.model.plan.Answer;
import org.tenthwise.model.plan.MeasuredBody;
import org.tenthwise.model.plan.Question;
import org.tenthwise.model.quantity.Degrees;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.TemperatureScale;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.run.Disposition;
import org.tenthwise.model.run.Event;
import org.tenthwise.model.run.StepEvent;

class JsonRecordTest {

    private static final DemoPart PART = DemoPart.SCREW_CARRIER;
    private static final int TURNED = 9;

    @Test
    void everyReadingThatCountsHasAVerdictWhereEachIsJudged() {
        int alone = 0;
        for (JsonNode pass : nodes(tree(Records.whole(PART, Records.failing(PART))), node -> node.has("readings"))) {
            boolean each = pass.path("judged-by").asText().equals("each");
            for (JsonNode reading : pass.path("readings")) {
                assertEquals(each && reading.path("counts").booleanValue(), reading.has("verdict"), reading::toString);
                alone += reading.has("verdict") ? 1 : 0;
            }
            if (each && pass.path("verdict").asText().equals("pass")) {
                pass.path("readings")
                        .forEach(reading -> assertEquals(
                                reading.path("counts").booleanValue() ? "pass" : "",
                                reading.path("verdict").asText()));
            }
        }
        assertTrue(alone > 10, alone + " places were judged by themselves");
    }

    @Test
    void anAnswerSaysWhetherItCounts() {
        Records.Walk walk = new Records.Walk(PART.plan(), "Setter 1")
                .add(Records.passing(PART).begun())
                .add(new StepEvent.Answered(3, Question.CONFIRMED, Answer.NO));
        walk.add(new Event.StruckOut(walk.seq(), "Slip."))
                .add(new StepEvent.Answered(3, Question.CONFIRMED, Answer.NO))
                .add(new StepEvent.Answered(3, Question.CONFIRMED, Answer.YES));
        JsonNode answers = tree(walk.evidence()).at("/result/characteristics/2/passes/0/answers");
        List<Boolean> counts = new ArrayList<>();
        answers.forEach(answer -> counts.add(answer.path("counts").booleanValue()));
        assertEquals(List.of(false, false, true), counts);
    }

    @Test
    void doubtsAndNotesStandInTheResult() {
        JsonNode notes = tree(Records.walk(PART, Records.passing(PART), 12)
                        .add(new StepEvent.DoubtFlagged(12, "Which end?"))
                        .add(new StepEvent.NoteMade(0, "Coolant 21 °C"))
                        .evidence())
                .at("/result/notes");
        assertEquals(2, notes.size());
        assertEquals("Which end?", notes.path(0).path("doubt").textValue());
        assertEquals(12, notes.path(0).path("step").intValue());
        assertEquals("Coolant 21 °C", notes.path(1).path("note").textValue());
        assertEquals("Setter 2", notes.path(1).path("by").textValue());
    }

    @Test
    void whatTheDrawingRequiresAndWhatWasEverSignedStandsWithItsEntry() {
        Records.Walk walk = Records.walk(PART, Records.passing(PART), Integer.MAX_VALUE)
                .add(new StepEvent.DispositionSigned(
                        12, Disposition.REPAIR, "Insert fitted.", "Design office", Optional.of("A-7")))
                .add(new StepEvent.ReadingTaken(12, "1.1", new Written("45.2", Unit.MILLIMETRE)))
                .add(new StepEvent.DispositionSigned(
                        12, Disposition.USE_AS_IS, "Agreed.", "Design office", Optional.of("C-117")));
        Evidence evidence = walk.evidence();
        JsonNode depth = tree(evidence).at("/result/characteristics/11");
        assertEquals(
                PART.plan().step(12).drawing().requirement(),
                depth.path("requirement").textValue());
        assertSigned(evidence, depth.path("disposition"), evidence.entries().size() - 1, "C-117");
        assertSigned(
                evidence,
                depth.path("lapsed-dispositions").path(0),
                evidence.entries().size() - 3,
                "A-7");
        JsonNode closing = tree(Records.whole(PART, Records.passing(PART))).at("/result/signatures/0");
        assertFalse(closing.path("at").asText().isEmpty());
    }

    private static void assertSigned(Evidence evidence, JsonNode signed, int place, String number) {
        assertEquals(number, signed.path("number").textValue());
        assertEquals(evidence.entries().get(place).seq(), signed.path("entry").longValue());
        assertEquals(
                evidence.sheet().run().entries().get(place).at(),
                OffsetDateTime.parse(signed.path("at").textValue()));
    }

    /** Without it nobody can tell from the record alone under which jaw an angle lies. */
    @Test
    void aRunOutSaysAtWhichAngleEachJawStands() {
        assertEquals(
                "[{\"jaw\":1,\"at-degrees\":\"0\"},{\"jaw\":2,\"at-degrees\":\"90\"},{\"jaw\":3,"
                        + "\"at-degrees\":\"180\"},{\"jaw\":4,\"at-degrees\":\"270\"}]",
                tree(Records.whole(PART, Records.passing(PART)))
                        .at("/result/characteristics/3/jaws")
                        .toString());
    }

    /** 22.5 was replaced by 23.0, and that was struck out: nothing is corrected by either, so neither counts. */
    @Test
    void aTemperatureThatWasTakenAgainCountsNoMoreWhateverBecomesOfTheLaterOne() {
        Records.Walk walk = new Records.Walk(PART.plan(), "Setter 1")
                .add(Records.passing(PART).begun())
                .add(part("22.5"))
                .add(part("23.0"));
        assertEquals(List.of(false, true), counting(walk));
        walk.add(new Event.StruckOut(walk.seq(), "thermometer lay in the sun"));
        assertEquals(List.of(false, false), counting(walk));
    }

    private static Event part(String read) {
        return new StepEvent.TemperatureTaken(TURNED, MeasuredBody.PART, Degrees.of(read, TemperatureScale.CELSIUS));
    }

    private static List<Boolean> counting(Records.Walk walk) {
        return nodes(tree(walk.evidence()), node -> node.path("of").asText().equals("part") && node.has("counts"))
                .stream()
                .map(node -> node.path("counts").booleanValue())
                .toList();
    }

    @Test
    void noInchCarriesDigitsNobodyKnew() {
        DemoPart barrel = DemoPart.WINCH_BARREL_END;
        for (JsonNode text :
                nodes(tree(Records.whole(barrel, Records.failing(barrel))).path("result"), JsonNode::isTextual)) {
            assertFalse(text.textValue().matches("-?\\d+\\.\\d{9,}"), text::toString);
        }
    }

    /** 0.000014406 mm are 0.000000567165354… in. */
    @ParameterizedTest
    @CsvSource({
        "0.0144060000,mm,3,0.014406",
        "0.014406,in,4,0.00056717",
        "30,mm,3,30.000",
        "30.0100,mm,2,30.01",
        "25.4,in,4,1.0000",
        "30.012345678901,mm,3,30.012346",
        "30.0000004,mm,3,30.000"
    })
    void aSizeWorkedOutHasThePlacesItIsKnownTo(String millimetres, Unit unit, int known, String figure) {
        assertEquals(figure, WorkedOut.figure(Length.of(millimetres, Unit.MILLIMETRE), unit, known));
    }

    private static JsonNode tree(Evidence evidence) {
        return ReadBack.json(evidence);
    }

    private static List<JsonNode> nodes(JsonNode tree, Predicate<JsonNode> wanted) {
        List<JsonNode> found = new ArrayList<>();
        if (wanted.test(tree)) {
            found.add(tree);
        }
        tree.forEach(child -> found.addAll(nodes(child, wanted)));
        return found;
    }
}
