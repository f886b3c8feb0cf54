package org.tenthwise.model.plan;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.tenthwise.model.gauge.GaugeKind;
import org.tenthwise.model.gauge.Uncertainty;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.thread.ScrewThread;
import org.tenthwise.model.tolerance.Limits;

/** What a step asks for. Kinds that measure have slots for readings; kinds that ask have questions. */
public sealed interface Check {

    /** Room for the readings of one pass, in the order they are taken; empty for a kind that only asks. */
    default List<Slot> slots() {
        return List.of();
    }

    /** The same with what can be read instead or beside: the sweep of a run-out. */
    default List<Slot> everySlot() {
        return slots();
    }

    /** Whether its cut is typed into the register that counts across the axis. */
    default boolean isTurned() {
        return false;
    }

    /** Questions answered by a tap, in the order they are asked; empty for a kind that only measures. */
    default List<Question> questions() {
        return List.of();
    }

    /** What it is measured or gauged with; absent for what is only confirmed or seen. */
    default Optional<Means> means() {
        return Optional.empty();
    }

    /**
     * Numbers of the steps whose value this check uses, directly or through another: what was found here lapses when
     * one of them is measured anew.
     */
    default List<Integer> restsOn() {
        return List.of();
    }

    /**
     * The gauge a check is made with.
     *
     * @param gauge mark of the gauge the plan expects; absent if any of the kind will do
     * @param reference nominal size of the master, or of the wires, where the kind needs one
     * @param uncertainty of a size measured so; absent if the plan names none
     */
    record Means(
            GaugeKind kind, Optional<String> gauge, Optional<Written> reference, Optional<Uncertainty> uncertainty) {

        /** Of unknown uncertainty. */
        public Means(GaugeKind kind, Optional<String> gauge, Optional<Written> reference) {
            this(kind, gauge, reference, Optional.empty());
        }
    }

    /** Something done or so, or not: a set-up, a tip, the lot on the bar. */
    record Confirm(String what) implements Check {
        @Override
        public List<Question> questions() {
            return List.of(Question.CONFIRMED);
        }
    }

    /** Something that can only be seen. */
    record Look(String what) implements Check {
        @Override
        public List<Question> questions() {
            return List.of(Question.LOOKS_RIGHT);
        }
    }

    /**
     * A limit gauge with a go and a not-go end.
     *
     * @param go what the go end must do, in the plan's words
     * @param notGo what the not-go end must not do, in the plan's words
     */
    record GoNotGo(String go, String notGo, Optional<String> gauge) implements Check {
        @Override
        public List<Question> questions() {
            return List.of(Question.GO_ENTERS, Question.NOT_GO_STAYS_OUT);
        }

        @Override
        public Optional<Means> means() {
            return Optional.of(new Means(GaugeKind.LIMIT_GAUGE, gauge, Optional.empty()));
        }
    }

    /**
     * Run-out of a round surface.
     *
     * <p>It is judged by a full slow turn, {@link #HIGHEST} and {@link #LOWEST}. Readings by angle, in the same pass,
     * tell to which side the work stands.
     *
     * @param limit greatest full indicator movement
     * @param angles degrees, in the order they come under the indicator; at least one
     * @param holding what holds the work
     * @param firstJaw degrees at which jaw 1 stands; the others follow evenly, in the direction of rising angle
     * @param sections where along the part it is read, the one nearest to the jaws first; empty where the plan does not
     *     say, and then it is read at one
     */
    record RunOut(
            Written limit,
            List<BigDecimal> angles,
            Holding holding,
            BigDecimal firstJaw,
            List<Section> sections,
            Means with)
            implements Check {

        /** Slot of the highest reading over a full turn. */
        public static final String HIGHEST = "highest";
        /** Slot of the lowest reading over a full turn. */
        public static final String LOWEST = "lowest";

        public RunOut {
            angles = List.copyOf(angles);
            sections = List.copyOf(sections);
        }

        /** 3 or 4; 0 where there are none. */
        public int jaws() {
            return holding.jaws();
        }

        /** The room at each section, the one nearest to the jaws first; one where the plan names no section. */
        public List<SectionSlots> bySection() {
            return SectionSlots.of(sections, angles);
        }

        /** The section a slot belongs to; absent where the plan names none. */
        public Optional<Section> section(Slot slot) {
            return bySection().stream()
                    .filter(at -> at.slots().anyMatch(slot::equals))
                    .findFirst()
                    .flatMap(SectionSlots::section);
        }

        /** The slots by angle, at every section. */
        @Override
        public List<Slot> slots() {
            return bySection().stream().flatMap(at -> at.byAngle().stream()).toList();
        }

        @Override
        public List<Slot> everySlot() {
            return bySection().stream().flatMap(SectionSlots::slots).toList();
        }

        @Override
        public Optional<Means> means() {
            return Optional.of(with);
        }
    }

    /** A size of the work, read at places, set against limits and brought in by cutting. */
    sealed interface OfSize extends Check {

        /** What kind of size it is cut as: a thread is cut like an outside diameter. */
        Feature feature();

        Limits limits();

        /** Where it is read. */
        List<Place> places();

        /** Readings at every place, one or more. */
        int readingsEach();

