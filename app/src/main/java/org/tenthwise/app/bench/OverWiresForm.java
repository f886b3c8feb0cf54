package org.tenthwise.app.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.tenthwise.app.picture.Picture;
import org.tenthwise.app.picture.WirePicture;
import org.tenthwise.app.sums.SumResult;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Nanometres;
import org.tenthwise.model.thread.ScrewThread;

/** From the reading over wires to the pitch diameter, or back. */
final class OverWiresForm implements BenchForm {

    private static final String BY = "wires_by";
    private static final String READ = "over_wires";
    private static final String PITCH_DIAMETER = "pitch_diameter";
    private static final String MINOR = "minor_diameter";
    private static final String WIRE = "wire";

    @Override
    public BenchKind kind() {
        return BenchKind.WIRES;
    }

    @Override
    public String sum() {
        return "over-wires";
    }

    @Override
    public List<FormField> asks(FormValues filled) {
        return List.of(
                FormField.choice(BY, READ, PITCH_DIAMETER).aside(),
                ThreadFields.form(filled.unit()),
                FormField.length(ThreadFields.DIAMETER),
                ThreadFields.pitchBy(filled.unit()),
                ThreadFields.pitch(filled),
                FormField.length(WIRE),
                FormField.length(filled.is(BY, PITCH_DIAMETER) ? PITCH_DIAMETER : READ),
                ThreadFields.starts(),
                FormField.length(MINOR).optional());
    }

    @Override
    public List<String> first(FormValues filled) {
        return filled.is(BY, PITCH_DIAMETER) ? List.of(READ, "best_wire") : List.of(PITCH_DIAMETER, "best_wire");
    }

    @Override
    public String formula(FormValues filled) {
        return filled.is(BY, PITCH_DIAMETER) ? "back" : "all";
    }

    @Override
    public Optional<Picture> picture(FormValues filled, SumResult answer, AnswerFormat said) {
        return ThreadFields.thread(filled).flatMap(thread -> filled.length(WIRE)
                .flatMap(wire -> said.length(answer, PITCH_DIAMETER).flatMap(pitch -> said.length(answer, READ)
                        .map(over -> drawn(filled, answer, said, thread, wire, pitch, over)))));
    }

    private static Picture drawn(
            FormValues filled,
            SumResult answer,
            AnswerFormat said,
            ScrewThread thread,
            Length wire,
            Length pitch,
            Length over) {
        Length minor = filled.length(MINOR)
                .orElseGet(() -> Nanometres.round(Nanometres.of(thread.diameter())
                        - 2 * thread.form().basicRootDepth() * Nanometres.of(thread.pitch())));
        boolean bottoms = said.length(answer, "root_clearance")
                .filter(room -> room.signum() <= 0)
                .isPresent();
        List<String> notes = new ArrayList<>(List.of(said.words().say("picture.wires", said.length(wire))));
        said.length(answer, "best_wire")
                .ifPresent(best -> notes.add(said.words().say("picture.best-wire", said.length(best))));
        return new WirePicture(
                thread,
                pitch,
                minor,
                new WirePicture.Wire(wire, true),
                Optional.of(new WirePicture.Shown(
                        said.words().say("bench.true-to-scale"), said.length(over), Optional.of(said.length(pitch)))),
                bottoms ? Optional.of(said.words().say("picture.wire-bottoms")) : Optional.empty(),
                notes,
                Optional.empty(),
                said.words().say("bench.picture.wires", said.length(over), said.length(pitch)));
    }
}
