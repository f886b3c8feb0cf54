package org.tenthwise.app.ui.run;

import java.util.List;
import java.util.Optional;
import org.tenthwise.app.picture.Picture;
import org.tenthwise.app.text.ToDo;
import org.tenthwise.model.plan.Answer;
import org.tenthwise.model.plan.Register;
import org.tenthwise.model.verdict.VerdictKind;

/**
 * What the run screen shows at one moment, in words.
 *
 * @param steps the whole plan, in order
 * @param picture drawn from the numbers of the step in hand; absent where there is nothing to draw
 * @param first what is put on the commit key while nothing is typed
 * @param finished the check that gave way to this one; absent once something is taken here
 */
public record RunScreenState(
        Heads heads,
        List<StepLine> steps,
        InHand inHand,
        Optional<Picture> picture,
        Found found,
        PromptPanel panel,
        Commit first,
        Allowed allowed,
        Optional<Finished> finished) {

    public RunScreenState {
        steps = List.copyOf(steps);
    }

    /**
     * Values of the heading's cells; {@code lot} may be empty.
     *
     * @param purpose what the run is for, in short; empty where nobody said
     */
    public record Heads(
            String part, String serial, String lot, String operation, String by, String open, String purpose) {}

    /**
     * A row of the step list.
     *
     * @param balloon on the drawing, where it is another number than that of the step
     * @param under the value, what was answered, or what the drawing says
     * @param after the hold point that follows the step
     */
    public record StepLine(
            int number,
            Optional<String> balloon,
            String name,
            String under,
            VerdictKind standing,
            boolean inHand,
            boolean held,
            boolean asked,
            String spoken,
            Optional<Hold> after) {}

    /** A hold point: what must come first, or that it is open. */
    public record Hold(String words, boolean shut) {}

    /**
     * The step in hand.
     *
     * @param balloon on the drawing, where it is another number than that of the step
     * @param taken how much of it is taken; of several alike that are asked about, that the answer is for all; else
     *     empty
     * @param drawing words of the drawing; may be empty
     * @param gauge with what, and what it is set on, in parts: those that matter most first
     * @param method how, a sentence each, in their order
     * @param methodWhole whether all of it is to be in sight; otherwise its first sentences will do
     * @param statement what is to be so, for a step that asks; empty for one that measures
     */
    public record InHand(
            int number,
            Optional<String> balloon,
            String name,
            String taken,
            String drawing,
            List<String> gauge,
            List<String> method,
            boolean methodWhole,
            String caution,
            String statement) {
        public InHand {
            gauge = List.copyOf(gauge);
            method = List.copyOf(method);
        }
    }

    /**
     * The verdict.
     *
     * @param word one of the five words
     * @param distance the rest of the sentence; may be empty
     * @param todo what to do, a line a move; may be empty
     * @param shown what else must stay in sight, a sentence each; where there is nothing such and nothing to do, the
     *     one thing most worth knowing
     * @param rest what can be looked up besides
     */
    public record Found(
            VerdictKind standing, String word, String distance, ToDo todo, List<String> shown, List<String> rest) {
        /** In signs. */
        private static final int LONG = 180;

        private static final int MUCH = 90;

        public Found {
            shown = List.copyOf(shown);
            rest = List.copyOf(rest);
        }

        /** What to do, in one. */
        public String next() {
            return todo.inOne();
        }

        /** How much there is to tell beside the verdict. */
        Extent extent() {
            if (todo.lines().size() > 1) {
                return Extent.MOVES;
            }
            String shownToo = next() + String.join(" ", shown);
            return next().length() > LONG ? Extent.LONG : shownToo.length() > MUCH ? Extent.MUCH : Extent.LITTLE;
        }
    }

    /** How much there is to tell beside a verdict. */
    enum Extent {
        LITTLE,
        /** Room beside the hand is for this alone. */
        MUCH,
        /** Lettered smaller, so that the picture keeps its room. */
        LONG,
        /** Several moves, a line each. */
        MOVES
    }

    /** What the check before came to. */
    public record Finished(int step, VerdictKind standing, String words) {}

    /** What the right column is for. */
    public sealed interface PromptPanel {

        /** The keypad. {@code last} is the figure shown while nothing is typed; may be empty. */
        record Pad(String prompt, String unit, String comesTo, String last) implements PromptPanel {}

        /** A question with its answers; without answers a plain sentence. */
        record Ask(String words, List<ReplyKey> replies) implements PromptPanel {
            public Ask {
                replies = List.copyOf(replies);
            }
        }
    }

    /** A key that answers. */
    public record ReplyKey(String label, Meaning meaning) {}

    /** What an answering key means. */
    public sealed interface Meaning {

        record Answered(Answer answer) implements Meaning {}

        /** Whether the number rises when the plunger is pressed in. */
        record Sense(boolean rises) implements Meaning {}

        /** Whether the gauge shows the figure that its sense was put into. */
        record SenseInFigures(boolean so) implements Meaning {}

        record GaugeMark(String mark) implements Meaning {}

        /** The gauge is set as it was before. */
        record SetAsBefore() implements Meaning {}

        /** The gauge is set otherwise; with the same size, if only its dial reads something else. */
        record SetOtherwise(boolean sameSize) implements Meaning {}

        /** How the register of the machine counts. */
        record Counts(Register register) implements Meaning {}

        /** The run was put away and is gone on with. */
        record TakenUp() implements Meaning {}

        /** All that documents prove is looked at. */
        record Documents() implements Meaning {}

        /** A cut is to be signed for on what is read so far. */
        record CutOnThese() implements Meaning {}

        /** A cut was taken although none was offered: with another tool. */
        record CutTaken() implements Meaning {}

        /** A run-out is read as the highest and the lowest, or at the angles. */
        record Sweep(boolean on) implements Meaning {}

        /** Work was trued up before it was read by angle. */
        record Moved() implements Meaning {}

        /** The first reading of a turn was taken at another place. */
        record StoodElsewhere() implements Meaning {}

        /** The temperatures wait until everything is read, or come before the readings. */
        record ReadingsFirst(boolean on) implements Meaning {}
    }

    /** What the commit key does. */
    public enum Act {
        /** Nothing yet: something must be typed or answered first. */
        WAIT,
        ENTER,
        NEXT,
        CUT_TAKEN,
        JAWS_MOVED,
        READ_AGAIN,
        DISPOSE,
        SIGN,
        GO_TO,
        OTHER_GAUGE,
        DOCUMENT,
        RECORD
    }

    /**
     * The commit key.
     *
     * @param line smaller, under the word; may be empty
     * @param step where {@link Act#GO_TO} leads; 0 for any other
     */
    public record Commit(Act act, String word, String line, int step) {

        static Commit of(Act act, String word, String line) {
            return new Commit(act, word, line, 0);
        }
    }

    /**
     * Which of the lesser keys can be pressed.
     *
     * @param otherWay present where the pass can still be read in another way, trued up by the needle, a cut signed for
     *     before all is read, or told that was taken against the advice
     * @param strike what can be struck out; absent where nothing can
     * @param undo present where the answer given last can be taken back by one tap
     */
    public record Allowed(
            boolean again,
            boolean gauge,
            boolean dispose,
            Optional<Strike> strike,
            Optional<OtherWay> otherWay,
            Optional<Undo> undo) {

        /** What the key says that takes back the answer given last, or else leads to striking out. */
        Optional<String> undoOrStrikeLabel() {
            return undo.map(Undo::label).or(() -> strike.map(Strike::label));
        }
    }

    /**
     * Something of a check can be struck out.
     *
     * @param step the one in hand, or the one that gave way to it while nothing is taken there
     */
    public record Strike(int step, String label) {}

    /**
     * The answer given last.
     *
     * @param entry {@code seq} of the entry that holds it
     * @param label names its check
     */
    public record Undo(long entry, String label) {}

    /**
     * The key that leads to the other way of reading, to the place where the first was taken or to a cut, and what it
     * means.
     */
    public record OtherWay(String label, Meaning meaning) {}
}
