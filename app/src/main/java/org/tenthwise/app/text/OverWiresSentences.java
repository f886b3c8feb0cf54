package org.tenthwise.app.text;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.record.OverWiresFinding;
import org.tenthwise.model.words.Words;

/** What is said of a thread over wires: whether they lie on the root goes before what was read over them. */
final class OverWiresSentences extends OfSizeSentences {

    private final OverWiresFinding finding;

    OverWiresSentences(OverWiresFinding finding, Words words) {
        super(finding, words);
        this.finding = finding;
    }

    @Override
    String distance() {
        return finding.mayLieOnRoot() ? rootClearance() : super.distance();
    }

    @Override
    String doubts() {
        return finding.mayLieOnRoot() ? rootClearance() : "";
    }

    /** The room between wire and root, or how far short of it; where the plan gives no root, that it cannot be told. */
    private String rootClearance() {
        if (finding.basicClearance().isPresent()) {
            return words.say(finding.mayBottom() ? "wires.may-bottom" : "wires.root-unknown");
        }
        return finding.rootClearance()
                .map((Length room) -> words.say(
                        room.signum() == 0 ? "wires.on-root" : finding.bottoms() ? "wires.bottoms" : "wires.root-room",
                        StepFigures.of(finding).withUnit(room.abs())))
                .orElse("");
    }

    @Override
    List<Weighed> remarks() {
        List<Weighed> said = new ArrayList<>();
        StepFigures figures = StepFigures.of(finding);
        if (finding.rootCutSince() && !finding.rootStale()) {
            finding.check()
                    .minorStep()
                    .ifPresent(step -> said.add(Weighed.stays(words.say("wires.root-before-cut", step))));
        }
        String root = rootClearance();
        if (!root.isEmpty()) {
            said.add(
                    finding.mayLieOnRoot() || finding.basicClearance().isPresent()
                            ? Weighed.stays(root)
                            : Weighed.how(root));
        }
        past(finding.past(), figures, said);
        together(finding.check(), finding.measured(), said);
        shown().ifPresent(reading -> said.add(Weighed.how(words.say(
                "wires.formulas",
                figures.size(reading.measured()),
                figures.like(reading.measured()).size(reading.simple()),
                figures.like(reading.measured()).size(reading.corrected())))));
        guardBand(finding.check().guardBand(), said);
        return said;
    }

    /** The reading that decides, otherwise the first. */
    private Optional<OverWiresFinding.OverWiresReading> shown() {
        return finding.readings().stream()
                .filter(reading ->
                        finding.deciding().map(reading.measured()::equals).orElse(true))
                .findFirst();
    }

    @Override
    Optional<String> unproven() {
        return finding.mayLieOnRoot() ? Optional.of(largerWires()) : Optional.empty();
    }

    /**
     * A larger wire lies higher in the groove: the least that clears the root. Where the one in hand is as large, no
     * other helps: what was read over it or of the root is wrong, or the thread is under size.
     */
    private String largerWires() {
        boolean largeEnough = finding.clearingWire()
                .filter(least ->
                        finding.wire().filter(wire -> !wire.isBelow(least)).isPresent())
                .isPresent();
        if (finding.bottoms() && largeEnough) {
            return words.say("next.root-anew");
        }
        StepFigures figures = StepFigures.of(finding);
        String how = finding.bottoms() ? "next.larger-wires" : "next.measure-root";
        return finding.clearingWire()
                .map(least -> words.say(
                        how,
                        figures.withUnit(least),
                        figures.withUnit(finding.sizes().greatest())))
                .orElseGet(() -> words.say(how + ".none"));
    }

    /** The root or the groove lets nothing come off the flanks. */
    @Override
    Optional<String> againstACut() {
        return againstTheRoot().or(() -> finding.grooveOver().map(step -> words.say("next.cut.groove-over", step)));
    }

    private Optional<String> againstTheRoot() {
        Optional<String> under = finding.rootUnder().map(StepFigures.of(finding)::withUnit);
        return finding.rootStale()
                ? finding.check().minorStep().map(step -> under.map(
                                by -> words.say("next.cut.root-under-by-cuts", by, step))
                        .orElseGet(() -> words.say("next.cut.root-stale", step)))
                : under.map(by -> words.say("next.cut.root-under", by));
    }

    @Override
    Optional<String> withACut() {
        Stream<String> root = finding.check().minorStep().map(step -> words.say("next.cut.root-again", step)).stream();
        Stream<String> grooves =
                finding.check().cutWith().stream().map(depth -> words.say("next.cut.groove-with", depth));
        String said = Stream.concat(root, grooves).collect(Collectors.joining(" "));
        return Optional.of(said.isEmpty() ? words.say("next.cut.root") : said);
    }
}
