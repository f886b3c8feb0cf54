package org.tenthwise.app.text;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.tenthwise.model.plan.BalloonNumber;
import org.tenthwise.model.plan.StepClass;
import org.tenthwise.model.record.DrawingAccount;
import org.tenthwise.model.record.Outcome;
import org.tenthwise.model.record.Sheet;
import org.tenthwise.model.run.Occasion;
import org.tenthwise.model.run.Purpose;
import org.tenthwise.model.run.Signature;
import org.tenthwise.model.run.SignedAs;
import org.tenthwise.model.verdict.VerdictKind;
import org.tenthwise.model.words.Words;

/** How a record is called: what the characteristics come to, and beside it who signed for what. */
public final class OutcomeWords {

    /** What is not of the drawing. */
    private static final List<StepClass> BESIDE = List.of(StepClass.SET_UP, StepClass.IN_PROCESS);

    /** Of which nothing is left. */
    private static final Set<Outcome> SETTLED =
            EnumSet.of(Outcome.CONFORMS, Outcome.CONFORMS_WITH_CONCESSIONS, Outcome.ASKED_CONFORMS);

    private final Words words;
    private final OccasionWords occasions;

    public OutcomeWords(Words words) {
        this.words = words;
        this.occasions = new OccasionWords(words);
    }

    /** "Conforms, one set-up step carried on. Accepted by Inspector 1." */
    public String whole(Sheet sheet) {
        return outcome(sheet) + " " + signed(sheet);
    }

    /** What the characteristics come to, with what must never go unsaid: scrapped, and what was carried on with. */
    public String outcome(Sheet sheet) {
        List<String> parts = new ArrayList<>();
        parts.add(sheet.putAway()
                .map(away -> words.say("outcome.put-away-by", away.putAwayBy(), away.reason()))
                .orElseGet(() -> called(sheet)));
        BESIDE.stream()
                .filter(of -> sheet.carriedOn(of) > 0)
                .forEach(of -> parts.add(words.say("outcome.carried-on", steps(of, sheet.carriedOn(of)))));
        String leftOut = occasions.leftOut(sheet);
        List<String> left = left(sheet);
        if (!leftOut.isEmpty() && left.isEmpty()) {
            parts.add(leftOut);
        }
        String all = words.list(parts);
        String comesTo = left.isEmpty()
                ? words.sentence(all)
                : together(
                        words.say("outcome.with-left", all, words.list("outcome.left", left)),
                        leftOut.isEmpty() ? "" : words.sentence(leftOut));
        Occasion occasion = sheet.run().begun().occasion();
        String said = occasion.purpose() == Purpose.NOT_STATED
                ? comesTo
                : together(words.sentence(occasions.kind(occasion)), comesTo);
        return sheet.scrapped() ? words.say("one-after-another", said, words.say("outcome.scrapped")) : said;
    }

    private String together(String first, String second) {
        return second.isEmpty() ? first : words.say("one-after-another", first, second);
    }

    private String called(Sheet sheet) {
        return called(sheet.outcome(), sheet.concessions());
    }

    private String called(Outcome outcome, long concessions) {
        if (outcome == Outcome.ASKED_CONFORMS && concessions > 0) {
            return words.say("outcome.asked-concessions", concessions);
        }
        return outcome == Outcome.CONFORMS_WITH_CONCESSIONS
                ? words.say("outcome.concessions", concessions)
                : words.say("outcome", outcome);
    }

    /** The same in short, for a list: what the characteristics come to, and who closed the run with what words. */
    public String inShort(Outcome outcome, long concessions, String closedBy, String meaning) {
        return words.say(
                "one-after-another",
                words.sentence(called(outcome, concessions)),
                words.say("signed.holds", signed(SignedAs.of(meaning), closedBy, meaning)));
    }

    /** What a signature means, in words of this language where it is one of the meanings known. */
    String meaning(String written) {
        SignedAs as = SignedAs.of(written);
        return as == SignedAs.OTHER ? written : words.say("signed-as", as);
    }

    private String signed(SignedAs as, String by, String meaning) {
        return as == SignedAs.OTHER ? words.say("signed.other", by, meaning) : words.say(words.key("signed", as), by);
    }

    /**
     * What keeps it from conforming, so that with what passed it adds up to all; of a run put away only what was found.
     */
    private List<String> left(Sheet sheet) {
        List<String> left = new ArrayList<>();
        if (SETTLED.contains(sheet.outcome())) {
            return left;
        }
        int all = sheet.characteristics().size();
        long uncut = sheet.characteristics().stream()
                .filter(sheet::isOut)
                .filter(line -> line.finding().verdict().standing() == VerdictKind.CUT_AGAIN)
                .count();
        long out = sheet.characteristics().stream().filter(sheet::isOut).count() - uncut;
        if (sheet.holdsWhatIsNotKnown()) {
            left.add(words.say("outcome.newer"));
        }
        if (all == 0) {
            left.add(words.say("outcome.no-characteristic"));
        }
        List<String> unanswered = DrawingAccount.unansweredBy(sheet.plan()).stream()
                .map(BalloonNumber::text)
                .toList();
        if (!unanswered.isEmpty()) {
            left.add(words.say("outcome.unanswered", unanswered));
        }
        List<String> counted = new ArrayList<>();
        count(counted, "outcome.out", out, all);
        count(counted, "outcome.uncut", uncut, all);
        count(counted, "outcome.conceded", sheet.concessions(), all);
        if (sheet.putAway().isEmpty()) {
            unsettled(counted, sheet, all);
        }
        left.addAll(counted);
        return left;
    }

