package org.tenthwise.app.text;

import java.util.List;
import java.util.stream.Stream;
import org.tenthwise.model.quantity.Degrees;
import org.tenthwise.model.record.Finding;
import org.tenthwise.model.record.Plausible;
import org.tenthwise.model.record.TemperatureEffect;
import org.tenthwise.model.words.Words;

/**
 * What else there is to say about a finding: how the readings were combined, the form they show, what contradicts what.
 */
public final class Remarks {

    private final Words words;
    private final Heat heat;
    private final TouchWords touch;

    public Remarks(Words words) {
        this.words = words;
        this.heat = new Heat(words);
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
        List<String> marks = finding.check().asDimension().isPresent()
                ? finding.measured().stream()
                        .flatMap(measured -> measured.reading().setting().stream())
                        .map(setting -> setting.gauge().id())
                        .distinct()
                        .toList()
                : List.of();
        return marks.size() < 2 ? Stream.empty() : Stream.of(words.say("size.gauges", String.join(", ", marks)));
    }

    /** Why nothing is advised: the first figure that cannot well be. */
    private Stream<String> farOff(Finding finding) {
        Stream<String> read = finding.farOff().stream()
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
        return matters || finding.measured().isEmpty()
                ? of(finding)
                : Stream.concat(first(finding), others(finding).stream()).toList();
    }

    private List<String> others(Finding finding) {
        return FindingSentences.of(finding, words).remarks();
    }
}
