package org.tenthwise.app.picture;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.tenthwise.app.text.Figures;
import org.tenthwise.app.text.StepFigures;
import org.tenthwise.model.compute.thread.MeasurementOverWires;
import org.tenthwise.model.gauge.Setting;
import org.tenthwise.model.plan.OverWiresCheck;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Nanometres;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.record.Line;
import org.tenthwise.model.record.Measured;
import org.tenthwise.model.record.OverWiresFinding;
import org.tenthwise.model.run.Pass;
import org.tenthwise.model.thread.ScrewThread;
import org.tenthwise.model.tolerance.Limits;
import org.tenthwise.model.words.Words;

/** Turns what was found about a thread over wires into its picture. */
final class OverWiresPictureFactory {

    /** Places of a pitch that does not come out. */
    private static final int PITCH_PLACES = 5;
    /** Wires are certified to a micrometre, or to a hundred-thousandth of an inch. */
    private static final int WIRE_PLACES_MM = 3;

    private static final int WIRE_PLACES_INCH = 5;
    private static final BigDecimal TWICE = BigDecimal.valueOf(2);

    private final Words words;

    OverWiresPictureFactory(Words words) {
        this.words = words;
    }

    WirePicture picture(Line line, OverWiresFinding finding, boolean advised, String spoken) {
        StepFigures figures = StepFigures.of(finding);
        ScrewThread thread = finding.check().thread();
        Optional<Measured> shown =
                finding.deciding().or(() -> finding.measured().stream().reduce((earlier, later) -> later));
        return new WirePicture(
                thread,
                drawn(finding, shown),
                minor(finding),
                new WirePicture.Wire(
                        finding.wire().orElse(finding.sizes().best()),
                        finding.wire().isPresent()),
                shown.map(reading -> new WirePicture.Shown(
                        reading.slot().place().name(),
                        words.say(
                                "picture.true-to-scale", reading.slot().place().name()),
                        Figures.read(reading.reading().typed(), figures.unit()),
                        finding.bottoms() ? Optional.empty() : Optional.of(figures.size(reading)))),
                finding.bottoms() ? Optional.of(words.say("picture.wire-bottoms")) : Optional.empty(),
                notes(finding, figures),
                Optional.of(strip(line, finding, advised, figures)),
                spoken);
    }

    /**
     * Under a wire on the root nothing is known of the pitch diameter but that it is less: drawn is the least allowed.
     */
    private static Length drawn(OverWiresFinding finding, Optional<Measured> shown) {
        Limits allowed = finding.check().pitchDiameter();
        Length least = allowed.lower().or(allowed::upper).orElseThrow().length();
        return shown.map(reading -> finding.bottoms() ? Length.least(List.of(reading.value(), least)) : reading.value())
                .orElseGet(allowed::middle);
    }

    /**
     * The minor diameter the room at the root was taken from; without readings, or where none is known, the plan's or
     * the basic one.
     */
    private static Length minor(OverWiresFinding finding) {
        Optional<Length> atRoot = finding.measured().stream()
                .map(measured ->
                        measured.raw().minus(certified(measured.reading()).times(TWICE)))
                .min(Comparator.naturalOrder());
        return finding.rootClearance()
                .flatMap(room -> atRoot.map(least -> least.minus(room.times(TWICE))))
                .or(() -> finding.check().minorDiameter().map(Written::length))
                .orElseGet(() -> basicMinor(finding.check().thread()));
    }

    private static Length basicMinor(ScrewThread thread) {
        return Nanometres.round(
                Nanometres.of(thread.diameter()) - 2 * thread.form().basicRootDepth() * Nanometres.of(thread.pitch()));
    }

    private static Length certified(Pass.Reading reading) {
        return reading.setting().flatMap(Setting::certified).orElseThrow().length();
    }

    private List<String> notes(OverWiresFinding finding, StepFigures figures) {
        List<String> notes = new ArrayList<>();
        int places = figures.unit() == Unit.MILLIMETRE ? WIRE_PLACES_MM : WIRE_PLACES_INCH;
        notes.add(finding.wire()
                .map(wire -> words.say("picture.wires", Figures.plain(wire, figures.unit(), places)))
                .orElseGet(() -> words.say("picture.no-wires")));
        notes.add(words.say("picture.best-wire", Figures.plain(finding.sizes().best(), figures.unit(), places)));
        ScrewThread thread = finding.check().thread();
        notes.add(words.say(
                "picture.pitch",
                Figures.number(thread.pitch()
                        .in(figures.unit())
                        .setScale(PITCH_PLACES, RoundingMode.HALF_UP)
                        .stripTrailingZeros())));
        notes.add(words.say(
                "picture.flank",
                Figures.number(
                        BigDecimal.valueOf(thread.form().halfAngleDegrees()).stripTrailingZeros())));
        return notes;
    }

    private SizePicture strip(Line line, OverWiresFinding finding, boolean advised, StepFigures figures) {
        OverWiresCheck check = finding.check();
        ColumnsPictureFactory found = new ColumnsPictureFactory(words, figures);
        List<SizePicture.ReadingColumn> columns = new ArrayList<>(found.earlier(line));
        columns.addAll(found.slots(
                line,
                finding.deciding(),
                (reading, slot) -> new Measured(
                        reading,
                        slot,
                        new MeasurementOverWires(check.thread(), certified(reading))
                                .pitchDiameter(reading.typed().length()))));
        return new SizePictureFactory(words)
                .picture(check, line, figures, columns, advised, SizePicture.Beside.CUT_OPEN, "");
    }
}
