package org.tenthwise.app.text;

import java.util.List;
import java.util.stream.Stream;
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
        return weighed(finding).stream().map(Weighed::sentence).toList();
    }

    /** The same, each with its weight. */
    List<Weighed> weighed(Finding finding) {
        return Stream.of(farOff(finding), touch.beforeACut(finding).stream(), gauges(finding), said(finding))
                .flatMap(said -> said)
                .toList();
    }

    /** Sizes of two gauges differ by more than the work does: what looks like a taper may be one of them. */
    private Stream<Weighed> gauges(Finding finding) {
        List<String> marks = finding.check().asDimension().isPresent()
                ? finding.measured().stream()
                        .flatMap(measured -> measured.reading().setting().stream())
                        .map(setting -> setting.gauge().id())
                        .distinct()
                        .toList()
                : List.of();
        return marks.size() < 2 ? Stream.empty() : Stream.of(Weighed.stays(words.say("size.gauges", marks)));
    }

    /** Why nothing is advised: the first figure that cannot well be. */
    private Stream<Weighed> farOff(Finding finding) {
        boolean told = FindingSentences.of(finding, words).tellsWhatIsFarOff();
        Stream<String> read = finding.farOff().stream()
                .filter(measured -> !told)
                .map(measured -> words.say(
                        Plausible.isOfTheOtherSide(finding.check(), measured) ? "far-off.other-side" : "far-off",
                        Figures.read(
                                measured.reading().typed(),
                                StepFigures.of(finding).unit())));
        Stream<String> temperatures =
                Plausible.farOffTemperatures(finding).stream().map(degrees -> words.say("far-off", degrees.toString()));
        return Stream.concat(read, temperatures).limit(1).map(Weighed::stays);
    }

    private Stream<Weighed> said(Finding finding) {
        Stream<Weighed> others = FindingSentences.of(finding, words).remarks().stream();
        boolean weighty = finding.warmth().filter(TemperatureEffect::needed).isPresent();
        return weighty
                ? Stream.concat(heat.weighed(finding).stream(), others)
                : Stream.concat(others, heat.weighed(finding).stream());
    }
}
