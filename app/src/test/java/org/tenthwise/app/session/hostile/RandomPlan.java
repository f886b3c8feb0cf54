package org.tenthwise.app.session.hostile;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.tenthwise.app.store.Occasions;
import org.tenthwise.checklists.rules.PlanReader;
import org.tenthwise.checklists.rules.PlanReading;
import org.tenthwise.model.plan.Answer;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.plan.Question;
import org.tenthwise.model.run.Baseline;
import org.tenthwise.model.run.Occasion;
import org.tenthwise.model.run.Purpose;

/** A plan of a few steps of any kind, with what the oracle knows of it. */
record RandomPlan(List<Facts> facts, Plan plan) {

    private static final List<String> FEATURES = List.of("width", "depth", "slot", "thickness", "length");

    private static final List<String> MOVEMENTS = List.of(
            "circular-run-out", "axial-run-out", "total-run-out", "squareness", "parallelism", "flatness", "symmetry");

    private static final List<String> DATUMS = List.of("centres", "mandrel", "v-blocks", "same-chucking", "chuck");

    private static final String HEAD =
            """
            format = 1
            part = "H-1"
            revision = "A"
            issue = "1"
            name = "Invented part"
            material = "aluminium alloy"
            drawing = "H-1"
            unit = "mm"
            [temperature]
            part_expansion = 23
            shop_least = 10
            shop_greatest = 35
            [[operation]]
            number = 10
            name = "All of it"
            """;

    static RandomPlan of(Random random) {
        List<Facts> facts = new ArrayList<>();
        int steps = 3 + random.nextInt(4);
        for (int number = 1; number <= steps; number++) {
            facts.add(step(number, facts, random));
        }
        for (int elsewhere = random.nextInt(3); elsewhere > 0; elsewhere--) {
            facts.add(new Facts(facts.size() + 1, true, List.of(), when(random), paper(true, random)));
        }
        String text = HEAD + facts.stream().map(Facts::toml).collect(Collectors.joining());
        PlanReading reading = new PlanReader().read(text);
        if (reading instanceof PlanReading.Good good) {
            return new RandomPlan(List.copyOf(facts), good.plan());
        }
        throw new IllegalStateException(text + ((PlanReading.Bad) reading).problems());
    }

    private static Facts step(int number, List<Facts> before, Random random) {
        Facts.What what = what(before, random);
        boolean confirm = what instanceof Facts.Asks asks && asks.kind().equals("confirm");
        boolean drawing = confirm == (random.nextInt(5) == 0);
        List<Integer> hold = new ArrayList<>();
        if (random.nextInt(3) == 0) {
            hold.add(1 + random.nextInt(number));
        }
        return new Facts(number, drawing, hold, when(random), what);
    }

    private static Set<String> when(Random random) {
        Set<String> when = new TreeSet<>();
        if (random.nextInt(4) == 0) {
            Stream.of("first", "every " + (1 + random.nextInt(3)), "last")
                    .filter(word -> random.nextBoolean())
                    .forEach(when::add);
        }
        return when;
    }

    /** What a run of it is begun for, at random; most often nobody says. */
    Occasion occasion(Random random) {
        Baseline before = new Baseline("H-1-A-0", "ab".repeat(32));
        return switch (random.nextInt(16)) {
            case 0 -> Occasion.of(Purpose.FIRST_PIECE);
            case 1 -> Occasion.of(Purpose.LAST_PIECE);
            case 2, 3 -> Occasions.inProcess(1 + random.nextInt(6));
            case 4, 5 -> Occasions.partialFirstArticle(before, "another tool", some(random));
            case 6 -> Occasions.measuredAgain(before, random.nextBoolean() ? List.of() : some(random));
            case 7 -> Occasions.fullFirstArticle("first of its kind");
            default -> Occasion.NOT_STATED;
        };
    }

    /** One to three of the checks, whatever they are. */
    private List<Integer> some(Random random) {
        return random.ints(1 + random.nextInt(3), 1, facts.size() + 1).boxed().toList();
    }

