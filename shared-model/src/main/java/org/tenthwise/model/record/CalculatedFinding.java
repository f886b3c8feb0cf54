package org.tenthwise.model.record;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.tenthwise.model.plan.CalculatedCheck;
import org.tenthwise.model.plan.Step;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.verdict.Verdict;
import org.tenthwise.model.words.Message;

/**
 * A size worked out of what other checks found, at its least and at its greatest.
 *
 * @param parts what goes in, in the order of the expression
 * @param least absent while something that goes in is open, and where the expression has no answer
 * @param greatest absent as {@code least}
 * @param value the one of the two that decides
 * @param expanded at k = 2; absent where something that goes in has none
 * @param noAnswer why there is none; absent where there is, and while something is open
 * @param driver the step to look at where it did not pass: one that is open, or in doubt, or moves it most
 */
public record CalculatedFinding(
        Step step,
        CalculatedCheck check,
        List<Part> parts,
        Optional<Length> least,
        Optional<Length> greatest,
        Optional<Length> value,
        Optional<Length> expanded,
        Optional<Message> noAnswer,
        int driver,
        Verdict verdict)
        implements Finding {

    /**
     * What one name stands for.
     *
     * @param step the one it is of
     * @param sizes as the expression takes them, at one place or at several; empty while the step is open
     * @param places they are known to, in the unit of the step
     * @param standing of the step
     */
    public record Part(CalculatedCheck.Use use, Step step, List<Length> sizes, int places, Standing standing) {

        public Part {
            sizes = List.copyOf(sizes);
        }

        boolean is(Standing other) {
            return standing == other;
        }
    }

    /** How far what a step found can be used. */
    public enum Standing {
        FOUND,
        /** Still to be measured or told, or to be cut again: what it comes to then, nobody knows yet. */
        OPEN,
        /** With a figure that is far off, or neither shown to be in nor to be out. */
        DOUBTED
    }

    public CalculatedFinding {
        parts = List.copyOf(parts);
    }

    /** Nothing is taken here; what is still to come is asked for elsewhere. */
    @Override
    public int missing() {
        return 0;
    }

    @Override
    public List<Measured> measured() {
        return List.of();
    }

    /** Those of the finest size that goes in. */
    @Override
    public int places() {
        Unit unit = check.limits().unit();
        return parts.stream()
                .filter(part -> part.step().limits().orElseThrow().unit().equals(unit))
                .mapToInt(Part::places)
                .max()
                .orElse(0);
    }

    @Override
    public List<Length> bothEnds() {
        return comesTo();
    }

    @Override
    public List<Length> comesTo() {
        return Stream.of(least, greatest).flatMap(Optional::stream).toList();
    }

    @Override
    public Optional<Integer> settledFirst() {
        return Optional.of(driver);
    }

    @Override
    public boolean isOfOneSize() {
        return true;
    }

    /** What is far off is so at the step that read it. */
    @Override
    public List<Measured> farOff() {
        return List.of();
    }

    @Override
    public boolean awaitsAnother() {
        return parts.stream().anyMatch(part -> part.is(Standing.OPEN));
    }

    @Override
    public <R> R match(Cases<R> cases) {
        return cases.calculated(this);
    }
}
