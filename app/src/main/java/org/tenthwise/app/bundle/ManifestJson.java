package org.tenthwise.app.bundle;

import static java.nio.charset.StandardCharsets.UTF_8;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.tenthwise.app.store.RunHead;

/** A manifest as JSON. What is read must be, byte for byte, what would be written of it. */
final class ManifestJson {

    static final String FORMAT = "tenthwise-bundle-1";

    private static final JsonMapper JSON = JsonMapper.builder()
            .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
            .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
            .build();

    private ManifestJson() {}

    static String write(Manifest manifest) {
        ObjectNode to = JsonNodeFactory.instance.objectNode();
        to.put("format", FORMAT);
        to.put("tool", manifest.tool());
        to.put("language", manifest.language());
        to.putObject("station").put("fingerprint", manifest.station());
        to.putObject("store").put("first", manifest.origin());
        ObjectNode of = to.putObject("of");
        manifest.of().run().ifPresent(run -> of.put("run", run));
        manifest.of().part().ifPresent(part -> of.put("part", part));
        manifest.of().from().ifPresent(day -> of.put("from", day.toString()));
        manifest.of().to().ifPresent(day -> of.put("to", day.toString()));
        ArrayNode runs = to.putArray("runs");
        manifest.runs().forEach(run -> runs.addObject()
                .put("run", run.run())
                .put("folder", run.folder())
                .put("entries", run.head().place())
                .put("last", run.head().seq())
                .put("hash", run.head().hash()));
        ArrayNode files = to.putArray("files");
        manifest.files().forEach(file -> files.addObject()
                .put("name", file.name())
                .put("bytes", file.bytes())
                .put("sha256", file.sha256()));
        DefaultPrettyPrinter printer = new DefaultPrettyPrinter();
        DefaultIndenter lines = new DefaultIndenter("  ", "\n");
        printer.indentObjectsWith(lines);
        printer.indentArraysWith(lines);
        try {
            return JSON.writer(printer).writeValueAsString(to) + "\n";
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("A tree of text and whole numbers can be written", e);
        }
    }

    static Manifest read(byte[] text) throws NotABundle {
        try {
            JsonNode from = JSON.readTree(text);
            if (from.path("format").isTextual()
                    && !from.path("format").textValue().equals(FORMAT)) {
                throw NotABundle.because(
                        "bundle.another-form", from.path("format").textValue());
            }
            List<Manifest.OfRun> runs = new ArrayList<>();
            for (JsonNode run : from.path("runs")) {
                runs.add(new Manifest.OfRun(
                        run.path("run").asText(),
                        new RunHead(
                                run.path("entries").asLong(),
                                run.path("last").asLong(),
                                run.path("hash").asText())));
            }
            List<Manifest.OfFile> files = new ArrayList<>();
            for (JsonNode file : from.path("files")) {
                files.add(new Manifest.OfFile(
                        file.path("name").asText(),
                        file.path("bytes").asLong(),
                        file.path("sha256").asText()));
            }
            Manifest manifest = new Manifest(
                    from.path("tool").asText(),
                    from.path("language").asText(),
                    from.path("station").path("fingerprint").asText(),
                    from.path("store").path("first").asText(),
                    scope(from.path("of")),
                    runs,
                    files);
            if (Arrays.equals(write(manifest).getBytes(UTF_8), text)) {
                return manifest;
            }
        } catch (IOException | DateTimeException | IndexOutOfBoundsException e) {
            // said below: it is no manifest
        }
        throw NotABundle.because("bundle.manifest");
    }

    private static Scope scope(JsonNode of) {
        return new Scope(text(of, "run"), text(of, "part"), day(of, "from"), day(of, "to"));
    }

    private static Optional<String> text(JsonNode of, String key) {
        return Optional.of(of.path(key)).filter(JsonNode::isTextual).map(JsonNode::textValue);
    }

    private static Optional<LocalDate> day(JsonNode of, String key) {
        return text(of, key).map(LocalDate::parse);
    }
}