    private static Facts.What what(List<Facts> before, Random random) {
        List<Integer> bores = numbers(before, "bore");
        List<Integer> roots = numbers(before, "diameter");
        return switch (random.nextInt(18)) {
            case 0 -> new Facts.Asks("confirm", Map.of(Question.CONFIRMED, Answer.YES));
            case 1 -> new Facts.Asks("look", Map.of(Question.LOOKS_RIGHT, Answer.YES));
            case 2 ->
                new Facts.Asks(
                        "go-not-go",
                        new EnumMap<>(Map.of(Question.GO_ENTERS, Answer.YES, Question.NOT_GO_STAYS_OUT, Answer.YES)),
                        random.nextBoolean());
            case 3 ->
                new Facts.RunOut(
                        dec("0.020"),
                        List.of(
                                        List.<Integer>of(),
                                        List.of(0, 90, 180, 270),
                                        List.of(0, 60, 120, 180, 240, 300),
                                        List.of(0, 120, 240))
                                .get(random.nextInt(4)),
                        random.nextInt(3) == 0);
            case 4, 5 ->
                bores.isEmpty()
                        ? bore(random)
                        : new Facts.Plug(
                                bores.get(random.nextInt(bores.size())),
                                dec("0.002"),
                                dec("0.012"),
                                1 + random.nextInt(2),
                                random.nextBoolean() ? Answer.FREELY : Answer.WITH_DRAG);
            case 6 -> diameter(random);
            case 7 -> thread(roots, random);
            case 8 -> sizeOfAFeature(random);
            case 9 -> angle(random);
            case 10 -> paper(false, random);
            case 11 -> position(bores, random);
            case 12 -> scale(random);
            case 13 -> difference(before, random);
            case 14 -> taper(random);
            case 15, 16 -> indicated(random);
            default -> bore(random);
        };
    }

    private static Facts.What paper(boolean elsewhere, Random random) {
        return new Facts.Paper(
                elsewhere, random.nextBoolean() ? Optional.of(dec("0.050")) : Optional.empty(), 1 + random.nextInt(2));
    }

    private static Facts.What bore(Random random) {
        String combine =
                List.of("each", "each", "each", "mean", "largest", "smallest").get(random.nextInt(6));
        return new Facts.Size(
                "bore",
                Optional.of(dec("30.000")),
                random.nextInt(6) == 0 ? Optional.empty() : Optional.of(dec("30.021")),
                1 + random.nextInt(2),
                1 + random.nextInt(2),
                combine,
                random.nextBoolean(),
                random.nextBoolean() ? dec("0") : dec("0.003"),
                random.nextInt(3) > 0,
                random.nextInt(3) == 0,
                cuts(random, List.of("30.006", "\"middle\"", "\"third\"")));
    }

    /** A root, a diameter such as a thread has at its root, so that it can serve a thread too. */
    private static Facts.What diameter(Random random) {
        return new Facts.Size(
                "diameter",
                Optional.of(dec("8.000")),
                Optional.of(dec("8.160")),
                1 + random.nextInt(3),
                1,
                random.nextBoolean() ? "each" : "largest",
                random.nextBoolean(),
                dec("0"),
                false,
                false,
                cuts(random, List.of("8.150", "\"middle\"", "\"third\"")));
    }

    /** On which side of a length metal is left nobody says, so it is never cut again. */
    private static Facts.What sizeOfAFeature(Random random) {
        String feature = FEATURES.get(random.nextInt(FEATURES.size()));
        return new Facts.Size(
                feature,
                Optional.of(dec("12.000")),
                !feature.equals("thickness") && random.nextInt(6) == 0 ? Optional.empty() : Optional.of(dec("12.027")),
                1 + random.nextInt(3),
                1,
                "each",
                !feature.equals("length") && random.nextInt(4) > 0,
                random.nextBoolean() ? dec("0") : dec("0.004"),
                false,
                random.nextInt(4) == 0,
                cuts(random, List.of("12.020", "\"middle\"", "\"third\"")));
    }

