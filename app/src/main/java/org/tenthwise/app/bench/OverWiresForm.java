package org.tenthwise.app.bench;

import static org.tenthwise.app.sums.thread.OverWiresSum.OVER_WIRES;
import static org.tenthwise.app.sums.thread.OverWiresSum.OVER_WIRES_FOUND;
import static org.tenthwise.app.sums.thread.OverWiresSum.PITCH_DIAMETER;
import static org.tenthwise.app.sums.thread.OverWiresSum.PITCH_DIAMETER_FOUND;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.tenthwise.app.picture.Picture;
import org.tenthwise.app.picture.Role;
import org.tenthwise.app.picture.WirePicture;
import org.tenthwise.app.sums.Output;
import org.tenthwise.app.sums.SumResult;
import org.tenthwise.app.sums.thread.OverWiresSum;
import org.tenthwise.app.sums.thread.WireInputs;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Nanometres;
import org.tenthwise.model.thread.ScrewThread;

/** From the reading over wires to the pitch diameter, or back. */
final class OverWiresForm implements BenchForm {

    private static final String BY = "wires_by";

    @Override
    public BenchKind kind() {
        return BenchKind.WIRES;
    }

    @Override
    public String sum() {
        return OverWiresSum.NAME;
    }

    /** Three wires in the grooves of a thread. */
    @Override
    public void sign(SignSketch sketch) {
        sketch.thick(Role.LINE, 2, 44, 10, 22, 18, 22, 30, 48, 36, 48, 48, 22, 56, 22, 68, 48, 74, 48, 86, 22, 94, 22);
        sketch.ring(33, 32, 9);
        sketch.ring(71, 32, 9);
    }

    @Override
    public List<FormField> fields(FormValues filled) {
        return List.of(
                FormField.ofTheForm(BY, OVER_WIRES.key(), PITCH_DIAMETER.key()),
                ThreadFields.form(filled.unit()),
                FormField.of(WireInputs.DIAMETER).must().ofADesignation(),
                ThreadFields.pitchBy(filled.unit()),
                ThreadFields.pitch(filled),
                FormField.of(WireInputs.WIRE),
                FormField.of(isBack(filled) ? PITCH_DIAMETER : OVER_WIRES),
                ThreadFields.starts(),
                FormField.of(WireInputs.MINOR_DIAMETER));
    }

    /** From the pitch diameter to the reading. */
    private static boolean isBack(FormValues filled) {
        return filled.is(BY, PITCH_DIAMETER.key());
    }

    @Override
    public List<Output<?>> first(FormValues filled) {
        return List.of(isBack(filled) ? OVER_WIRES_FOUND : PITCH_DIAMETER_FOUND, WireInputs.BEST_WIRE);
    }

    @Override
    public String formula(FormValues filled) {
        return isBack(filled) ? "back" : "all";
    }

    @Override
    public Optional<Picture> picture(FormValues filled, SumResult result, AnswerFormat format) {
        return ThreadFields.thread(filled).flatMap(thread -> filled.length(WireInputs.WIRE)
                .flatMap(wire -> result.find(PITCH_DIAMETER_FOUND).flatMap(pitch -> result.find(OVER_WIRES_FOUND)
                        .map(over -> drawn(filled, result, format, thread, wire, pitch, over)))));
    }

    private static Picture drawn(
            FormValues filled,
            SumResult result,
            AnswerFormat format,
            ScrewThread thread,
            Length wire,
            Length pitch,
            Length over) {
        Length minor = filled.length(WireInputs.MINOR_DIAMETER)
                .orElseGet(() -> Nanometres.round(Nanometres.of(thread.diameter())
                        - 2 * thread.form().basicRootDepth() * Nanometres.of(thread.pitch())));
        boolean bottoms = result.find(WireInputs.ROOT_CLEARANCE)
                .filter(room -> room.signum() <= 0)
                .isPresent();
        List<String> notes = new ArrayList<>(List.of(format.words().say("picture.wires", format.length(wire))));
        result.find(WireInputs.BEST_WIRE)
                .ifPresent(best -> notes.add(format.words().say("picture.best-wire", format.length(best))));
        return new WirePicture(
                thread,
                pitch,
                minor,
                new WirePicture.Wire(wire, true),
                Optional.of(new WirePicture.Shown(
                        "",
                        format.words().say("bench.true-to-scale"),
                        format.length(over),
                        Optional.of(format.length(pitch)))),
                bottoms ? Optional.of(format.words().say("picture.wire-bottoms")) : Optional.empty(),
                notes,
                Optional.empty(),
                format.words().say("bench.picture.wires", format.length(over), format.length(pitch)));
    }
}
