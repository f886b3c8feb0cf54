package org.tenthwise.app.text;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.stream.IntStream;
import org.tenthwise.model.compute.roundness.Angle;
import org.tenthwise.model.compute.roundness.JawMoves;
import org.tenthwise.model.plan.Check;
import org.tenthwise.model.plan.RunOutCheck;
import org.tenthwise.model.plan.Slot;
import org.tenthwise.model.plan.WorkedCheck;
import org.tenthwise.model.words.Words;

/**
 * The places round a turn as someone at the chuck sees them: by the jaw under the needle, or by a mark on the work
 * where there are no jaws. Angles count in the order in which the jaws come under the needle; jaw 1 stands where the
 * plan has it, the mark at 0°.
 */
public final class JawWords {

    private static final BigDecimal TWO = new BigDecimal("2");

    private final Words words;

    public JawWords(Words words) {
        this.words = words;
    }

    /** What is under the needle: "jaw 1 under the needle", "half-way from jaw 1 to jaw 2", "30° past jaw 2". */
    public String under(RunOutCheck check, BigDecimal angle) {
        return said("jaws.under", check, angle);
    }

    /** The same where room is short: "jaw 1", "jaws 1–2", "jaw 2 + 30°". */
    public String brief(RunOutCheck check, BigDecimal angle) {
        return said("jaws.brief", check, angle);
    }

    /**
     * The side to look for the high side at: the jaw, or the half-way between two, that is nearest to a direction;
     * without jaws the direction from the mark, to a degree.
     */
    public String side(RunOutCheck check, BigDecimal direction) {
        BigDecimal step = check.jaws() == 0
                ? BigDecimal.ONE
                : Angle.FULL_TURN.divide(TWO.multiply(BigDecimal.valueOf(check.jaws())), RoundingMode.UNNECESSARY);
        BigDecimal first = check.jaws() == 0 ? BigDecimal.ZERO : check.firstJaw();
        BigDecimal nearest = Angle.inOneTurn(direction.subtract(first))
                .divide(step, 0, RoundingMode.HALF_UP)
                .multiply(step)
                .add(first);
        return said("jaws.side", check, nearest);
    }

    /**
     * A place of a turn: what is under the needle, or the highest or the lowest; with the section where there are two.
     */
    private String ofTurn(RunOutCheck check, Slot slot) {
        return section(
                check,
                slot,
                slot.place()
                        .angle()
                        .map(angle -> under(check, angle))
                        .orElseGet(() ->
                                words.say(slot.key().endsWith(RunOutCheck.HIGHEST) ? "jaws.highest" : "jaws.lowest")));
    }

    /** What is read of something worked out, and where that is; the place alone where nothing else is read there. */
    private String ofWorked(WorkedCheck check, Slot slot) {
        String reading = words.say("worked.reading", check.reading(slot));
        return check.places().size() == 1
                ? reading
                : words.say("worked.reading-at", check.place(slot).name(), reading);
    }

    /** The same of any check; where there is no turn, the place as the plan names it. */
    public String place(Check check, Slot slot) {
        return check.asTurn()
                .map(turn -> ofTurn(turn, slot))
                .or(() -> check.asWorked().map(worked -> ofWorked(worked, slot)))
                .orElseGet(() -> slot.place().name());
    }

    /** Where room is short, without the section; of a check with no turn the place as the plan names it. */
    public String briefPlace(Check check, Slot slot) {
        return check.asTurn()
                .flatMap(turn -> slot.place().angle().map(angle -> brief(turn, angle)))
                .orElseGet(() -> place(check, slot));
    }

    private String section(RunOutCheck check, Slot slot, String place) {
        return check.sections().size() < 2
                ? place
                : words.say(
                        "jaws.at-section",
                        place,
                        check.section(slot).orElseThrow().name());
    }

    /** Which way the work is turned, so that the angles count as the plan has them. */
    public String turning(RunOutCheck check) {
        return words.say(check.jaws() == 0 ? "jaws.turn-by-mark" : "jaws.turn");
    }

    private String said(String stem, RunOutCheck check, BigDecimal angle) {
        if (check.jaws() == 0) {
            BigDecimal past = Angle.inOneTurn(angle);
            return past.signum() == 0
                    ? words.say(stem + ".mark")
                    : words.say(stem + ".past-mark", Figures.number(past));
        }
        List<BigDecimal> jaws = JawMoves.evenly(check.jaws(), check.firstJaw());
        int before = IntStream.range(0, jaws.size())
                .boxed()
                .min((one, other) -> Angle.inOneTurn(angle.subtract(jaws.get(one)))
                        .compareTo(Angle.inOneTurn(angle.subtract(jaws.get(other)))))
                .orElseThrow();
        BigDecimal past = Angle.inOneTurn(angle.subtract(jaws.get(before)));
        int next = (before + 1) % jaws.size();
        if (past.signum() == 0) {
            return words.say(stem + ".jaw", before + 1);
        }
        return past.multiply(TWO).multiply(BigDecimal.valueOf(jaws.size())).compareTo(Angle.FULL_TURN) == 0
                ? words.say(stem + ".half-way", before + 1, next + 1)
                : words.say(stem + ".past-jaw", before + 1, Figures.number(past));
    }
}
