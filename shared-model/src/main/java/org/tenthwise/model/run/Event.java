package org.tenthwise.model.run;

import java.util.Optional;
import org.tenthwise.model.gauge.Gauge;
import org.tenthwise.model.gauge.Setting;
import org.tenthwise.model.plan.Aim;
import org.tenthwise.model.plan.Answer;
import org.tenthwise.model.plan.MeasuredBody;
import org.tenthwise.model.plan.PartId;
import org.tenthwise.model.plan.PlanSource;
import org.tenthwise.model.plan.Question;
import org.tenthwise.model.plan.Register;
import org.tenthwise.model.quantity.Degrees;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.words.Refused;

/**
 * What can happen in a run. A correction is one more event; none is ever changed or taken away.
 *
 * <p>What all kinds can be asked is a method here; what is done with each kind in its own way is a {@link Cases}, so
 * that a new kind does not compile until every one of them names it.
 */
public sealed interface Event {

    /** The step it happened at; absent for what happened to the whole run or to the shop. */
    default Optional<Integer> at() {
        return Optional.empty();
    }

    /** Whether it changes what is found at its step. */
    default boolean changesTheFinding() {
        return false;
    }

    /** Whether metal comes off the work with it, or may. */
    default boolean takesMetal() {
        return false;
    }

    /** Whether it can be struck out later. */
    default boolean canBeStruckOut() {
        return false;
    }

    /** The person it names, besides who entered it. */
    default Optional<String> names() {
        return Optional.empty();
    }

    /** What it says, where it is of that kind; for whoever asks for one kind alone. */
    default <E extends Event> Optional<E> as(Class<E> kind) {
        return Optional.of(this).filter(kind::isInstance).map(kind::cast);
    }

    <R> R match(Cases<R> cases);

    /** Something for each kind of event. */
    interface Cases<R> {

        R begun(Begun event);

        R gaugeKnown(GaugeKnown event);

        R machineKnown(MachineKnown event);

        R cutOnThese(CutOnThese event);

        R gaugeChosen(GaugeChosen event);

        R gaugeSet(GaugeSet event);

        R readingTaken(ReadingTaken event);

        R temperatureTaken(TemperatureTaken event);

        R struckOut(StruckOut event);

        R answered(Answered event);

        R passBegun(PassBegun event);

        R doubtFlagged(DoubtFlagged event);

        R noteMade(NoteMade event);

        R dispositionSigned(DispositionSigned event);

        R handedOver(HandedOver event);

        R signed(Signed event);

        R closed(Closed event);

        R takenOver(TakenOver event);

        R unknown(Unknown event);
    }

    /** What happens at a step, or, with step 0, is said of the whole run. */
    sealed interface AtStep extends Event {

        int step();

        @Override
        default Optional<Integer> at() {
            return Optional.of(step()).filter(number -> number != 0);
        }
    }

    /** What is found out at a step, of the pass in hand. */
    sealed interface TakenInPass extends AtStep {

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
     * A run was begun on a part; the plan in force is kept with it.
     *
     * @param lot material lot; empty where none was said
     * @param noLot whether it was said on purpose that there is no lot
     */
    record Begun(PartId part, String serial, String lot, String machine, PlanSource plan, boolean noLot)
            implements Event {

        public Begun {
            if (noLot && !lot.isEmpty()) {
                throw new Refused("model.event.either-lot");
            }
        }

        public Begun(PartId part, String serial, String lot, String machine, PlanSource plan) {
            this(part, serial, lot, machine, plan, false);
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.begun(this);
        }
    }

    /** A gauge was made known to the shop, its sense asked where the kind has one. */
    record GaugeKnown(Gauge gauge) implements Event {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.gaugeKnown(this);
        }
    }

    /**
     * How the register of a machine counts across the axis, and the aim that is usual on it: kept in a run of that
     * machine, and for the shop, so that the next run on it need not ask.
     *
     * @param machine as the run names it; may be empty in a run that names none
     */
    record MachineKnown(String machine, Register register, Aim.ByLimits usual) implements Event {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.machineKnown(this);
        }
    }

    /**
     * Someone takes it upon himself to cut on what is read so far, though places or temperatures of the pass are
     * missing. It holds until anything of the step changes.
     */
    record CutOnThese(int step, String reason) implements AtStep {

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
    record GaugeChosen(int step, String mark, Optional<String> reference) implements AtStep {

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
    record GaugeSet(int step, Setting setting) implements AtStep {
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

    /**
     * An entry of the run, a reading, a temperature, an answer or the setting of a gauge, no longer counts, and why. It
     * stays in the record. What was read under a setting that is struck out does not count either.
     */
    record StruckOut(long entry, String reason) implements Event {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.struckOut(this);
        }
    }

    /** A question was answered. A later answer to the same question in the same pass takes its place. */
    record Answered(int step, Question question, Answer answer) implements TakenInPass {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.answered(this);
        }
    }

    /** The work was cut, moved or mended and is measured anew; the readings so far stay as an earlier pass. */
    record PassBegun(int step, Why why) implements AtStep {

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
             * Another step whose value it uses was measured anew or corrected. Follows by itself, is never an entry.
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
    record DoubtFlagged(int step, String words) implements AtStep {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.doubtFlagged(this);
        }
    }

    record NoteMade(int step, String words) implements AtStep {
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
            implements AtStep {

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

    /** Another person took the run over. */
    record HandedOver(String to) implements Event {
        @Override
        public Optional<String> names() {
            return Optional.of(to);
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.handedOver(this);
        }
    }

    /** A signature that leaves the run as open or as closed as it was. */
    record Signed(String signedBy, SignedAs meaning) implements Event {
        public Signed {
            if (meaning == SignedAs.OTHER) {
                throw new Refused("model.event.signature-one");
            }
        }

        @Override
        public Optional<String> names() {
            return Optional.of(signedBy);
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.signed(this);
        }
    }

    /**
     * The run was closed by a signature; nothing but notes, further signatures, and settings found wrong that are
     * struck out, may follow.
     *
     * @param meaning in the words it was signed with; older runs have words that nobody chose from a list
     */
    record Closed(String signedBy, String meaning) implements Event {

        public Closed(String signedBy, SignedAs meaning) {
            this(signedBy, meaning.word());
        }

        /** What the words mean. */
        public SignedAs as() {
            return SignedAs.of(meaning);
        }

        @Override
        public Optional<String> names() {
            return Optional.of(signedBy);
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.closed(this);
        }
    }

    /**
     * A store of an earlier release was taken over: the entry vouches for those before it in the run. It means nothing
     * for the run.
     */
    record TakenOver() implements Event {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.takenOver(this);
        }
    }

    /**
     * Something of a kind this release does not know: a newer one made the entry. It is kept as it is and never
     * written. What it says of the run cannot be told, so a run that holds one is never shown to conform.
     *
     * @param kind the word it is stored under
     * @param text what is stored of it, not understood
     */
    record Unknown(String kind, String text) implements Event {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.unknown(this);
        }
    }
}
