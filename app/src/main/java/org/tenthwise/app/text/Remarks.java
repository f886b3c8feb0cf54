package org.tenthwise.app.text;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.tenthwise.model.compute.form.WallShape;
import org.tenthwise.model.plan.Check;
import org.tenthwise.model.plan.Combine;
import org.tenthwise.model.plan.Feature;
import org.tenthwise.model.quantity.Degrees;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.record.Finding;
import org.tenthwise.model.record.Measured;
import org.tenthwise.model.record.Plausible;
import org.tenthwise.model.record.PlugFinding;
import org.tenthwise.model.record.RunOutFinding;
import org.tenthwise.model.record.SizeFinding;
import org.tenthwise.model.record.TemperatureEffect;
import org.tenthwise.model.record.WiresFinding;
import org.tenthwise.model.words.Words;

/**
 * What else there is to say about a finding: how the readings were combined, the form they show, what contradicts what.
 */
public final class Remarks {

    private final Words words;
    private final Sentences sentences;
    private final Heat heat;
    private final RunOutRemarks runOuts;
    private final TouchWords touch;

    public Remarks(Words words) {
        this.words = words;
        this.sentences = new Sentences(words);
        this.heat = new Heat(words);
        this.runOuts = new RunOutRemarks(words);
        this.touch = new TouchWords(words);
    }

    /** Short sentences, the weightiest first. */
    public List<String> of(Finding finding) {
        return Stream.concat(first(finding), said(finding).stream()).toList();
    }

    private Stream<String> first(Finding finding) {
        return Stream.of(
                        farOff(finding),
                        Stream.of(touch.beforeACut(finding)).filter(sentence -> !sentence.isEmpty()),
                        gauges(finding))
                .flatMap(said -> said);
    }

    /** Sizes of two gauges differ by more than the work does: what looks like a taper may be one of them. */
    private Stream<String> gauges(Finding finding) {
        List<String> marks = finding.step().check() instanceof Check.OfSize
                ? StepFigures.measured(finding).stream()
                        .flatMap(measured -> measured.reading().setting().stream())
                        .map(setting -> setting.gauge().id())
                        .distinct()
                        .toList()
                : List.of();
        return marks.size() < 2 ? Stream.empty() : Stream.of(words.say("size.gauges", String.join(", ", marks)));
    }

    /** Why nothing is advised: the first figure that cannot well be. */
    private Stream<String> farOff(Finding finding) {
        Stream<String> read = Plausible.farOff(finding).stream()
                .map(measured -> Figures.read(
                        measured.reading().typed(), StepFigures.of(finding).unit()));
        Stream<String> temperatures =
                Plausible.farOffTemperatures(finding).stream().map(Degrees::toString);
        return Stream.concat(read, temperatures).limit(1).map(figure -> words.say("far-off", figure));
    }

    private List<String> said(Finding finding) {
        String said = heat.of(finding);
        if (said.isEmpty()) {
            return others(finding);
        }
        boolean weighty = finding.warmth().filter(TemperatureEffect::needed).isPresent();
        return Stream.of(
                        weighty ? List.of(said) : List.<String>of(),
                        others(finding),
                        weighty ? List.<String>of() : List.of(said))
                .flatMap(List::stream)
                .toList();
    }

    /** The same where room is short: that temperature does not matter is not said any more once something is read. */
    public List<String> inShort(Finding finding) {
        boolean matters = finding.warmth()
                .filter(warmth -> !warmth.matters() && !warmth.needed())
                .isEmpty();
        return matters || StepFigures.measured(finding).isEmpty()
                ? of(finding)
                : Stream.concat(first(finding), others(finding).stream()).toList();
    }

    private List<String> others(Finding finding) {
        if (finding instanceof RunOutFinding runOut) {
            return runOuts.of(runOut);
        }
        if (finding instanceof SizeFinding size) {
            return of(size);
        }
        if (finding instanceof PlugFinding plug) {
            return plug.contradiction()
                    .map(c -> List.of(words.say("contradiction", c)))
                    .orElse(List.of());
        }
        return finding instanceof WiresFinding wires ? of(wires) : List.of();
    }

    private List<String> of(SizeFinding finding) {
        List<String> said = new ArrayList<>();
        StepFigures figures = StepFigures.of(finding);
        Stream.of(touch.of(finding)).filter(sentence -> !sentence.isEmpty()).forEach(said::add);
        together(finding.check(), finding.measured(), said);
        past(finding.past(), figures, said);
        if (finding.check().combine() != Combine.RANGE) {
            wall(finding, figures, said);
        }
        guardBand(finding.check().guardBand(), said);
        return said;
    }

    /** Every reading that is asked for has to be inside; any other way what was read so far makes the size. */
    private void together(Check.OfSize check, List<Measured> read, List<String> said) {
        if (read.size() > 1) {
            said.add(words.say(
                    words.key("combined", check.combine()),
                    check.combine() == Combine.EACH ? check.slots().size() : read.size(),
                    ModifierWords.behind(check)));
        }
    }

    private void past(Optional<Measured> past, StepFigures figures, List<String> said) {
        past.ifPresent(place -> said.add(words.say(
                "size.past", figures.size(place.value()), place.slot().place().name())));
    }

    private void wall(SizeFinding finding, StepFigures figures, List<String> said) {
        finding.form()
                .shape()
                .filter(shape -> shape != WallShape.EVEN)
                .ifPresent(shape -> said.add(words.say(
                        words.key(finding.check().feature() == Feature.DIAMETER ? "shape.outside" : "shape", shape),
                        figures.withUnit(finding.form().taper().map(Length::abs).orElse(Length.ZERO)))));
        String uneven =
                finding.check().feature() != Feature.DEPTH && ways(finding) == 2 ? "form.two-ways" : "form.going-round";
        finding.form()
                .outOfRound()
                .filter(round -> round.signum() > 0)
                .ifPresent(round -> said.add(words.say(uneven, figures.withUnit(round))));
    }

    /** How many ways across a wall was measured. */
    private static long ways(SizeFinding finding) {
        return finding.measured().stream()
                .flatMap(measured -> measured.slot().place().angle().stream())
                .distinct()
                .count();
    }

    private List<String> of(WiresFinding finding) {
        List<String> said = new ArrayList<>();
        StepFigures figures = StepFigures.of(finding);
        if (finding.rootCutSince() && !finding.rootStale()) {
            finding.check().minorStep().ifPresent(step -> said.add(words.say("wires.root-before-cut", step)));
        }
        String root = sentences.rootClearance(finding);
        if (!root.isEmpty()) {
            said.add(root);
        }
        past(finding.past(), figures, said);
        together(finding.check(), finding.measured(), said);
        shown(finding)
                .ifPresent(reading -> said.add(words.say(
                        "wires.formulas",
                        figures.size(reading.measured().value()),
                        figures.size(reading.simple()),
                        figures.size(reading.corrected()))));
        guardBand(finding.check().guardBand(), said);
        return said;
    }

    /** The reading that decides, otherwise the first. */
    private static Optional<WiresFinding.OverWiresReading> shown(WiresFinding finding) {
        return finding.readings().stream()
                .filter(reading ->
                        finding.deciding().map(reading.measured()::equals).orElse(true))
                .findFirst();
    }

    private void guardBand(Written band, List<String> said) {
        if (band.length().signum() > 0) {
            said.add(words.say(
                    "form.guard-band", Figures.written(band) + " " + band.unit().symbol()));
        }
    }
}
