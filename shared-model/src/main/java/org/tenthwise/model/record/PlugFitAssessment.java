package org.tenthwise.model.record;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.tenthwise.model.compute.fit.Clearance;
import org.tenthwise.model.plan.Answer;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.plan.PlugFitCheck;
import org.tenthwise.model.plan.Question;
import org.tenthwise.model.plan.Step;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.record.PlugFitFinding.Contradiction;
import org.tenthwise.model.run.Pass;
import org.tenthwise.model.verdict.Judge;
import org.tenthwise.model.verdict.Verdict;
import org.tenthwise.model.verdict.VerdictKind;

/**
 * A plug fit: the clearance by the gauges beside what the hand found. The worse of the two is the verdict. Where they
 * contradict each other one of the two is wrong, and nobody knows which: unproven until one of them is measured again.
 * Nothing passes by a figure that is far off.
 */
final class PlugFitAssessment {

    private PlugFitAssessment() {}

    /** @param bores sizes of the bore, as far as they can be used */
    static PlugFitFinding of(Plan plan, Step step, PlugFitCheck check, Pass pass, List<Length> bores) {
        List<Measured> plug = SizeAssessment.measure(check.slots(), pass);
        Optional<Answer> feel = pass.answer(Question.PLUG_FEELS);
        int missing = check.slots().size() - plug.size() + (feel.isPresent() ? 0 : 1);
        boolean measured = !bores.isEmpty() && plug.size() == check.slots().size();
        Optional<Clearance> clearance = measured
                ? Optional.of(
                        Clearance.of(bores, plug.stream().map(Measured::value).toList()))
                : Optional.empty();
        List<Measured> farOff = Plausible.farOff(plan, check, plug);
        Verdict verdict = verdict(check, clearance, feel);
        Optional<Contradiction> contradiction = contradiction(clearance, feel, verdict.passed());
        boolean unproven = contradiction.isPresent() || verdict.passed() && !farOff.isEmpty();
        return new PlugFitFinding(
                step,
                check,
                bores,
                plug,
                farOff,
                clearance,
                feel,
                contradiction,
                unproven ? new Verdict(VerdictKind.UNPROVEN, verdict.margin()) : verdict,
                missing);
    }

    private static Verdict verdict(PlugFitCheck check, Optional<Clearance> clearance, Optional<Answer> feel) {
        Optional<Verdict> byGauge = clearance.map(found -> nearer(check, found));
        boolean feltWrong = feel.isPresent() && feel.get() != check.feel().answer();
        if (feltWrong) {
            return new Verdict(VerdictKind.FAIL, byGauge.flatMap(Verdict::margin));
        }
        return byGauge.filter(verdict -> feel.isPresent() || !verdict.passed()).orElse(Verdict.plain(VerdictKind.OPEN));
    }

    /** The verdict on the clearance that lies nearer to a limit, or further out. */
    private static Verdict nearer(PlugFitCheck check, Clearance found) {
        Judge judge = new Judge(check.clearance(), Length.ZERO, Optional.empty());
        Verdict least = judge.of(found.least());
        Verdict greatest = judge.of(found.greatest());
        if (least.passed() != greatest.passed()) {
            return least.passed() ? greatest : least;
        }
        boolean leastIsNearer = least.margin()
                .orElseThrow()
                .distance()
                .isBelow(greatest.margin().orElseThrow().distance());
        return leastIsNearer == least.passed() ? least : greatest;
    }

    private static Optional<Contradiction> contradiction(
            Optional<Clearance> clearance, Optional<Answer> feel, boolean passes) {
        return clearance.flatMap(found -> feel.flatMap(felt -> Stream.of(Contradiction.values())
                .filter(possible -> holds(possible, found, felt, passes))
                .findFirst()));
    }

    private static boolean holds(Contradiction possible, Clearance found, Answer felt, boolean passes) {
        return switch (possible) {
            case ENTERS_YET_MEASURES_TIGHT ->
                felt != Answer.NOT_AT_ALL && found.greatest().signum() < 0
                        || passes && felt == Answer.FREELY && found.least().signum() < 0;
            case STICKS_YET_MEASURES_CLEAR ->
                felt == Answer.NOT_AT_ALL && found.least().signum() > 0;
        };
    }
}
