package org.tenthwise.model.run;

import java.util.Optional;
import org.tenthwise.model.gauge.Setting;
import org.tenthwise.model.plan.Answer;
import org.tenthwise.model.plan.MeasuredBody;
import org.tenthwise.model.plan.Question;
import org.tenthwise.model.quantity.Degrees;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.words.Refused;

/** What happens at a step, or is said there. */
public sealed interface StepEvent extends Event {

    /** Its number; zero where it is said of the whole run. */
    int step();

    @Override
    default Optional<Integer> at() {
        return Optional.of(step()).filter(number -> number != 0);
    }

    /** What is found out at a step, of the pass in hand. */
    sealed interface TakenInPass extends StepEvent {

        @Override
        default boolean changesTheFinding() {
            return true;
        }

        @Override
        default boolean canBeStruckOut() {
            return true;
        }
    }

    /**
     * Someone takes it upon himself to cut on what is read so far, though places or temperatures of the pass are
     * missing. It holds until anything of the step changes.
     */
    record CutOnThese(int step, String reason) implements StepEvent {

        public CutOnThese {
            if (reason.isBlank()) {
                throw new Refused("model.event.cut-read");
            }
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.cutOnThese(this);
        }
    }

    /**
     * A gauge was taken for a step and is not set yet: until it is, nothing is read there.
     *
     * @param reference mark of its master or of its wires; absent where they go by their nominal size
     */
    record GaugeChosen(int step, String mark, Optional<String> reference) implements StepEvent {

        public GaugeChosen {
            if (mark.isBlank()) {
                throw new Refused("model.event.gauge-mark");
            }
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.gaugeChosen(this);
        }
    }

    /** The gauge of a step was set. */
    record GaugeSet(int step, Setting setting) implements StepEvent {

        /** The setting that {@code entry} holds, one of {@link Run#settings()} or of those struck out. */
        public static GaugeSet in(Entry entry) {
            return (GaugeSet) entry.event();
        }

        @Override
        public boolean canBeStruckOut() {
            return true;
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.gaugeSet(this);
        }
    }

    /** A reading as typed, of the pass in hand. */
    record ReadingTaken(int step, String slot, Written typed) implements TakenInPass {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.readingTaken(this);
        }
    }

    /**
     * A temperature as read, of the pass in hand: one for all its readings. A later one of the same body in the same
     * pass takes its place.
     */
    record TemperatureTaken(int step, MeasuredBody of, Degrees read) implements TakenInPass {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.temperatureTaken(this);
        }
    }

    /** A question was answered. A later answer to the same question in the same pass takes its place. */
    record Answered(int step, Question question, Answer answer) implements TakenInPass {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.answered(this);
        }
    }

    /**
     * What a paper says of a step was entered. A later one in the same pass takes its place, as that of one which was
     * not there yet.
     */
    record DocumentGiven(int step, Document document) implements TakenInPass {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.documentGiven(this);
        }
    }

    /** The work was cut, moved or mended and is measured anew; the readings so far stay as an earlier pass. */
    record PassBegun(int step, Why why) implements StepEvent {

        public PassBegun {
            if (!why.isSaid()) {
                throw new Refused("model.event.pass-begins");
            }
        }

        /** Why a step is measured anew. */
        public enum Why {
            CUT,
            MOVED,
            MEASURED_AGAIN,
            /**
             * Another step whose value it uses was measured anew or corrected, or one that the same tool cuts was cut.
             * Follows by itself, is never an entry.
             */
            RESTED_ON_CHANGED,
            /** It was given into rework. Follows by itself, is never an entry. */
            REWORKED,
            /** It was given into repair. Follows by itself, is never an entry. */
            REPAIRED;

            /** Whether a person says so, as an entry of its own. */
            public boolean isSaid() {
                return this == CUT || this == MOVED || this == MEASURED_AGAIN;
            }
        }

        @Override
        public boolean changesTheFinding() {
            return true;
        }

        @Override
        public boolean takesMetal() {
            return why == Why.CUT;
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.passBegun(this);
        }
    }

    /** Something looked doubtful; step 0 for the whole run. */
    record DoubtFlagged(int step, String words) implements StepEvent {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.doubtFlagged(this);
        }
    }

    record NoteMade(int step, String words) implements StepEvent {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.noteMade(this);
        }
    }

    /**
     * What is to happen to a step that did not pass, signed by someone with the right.
     *
     * @param document number of the concession, of the approval or of the nonconformance, or the words said in its
     *     place; absent where none was given
     */
    record DispositionSigned(
            int step, Disposition disposition, String reason, String signedBy, Optional<String> document)
            implements StepEvent {

        public DispositionSigned {
            if (document.filter(String::isBlank).isPresent()) {
                throw new Refused("model.event.number-document");
            }
        }

        public DispositionSigned(int step, Disposition disposition, String reason, String signedBy) {
            this(step, disposition, reason, signedBy, Optional.empty());
        }

        @Override
        public boolean changesTheFinding() {
            return disposition.changesTheWork();
        }

        @Override
        public boolean takesMetal() {
            return disposition.changesTheWork();
        }

        @Override
        public Optional<String> names() {
            return Optional.of(signedBy);
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.dispositionSigned(this);
        }
    }
}
