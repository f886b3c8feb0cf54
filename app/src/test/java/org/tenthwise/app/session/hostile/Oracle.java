package org.tenthwise.app.session.hostile;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.tenthwise.model.plan.Answer;
import org.tenthwise.model.plan.MeasuredBody;
import org.tenthwise.model.plan.Question;
import org.tenthwise.model.run.Disposition;
import org.tenthwise.model.run.Document;
import org.tenthwise.model.run.Entry;
import org.tenthwise.model.run.Event;
import org.tenthwise.model.run.StepEvent;

/**
 * What may be said of a run, from its entries alone.
 *
 * <p>The rules, in words. An entry that was struck out counts for nothing, nor does what was read under the setting of
 * a gauge that was struck out, or with a gauge that was taken and not yet set. What was replaced by a later one counts
 * for nothing, also where the later one is struck out. What was read before a step was begun anew, sent to rework or
 * repair, or before what it rests on was read anew or struck out, counts for nothing any more. A step has passed when
 * everything it asks for is there and everything it demands holds: a size inside its limits by the guard band at every
 * place (or as a mean, largest, smallest, where it is so combined), an angle so too, a taper over rollers so too, the
 * movement of an indicator as {@link IndicatedOracle} has it, a figure of a scale as {@link ScaleOracle} has it, an
 * axis twice its distance from its true place inside the zone and its bonus, a run-out as {@link RunOutOracle} has it,
 * a difference of two sizes inside at both ends with both of them whole, a plug's play inside at both ends and felt as
 * wanted and not against what the gauges say, a pitch diameter inside with no wire on the root at the largest root that
 * was read, every answer the wanted one, a document that has a number and no day still to come and says so, or gives as
 * many figures as are asked for, all of them inside. A concession holds for what it was signed for: any later reading,
 * answer, temperature, strike or new pass of the step, or of what it rests on, ends it; so does another disposition.
 * What is no characteristic of the drawing can be carried on with, not conceded. A part conforms when every
 * characteristic has passed and none was ever repaired, every other step has passed or is carried on with, and nothing
 * is scrapped. Which checks are in a run at all, {@link AskedOracle} has; of a run that leaves one out nothing is said
 * but that what it asked conforms, and nothing is taken at what it leaves out.
 */
final class Oracle {

    /** What an oracle answers where a figure lies so near a limit that rounding decides. */
    enum Says {
        PASSED,
        NOT_PASSED,
        EITHER
    }

    private static final MathContext EXACT = MathContext.DECIMAL64;
    private static final BigDecimal HAIR = new BigDecimal("0.000005");
    private static final BigDecimal TWENTY = new BigDecimal("20");
    private static final BigDecimal PER_DEGREE = new BigDecimal("0.000001");
    private static final BigDecimal PART_EXPANSION = new BigDecimal("23");
    /** Steel, what a plan that says nothing of its gauges takes. */
    private static final BigDecimal GAUGE_EXPANSION = new BigDecimal("11.5");

    private final List<Facts> plan;
    private final List<Entry> entries;
    private final Counting counting;
    private final AskedOracle asked;

    Oracle(List<Facts> plan, List<Entry> entries) {
        this.asked = new AskedOracle(plan, ((Event.Begun) entries.get(0).event()).occasion());
        this.plan = plan;
        this.entries = entries;
        this.counting = new Counting(entries);
    }

    // the part

    boolean conforms() {
        return asked.isWhole()
                && plan.stream()
                        .allMatch(step -> (passed(step) != Says.NOT_PASSED || !step.drawing() && conceded(step))
                                && !repaired(step))
                && !scrapped();
    }

    boolean conformsWithConcessions() {
        return asked.isWhole() && plan.stream().allMatch(this::settled) && !scrapped();
    }

    boolean askedConforms() {
        return !asked.isWhole()
                && plan.stream().anyMatch(step -> step.drawing() && inRun(step))
                && plan.stream().filter(this::inRun).allMatch(this::settled)
                && !scrapped();
    }

    /** Whether the run asks the step at all. */
    boolean inRun(Facts step) {
        return asked.isIn(step);
    }

    boolean scrapped() {
        return plan.stream()
                .anyMatch(step ->
                        disposition(step).filter(Disposition.SCRAP::equals).isPresent());
    }

    boolean settled(Facts step) {
        return inRun(step) && (passed(step) != Says.NOT_PASSED || conceded(step));
    }

    /** The steps that a hold point before {@code step} still waits for. */
    List<Integer> waitingFor(Facts step) {
        List<Integer> waiting = new ArrayList<>();
        if (!step.inOrder()) {
            return waiting;
        }
        for (Facts before : plan.subList(0, plan.indexOf(step))) {
            before.hold().stream()
                    .filter(number -> !settled(plan.get(number - 1)))
                    .forEach(waiting::add);
        }
        return waiting;
    }

