package org.tenthwise.app.history;

import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import org.tenthwise.model.record.Outcome;
import org.tenthwise.model.run.Purpose;

/**
 * One run in a line.
 *
 * @param begun place in the ledger of its first entry; of a run that came in from elsewhere, a place behind all those
 *     of this store that is no other's
 * @param id its name in this store, see {@link RunName}
 * @param planHash of the text of the plan kept with it
 * @param by who has it in hand
 * @param people all who wrote or signed in it, in the order they first did
 * @param last place of the last thing done in it, as {@code begun}
 * @param stand what it comes to; absent where its plan or its entries cannot be read by this release
 * @param closing who closed it; absent while it is open
 * @param kind what it was begun for
 */
public record RunFacts(
        long begun,
        String id,
        String part,
        String revision,
        String serial,
        String lot,
        String machine,
        String planHash,
        OffsetDateTime begunAt,
        String by,
        List<String> people,
        long last,
        OffsetDateTime lastAt,
        Optional<Stand> stand,
        Optional<Closing> closing,
        Kind kind) {

    /**
     * What a run comes to.
     *
     * @param issue of its plan
     * @param inHand step it would go on with
     * @param concessions how many characteristics are used though they are not as the drawing has them
     * @param contested whether a signature stands against it
     */
    public record Stand(String issue, int inHand, Outcome outcome, long concessions, boolean contested) {}

    /**
     * What a run was begun for.
     *
     * @param piece which of the lot it is; of a piece in process alone
     */
    public record Kind(Purpose purpose, Optional<Integer> piece) {}

    /** @param meaning in the words it was signed with */
    public record Closing(String signedBy, String meaning) {}

    public RunFacts {
        people = List.copyOf(people);
    }

    /**
     * The same of a run that came in, under its name here.
     *
     * @param behind what its places are counted from here
     */
    RunFacts imported(String name, long behind) {
        return new RunFacts(
                behind + begun,
                name,
                part,
                revision,
                serial,
                lot,
                machine,
                planHash,
                begunAt,
                by,
                people,
                behind + last,
                lastAt,
                stand,
                closing,
                kind);
    }

    /** Whether it was made in another store: it is looked at here, and nothing is added to it. */
    public boolean isImported() {
        return RunName.of(id).isImported();
    }

    /** Whether one ledger tells which of the two came first; the clocks of two tablets need not agree. */
    public boolean isOfOneStoreWith(RunFacts other) {
        return RunName.of(id).origin().equals(RunName.of(other.id).origin());
    }

    /** The same, going on with another step. */
    RunFacts at(int step) {
        return new RunFacts(
                begun,
                id,
                part,
                revision,
                serial,
                lot,
                machine,
                planHash,
                begunAt,
                by,
                people,
                last,
                lastAt,
                stand.map(was -> new Stand(was.issue(), step, was.outcome(), was.concessions(), was.contested())),
                closing,
                kind);
    }

    /** Whether it was put away; of one that cannot be read nobody knows. */
    public boolean putAway() {
        return stand.filter(there -> there.outcome() == Outcome.PUT_AWAY).isPresent();
    }

    public RunShelf shelf() {
        return closed() ? RunShelf.CLOSED : putAway() ? RunShelf.PUT_AWAY : RunShelf.OPEN;
    }

    /** Whether it is among those to go on with. */
    public boolean open() {
        return shelf() == RunShelf.OPEN;
    }

    public boolean closed() {
        return closing.isPresent();
    }
}
