package org.tenthwise.app.export;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.tenthwise.app.InventedPlans;
import org.tenthwise.app.store.Chain;
import org.tenthwise.app.store.StoredEntry;
import org.tenthwise.app.store.Verification;
import org.tenthwise.checklists.catalogue.DemoPart;
import org.tenthwise.model.gauge.Gauge;
import org.tenthwise.model.gauge.GaugeKind;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.record.Sheet;
import org.tenthwise.model.run.Entry;
import org.tenthwise.model.run.Event;
import org.tenthwise.model.run.Run;
import org.tenthwise.model.run.ShopEvent;
import org.tenthwise.model.run.StepEvent;

class RecordCheckTest {

    private static final DemoPart PART = DemoPart.SCREW_CARRIER;

    private final Evidence evidence = Records.whole(PART, Records.passing(PART));
    private final String written = text(evidence);
    private final ObjectNode record = read(written);

    @ParameterizedTest
    @EnumSource(DemoPart.class)
    void aRecordAsWrittenIsWhole(DemoPart part) {
        for (Evidence any : new Evidence[] {
            Records.whole(part, Records.passing(part)),
            Records.whole(part, Records.failing(part)),
            Records.walk(part, Records.passing(part), 20).evidence()
        }) {
            Verification verification = check(text(any));
            assertEquals(Optional.empty(), verification.fault());
            assertEquals(any.entries().size(), verification.entries());
            assertEquals(any.last().hash(), verification.head().hash());
        }
    }

    @Test
    void sizesAreTextWithTheirLastZero() {
        JsonNode reading = record.at("/result/characteristics/3/passes/0/readings/0/reading");
        assertEquals("0.039", reading.path("figure").textValue());
        assertEquals(
                "30.000",
                bore().at("/passes/1/readings/0/set-on/certified/figure").textValue());
        assertTrue(bore().at("/passes/1/value").isTextual());
    }

    @Test
    void thePlanIsThereToTheByte() {
        assertEquals(PART.planText(), record.at("/plan/text").textValue());
    }

    @Test
    void theFirstChangedEntryIsNamed() {
        ArrayNode entries = (ArrayNode) record.path("entries");
        ObjectNode one = (ObjectNode) entries.get(40);
        ObjectNode other = (ObjectNode) entries.get(60);
        one.put("body", one.path("body").textValue().replace("Setter 2", "Setter 3"));
        other.put("body", other.path("body").textValue().replace("Setter 2", "Setter 3"));
        assertNamed(one.path("seq").asLong(), "Entry %d is not as it was written: its text does not give its hash.");
    }

    @Test
    void anEntryMadeAnewWithItsHashNoLongerCarriesTheNext() {
        ObjectNode entry = (ObjectNode) record.path("entries").get(40);
        String body = entry.path("body").textValue().replace("Setter 2", "Setter 3");
        entry.put("body", body)
                .put("by", "Setter 3")
                .put("hash", Chain.hash(entry.path("previous").textValue(), body.getBytes(UTF_8)));
        long seq = entry.path("seq").asLong();
        assertNamed(seq + 1, "Entry %d does not follow entry " + seq + " as it is now.");
    }

    @Test
    void aChangedTailNoLongerFitsTheHead() {
        ArrayNode entries = (ArrayNode) record.path("entries");
        ((ObjectNode) record.path("head"))
                .put("last", entries.get(entries.size() - 2).path("seq").asLong());
        assertSays("What the record says under \"head/last\" does not match its entries.");
    }

    @Test
    void aVerdictThatTheEntriesDoNotGiveIsNamed() {
        ((ObjectNode) bore()).put("verdict", "fail");
        assertSays("What the record says about characteristic 13 does not match its entries.");
    }

    /** 30.015·[(1 + 11.5e-6·0.5)/(1 + 16.2e-6·2.8) − 1] = −0.001189 by hand. */
    @Test
    void temperaturesTheCorrectionAndWhatItRestsOnStandInTheRecord() {
        JsonNode pass = bore().path("passes").path(1);
        assertEquals(
                "-0.001189", pass.at("/readings/0/correction-for-temperature").textValue());
        assertEquals("-0.001189", pass.at("/readings/0/correction").textValue());
        assertEquals("MR-30", pass.at("/readings/0/set-on/mark").textValue());
        assertEquals("30.013811", pass.at("/readings/0/size").textValue());
        assertEquals("22.8", pass.at("/temperature/corrected-by/part/celsius").textValue());
        assertEquals(
                "16.2", pass.at("/temperature/corrected-by/part/expansion-1e-6").textValue());
        assertTrue(pass.at("/temperature/corrected-by/part/expansion-from")
                .textValue()
                .startsWith("aluminium bronze CuAl10Ni5Fe4"));
        assertEquals(2, pass.path("temperatures").size());
    }

