package org.tenthwise.app.session.hostile;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.IntStream;
import org.tenthwise.model.plan.Answer;
import org.tenthwise.model.plan.Question;

/**
 * What a step of a plan demands. All sizes in millimetres.
 *
 * @param drawing whether it is a characteristic of the drawing; a set-up or in-process step otherwise
 * @param hold nothing after this step is open until these are settled
 * @param when for which pieces it is asked, as the plan has it; empty for each
 */
record Facts(int number, boolean drawing, List<Integer> hold, Set<String> when, What what) {

    /** What is read or asked, and what it must come to. */
    sealed interface What {}

    /**
     * @param wanted the answer to each question
     * @param certified whether a limit gauge has the sizes of its certificate
     */
    record Asks(String kind, Map<Question, Answer> wanted, boolean certified) implements What {

        Asks(String kind, Map<Question, Answer> wanted) {
            this(kind, wanted, false);
        }
    }

    /**
     * @param angles none for the eight that a plan without angles has; evenly round otherwise @param two whether it is
     *     read at two sections
     */
    record RunOut(BigDecimal limit, List<Integer> angles, boolean two) implements What {

        List<Integer> read() {
            return angles.isEmpty()
                    ? IntStream.range(0, 8).map(i -> 45 * i).boxed().toList()
                    : angles;
        }
    }

    /**
     * @param kind bore, width, diameter or depth; or the feature of a size
     * @param combine each, mean, largest, smallest or range; all but each where the drawing says so
     * @param compared whether the gauge is set on a master
     * @param warm whether temperatures are taken
     * @param cuts what the plan says of the next cut
     */
    record Size(
            String kind,
            Optional<BigDecimal> lower,
            Optional<BigDecimal> upper,
            int places,
            int each,
            String combine,
            boolean cutAgain,
            BigDecimal guard,
            boolean compared,
            boolean warm,
            Cuts cuts)
            implements What {

        private static final Set<String> PLAIN = Set.of("bore", "width", "diameter", "depth");

        BigDecimal about() {
            return lower.or(() -> upper).orElseThrow();
        }

        /** Whether it gets less where metal comes off. */
        boolean isOutside() {
            return kind.equals("diameter") || kind.equals("thickness");
        }

        /** Whether it is a kind by itself, or a size of a feature that is named. */
        boolean isPlain() {
            return PLAIN.contains(kind);
        }

        /** Whether the register that is asked for counts it. */
        boolean isRound() {
            return kind.equals("bore") || kind.equals("diameter");
        }

        String gauge() {
            return compared
                    ? "bore-gauge"
                    : isOutside()
                            ? "micrometer"
                            : kind.equals("depth") || kind.equals("length") ? "depth-gauge" : "inside-micrometer";
        }
    }

    /** Of the next cut: a word or a size to aim at, the least depth, the least step of the register. */
    record Cuts(Optional<String> aim, Optional<BigDecimal> least, Optional<BigDecimal> step) {

        static final Cuts UNSAID = new Cuts(Optional.empty(), Optional.empty(), Optional.empty());
    }

    /** In minutes of arc, read with a protractor. */
    record Angle(BigDecimal lower, BigDecimal upper, int places, BigDecimal guard) implements What {}

    /**
     * A zone about X 20, Y 15 and, where there are two holes, about X -20, Y 0.
     *
     * @param modifier none, mmc or lmc
     * @param bore number of the step that measures the size; 0 without a modifier
     * @param two whether there are two holes
     * @param ends whether each is read at both ends
     * @param polar whether they are read by radius and angle
     */
    record Position(BigDecimal zone, String modifier, int bore, boolean two, boolean ends, boolean polar)
            implements What {

        int slots() {
            return 2 * (two ? 2 : 1) * (ends ? 2 : 1);
        }

        /** The coordinate that a slot is read against, counted from 1. */
        BigDecimal nominal(int slot) {
            boolean second = two && slot > slots() / 2;
            boolean across = slot % 2 == 1;
            return new BigDecimal(across ? second ? "-20" : "20" : second ? "0" : "15");
        }

        /** The same by radius, in mm, and angle, in degrees: 15, 20 and 25 make a right angle. */
        BigDecimal polar(int slot) {
            boolean second = two && slot > slots() / 2;
            boolean radius = slot % 2 == 1;
            return new BigDecimal(radius ? second ? "20" : "25" : second ? "180" : "36.8699");
        }
    }

    /** In the unit of a scale, in tenths. @param rule of roughness, over an upper limit; absent for anything else */
    record Scale(
            String unit,
            Optional<BigDecimal> lower,
            Optional<BigDecimal> upper,
            int places,
            BigDecimal guard,
            Optional<String> rule)
            implements What {

        boolean bySteps() {
            return rule.equals(Optional.of("16-percent"));
        }
    }

    /**
     * The included angle of a taper over two rollers on a plate and on blocks 40 high, small end down, in minutes of
     * arc.
     */
    record Taper(BigDecimal lower, BigDecimal upper, int places, BigDecimal guard) implements What {}

    /**
     * What an indicator shows over a sweep, in thousandths.
     *
     * @param of the word of the plan for what moves
     * @param datumBy the word of the plan for what stands for the datum; empty for a flatness
     */
    record Indicated(String of, String datumBy, BigDecimal limit, int places, BigDecimal guard) implements What {}

    record Plug(int bore, BigDecimal least, BigDecimal greatest, int places, Answer feel) implements What {}

    /**
     * M10 x 1.5 over wires. @param minorStep 0 where none measures the root; @param minor absent where the plan gives
     * none
     */
    record Thread(
            BigDecimal lower,
            BigDecimal upper,
            BigDecimal wire,
            int minorStep,
            Optional<BigDecimal> minor,
            BigDecimal guard)
            implements What {}

    /**
     * What a document proves.
     *
     * @param elsewhere whether it stands outside the order of work
     * @param upper what its figures are judged against; absent where they are not
     */
    record Paper(boolean elsewhere, Optional<BigDecimal> upper, int count) implements What {}

    /** Whether it is asked in its turn: only then can a hold point keep it shut. */
    boolean inOrder() {
        return !(what instanceof Paper paper && paper.elsewhere());
    }

    /** One size less another, with limits of the difference; both steps are sizes. */
    record Difference(int of, int less, BigDecimal lower, BigDecimal upper) implements What {}

    /** Steps whose readings this one uses. */
    Set<Integer> restsOn() {
        if (what instanceof Difference difference) {
            return new TreeSet<>(List.of(difference.of(), difference.less()));
        }
        if (what instanceof Plug plug) {
            return Set.of(plug.bore());
        }
        if (what instanceof Position position && position.bore() > 0) {
            return Set.of(position.bore());
        }
        return what instanceof Thread thread && thread.minorStep() > 0 ? Set.of(thread.minorStep()) : Set.of();
    }

    /** The step as a plan file has it. */
    String toml() {
        return new StepText(this).toml();
    }
}
