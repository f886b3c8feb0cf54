package org.tenthwise.model.run;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Who signed what in a run, and whether that still holds.
 *
 * @param entry holds when it was signed
 * @param words as signed; those of an older run may be any
 * @param closed whether the run was closed with it
 * @param lapse why it holds no more; absent while it holds
 */
public record Signature(
        Entry entry, String signedBy, SignedAs meaning, String words, boolean closed, Optional<Lapse> lapse) {

    /** Why a signature holds no more. */
    public enum Lapse {
        /** What it was signed for was changed by a later entry. */
        CHANGED,
        /** The same person accepted or refused anew. */
        SIGNED_ANEW
    }

    /** Every signature of a run, in the order they were given. */
    static List<Signature> of(List<Entry> entries) {
        List<Signature> signatures = new ArrayList<>();
        for (Entry entry : entries) {
            if (changesAFinding(entry.event())) {
                boolean paper = isOfAPaper(entry.event(), entries);
                signatures.replaceAll(signature -> signature.lapsed() || paper && !signature.decides()
                        ? signature
                        : signature.lapsing(Lapse.CHANGED));
            }
            read(entry).ifPresent(later -> {
                signatures.replaceAll(
                        signature -> later.replaces(signature) ? signature.lapsing(Lapse.SIGNED_ANEW) : signature);
                signatures.add(later);
            });
        }
        return List.copyOf(signatures);
    }

    /**
     * Whether it speaks against the part, among {@code all} of its run. A refusal is not overcome by a change alone,
     * but by an acceptance after the change, whoever gives it; without a change only who refused can take it back.
     */
    public boolean standsAgainst(List<Signature> all) {
        if (!meaning.isAgainst() || lapse.filter(Lapse.SIGNED_ANEW::equals).isPresent()) {
            return false;
        }
        return !lapsed()
                || all.stream()
                        .noneMatch(later -> later.meaning == SignedAs.ACCEPTED
                                && !later.lapsed()
                                && later.entry.seq() > entry.seq());
    }

    public boolean lapsed() {
        return lapse.isPresent();
    }

    private boolean replaces(Signature earlier) {
        return !earlier.lapsed() && decides() && earlier.decides() && Person.isSame(signedBy, earlier.signedBy);
    }

    /** Whether it says yes or no, or may do so. */
    private boolean decides() {
        return meaning == SignedAs.ACCEPTED || meaning.isAgainst();
    }

    private Signature lapsing(Lapse why) {
        return new Signature(entry, signedBy, meaning, words, closed, Optional.of(why));
    }

    private static Optional<Signature> read(Entry entry) {
        if (entry.event() instanceof Event.Signed signed) {
            return Optional.of(new Signature(
                    entry, signed.signedBy(), signed.meaning(), signed.meaning().word(), false, Optional.empty()));
        }
        return entry.event() instanceof Event.Closed closed
                ? Optional.of(
                        new Signature(entry, closed.signedBy(), closed.as(), closed.meaning(), true, Optional.empty()))
                : Optional.empty();
    }

    /**
     * Whether a paper was entered or struck out: nothing that was made or measured here is another by it, but what the
     * part comes to may be.
     */
    private static boolean isOfAPaper(Event event, List<Entry> entries) {
        return event instanceof StepEvent.DocumentGiven
                || event instanceof Event.StruckOut out
                        && entries.stream()
                                .anyMatch(entry ->
                                        entry.seq() == out.entry() && entry.event() instanceof StepEvent.DocumentGiven);
    }

    static boolean changesAFinding(Event event) {
        return !(event instanceof Event.Signed
                || event instanceof Event.Closed
                || event instanceof StepEvent.NoteMade
                || event instanceof StepEvent.DoubtFlagged
                || event instanceof Event.HandedOver
                || event instanceof Event.Begun
                || event instanceof ShopEvent.GaugeKnown
                || event instanceof ShopEvent.CalibrationKnown known && !known.putsRight()
                || event instanceof ShopEvent.MachineKnown
                || event instanceof ReportEvent.ReportDrawnUp
                || event instanceof ReportEvent.ReportSigned
                || event instanceof MatterSettled
                || event instanceof Event.TakenOver
                || event instanceof Event.Sealed);
    }
}