    @Test
    void aTemperatureThatTheEntriesDoNotGiveIsNoticed() {
        ((ObjectNode) bore().path("passes").path(1).at("/temperature/corrected-by/part")).put("celsius", "20.0");
        assertSays("What the record says about characteristic 13 does not match its entries.");
    }

    /** As every record from before there were temperatures. */
    @Test
    void aRecordOfAPlanThatSaysNothingOfHeatDoesNotNameIt() {
        DemoPart barrel = DemoPart.WINCH_BARREL_END;
        Plan plan = InventedPlans.read(barrel.planText().replaceFirst("(?s)\\[temperature\\].*?\n\n", ""));
        String text = text(new Records.Walk(plan, "Setter 1")
                .add(new Event.Begun(plan.part(), "003", "S-4410", "Lathe 7", plan.source()))
                .addAll(Records.passing(barrel).events().stream()
                        .filter(event -> !(event instanceof StepEvent.TemperatureTaken))
                        .toList())
                .evidence());
        assertFalse(read(text).path("result").toString().contains("temperature"));
        assertEquals(Optional.empty(), check(text).fault());
    }

    @Test
    void aSignatureThatTheEntriesDoNotGiveIsSaid() {
        ((ObjectNode) record.at("/result/signatures/0")).put("signed-by", "Somebody else");
        assertSays("What the record says under \"result/signatures/0/signed-by\" does not match its entries.");
    }

    @Test
    void anOutcomeThatTheEntriesDoNotGiveIsSaid() {
        ((ObjectNode) record.path("result")).put("outcome", "scrapped");
        assertSays("What the record says under \"result/outcome\" does not match its entries.");
    }

    /** Whatever is left out, the result is worked out anew, so that nothing but the entries themselves can tell. */
    @Test
    void anyEntryLeftOutIsFoundThoughTheResultIsWorkedOutAnew() {
        assertTrue(evidence.entries().size() > 60);
        for (int i = 1; i < evidence.entries().size() - 1; i++) {
            Verification found = check(without(i));
            long next = evidence.entries().get(i + 1).seq();
            assertTrue(
                    found.fault()
                            .orElseThrow()
                            .why()
                            .toString()
                            .equals("Entry %d is number %d of run LG-2207-C-014, and %d come before it."
                                    .formatted(next, i + 2, i)),
                    found::toString);
        }
    }

    private String without(int leftOut) {
        List<StoredEntry> stored = new ArrayList<>(evidence.entries());
        List<Entry> entries = new ArrayList<>(evidence.sheet().run().entries());
        boolean nothingToWorkWith = stored.remove(leftOut).kind().equals("gauge-set");
        entries.remove(leftOut);
        if (nothingToWorkWith) {
            ObjectNode changed = read(written);
            ((ArrayNode) changed.path("entries")).remove(leftOut);
            return changed.toString();
        }
        return text(new Evidence(Sheet.of(PART.plan(), new Run(entries)), stored, ""));
    }

    /** What cannot be found without a head from elsewhere gives another head. */
    @Test
    void lastEntriesCutOffGiveAnotherRunHead() {
        Evidence cut = new Evidence(
                Sheet.of(PART.plan(), new Run(evidence.sheet().run().entries().subList(0, 40))),
                evidence.entries().subList(0, 40),
                "");
        RecordCheck.Result result = ReadBack.check(text(cut));
        assertTrue(result.found().whole());
        assertEquals(40, result.head().place());
        assertNotEquals(evidence.head(), result.head());
        assertEquals(evidence.head(), ReadBack.check(written).head());
    }

