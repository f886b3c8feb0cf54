package org.tenthwise.app.export;

import static java.nio.charset.StandardCharsets.UTF_8;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/** Records as they are written, and as whoever gets them reads them. */
final class ReadBack {

    private ReadBack() {}

    static String text(RecordFormat format, Evidence evidence) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try {
            format.write(evidence, out);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return out.toString(UTF_8);
    }

    /** The table, by its own columns. */
    static List<CSVRecord> rows(Evidence evidence) {
        CSVFormat format = CSVFormat.RFC4180
                .builder()
                .setHeader()
                .setSkipHeaderRecord(true)
                .get();
        try (CSVParser parser = CSVParser.parse(new StringReader(text(new CsvRecord(), evidence)), format)) {
            return parser.getRecords();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The record in JSON, node by node. */
    static JsonNode json(Evidence evidence) {
        return new ObjectMapper().valueToTree(JsonRecord.tree(evidence));
    }

    /** What whoever checks a record in JSON finds. */
    static RecordCheck.Result check(String json) {
        try {
            return new RecordCheck().check(new ByteArrayInputStream(json.getBytes(UTF_8)));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
