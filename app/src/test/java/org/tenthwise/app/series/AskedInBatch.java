package org.tenthwise.app.series;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.tenthwise.app.batch.Batch;
import org.tenthwise.app.sums.SumInput;
import org.tenthwise.app.sums.SumResult;
import org.tenthwise.app.sums.SumValue;
import org.tenthwise.app.sums.handbook.Handbook;
import org.tenthwise.app.sums.written.WrittenObject;

/** Asks the batch what a series was worked out from, as a line of text, and reads its answer. */
final class AskedInBatch {

    private AskedInBatch() {}

    /** What the command answers to these figures, key by key. */
    static Map<String, SumValue> answer(String calc, List<String> figures, String... more) throws Exception {
        StringBuilder line = new StringBuilder("{\"calc\":\"").append(calc).append('"');
        if (!figures.isEmpty()) {
            line.append(",\"values\":").append(figures.stream().collect(Collectors.joining("\",\"", "[\"", "\"]")));
        }
        for (String one : more) {
            line.append(',').append(one);
        }
        return answer(line.append('}').toString());
    }

    /** The same question once more, through the batch: every value must come out alike, to the last figure. */
    static void assertAlike(AskedSum asked) throws Exception {
        Map<String, SumValue> answered = answer("{\"calc\":\"" + asked.calc() + "\"," + keys(asked.given()) + "}");
        SumResult found = asked.result();
        found.written().values().forEach((key, value) -> assertEquals(text(value), text(answered.get(key)), key));
        assertEquals(found.notes().size(), texts(answered.get("notes")).size());
    }

    /** Every sum a segment was told by. */
    static List<AskedSum> all(SegmentSums sums) {
        List<AskedSum> all = new ArrayList<>();
        sums.rejects().rate().ifPresent(rate -> all.add(rate.asked()));
        for (Track track : sums.tracks()) {
            track.mean().ifPresent(mean -> all.add(mean.asked()));
            track.drift().asked().ifPresent(all::add);
            track.limits().ifPresent(limits -> all.add(limits.asked()));
            track.capability().asked().ifPresent(all::add);
        }
        return all;
    }

    private static String keys(SumInput given) {
        return given.values().entrySet().stream()
                .map(entry -> "\"" + entry.getKey() + "\":" + json(entry.getValue()))
                .collect(Collectors.joining(","));
    }

    private static String json(SumValue value) {
        return value instanceof SumValue.Many many
                ? many.values().stream().map(AskedInBatch::json).collect(Collectors.joining(",", "[", "]"))
                : "\"" + text(value) + "\"";
    }

    static String text(SumValue value) {
        return value instanceof SumValue.Text text ? text.text() : String.valueOf(value);
    }

    static List<String> texts(SumValue value) {
        return value instanceof SumValue.Many many
                ? many.values().stream().map(AskedInBatch::text).toList()
                : Stream.of(value).map(AskedInBatch::text).toList();
    }

    private static Map<String, SumValue> answer(String line) throws Exception {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        new Batch(Handbook.sums()).run(new ByteArrayInputStream(line.getBytes(UTF_8)), out);
        WrittenObject answer = new WrittenObject(out.toString(UTF_8).strip());
        Map<String, SumValue> keys = new LinkedHashMap<>();
        for (var key = answer.nextKey(); key.isPresent(); key = answer.nextKey()) {
            SumValue value = answer.value();
            if (key.get().equals("result") && value instanceof SumValue.Fields fields) {
                keys.putAll(fields.values());
            } else {
                keys.put(key.get(), value);
            }
        }
        return keys;
    }
}
