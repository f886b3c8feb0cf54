package org.tenthwise.app.text;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.tenthwise.model.compute.roundness.CircleFit;
import org.tenthwise.model.compute.roundness.Eccentricity;
import org.tenthwise.model.compute.roundness.ShiftAndTilt;
import org.tenthwise.model.plan.Section;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.record.AtSection;
import org.tenthwise.model.record.RunOutAdvice;
import org.tenthwise.model.record.RunOutFinding;

/** What else there is to say about a run-out: how far off centre the work stands and to which side, how it leans, and its form. */
final class RunOutRemarks {

    private final Words words;
    private final JawWords jaws;

    RunOutRemarks(Words words) {
        this.words = words;
        this.jaws = new JawWords(words);
    }

    List<String> of(RunOutFinding finding) {
        List<String> said = new ArrayList<>();
        finding.sections().stream().flatMap(at -> at.refusal().stream()).findFirst()
                .ifPresent(why -> said.add(words.say("run-out.no-circle", words.say("run-out.refusal", why))));
        finding.sections().forEach(at -> at.fit().ifPresent(fit -> said.add(offCentre(finding, at, fit.centre()))));
        axis(finding).ifPresent(axis -> said.addAll(leaning(finding, axis)));
        form(finding).ifPresent(said::add);
        return said;
    }

    private String offCentre(RunOutFinding finding, AtSection at, Eccentricity off) {
        String amount = StepFigures.of(finding).withUnit(off.amount());
        String side = jaws.side(finding.check(), off.highAtDegrees());
        Optional<String> there = finding.sections().size() < 2 ? Optional.empty() : at.section().map(Section::name);
        return there.map(name -> words.say("run-out.off-centre-there", capital(name), amount, side))
                .orElseGet(() -> words.say("run-out.off-centre", amount, side));
    }

    /** A sentence begins with it. */
    static String capital(String name) {
        return name.substring(0, 1).toUpperCase(Locale.ROOT) + name.substring(1);
    }

    /** Where there is a circle at both of two sections. */
    private static Optional<ShiftAndTilt> axis(RunOutFinding finding) {
        List<AtSection> fitted = finding.sections().stream().filter(at -> at.fit().isPresent() && at.section().isPresent()).toList();
        return fitted.size() < 2 ? Optional.empty() : Optional.of(new ShiftAndTilt(fromJaws(fitted.get(0)), centre(fitted.get(0)),
                fromJaws(fitted.get(1)), centre(fitted.get(1))));
    }

    private static Length fromJaws(AtSection at) {
        return at.section().orElseThrow().at().length();
    }

    private static Eccentricity centre(AtSection at) {
        return at.fit().orElseThrow().centre();
    }

    private List<String> leaning(RunOutFinding finding, ShiftAndTilt axis) {
        StepFigures figures = StepFigures.of(finding);
        String over = Figures.number(axis.farAt().minus(axis.nearAt()).in(figures.unit()));
        return List.of(words.say("run-out.lean", figures.withUnit(axis.lean().amount()), over, jaws.side(finding.check(), axis.lean().highAtDegrees())),
                words.say("run-out.coaxial", figures.withUnit(axis.coaxialError())));
    }

    /** The greatest of all sections; that it stays, where there is something to move. */
    private Optional<String> form(RunOutFinding finding) {
        if (finding.sections().stream().anyMatch(at -> at.fit().isPresent() && at.byAngle().size() == 3)) {
            return Optional.of(words.say("run-out.form-unknown"));
        }
        boolean moved = RunOutAdvice.of(finding).filter(advice -> !advice.near().isEmpty() || !advice.far().isEmpty()).isPresent();
        return finding.sections().stream().flatMap(at -> at.fit().stream()).map(CircleFit::residual).reduce((one, other) -> one.isAbove(other) ? one : other)
                .map(residual -> words.say(moved ? "run-out.form" : "run-out.round", StepFigures.of(finding).withUnit(residual)));
    }
}