        Combine combine();

        /** Whether a size out on the side where metal is left may be cut again. */
        boolean cutAgain();

        /** Taken off inside both limits; nought for none. */
        Written guardBand();

        Means with();

        /** What the plan says of the next cut. */
        Cutting cutting();

        /** The modifier of the drawing; absent for two-point sizes that it does not mention, and in older plans. */
        Optional<SizeModifier> drawingSays();

        @Override
        default boolean isTurned() {
            return feature().isRound();
        }

        /** Whether so much off the size is less than the tool can cut, as far as the plan says. */
        default boolean isTooLittleToCut(Length comesOff) {
            return cutting()
                    .leastCut()
                    .filter(least -> feature().depthOfCut(comesOff).isBelow(least.length()))
                    .isPresent();
        }

        /** Whether the drawing makes one size of all readings, and binds that alone by the limits. */
        default boolean isOne() {
            return drawingSays().filter(modifier -> modifier != SizeModifier.LP).isPresent();
        }

        @Override
        default List<Slot> slots() {
            return slotsOf(places(), readingsEach());
        }

        @Override
        default Optional<Means> means() {
            return Optional.of(with());
        }
    }

    /**
     * A plain size: bore, pocket width, outside diameter, depth.
     *
     * @param contact what a reading is of
     */
    record Size(
            Feature feature,
            Limits limits,
            List<Place> places,
            int readingsEach,
            Combine combine,
            boolean cutAgain,
            Written guardBand,
            Means with,
            Cutting cutting,
            Optional<SizeModifier> drawingSays,
            Contact contact)
            implements OfSize {

        public Size {
            places = List.copyOf(places);
        }

        /** Read square across, with nothing said of the next cut nor of a modifier. */
        public Size(
                Feature feature,
                Limits limits,
                List<Place> places,
                int readingsEach,
                Combine combine,
                boolean cutAgain,
                Written guardBand,
                Means with) {
            this(
                    feature,
                    limits,
                    places,
                    readingsEach,
                    combine,
                    cutAgain,
                    guardBand,
                    with,
                    Cutting.UNSAID,
                    Optional.empty(),
                    Contact.SQUARE);
        }

        @Override
        public List<Question> questions() {
            return contact instanceof Contact.AcrossGrooves grooves && grooves.standsAskew()
                    ? List.of(Question.GROOVES_TOUCHED)
                    : List.of();
        }
    }

    /**
     * A plug in a bore measured before.
     *
     * @param boreStep number of the step that measured the bore
     * @param clearance wanted clearance, bore less plug; a negative one is interference
     * @param places where the plug is measured
     * @param feel what the hand must find
     */
    record PlugFit(int boreStep, Limits clearance, List<Place> places, PlugFeel feel, Means with) implements Check {

        public PlugFit {
            places = List.copyOf(places);
        }

        @Override
        public List<Slot> slots() {
            return slotsOf(places, 1);
        }

        @Override
        public List<Question> questions() {
            return List.of(Question.PLUG_FEELS);
        }

        @Override
        public List<Integer> restsOn() {
            return List.of(boreStep);
        }

        @Override
        public Optional<Means> means() {
            return Optional.of(with);
        }
    }

    /**
     * Pitch diameter of an external thread, over three wires.
     *
     * @param pitchDiameter limits of the pitch diameter
     * @param minorDiameter greatest minor diameter, for the room between wire and root; absent if the drawing gives
     *     none
     * @param minorStep number of the step that measured the minor diameter, which then serves instead
     */
    record OverWires(
            ScrewThread thread,
            Limits pitchDiameter,
            Optional<Written> minorDiameter,
            Optional<Integer> minorStep,
            List<Place> places,
            int readingsEach,
            Combine combine,
            boolean cutAgain,
            Written guardBand,
            Means with,
            Cutting cutting,
            Optional<SizeModifier> drawingSays)
            implements OfSize {

        public OverWires {
            places = List.copyOf(places);
        }

        /** With nothing said of the next cut nor of a modifier. */
        public OverWires(
                ScrewThread thread,
                Limits pitchDiameter,
                Optional<Written> minorDiameter,
                Optional<Integer> minorStep,
                List<Place> places,
                int readingsEach,
                Combine combine,
                boolean cutAgain,
                Written guardBand,
                Means with) {
            this(
                    thread,
                    pitchDiameter,
                    minorDiameter,
                    minorStep,
                    places,
                    readingsEach,
                    combine,
                    cutAgain,
                    guardBand,
                    with,
                    Cutting.UNSAID,
                    Optional.empty());
        }

        @Override
        public Feature feature() {
            return Feature.DIAMETER;
        }

        @Override
        public Limits limits() {
            return pitchDiameter;
        }

        @Override
        public List<Integer> restsOn() {
            return minorStep.stream().toList();
        }
    }

    private static List<Slot> slotsOf(List<Place> places, int readingsEach) {
        return IntStream.range(0, places.size())
                .boxed()
                .flatMap(place -> IntStream.rangeClosed(1, readingsEach)
                        .mapToObj(repeat -> new Slot((place + 1) + "." + repeat, places.get(place), repeat)))
                .toList();
    }
}
