package org.tenthwise.app.store;

import static org.tenthwise.model.gauge.GaugeKind.Reference.MASTER;
import static org.tenthwise.model.gauge.GaugeKind.Reference.NONE;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.tenthwise.model.gauge.Calibration;
import org.tenthwise.model.gauge.Gauge;
import org.tenthwise.model.gauge.GaugeKind;
import org.tenthwise.model.gauge.ReadingDirection;
import org.tenthwise.model.gauge.Setting;
import org.tenthwise.model.plan.PartId;
import org.tenthwise.model.plan.PlanSource;
import org.tenthwise.model.quantity.Degrees;
import org.tenthwise.model.quantity.QuantityKind;
import org.tenthwise.model.quantity.TemperatureScale;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.run.Document;
import org.tenthwise.model.words.Message;
import org.tenthwise.model.words.Word;

/** What events are made of, as JSON objects: sizes, gauges, settings, parts. */
final class EventJson {

    /** What it takes to read a figure in degrees, or of a gauge that reads them. */
    static final int FORMAT_OF_ANGLES = 4;

    /** What it takes to read a figure of a scale. */
    static final int FORMAT_OF_SCALES = 7;

    private static final String UNIT = "unit";
    private static final String SCALE = "scale";

    /** What it takes to read a gauge of any other kind than there were before. */
    static final int FORMAT_OF_GAUGES = 7;

    private static final Set<String> FIRST_GAUGES = Set.of(
            "dial-indicator",
            "lever-indicator",
            "bore-gauge",
            "inside-micrometer",
            "micrometer",
            "caliper",
            "depth-gauge",
            "depth-micrometer",
            "gauge-blocks",
            "micrometer-over-wires",
            "limit-gauge");
    private static final Set<String> GAUGES_OF_ANGLES = Set.of("bevel-protractor", "sine-bar");

    private EventJson() {}

    static int format(Written written) {
        return format(written.unit().kind());
    }

    private static int format(QuantityKind of) {
        return of.isScale() ? FORMAT_OF_SCALES : of.equals(QuantityKind.ANGLE) ? FORMAT_OF_ANGLES : 1;
    }

    static int format(Gauge gauge) {
        if (FIRST_GAUGES.contains(gauge.kind().key())) {
            return 1;
        }
        return GAUGES_OF_ANGLES.contains(gauge.kind().key()) ? FORMAT_OF_ANGLES : FORMAT_OF_GAUGES;
    }

    static void write(Written written, ObjectNode to) {
        to.put("figure", written.text());
        to.put(written.unit().isOfScale() ? SCALE : UNIT, written.unit().symbol());
    }

    static Written written(JsonFields from) throws UnreadableEntry {
        String figure = from.text("figure");
        Optional<String> scale = from.textIfAny(SCALE);
        Unit unit = scale.isPresent() ? Unit.named(scale.get()) : unit(from.text(UNIT));
        from.end();
        return new Written(figure, unit);
    }

    private static Unit unit(String symbol) throws UnreadableEntry {
        return Unit.ofSymbol(symbol).orElseThrow(() -> new UnreadableEntry(Message.of("entry.no-unit", symbol)));
    }

    static void write(Document document, ObjectNode to) {
        if (!document.number().isEmpty()) {
            to.put("number", document.number());
        }
        to.put("dated", document.dated().toString())
                .put("says", Word.of(document.says()))
                .put("by", document.by());
        if (!document.figures().isEmpty()) {
            ArrayNode figures = to.putArray("figures");
            document.figures().forEach(figure -> write(figure, figures.addObject()));
        }
    }

    static Document document(JsonFields from) throws UnreadableEntry {
        List<Written> figures = new ArrayList<>();
        for (JsonFields figure : from.objectsIfAny("figures")) {
            figures.add(written(figure));
        }
        return new Document(
                from.textIfAny("number").orElse(""),
                day(from.text("dated")),
                from.word("says", Document.Says.class),
                from.text("by"),
                figures);
    }

