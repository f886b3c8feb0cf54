package org.tenthwise.app.session.hostile;

import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.tenthwise.model.plan.Answer;
import org.tenthwise.model.plan.Question;

/**
 * What a step of a plan demands. All sizes in millimetres.
 *
 * @param drawing whether it is a characteristic of the drawing; a set-up or in-process step otherwise
 * @param hold nothing after this step is open until these are settled
 */
record Facts(int number, boolean drawing, List<Integer> hold, What what) {

    /** What is read or asked, and what it must come to. */
    sealed interface What {}

    /** @param wanted the answer to each question */
    record Asks(String kind, Map<Question, Answer> wanted) implements What {}

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
     */
    record Position(BigDecimal zone, String modifier, int bore, boolean two, boolean ends) implements What {

        int slots() {
            return 2 * (two ? 2 : 1) * (ends ? 2 : 1);
        }

        /** The coordinate that a slot is read against, counted from 1. */
        BigDecimal nominal(int slot) {
            boolean second = two && slot > slots() / 2;
            boolean across = slot % 2 == 1;
            return new BigDecimal(across ? second ? "-20" : "20" : second ? "0" : "15");
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
        Map<String, Object> keys = new LinkedHashMap<>();
        keys.put("number", number);
        keys.put("name", quoted("Check " + number));
        if (inOrder()) {
            keys.put("operation", 10);
            keys.put("method", quoted("As usual."));
        }
        if (!hold.isEmpty()) {
            keys.put("hold", new TreeSet<>(hold));
        }
        String kind = what instanceof Asks asks
                ? asks.kind()
                : what instanceof RunOut
                        ? "run-out"
                        : what instanceof Size size
                                ? size.isPlain() ? size.kind() : "size"
                                : what instanceof Angle
                                        ? "angle"
                                        : what instanceof Position
                                                ? "position"
                                                : what instanceof Scale
                                                        ? "scale"
                                                        : what instanceof Taper
                                                                ? "worked"
                                                                : what instanceof Plug
                                                                        ? "plug-fit"
                                                                        : what instanceof Difference
                                                                                ? "calculated"
                                                                                : what instanceof Thread
                                                                                        ? "thread-over-wires"
                                                                                        : "document";
        if (inOrder()) {
            keys.put("kind", quoted(kind));
        }
        if (drawing == kind.equals("confirm")) {
            keys.put("class", quoted(drawing ? "drawing" : number % 2 == 0 ? "set-up" : "in-process"));
        }
        if (what instanceof Asks) {
            if (kind.equals("go-not-go")) {
                keys.put("go", quoted("Enters."));
                keys.put("not_go", quoted("Does not enter."));
            } else {
                keys.put("what", quoted("It is so."));
            }
        } else if (what instanceof RunOut runOut) {
            keys.put("limit", runOut.limit());
            keys.put(
                    "holding", quoted(List.of("three-jaw", "four-jaw", "collet").get(number % 3)));
            if (runOut.two()) {
                keys.put("sections", "[{ name = \"near\", at = 30 }, { name = \"far\", at = 140 }]");
            }
            keys.put("gauge_kind", quoted("dial-indicator"));
            if (!runOut.angles().isEmpty()) {
                keys.put("angles", runOut.angles());
            }
        } else if (what instanceof Size size) {
            if (!size.isPlain()) {
                keys.put("feature", quoted(size.kind()));
            }
            size.lower().ifPresent(lower -> keys.put("lower", lower));
            size.upper().ifPresent(upper -> keys.put("upper", upper));
            keys.put("places", places(size.places()));
            keys.put("readings_each", size.each());
            if (!size.combine().equals("each")) {
                keys.put(
                        "drawing_says",
                        quoted(Map.of("mean", "SA", "largest", "SX", "smallest", "SN")
                                .get(size.combine())));
            }
            if (size.cutAgain()) {
                keys.put("cut_again", quoted(size.isOutside() ? "too big" : "too small"));
                size.cuts().aim().ifPresent(aim -> keys.put("aim", aim));
                size.cuts().least().ifPresent(least -> keys.put("least_cut", least));
                size.cuts().step().ifPresent(step -> keys.put("offset_step", step));
            }
            keys.put("guard_band", size.guard());
            keys.put("gauge_kind", quoted(size.gauge()));
            if (size.compared()) {
                keys.put("master", size.about());
            }
            keys.put("temperature", quoted(size.warm() ? "ask" : "not-asked"));
        } else if (what instanceof Angle angle) {
            keys.put("lower", quoted(marked(angle.lower())));
            keys.put("upper", quoted(marked(angle.upper())));
            keys.put("guard_band", quoted(marked(angle.guard())));
            keys.put("places", places(angle.places()));
            keys.put("gauge_kind", quoted("bevel-protractor"));
        } else if (what instanceof Scale scale) {
            keys.put("unit", quoted(scale.unit()));
            scale.lower().ifPresent(lower -> keys.put("lower", lower));
            scale.upper().ifPresent(upper -> keys.put("upper", upper));
            scale.rule()
                    .ifPresentOrElse(
                            rule -> keys.put("rule", quoted(rule)), () -> keys.put("guard_band", scale.guard()));
            keys.put("places", places(scale.places()));
            keys.put("gauge_kind", quoted("other-instrument"));
        } else if (what instanceof Taper taper) {
            keys.put("by", quoted("rollers"));
            keys.put("height", 40);
            keys.put("end", quoted("small-down"));
            keys.put("lower", quoted(marked(taper.lower())));
            keys.put("upper", quoted(marked(taper.upper())));
            keys.put("guard_band", quoted(marked(taper.guard())));
            keys.put("places", places(taper.places()));
            keys.put("gauge_kind", quoted("micrometer"));
        } else if (what instanceof Paper paper) {
            keys.put("what", quoted("A certificate."));
            keys.put("where", quoted("Measuring room"));
            keys.put("count", paper.count());
            paper.upper().ifPresent(upper -> keys.put("upper", upper));
        } else if (what instanceof Position position) {
            keys.put("zone", position.zone());
            if (position.bore() > 0) {
                keys.put("modifier", quoted(position.modifier()));
                keys.put("size_step", position.bore());
            }
            keys.put(
                    "holes",
                    position.two()
                            ? "[{ name = \"A\", x = 20, y = 15 }, { name = \"B\", x = -20, y = 0 }]"
                            : "[{ name = \"A\", x = 20, y = 15 }]");
            if (position.ends()) {
                keys.put("ends", "[\"entry\", \"exit\"]");
            }
            keys.put("gauge_kind", quoted("caliper"));
        } else if (what instanceof Plug plug) {
            keys.put("bore_step", plug.bore());
            keys.put("clearance_least", plug.least());
            keys.put("clearance_greatest", plug.greatest());
            keys.put("places", places(plug.places()));
            keys.put("feel", quoted(plug.feel().name().toLowerCase(Locale.ROOT).replace('_', '-')));
            keys.put("gauge_kind", quoted("micrometer"));
        } else if (what instanceof Difference difference) {
            keys.put("of", quoted("one - other"));
            keys.put("names", "{ one = %d, other = %d }".formatted(difference.of(), difference.less()));
            keys.put("lower", difference.lower());
            keys.put("upper", difference.upper());
        } else if (what instanceof Thread thread) {
            keys.put("form", quoted("metric"));
            keys.put("diameter", 10);
            keys.put("pitch", "1.5");
            keys.put("lower", thread.lower());
            keys.put("upper", thread.upper());
            keys.put("wire", thread.wire());
            keys.put("guard_band", thread.guard());
            keys.put("places", places(2));
            keys.put("cut_again", quoted("too big"));
            keys.put("temperature", quoted("not-asked"));
            if (thread.minorStep() > 0) {
                keys.put("minor_step", thread.minorStep());
            }
            thread.minor().ifPresent(minor -> keys.put("minor_diameter", minor));
        }
        return keys.entrySet().stream()
                .map(key -> key.getKey() + " = " + key.getValue())
                .collect(Collectors.joining("\n", inOrder() ? "\n[[step]]\n" : "\n[[elsewhere]]\n", "\n"));
    }

    /** An angle above zero, in minutes that may have decimals, as people write it. */
    static String marked(BigDecimal minutes) {
        BigDecimal[] parts = minutes.divideAndRemainder(new BigDecimal("60"));
        return parts[0].toBigInteger() + "°" + parts[1].toPlainString() + "'";
    }

    private static String quoted(String text) {
        return "\"" + text + "\"";
    }

    private static List<String> places(int count) {
        return IntStream.rangeClosed(1, count)
                .mapToObj(i -> quoted("place " + i))
                .toList();
    }
}