    private static Facts.What difference(List<Facts> before, Random random) {
        List<Facts> sizes = before.stream()
                .filter(step -> step.what() instanceof Facts.Size)
                .toList();
        if (sizes.isEmpty()) {
            return bore(random);
        }
        Facts of = sizes.get(random.nextInt(sizes.size()));
        Facts less = sizes.get(random.nextInt(sizes.size()));
        BigDecimal about = ((Facts.Size) of.what()).about().subtract(((Facts.Size) less.what()).about());
        return new Facts.Difference(of.number(), less.number(), about.subtract(dec("0.020")), about.add(dec("0.020")));
    }

    private static Facts.What angle(Random random) {
        return new Facts.Angle(
                dec("1770"), dec("1830"), 1 + random.nextInt(3), random.nextBoolean() ? dec("0") : dec("5"));
    }

    /** At LMC the bonus counts from a greatest size, which not every bore has. */
    private static Facts.What position(List<Integer> bores, Random random) {
        boolean sized = !bores.isEmpty() && random.nextInt(3) > 0;
        return new Facts.Position(
                dec("0.100"),
                sized ? "mmc" : "none",
                sized ? bores.get(random.nextInt(bores.size())) : 0,
                random.nextBoolean(),
                random.nextBoolean(),
                random.nextBoolean());
    }

    private static Facts.What scale(Random random) {
        if (random.nextBoolean()) {
            Optional<String> rule = Optional.of(random.nextInt(3) > 0 ? "16-percent" : "max");
            return new Facts.Scale("µm", Optional.empty(), Optional.of(dec("1.6")), 1, dec("0"), rule);
        }
        return new Facts.Scale(
                "HRC",
                Optional.of(dec("38.0")),
                random.nextBoolean() ? Optional.empty() : Optional.of(dec("44.0")),
                1 + random.nextInt(3),
                random.nextBoolean() ? dec("0") : dec("0.5"),
                Optional.empty());
    }

    private static Facts.What indicated(Random random) {
        String of = MOVEMENTS.get(random.nextInt(MOVEMENTS.size()));
        return new Facts.Indicated(
                of,
                of.equals("flatness") ? "" : DATUMS.get(random.nextInt(DATUMS.size())),
                dec("0.020"),
                2 + random.nextInt(2),
                random.nextBoolean() ? dec("0") : dec("0.002"));
    }

    private static Facts.What taper(Random random) {
        return new Facts.Taper(
                dec("355"), dec("365"), 1 + random.nextInt(2), random.nextBoolean() ? dec("0") : dec("1"));
    }

    private static Facts.Cuts cuts(Random random, List<String> aims) {
        return new Facts.Cuts(
                random.nextBoolean() ? Optional.empty() : Optional.of(aims.get(random.nextInt(aims.size()))),
                random.nextInt(3) > 0 ? Optional.empty() : Optional.of(dec("0.004")),
                random.nextInt(3) > 0 ? Optional.empty() : Optional.of(dec(random.nextBoolean() ? "0.002" : "0.0005")));
    }

    /** Limits of M10x1.5-6g, pitch diameter 8.862 to 8.994 (ISO 965-2); the least wire takes 0.757, the best 0.866. */
    private static Facts.What thread(List<Integer> roots, Random random) {
        int root = roots.isEmpty() || random.nextBoolean() ? 0 : roots.get(random.nextInt(roots.size()));
        return new Facts.Thread(
                dec("8.862"),
                dec("8.994"),
                dec("0.895"),
                root,
                random.nextBoolean() ? Optional.of(dec("8.160")) : Optional.empty(),
                random.nextBoolean() ? dec("0") : dec("0.010"));
    }

    private static List<Integer> numbers(List<Facts> before, String kind) {
        return before.stream()
                .filter(step -> step.what() instanceof Facts.Size size
                        && size.kind().equals(kind)
                        && !size.combine().equals("range"))
                .map(Facts::number)
                .toList();
    }

    static BigDecimal dec(String figure) {
        return new BigDecimal(figure);
    }

    Facts facts(int number) {
        return facts.get(number - 1);
    }
}