    private static LocalDate day(String text) throws UnreadableEntry {
        try {
            return LocalDate.parse(text);
        } catch (DateTimeParseException e) {
            throw new UnreadableEntry(Message.of("entry.no-day", text), e);
        }
    }

    static void write(Degrees read, ObjectNode to) {
        to.put(Word.of(read.scale()), read.text());
    }

    /** Entries of the first releases are all in °C. */
    static Degrees degrees(JsonFields from) throws UnreadableEntry {
        Optional<String> fahrenheit = from.textIfAny(Word.of(TemperatureScale.FAHRENHEIT));
        return fahrenheit.isPresent()
                ? degrees(fahrenheit.get(), TemperatureScale.FAHRENHEIT)
                : degrees(from.text(Word.of(TemperatureScale.CELSIUS)), TemperatureScale.CELSIUS);
    }

    private static Degrees degrees(String figure, TemperatureScale scale) throws UnreadableEntry {
        if (!Written.isPlainDecimal(figure)) {
            throw new UnreadableEntry(Message.of("entry.no-temperature", figure));
        }
        return Degrees.of(figure, scale);
    }

    static void write(Gauge gauge, ObjectNode to) {
        to.put("id", gauge.id());
        to.put("kind", gauge.kind().key());
        gauge.sense().ifPresent(sense -> to.put("sense", Word.of(sense)));
    }

    static Gauge gauge(JsonFields from) throws UnreadableEntry {
        String id = from.text("id");
        String key = from.text("kind");
        Optional<ReadingDirection> sense = from.wordIfAny("sense", ReadingDirection.class);
        from.end();
        return new Gauge(id, gaugeKind(key, sense), sense);
    }

    /** One that is not known everywhere is a shop's own: what has a direction is set on a master. */
    private static GaugeKind gaugeKind(String key, Optional<ReadingDirection> sense) {
        return GaugeKind.ofKey(key).orElseGet(() -> new GaugeKind(key, sense.isPresent() ? MASTER : NONE));
    }

    static void write(Calibration calibration, ObjectNode to) {
        if (!calibration.certificate().isEmpty()) {
            to.put("certificate", calibration.certificate());
        }
        calibration.due().ifPresent(due -> to.put("due", due.toString()));
    }

    static Calibration calibration(JsonFields from) throws UnreadableEntry {
        String certificate = from.textIfAny("certificate").orElse("");
        Optional<String> due = from.textIfAny("due");
        return new Calibration(certificate, due.isPresent() ? Optional.of(day(due.get())) : Optional.empty());
    }

    static void write(Setting setting, ObjectNode to) {
        write(setting.gauge(), to.putObject("gauge"));
        setting.reference().ifPresent(reference -> to.put("reference", reference));
        setting.certified().ifPresent(certified -> write(certified, to.putObject("certified")));
        setting.zero().ifPresent(zero -> write(zero, to.putObject("zero")));
    }

    static Setting setting(JsonFields from) throws UnreadableEntry {
        Gauge gauge = gauge(from.object("gauge"));
        Optional<String> reference = from.textIfAny("reference");
        Optional<Written> certified = writtenIfAny(from.objectIfAny("certified"));
        Optional<Written> zero = writtenIfAny(from.objectIfAny("zero"));
        from.end();
        return new Setting(gauge, reference, certified, zero);
    }

    static void write(PartId part, ObjectNode to) {
        to.put("number", part.number());
        to.put("revision", part.revision());
    }

    static PartId part(JsonFields from) throws UnreadableEntry {
        PartId part = new PartId(from.text("number"), from.text("revision"));
        from.end();
        return part;
    }

    static void write(PlanSource plan, ObjectNode to) {
        to.put("text", plan.text());
        to.put("sha256", plan.sha256());
    }

    static PlanSource plan(JsonFields from) throws UnreadableEntry {
        PlanSource plan = new PlanSource(from.text("text"), from.text("sha256"));
        from.end();
        return plan;
    }

    private static Optional<Written> writtenIfAny(Optional<JsonFields> from) throws UnreadableEntry {
        return from.isPresent() ? Optional.of(written(from.get())) : Optional.empty();
    }
}