    /** What strikes an entry out names it by its place in the ledger: another place would strike another reading. */
    @Test
    void anEntryMovedToAnotherPlaceInTheLedgerIsFound() {
        Records.Walk walk = Records.walk(PART, Records.passing(PART), 12);
        walk.add(new ShopEvent.GaugeKnown(new Gauge("X-1", GaugeKind.MICROMETER, Optional.empty())));
        Evidence whole = walk.add(new StepEvent.NoteMade(0, "one"))
                .add(new StepEvent.NoteMade(0, "two"))
                .evidence();
        List<StoredEntry> stored = new ArrayList<>(whole.entries());
        List<Entry> entries = new ArrayList<>(whole.sheet().run().entries());
        for (int i = stored.size() - 2; i < stored.size(); i++) {
            StoredEntry was = stored.get(i);
            stored.set(
                    i,
                    new StoredEntry(
                            was.seq() + 1,
                            was.run(),
                            was.kind(),
                            was.at(),
                            was.by(),
                            was.body(),
                            was.previous(),
                            was.hash()));
            Entry entry = entries.get(i);
            entries.set(i, new Entry(entry.seq() + 1, entry.run(), entry.at(), entry.by(), entry.event()));
        }
        Verification found = check(text(new Evidence(Sheet.of(PART.plan(), new Run(entries)), stored, "")));
        assertTrue(
                found.fault().orElseThrow().why().toString().startsWith("What comes before entry "), found::toString);
    }

    @Test
    void anotherPlanIsNoticed() {
        ((ObjectNode) record.path("plan")).put("text", PART.planText().replace("zone = \"H7\"", "zone = \"H8\""));
        assertSays("What the record says under \"plan/text\" does not match its entries.");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "{}",
                "[1]",
                "{\"format\":\"tenthwise-record-3\"}",
                "{\"format\":\"tenthwise-record-3\",\"entries\":[]}",
                "{\"format\":\"tenthwise-record-2\"}",
                "{\"format\":\"tenthwise-record-1\"}",
                "SQLite format 3"
            })
    void whatIsNoRecordIsCalledSo(String text) {
        assertEquals(
                "This is not a Tenthwise record in JSON, or it is damaged.",
                check(text).fault().orElseThrow().why().toString());
    }

    @Test
    void anyOneChangedLetterIsNoticed() {
        for (int i = written.indexOf("\"format\""); i < written.length() - 2; i += 977) {
            char sign = written.charAt(i);
            if (Character.isLetterOrDigit(sign)) {
                String changed = written.substring(0, i) + (sign == 'x' ? 'y' : 'x') + written.substring(i + 1);
                assertNotEquals(Optional.empty(), check(changed).fault(), changed.substring(i - 30, i + 10));
            }
        }
    }

    @Test
    void aRecordOfTheFirstFormIsNotCalledWhole() {
        record.put("format", "tenthwise-record-1");
        assertSays("It has the first form of a record, which cannot prove that no entry was left out of it. "
                + "Export the run again from its store.");
    }

    @Test
    void ofARecordOfTheSecondFormTheEntriesAreProvenAndTheRestIsNot() {
        record.put("format", "tenthwise-record-2");
        ((ObjectNode) record.path("result")).put("outcome", "scrapped");
        RecordCheck.Result result = ReadBack.check(record.toString());
        assertEquals(Optional.empty(), result.found().fault());
        assertEquals(evidence.head(), result.head());
        assertFalse(result.compared());
        assertTrue(ReadBack.check(written).compared());
        ((ObjectNode) record.path("entries").path(3)).put("by", "Somebody else");
        assertTrue(check(record.toString()).fault().orElseThrow().seq().isPresent());
    }

    @Test
    void theSameEvidenceGivesTheSameBytes() {
        assertEquals(written, text(Records.whole(PART, Records.passing(PART))));
    }

    private JsonNode bore() {
        JsonNode bore = record.at("/result/characteristics/12");
        assertEquals(13, bore.path("number").asInt());
        return bore;
    }

    private void assertNamed(long seq, String why) {
        Verification.Fault fault = check(record.toString()).fault().orElseThrow();
        assertEquals(Optional.of(seq), fault.seq());
        assertEquals(why.formatted(seq), fault.why().toString());
    }

    private void assertSays(String why) {
        assertEquals(why, check(record.toString()).fault().orElseThrow().why().toString());
    }

    private static Verification check(String text) {
        return ReadBack.check(text).found();
    }

    private static String text(Evidence evidence) {
        return ReadBack.text(new JsonRecord(), evidence);
    }

    private static ObjectNode read(String text) {
        try {
            return (ObjectNode) new ObjectMapper().readTree(text);
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
    }
}