    // dispositions

    private boolean conceded(Facts step) {
        return disposition(step)
                .filter((step.drawing() ? Disposition.USE_AS_IS : Disposition.CARRY_ON)::equals)
                .isPresent();
    }

    private boolean repaired(Facts step) {
        return entries.stream()
                .anyMatch(entry -> entry.event() instanceof StepEvent.DispositionSigned disposed
                        && disposed.step() == step.number()
                        && disposed.disposition() == Disposition.REPAIR);
    }

    private Optional<Disposition> disposition(Facts step) {
        Optional<Disposition> inForce = Optional.empty();
        for (Entry entry : entries) {
            if (entry.event() instanceof StepEvent.DispositionSigned disposed && disposed.step() == step.number()) {
                inForce = Optional.of(disposed.disposition());
            } else if (counting.changes(entry, step.number())
                    || step.restsOn().stream().anyMatch(on -> counting.changes(entry, on))) {
                inForce = Optional.empty();
            }
        }
        return inForce;
    }

    // the steps

    Facts step(int number) {
        return plan.get(number - 1);
    }

    Says passed(Facts step) {
        if (step.what() instanceof Facts.Asks asks) {
            return says(counting.answers(step).equals(asks.wanted()));
        }
        if (step.what() instanceof Facts.RunOut runOut) {
            return new RunOutOracle(runOut, counting.readings(step)).passed();
        }
        if (step.what() instanceof Facts.Size size) {
            return size(step, size);
        }
        if (step.what() instanceof Facts.Angle angle) {
            return new AngleOracle(counting.readings(step)).passed(angle);
        }
        if (step.what() instanceof Facts.Scale scale) {
            return new ScaleOracle(scale, counting.readings(step)).passed();
        }
        if (step.what() instanceof Facts.Taper taper) {
            return new AngleOracle(counting.readings(step)).passed(taper);
        }
        if (step.what() instanceof Facts.Paper paper) {
            return says(counting.document(step)
                    .filter(entry -> proves(entry, paper))
                    .isPresent());
        }
        if (step.what() instanceof Facts.Position position) {
            return position(step, position);
        }
        if (step.what() instanceof Facts.Difference difference) {
            return new DifferenceOracle(this, difference).passed();
        }
        if (step.what() instanceof Facts.Indicated indicated) {
            return new IndicatedOracle(indicated, counting.readings(step)).passed();
        }
        if (step.what() instanceof Facts.Plug plug) {
            return plug(step, plug);
        }
        Facts.Thread thread = (Facts.Thread) step.what();
        return ThreadOracle.passed(thread, counting.readings(step), root(thread));
    }

    private static boolean proves(Entry entry, Facts.Paper paper) {
        Document document = ((StepEvent.DocumentGiven) entry.event()).document();
        boolean figuresIn = paper.upper()
                .map(upper -> document.figures().stream()
                        .allMatch(figure -> Counting.millimetres(figure).compareTo(upper) <= 0))
                .orElse(true);
        boolean figuresWhole =
                document.figures().isEmpty() || document.figures().size() == paper.count();
        boolean saysSo = document.says() == Document.Says.CONFORMS
                || document.says() == Document.Says.FIGURES
                        && paper.upper().isPresent()
                        && !document.figures().isEmpty();
        return saysSo
                && figuresIn
                && figuresWhole
                && !document.number().isBlank()
                && document.dated().compareTo(entry.at().toLocalDate()) <= 0;
    }

    static Says says(boolean passed) {
        return passed ? Says.PASSED : Says.NOT_PASSED;
    }

    /** The sizes at 20 °C, in the order of the slots; absent while a reading or a temperature is missing. */
    Optional<List<BigDecimal>> sizes(Facts step, Facts.Size demanded) {
        Map<String, Counting.Read> read = counting.readings(step);
        Map<MeasuredBody, BigDecimal> warm = counting.temperatures(step);
        if (demanded.warm() && warm.size() < 2) {
            return Optional.empty();
        }
        List<BigDecimal> sizes = new ArrayList<>();
        for (int place = 1; place <= demanded.places(); place++) {
            for (int repeat = 1; repeat <= demanded.each(); repeat++) {
                Counting.Read one = read.get(place + "." + repeat);
                if (one == null) {
                    return Optional.empty();
                }
                sizes.add(demanded.warm() ? atTwenty(one.size(), warm) : one.size());
            }
        }
        return Optional.of(sizes);
    }

    /** The sizes that are read, at 20 °C where the temperatures are taken. */
    List<BigDecimal> read(Facts step, Facts.Size demanded) {
        Map<MeasuredBody, BigDecimal> warm = counting.temperatures(step);
        return counting.readings(step).values().stream()
                .map(Counting.Read::size)
                .map(size -> demanded.warm() && warm.size() == 2 ? atTwenty(size, warm) : size)
                .toList();
    }

