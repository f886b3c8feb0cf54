package org.tenthwise.app.picture;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.tenthwise.app.text.Figures;
import org.tenthwise.app.text.StepFigures;
import org.tenthwise.app.text.Words;
import org.tenthwise.model.plan.Check;
import org.tenthwise.model.plan.Feature;
import org.tenthwise.model.plan.Slot;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.record.Finding;
import org.tenthwise.model.record.Line;
import org.tenthwise.model.record.Measured;
import org.tenthwise.model.record.WiresFinding;

/** Turns what was found over wires into its picture. */
final class WiresFound {

    /** Wires are certified to a micrometre, or to a hundred-thousandth of an inch. */
    private static final int WIRE_PLACES_MM = 3;
    private static final int WIRE_PLACES_INCH = 5;

    private final Words words;

    WiresFound(Words words) {
        this.words = words;
    }

    WirePicture picture(Line line, WiresFinding finding, String spoken) {
        StepFigures figures = StepFigures.of(finding);
        Check.OverWires check = finding.check();
        Optional<Measured> shown = finding.deciding().or(() -> finding.measured().stream().findFirst());
        return new WirePicture(strip(line, finding, figures, spoken), check.thread(),
                finding.bottoms() ? check.thread().basicPitchDiameter()
                        : finding.value().orElseGet(check.thread()::basicPitchDiameter),
                finding.value().map(size -> sized(size, figures)), minor(finding),
                finding.wire().map(wire -> new WirePicture.Wire(wire, shown.map(reading -> new SizePicture.Sized(reading.raw(),
                        Figures.written(reading.reading().typed()))), finding.bottoms())),
                notes(finding, figures), spoken);
    }

    private static SizePicture.Sized sized(Length size, StepFigures figures) {
        return new SizePicture.Sized(size, figures.size(size));
    }

    /** The root that the sum reckoned with: from the least room between wire and root, which the least reading leaves. */
    private static Optional<Length> minor(WiresFinding finding) {
        Optional<Length> reckoned = finding.rootClearance().flatMap(room -> finding.wire().flatMap(wire -> finding.measured().stream()
                .map(Measured::raw).min(Length::compareTo)
                .map(over -> over.minus(wire).minus(wire).minus(room).minus(room))));
        return reckoned.or(() -> finding.check().minorDiameter().map(minor -> minor.length()));
    }

    private SizePicture strip(Line line, WiresFinding finding, StepFigures figures, String spoken) {
        Check.OverWires check = finding.check();
        return new SizePicture(Feature.DIAMETER, figures.unit(), check.pitchDiameter().lower().map(SizeFound::written),
                check.pitchDiameter().upper().map(SizeFound::written), check.guardBand().length(), columns(line, finding, figures),
                finding.value().map(size -> sized(size, figures)),
                finding.verdict().margin().map(margin -> new SizePicture.Distance(margin.distance(), margin.limit(),
                        figures.plain(margin.distance()))),
                finding.next().map(next -> new SizePicture.Stock(sized(next.aim(), figures), next.stockLeft(),
                        figures.amount(next.stockLeft()), "")),
                Optional.empty(), new SizePicture.Said(check.cutAgain() ? words.say("picture.still-to-cut") : "",
                        check.cutAgain() ? words.say("picture.past-size") : "", words.say("picture.stock-left"),
                        step -> words.say("picture.scale", step)), spoken);
    }

    private List<SizePicture.Column> columns(Line line, WiresFinding finding, StepFigures figures) {
        List<SizePicture.Column> columns = new ArrayList<>();
        for (Finding earlier : line.earlier()) {
            if (earlier instanceof WiresFinding cut) {
                cut.value().ifPresent(size -> columns.add(column(SizePicture.Kind.EARLIER, String.valueOf(columns.size() + 1),
                        words.say("picture.before"), Optional.of(sized(size, figures)), false)));
            }
        }
        Map<String, Measured> measured = new HashMap<>();
        finding.measured().forEach(reading -> measured.put(reading.slot().key(), reading));
        int number = 1;
        for (Slot slot : finding.check().slots()) {
            Optional<Measured> reading = Optional.ofNullable(measured.get(slot.key()));
            columns.add(column(reading.isPresent() ? SizePicture.Kind.TAKEN : SizePicture.Kind.MISSING, String.valueOf(number++), "",
                    reading.map(read -> sized(read.value(), figures)), reading.isPresent() && reading.equals(finding.deciding())));
        }
        return columns;
    }

    private static SizePicture.Column column(SizePicture.Kind kind, String label, String group, Optional<SizePicture.Sized> size,
                                             boolean decides) {
        return new SizePicture.Column(kind, label, group, size, decides, Optional.empty(), Optional.empty());
    }

    private List<String> notes(WiresFinding finding, StepFigures figures) {
        List<String> notes = new ArrayList<>();
        int places = figures.unit() == Unit.MILLIMETRE ? WIRE_PLACES_MM : WIRE_PLACES_INCH;
        finding.wire().ifPresent(wire -> notes.add(words.say("picture.wires", Figures.plain(wire, figures.unit(), places))));
        notes.add(words.say("picture.best-wire", Figures.plain(finding.sizes().best(), figures.unit(), places)));
        if (finding.bottoms()) {
            notes.add(0, words.say("picture.wire-bottoms"));
        }
        return notes;
    }
}
