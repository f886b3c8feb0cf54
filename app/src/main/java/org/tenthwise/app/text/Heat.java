package org.tenthwise.app.text;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.tenthwise.model.plan.MeasuredBody;
import org.tenthwise.model.plan.TemperatureAsked;
import org.tenthwise.model.plan.ThermalData;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.record.Finding;
import org.tenthwise.model.record.Measured;
import org.tenthwise.model.record.TemperatureEffect;
import org.tenthwise.model.words.Words;

/**
 * What there is to say about temperature: whether it matters, what is missing, what was corrected and on what figures.
 */
public final class Heat {

    private final Words words;

    public Heat(Words words) {
        this.words = words;
    }

    /**
     * In a line; absent where the plan says nothing of heat. What is not corrected yet though it must be stays, and so
     * does what is not corrected at all and may turn a pass.
     */
    Optional<Weighed> weighed(Finding finding) {
        return finding.warmth().map(warmth -> new Weighed(weight(finding, warmth), of(finding, warmth)));
    }

    private static Weighed.Weight weight(Finding finding, TemperatureEffect warmth) {
        if (warmth.needed()) {
            return warmth.missing() == 0 ? Weighed.Weight.CORRECTED : Weighed.Weight.STAYS;
        }
        if (!warmth.matters() && warmth.tolerance().isPresent()) {
            return Weighed.Weight.HOW;
        }
        return mayTurn(finding, warmth) ? Weighed.Weight.STAYS : Weighed.Weight.CORRECTED;
    }

    /** Whether the limit of a pass is nearer than what warmth may have moved the size by. */
    private static boolean mayTurn(Finding finding, TemperatureEffect warmth) {
        return finding.verdict().passed()
                && finding.verdict()
                        .margin()
                        .filter(margin ->
                                margin.distance().isBelow(warmth.worst().worst()))
                        .isPresent();
    }

    private String of(Finding finding, TemperatureEffect warmth) {
        String most = worst(finding, warmth.worst().worst());
        if (warmth.needed() && warmth.missing() == 0) {
            return corrected(finding, warmth);
        }
        if (warmth.asked() == TemperatureAsked.ALWAYS) {
            return words.say("heat.missing-asked", most);
        }
        if (warmth.tolerance().isEmpty()) {
            return words.say("heat.one-limit", most);
        }
        String tolerance = StepFigures.of(finding).withUnit(warmth.tolerance().get());
        if (!warmth.matters()) {
            return words.say("heat.does-not-matter", most, tolerance);
        }
        return words.say(warmth.asked() == TemperatureAsked.NEVER ? "heat.not-asked" : "heat.missing", most, tolerance);
    }

    private String corrected(Finding finding, TemperatureEffect warmth) {
        List<String> said = new ArrayList<>();
        said.add(words.say(
                "heat.corrected", warmth.part().orElseThrow(), warmth.gauge().orElseThrow()));
        shown(finding)
                .flatMap(Measured::forTemperature)
                .map(correction -> correction.signum() == 0
                        ? words.say("heat.correction-none")
                        : words.say(
                                "heat.correction",
                                signed(finding, correction),
                                warmth.climate().scale().reference()))
                .ifPresent(said::add);
        return String.join(" ", said);
    }

    /** The figures a correction rests on, a sentence a body, with their source; none where nothing was corrected. */
    public List<String> figures(Finding finding) {
        return finding.warmth()
                .filter(warmth -> warmth.correction().isPresent())
                .map(warmth -> List.of(
                        grows(MeasuredBody.PART, warmth.climate()), grows(MeasuredBody.GAUGE, warmth.climate())))
                .orElse(List.of());
    }

    private String grows(MeasuredBody body, ThermalData climate) {
        return words.say(
                words.key("heat.expansion", body),
                climate.scale().perDegree(climate.of(body).expansion()).toPlainString(),
                climate.of(body).source(),
                climate.scale().symbol());
    }

    /** The reading that decides, otherwise the one corrected most. */
    private static Optional<Measured> shown(Finding finding) {
        return finding.deciding().or(() -> finding.measured().stream()
                .filter(measured -> measured.forTemperature().isPresent())
                .max((a, b) -> a.forTemperature()
                        .orElseThrow()
                        .abs()
                        .compareTo(b.forTemperature().orElseThrow().abs())));
    }

    /** What was added, with one place more than the size is written with. */
    public static String signed(Finding finding, Length correction) {
        StepFigures figures = StepFigures.of(finding);
        return Figures.signed(correction, figures.unit(), figures.places() + 1) + " "
                + figures.unit().symbol();
    }

    /** Rounded up, as it is the most there can be. */
    private static String worst(Finding finding, Length worst) {
        StepFigures figures = StepFigures.of(finding);
        BigDecimal most = worst.in(figures.unit()).setScale(figures.places() + 1, RoundingMode.CEILING);
        return Figures.number(most) + " " + figures.unit().symbol();
    }
}