    /** A gauge that has grown shows too little, a part that has grown is too big. */
    private static BigDecimal atTwenty(BigDecimal size, Map<MeasuredBody, BigDecimal> warm) {
        BigDecimal part = BigDecimal.ONE.add(PART_EXPANSION
                .multiply(PER_DEGREE)
                .multiply(warm.get(MeasuredBody.PART).subtract(TWENTY)));
        BigDecimal gauge = BigDecimal.ONE.add(GAUGE_EXPANSION
                .multiply(PER_DEGREE)
                .multiply(warm.get(MeasuredBody.GAUGE).subtract(TWENTY)));
        return size.multiply(gauge).divide(part, EXACT);
    }

    private Says size(Facts step, Facts.Size demanded) {
        Optional<List<BigDecimal>> sizes = sizes(step, demanded);
        if (sizes.isEmpty()) {
            return Says.NOT_PASSED;
        }
        return inside(
                DifferenceOracle.judged(demanded, sizes.get()),
                demanded.lower().map(demanded.guard()::add),
                demanded.upper().map(upper -> upper.subtract(demanded.guard())),
                DifferenceOracle.isRounded(demanded));
    }

    /** @param rounded whether what is judged was rounded on the way, so that a hair's breadth decides nothing */
    static Says inside(
            List<BigDecimal> judged, Optional<BigDecimal> least, Optional<BigDecimal> most, boolean rounded) {
        Says says = Says.PASSED;
        for (BigDecimal one : judged) {
            BigDecimal room = least.map(one::subtract)
                    .orElse(BigDecimal.ONE)
                    .min(most.map(m -> m.subtract(one)).orElse(BigDecimal.ONE));
            if (rounded && room.abs().compareTo(HAIR) < 0) {
                says = says == Says.NOT_PASSED ? says : Says.EITHER;
            } else if (room.signum() < 0) {
                says = Says.NOT_PASSED;
            }
        }
        return says;
    }

    private Says position(Facts step, Facts.Position demanded) {
        if (demanded.bore() == 0) {
            return PositionOracle.passed(demanded, counting.readings(step), BigDecimal.ZERO);
        }
        Facts bore = plan.get(demanded.bore() - 1);
        return sizes(bore, (Facts.Size) bore.what())
                .filter(any -> passed(bore) != Says.NOT_PASSED)
                .map(sizes -> PositionOracle.passed(
                        demanded,
                        counting.readings(step),
                        PositionOracle.bonus((Facts.Size) bore.what(), least(sizes))))
                .orElse(Says.NOT_PASSED);
    }

    private Says plug(Facts step, Facts.Plug demanded) {
        Facts bore = plan.get(demanded.bore() - 1);
        Optional<List<BigDecimal>> bores = sizes(bore, (Facts.Size) bore.what());
        Map<String, Counting.Read> read = counting.readings(step);
        Answer felt = counting.answers(step).get(Question.PLUG_FEELS);
        if (bores.isEmpty() || felt != demanded.feel() || read.size() < demanded.places()) {
            return Says.NOT_PASSED;
        }
        List<BigDecimal> plugs = read.values().stream().map(Counting.Read::size).toList();
        BigDecimal least = least(bores.get()).subtract(greatest(plugs));
        BigDecimal most = greatest(bores.get()).subtract(least(plugs));
        boolean enters = felt != Answer.NOT_AT_ALL;
        if (enters && most.signum() < 0 || !enters && least.signum() > 0) {
            return Says.NOT_PASSED;
        }
        return inside(
                List.of(least, most),
                Optional.of(demanded.least()),
                Optional.of(demanded.greatest()),
                ((Facts.Size) bore.what()).warm());
    }

    /** Those of the readings that count. */
    List<BigDecimal> pitchDiameters(Facts step) {
        return ThreadOracle.pitchDiameters(counting.readings(step));
    }

    /** The largest root there can be; absent while the step that measures it is not whole. */
    Optional<BigDecimal> root(Facts.Thread demanded) {
        if (demanded.minorStep() == 0) {
            return Optional.of(demanded.minor().orElse(ThreadOracle.BASIC_MINOR));
        }
        Facts step = plan.get(demanded.minorStep() - 1);
        return sizes(step, (Facts.Size) step.what())
                .map(Oracle::greatest)
                .map(largest -> demanded.minor().map(largest::max).orElse(largest));
    }

    static BigDecimal greatest(List<BigDecimal> figures) {
        return figures.stream().max(BigDecimal::compareTo).orElseThrow();
    }

    static BigDecimal least(List<BigDecimal> figures) {
        return figures.stream().min(BigDecimal::compareTo).orElseThrow();
    }
}
