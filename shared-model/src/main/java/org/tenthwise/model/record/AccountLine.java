package org.tenthwise.model.record;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.tenthwise.model.plan.BalloonNumber;
import org.tenthwise.model.plan.OnDrawing;
import org.tenthwise.model.verdict.VerdictKind;

/** A line of the account of a drawing: one requirement, and what became of it. */
public sealed interface AccountLine {

    /** Its number on the drawing; absent for a requirement that the plan gives none. */
    Optional<BalloonNumber> balloon();

    /** What the drawing says of it. */
    OnDrawing drawing();

    /** How it stands. */
    VerdictKind standing();

    /** What {@code cases} has for this kind. */
    <R> R match(Cases<R> cases);

    /** Something for each kind of line. */
    interface Cases<R> {

        R checked(Checked line);

        R unanswered(Unanswered line);

        R notInThisRun(NotInThisRun line);
    }

    /**
     * What a check of the drawing found.
     *
     * @param line of the check
     * @param instances those of several alike it tells of, rising; empty where there is one alone
     * @param measured readings behind it, in the order of the check; empty for what only asks
     */
    record Checked(
            Optional<BalloonNumber> balloon,
            Line line,
            List<Integer> instances,
            List<Measured> measured,
            VerdictKind standing)
            implements AccountLine {

        public Checked {
            instances = List.copyOf(instances);
            measured = List.copyOf(measured);
        }

        @Override
        public OnDrawing drawing() {
            return line.step().drawing();
        }

        /** The reading of the least size; absent where nothing is read. */
        public Optional<Measured> least() {
            return measured.stream().min(Comparator.comparing(Measured::value));
        }

        /** The reading of the greatest size; absent where nothing is read. */
        public Optional<Measured> greatest() {
            return measured.stream().max(Comparator.comparing(Measured::value));
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.checked(this);
        }
    }

    /**
     * What a check of the drawing would find, were it in this run: nothing is known of it here.
     *
     * @param line of the check
     */
    record NotInThisRun(Optional<BalloonNumber> balloon, Line line) implements AccountLine {

        @Override
        public OnDrawing drawing() {
            return line.step().drawing();
        }

        @Override
        public VerdictKind standing() {
            return VerdictKind.OPEN;
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.notInThisRun(this);
        }
    }

    /** A balloon that only checks on the way name: nothing shows yet that the finished part is so. */
    record Unanswered(Optional<BalloonNumber> balloon, OnDrawing drawing) implements AccountLine {

        @Override
        public VerdictKind standing() {
            return VerdictKind.OPEN;
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.unanswered(this);
        }
    }
}
