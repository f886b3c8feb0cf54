package org.tenthwise.app.text;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.tenthwise.model.compute.roundness.CircleFit;
import org.tenthwise.model.compute.roundness.Eccentricity;
import org.tenthwise.model.compute.roundness.ShiftAndTilt;
import org.tenthwise.model.compute.roundness.TruingUp;
import org.tenthwise.model.record.RunOutFinding;
import org.tenthwise.model.verdict.Verdict;
import org.tenthwise.model.words.Words;

/** What is said of a run-out: how far off centre the work stands and to which side, how it leans, and its form. */
final class RunOutSentences extends FindingSentences {

    private static final int THREE = 3;
    private static final int FOUR = 4;

    private final RunOutFinding finding;
    private final JawWords jaws;

    RunOutSentences(RunOutFinding finding, Words words) {
        super(finding, words);
        this.finding = finding;
        this.jaws = new JawWords(words);
    }

    @Override
    String limit(Verdict.Margin margin) {
        return words.say("limit.only");
    }

    @Override
    Optional<String> unproven() {
        return Optional.of(words.say("next.whole-turn"));
    }

    @Override
    List<Weighed> remarks() {
        List<Weighed> said = new ArrayList<>();
        finding.sections().stream()
                .flatMap(at -> at.refusal().stream())
                .findFirst()
                .ifPresent(why ->
                        said.add(Weighed.stays(words.say("run-out.no-circle", words.say("run-out.refusal", why)))));
        finding.shiftAndTilt()
                .map(this::leaning)
                .orElseGet(() -> finding.sections().stream()
                        .flatMap(at -> at.fit().stream())
                        .map(fit -> offCentre(fit.centre()))
                        .toList())
                .forEach(off -> said.add(Weighed.form(off)));
        form().ifPresent(said::add);
        if (byAngle(FOUR)) {
            said.add(Weighed.stays(words.say("run-out.four-readings")));
        }
        return said;
    }

    private String offCentre(Eccentricity off) {
        return words.say(
                "run-out.off-centre",
                StepFigures.of(finding).withUnit(off.amount()),
                jaws.side(finding.check(), off.highAtDegrees()));
    }

    /** A sentence begins with it. */
    static String capital(String name) {
        return name.substring(0, 1).toUpperCase(Locale.ROOT) + name.substring(1);
    }

    private List<String> leaning(ShiftAndTilt axis) {
        StepFigures figures = StepFigures.of(finding);
        String over = Figures.number(axis.farAt().minus(axis.nearAt()).in(figures.unit()));
        return List.of(
                words.say(
                        "run-out.off-centre-both",
                        figures.plain(axis.near().amount()),
                        name(0),
                        figures.plain(axis.far().amount()),
                        name(1)),
                words.say(
                        "run-out.lean",
                        figures.plain(axis.lean().amount()),
                        over,
                        jaws.side(finding.check(), axis.lean().highAtDegrees())),
                words.say("run-out.coaxial", figures.plain(axis.coaxialError())));
    }

    private String name(int which) {
        return finding.sections().get(which).section().orElseThrow().name();
    }

    /**
     * Whether a circle was fitted to so many readings anywhere: to three it fits whatever the form, to four as if three
     * lobes were off centre.
     */
    private boolean byAngle(int readings) {
        return finding.sections().stream()
                .anyMatch(at -> at.fit().isPresent() && at.byAngle().size() == readings);
    }

    /** The greatest of all sections; that it stays, where there is something to move. */
    private Optional<Weighed> form() {
        if (byAngle(THREE)) {
            return Optional.of(Weighed.stays(words.say("run-out.form-unknown")));
        }
        return finding.truingUp()
                .filter(advice -> advice.state() == TruingUp.Case.MOVE)
                .map(TruingUp::formLeft)
                .map(stays -> words.say("run-out.form", StepFigures.of(finding).withUnit(stays)))
                .or(() -> finding.sections().stream()
                        .flatMap(at -> at.fit().stream())
                        .map(CircleFit::residual)
                        .max(Comparator.naturalOrder())
                        .map(residual -> words.say(
                                "run-out.round", StepFigures.of(finding).withUnit(residual))))
                .map(Weighed::form);
    }
}
