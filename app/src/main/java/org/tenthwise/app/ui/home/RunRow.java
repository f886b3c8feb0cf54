package org.tenthwise.app.ui.home;

import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import org.tenthwise.app.history.RunFacts;
import org.tenthwise.app.history.RunName;
import org.tenthwise.app.history.RunSummary;
import org.tenthwise.app.history.StepSummary;
import org.tenthwise.app.text.Advice;
import org.tenthwise.app.text.OccasionWords;
import org.tenthwise.app.text.OutcomeWords;
import org.tenthwise.app.text.Sentences;
import org.tenthwise.model.plan.Operation;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.plan.Step;
import org.tenthwise.model.plan.StepClass;
import org.tenthwise.model.run.Disposition;
import org.tenthwise.model.run.Purpose;
import org.tenthwise.model.verdict.VerdictKind;
import org.tenthwise.model.words.Words;

/**
 * A run begun, in words.
 *
 * @param place operation of the step it would go on with; that it is closed or put away, once it is
 * @param standing shape of where it stands; once it is closed, of its outcome, where that has one
 * @param where where it stands; that it cannot be read, where that is so
 * @param when when something was last done
 * @param spoken all of it, for those who listen
 */
public record RunRow(
        RunSummary summary,
        String part,
        String revision,
        String serial,
        String place,
        Optional<VerdictKind> standing,
        String where,
        String when,
        String spoken) {

    private static final Set<Disposition> SETTLING = EnumSet.of(Disposition.USE_AS_IS, Disposition.CARRY_ON);

    /** Whether it can be gone on with; one that was closed or put away can only be looked at. */
    boolean open() {
        return summary.run().open();
    }

    /** @param unknown signs of stations that are not known: nothing is vouched for of their runs */
    static RunRow of(RunSummary summary, Set<String> unknown, When when, Words words) {
        RunFacts run = summary.run();
        boolean vouched =
                RunName.of(run.id()).origin().filter(unknown::contains).isEmpty();
        String said = ofKind(run, where(summary, words), words);
        String where = vouched
                ? said
                : words.say("one-after-another", words.sentence(words.say("sheet.caution.station")), said);
        String place = run.open() ? operation(summary, words) : shut(run, words);
        String serial = words.say("home.serial", run.serial());
        String revision = words.say("home.revision", run.revision());
        return new RunRow(
                summary,
                run.part(),
                revision,
                serial,
                place,
                vouched ? standing(summary) : Optional.empty(),
                where,
                when.of(run.lastAt()),
                words.say("home.spoken", run.part(), revision, serial, place, where));
    }

    /** Never without the kind of run where one was said. */
    private static String ofKind(RunFacts run, String where, Words words) {
        return run.kind().purpose() == Purpose.NOT_STATED
                ? where
                : words.say(
                        "one-after-another",
                        words.sentence(new OccasionWords(words)
                                .kind(run.kind().purpose(), run.kind().piece())),
                        where);
    }

    private static String shut(RunFacts run, Words words) {
        String lies = words.say("home.shut", run.shelf());
        return RunName.of(run.id())
                .origin()
                .map(sign -> words.say("home.from", lies, sign))
                .orElse(lies);
    }

    private static Optional<VerdictKind> standing(RunSummary summary) {
        return !summary.run().open()
                ? summary.run().stand().flatMap(stand -> OutcomeWords.shape(stand.outcome(), stand.contested()))
                : inHand(summary).map(step -> step.verdict().standing());
    }

    private static Optional<StepSummary> inHand(RunSummary summary) {
        return summary.inHand().flatMap(wanted -> summary.steps().stream()
                .filter(step -> step.number() == wanted.number())
                .findFirst());
    }

    private static String where(RunSummary summary, Words words) {
        RunFacts run = summary.run();
        if (run.stand().isEmpty()) {
            return words.say("home.not-read");
        }
        RunFacts.Stand stand = run.stand().get();
        if (run.putAway()) {
            return words.say("home.put-away");
        }
        return run.closing()
                .map(closing -> new OutcomeWords(words)
                        .inShort(stand.outcome(), stand.concessions(), closing.signedBy(), closing.meaning()))
                .or(() -> summary.inHand()
                        .flatMap(step -> inHand(summary).map(stands -> stands(summary, step, stands, words))))
                .orElse("");
    }

    private static String operation(RunSummary summary, Words words) {
        return summary.plan()
                .flatMap(plan -> summary.inHand().map(step -> operation(plan, step, words)))
                .orElse("");
    }

    private static String operation(Plan plan, Step step, Words words) {
        Operation operation = plan.operation(step.operation());
        return words.say("ask.operation", operation.number(), operation.name());
    }

    private static String stands(RunSummary summary, Step step, StepSummary stands, Words words) {
        return switch (stands.verdict().standing()) {
            case OPEN -> words.say("home.at", step.number(), step.name());
            case PASS -> isDone(summary) ? words.say("home.to-sign") : words.say("home.at", step.number(), step.name());
            case FAIL ->
                step.check().asTurn().isPresent()
                        ? words.say("home.at-failed", step.number(), step.name())
                        : waits(summary, step, stands, words);
            case CUT_AGAIN ->
                words.say(
                        "home.at-cut",
                        step.number(),
                        stands.verdict()
                                .margin()
                                .map(margin -> new Sentences(words).distance(step, stands.places(), margin))
                                .orElse(""));
            case UNPROVEN -> words.say("home.at-unproven", step.number(), step.name());
        };
    }

    /** Whether nothing is missing but a signature. */
    private static boolean isDone(RunSummary summary) {
        return summary.steps().stream()
                .filter(StepSummary::asked)
                .allMatch(step -> step.verdict().standing() == VerdictKind.PASS
                        || step.disposed()
                                .map(StepSummary.Disposed::disposition)
                                .filter(SETTLING::contains)
                                .isPresent());
    }

    private static String waits(RunSummary summary, Step step, StepSummary stands, Words words) {
        if (stands.disposed().isEmpty() && step.stepClass() == StepClass.SET_UP) {
            return words.say("home.at-put-right", step.number(), step.name());
        }
        Optional<StepSummary> before = summary.steps().stream()
                .takeWhile(other -> other.number() != step.number())
                .filter(other -> other.asked() && other.verdict().standing() == VerdictKind.OPEN)
                .findFirst();
        if (stands.disposed().isEmpty() && before.isPresent()) {
            return words.say(
                    "home.at-waits-open", before.get().number(), before.get().name(), step.number());
        }
        return stands.disposed()
                .map(disposed -> words.say(
                        "home.at-disposed",
                        step.number(),
                        new Advice(words).signed(disposed.disposition(), disposed.signedBy())))
                .orElseGet(() -> words.say("home.at-waits", step.number(), step.name()));
    }
}