    /** Of how many what is counted the first count tells, for all that follow. */
    private void count(List<String> counted, String key, long count, int all) {
        if (count > 0) {
            counted.add(words.say(key, counted.isEmpty() ? words.say("outcome.characteristics", count, all) : count));
        }
    }

    private void unsettled(List<String> counted, Sheet sheet, int all) {
        long open = sheet.characteristics().stream()
                .filter(line -> !line.settled() && !sheet.isOut(line))
                .count();
        List<String> beside = new ArrayList<>();
        for (StepClass of : BESIDE) {
            long steps = sheet.of(of).stream().filter(line -> !line.settled()).count();
            if (steps > 0) {
                beside.add(steps(of, steps));
            }
        }
        if (beside.isEmpty()) {
            count(counted, "outcome.not-settled", open, all);
            return;
        }
        if (open > 0) {
            beside.add(
                    0,
                    counted.isEmpty()
                            ? words.say("outcome.characteristics", open, all)
                            : steps(StepClass.DRAWING, open));
        }
        counted.add(words.say("outcome.not-settled", beside));
    }

    private String steps(StepClass of, long count) {
        return words.say(words.key("steps", of), count);
    }

    /** Who signed what: what speaks against the part first, then who accepted it, else what else is signed. */
    public String signed(Sheet sheet) {
        List<Signature> all = sheet.run().signatures();
        List<String> said = new ArrayList<>(sheet.against().stream()
                .map(signature -> signature(signature, sheet))
                .toList());
        all.stream()
                .filter(signature -> signature.meaning() == SignedAs.ACCEPTED && !signature.lapsed())
                .map(signature -> signature(signature, sheet))
                .forEach(said::add);
        if (!said.isEmpty()) {
            return String.join(" ", said);
        }
        if (all.isEmpty()) {
            return words.say("signed.nobody");
        }
        List<String> other = all.stream()
                .filter(signature -> !signature.lapsed())
                .map(signature -> signature(signature, sheet))
                .toList();
        return other.isEmpty()
                ? words.say(
                        "signed.lapsed-all",
                        all.stream().map(Signature::signedBy).distinct().toList())
                : String.join(" ", other) + " " + words.say("signed.not-yet-accepted");
    }

    /** "Accepted by Inspector 1." A refusal after which something was changed still stands until somebody accepts. */
    public String signature(Signature signature, Sheet sheet) {
        String said = signed(signature.meaning(), signature.signedBy(), signature.words());
        if (signature.lapsed() && sheet.against().contains(signature)) {
            return words.say("signed.not-overcome", said);
        }
        return signature
                .lapse()
                .map(why -> words.say(words.key("signed.lapsed", why), said))
                .orElse(words.say("signed.holds", said));
    }

    /** How many characteristics passed, and what there is beside them. */
    public String counts(Sheet sheet) {
        long passed = sheet.count(VerdictKind.PASS);
        List<String> beside = BESIDE.stream()
                .filter(of -> !sheet.of(of).isEmpty())
                .map(of -> words.say(
                        words.key("outcome.beside", of),
                        sheet.of(of).stream()
                                .filter(line -> line.finding().verdict().passed())
                                .count(),
                        sheet.of(of).size()))
                .toList();
        String all = words.say(
                "outcome.characteristics", passed, sheet.characteristics().size());
        String counted = sheet.repaired() == 0
                ? words.say("outcome.passed", all)
                : words.say("outcome.passed-repaired", all, sheet.repaired());
        return beside.isEmpty() ? words.sentence(counted) : words.say("outcome.passed-beside", counted, beside);
    }

    /**
     * The shape that may stand beside it. Only what passed whole and was signed against by nobody has that of a pass;
     * what is conceded has none.
     */
    public static Optional<VerdictKind> shape(Sheet sheet) {
        return shape(sheet.outcome(), !sheet.against().isEmpty());
    }

    /** @param contested whether a signature stands against it */
    public static Optional<VerdictKind> shape(Outcome outcome, boolean contested) {
        if (contested) {
            return Optional.of(VerdictKind.FAIL);
        }
        return switch (outcome) {
            case CONFORMS -> Optional.of(VerdictKind.PASS);
            case CONFORMS_WITH_CONCESSIONS, ASKED_CONFORMS, PUT_AWAY -> Optional.empty();
            case DOES_NOT_CONFORM -> Optional.of(VerdictKind.FAIL);
            case NOT_COMPLETE -> Optional.of(VerdictKind.OPEN);
        };
    }
}
