package org.tenthwise.model.run;

import java.util.Optional;
import org.tenthwise.model.plan.PartId;
import org.tenthwise.model.plan.PlanSource;
import org.tenthwise.model.words.Refused;

/**
 * What can happen in a run. A correction is one more event; none is ever changed or taken away.
 *
 * <p>What all kinds can be asked is a method here; what is done with each kind in its own way is a {@link Cases}, so
 * that a new kind does not compile until every one of them names it.
 */
public sealed interface Event
        permits Event.Begun,
                Event.StruckOut,
                Event.HandedOver,
                Event.Signed,
                Event.Closed,
                Event.PutAway,
                Event.TakenUp,
                Event.TakenOver,
                Event.Sealed,
                Event.Unknown,
                ImportEvent,
                MatterSettled,
                ReportEvent,
                ShopEvent,
                StepEvent {

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

        R gaugeKnown(ShopEvent.GaugeKnown event);

        R calibrationKnown(ShopEvent.CalibrationKnown event);

        R machineKnown(ShopEvent.MachineKnown event);

        R cutOnThese(StepEvent.CutOnThese event);

        R gaugeChosen(StepEvent.GaugeChosen event);

        R gaugeSet(StepEvent.GaugeSet event);

        R readingTaken(StepEvent.ReadingTaken event);

        R temperatureTaken(StepEvent.TemperatureTaken event);

        R struckOut(StruckOut event);

        R answered(StepEvent.Answered event);

        R documentGiven(StepEvent.DocumentGiven event);

        R passBegun(StepEvent.PassBegun event);

        R doubtFlagged(StepEvent.DoubtFlagged event);

        R noteMade(StepEvent.NoteMade event);

        R dispositionSigned(StepEvent.DispositionSigned event);

        R handedOver(HandedOver event);

        R signed(Signed event);

        R closed(Closed event);

        R putAway(PutAway event);

        R takenUp(TakenUp event);

        R takenOver(TakenOver event);

        R sealed(Sealed event);

        R imported(ImportEvent.Imported event);

        R importLost(ImportEvent.Lost event);

        R reportDrawnUp(ReportEvent.ReportDrawnUp event);

        R reportSigned(ReportEvent.ReportSigned event);

        R matterSettled(MatterSettled event);

        R unknown(Unknown event);
    }

    /**
     * A run was begun on a part; the plan in force is kept with it.
     *
     * @param lot material lot; empty where none was said
     * @param noLot whether it was said on purpose that there is no lot
     * @param earlier what the store knew of the part number then; absent where that was not kept
     * @param occasion what it was begun for; {@link Occasion#NOT_STATED} in runs of older releases
     */
    record Begun(
            PartId part,
            String serial,
            String lot,
            String machine,
            PlanSource plan,
            boolean noLot,
            Occasion occasion,
            Optional<Earlier> earlier)
            implements Event {

        public Begun {
            if (noLot && !lot.isEmpty()) {
                throw new Refused("model.event.either-lot");
            }
        }

        public Begun(PartId part, String serial, String lot, String machine, PlanSource plan) {
            this(part, serial, lot, machine, plan, false);
        }

        public Begun(PartId part, String serial, String lot, String machine, PlanSource plan, boolean noLot) {
            this(part, serial, lot, machine, plan, noLot, Occasion.NOT_STATED);
        }

        public Begun(
                PartId part,
                String serial,
                String lot,
                String machine,
                PlanSource plan,
                boolean noLot,
                Occasion occasion) {
            this(part, serial, lot, machine, plan, noLot, occasion, Optional.empty());
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.begun(this);
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
     * The run was closed by a signature; nothing but notes, further signatures, settings found wrong that are struck
     * out, and what is said, struck out and signed of what is proven elsewhere, may follow.
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
     * The run was begun by mistake, or leads nowhere, and is put away: it is neither closed nor accepted, and nothing
     * is taken in it until it is taken up again. What was read stays.
     *
     * @param putAwayBy who says so
     */
    record PutAway(String putAwayBy, String reason) implements Event {

        public PutAway {
            if (reason.isBlank() || putAwayBy.isBlank()) {
                throw new Refused("model.event.put-away");
            }
        }

        @Override
        public Optional<String> names() {
            return Optional.of(putAwayBy);
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.putAway(this);
        }
    }

    /** A run that was put away is gone on with. */
    record TakenUp() implements Event {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.takenUp(this);
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
     * The key of a station signed the run as it stood: its head, and with that every entry before this one. It means
     * nothing for the run, and is no person's signature.
     *
     * @param place how many entries the run had
     * @param head hash over all of them, 64 hex digits
     * @param fingerprint of the key, 64 hex digits
     * @param key the public half, in Base64
     * @param signature in Base64
     */
    record Sealed(long place, String head, String fingerprint, String key, String signature) implements Event {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.sealed(this);
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
