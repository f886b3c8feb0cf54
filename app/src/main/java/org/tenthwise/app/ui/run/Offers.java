package org.tenthwise.app.ui.run;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.tenthwise.app.session.State;
import org.tenthwise.app.ui.keys.Offer;
import org.tenthwise.model.gauge.GaugeKind;
import org.tenthwise.model.gauge.Setting;
import org.tenthwise.model.plan.Check;
import org.tenthwise.model.plan.CheckOfSize;
import org.tenthwise.model.plan.Step;
import org.tenthwise.model.plan.ThermalData;
import org.tenthwise.model.quantity.Celsius;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.TemperatureRange;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.record.Plausible;
import org.tenthwise.model.record.Sheet;
import org.tenthwise.model.record.Touch;
import org.tenthwise.model.run.Entry;
import org.tenthwise.model.run.StepEvent;
import org.tenthwise.model.tolerance.Limits;

/**
 * What is offered to a figure typed by a finger. Nothing that would prove a size is: the first reading of a pass is
 * typed digit by digit, and only its point comes by itself. The next ones begin with the whole units of the reading
 * just before, while that is the last thing that happened in the run and was taken since its check came in hand. A dial
 * stands less than one unit from its zero and begins with {@code 0.} from the first.
 *
 * <p>To a temperature only its point comes, behind whole degrees near those of the shop. Nothing is offered to an
 * angle, a master or a zero.
 */
final class Offers {

    private static final String ON_A_DIAL = "0.";

    /** How far from the temperatures of the shop most parts and gauges are, in °C. */
    private static final BigDecimal FROM_THE_SHOP = new BigDecimal("5");

    /** The last entry before the step in hand came in hand. */
    private long before;

    Offers(State start) {
        before = start.sheet().run().last().seq();
    }

    /** Another state of the run is shown. */
    void shown(State was, State now) {
        if (!was.inHand().equals(now.inHand())) {
            before = was.sheet().run().last().seq();
        }
    }

    Offer of(State state) {
        if (state.asked().asReading().isPresent()) {
            return ofReading(state);
        }
        if (state.asked().asksTemperature()) {
            return ofTemperature(state);
        }
        return state.figureBeginsNext()
                ? state.next()
                        .filter(next -> isOfLength(state, next))
                        .map(next -> new Offer("", wholes(next), places(state.sheet(), next), Optional.empty()))
                        .orElse(Offer.NONE)
                : Offer.NONE;
    }

    private Offer ofReading(State state) {
        Step step = state.inHand();
        if (!state.unit().isOfLength()) {
            return Offer.NONE;
        }
        if (isOfADial(step.check(), state.setting(), state.sheet().plan().unit(step))) {
            return overOneUnit(state)
                    ? Offer.NONE
                    : new Offer(ON_A_DIAL, Set.of("0"), places(state.sheet(), step), Optional.empty());
        }
        return justBefore(state)
                .map(read -> new Offer(read.toBigInteger() + ".", wholes(step), read.scale(), Optional.of(read)))
                .orElseGet(() -> new Offer("", wholes(step), places(state.sheet(), step), Optional.empty()));
    }

    private static Offer ofTemperature(State state) {
        ThermalData climate = state.sheet().plan().climate().orElseThrow();
        TemperatureRange shop = climate.shop();
        return Offer.ofDegrees(
                inScale(climate, shop.least().degrees().subtract(FROM_THE_SHOP)),
                inScale(climate, shop.greatest().degrees().add(FROM_THE_SHOP)));
    }

    private static BigDecimal inScale(ThermalData climate, BigDecimal celsius) {
        return climate.scale().of(new Celsius(celsius)).figure();
    }

    private static boolean isOfLength(State state, Step step) {
        return state.sheet().plan().unit(step).isOfLength();
    }

    /** Whether its figures stand less than one unit from zero wherever a size inside the limits puts them. */
    private static boolean isOfADial(Check check, Optional<Setting> setting, Unit unit) {
        Stream<Length> figures = check.asTurn()
                .map(turn -> Stream.of(turn.limit().length()))
                .orElseGet(() -> setting.filter(set -> set.zero().isPresent()).stream()
                        .flatMap(set -> limits(check).stream().map(limit -> onADial(limit, set))));
        List<Length> all = figures.toList();
        Length one = Length.of("1", unit);
        return !all.isEmpty() && all.stream().allMatch(figure -> figure.abs().isBelow(one));
    }

    private static List<Length> limits(Check check) {
        return check.judgedAgainst().stream()
                .flatMap(limits -> Stream.of(limits.lower(), limits.upper()))
                .flatMap(Optional::stream)
                .map(Written::length)
                .toList();
    }

    private static Length onADial(Length size, Setting set) {
        Length off = size.minus(set.certified().orElseThrow().length());
        int sign = set.gauge().sense().orElseThrow().sign();
        return set.zero().orElseThrow().length().plus(off.times(BigDecimal.valueOf(sign)));
    }

    /** Whether the dial has gone round: then what stands in front is typed. */
    private static boolean overOneUnit(State state) {
        return state.pass().standing().values().stream()
                .anyMatch(reading -> reading.typed().figure().abs().compareTo(BigDecimal.ONE) >= 0);
    }

    /** The reading just before, in the unit of the plan and with decimals; not after one that is far off. */
    private Optional<BigDecimal> justBefore(State state) {
        Entry last = state.sheet().run().last();
        return last.event()
                .as(StepEvent.ReadingTaken.class)
                .filter(taken -> taken.step() == state.inHand().number() && last.seq() > before)
                .filter(taken -> !Plausible.spoils(state.line().finding()))
                .map(StepEvent.ReadingTaken::typed)
                .filter(typed -> typed.unit().equals(state.sheet().plan().unit(state.inHand())))
                .map(Written::figure)
                .filter(figure -> figure.signum() > 0 && figure.scale() > 0);
    }

    /** The whole units of a size that the gauge reads itself; none with one limit, which says nothing of a size. */
    private static Set<String> wholes(Step step) {
        boolean direct = step.check()
                .means()
                .filter(means -> means.kind().reference() == GaugeKind.Reference.NONE)
                .isPresent();
        return step.check()
                .asSize()
                .filter(size -> direct && Touch.most(size.contact()).signum() == 0)
                .flatMap(CheckOfSize::limitsOfASize)
                .flatMap(limits -> limits.lower()
                        .flatMap(lower -> limits.upper().map(upper -> Offer.wholes(lower.figure(), upper.figure()))))
                .orElse(Set.of());
    }

    /** How many decimals its gauge shows: as its last figure in this run had, before one as the limits have. */
    private static int places(Sheet sheet, Step step) {
        return lastOfItsGauge(sheet, step)
                .map(Written::places)
                .filter(places -> places > 0)
                .or(() -> step.check().judgedAgainst().map(Limits::places).filter(places -> places > 0))
                .orElse(Offer.NONE.places());
    }

    private static Optional<Written> lastOfItsGauge(Sheet sheet, Step step) {
        List<Entry> entries = sheet.run().entries();
        return IntStream.iterate(entries.size() - 1, i -> i >= 0, i -> i - 1)
                .mapToObj(entries::get)
                .filter(entry -> sheet.run().struck(entry.seq()).isEmpty() && isReadWithTheGaugeOf(sheet, step, entry))
                .flatMap(entry -> entry.event().as(StepEvent.ReadingTaken.class).stream())
                .map(StepEvent.ReadingTaken::typed)
                .filter(typed -> typed.unit().equals(sheet.plan().unit(step)))
                .findFirst();
    }

    private static boolean isReadWithTheGaugeOf(Sheet sheet, Step step, Entry entry) {
        return entry.event()
                .as(StepEvent.ReadingTaken.class)
                .flatMap(taken ->
                        sheet.run().gauges().settingBefore(entry, sheet.plan().step(taken.step())))
                .map(Setting::gauge)
                .filter(gauge -> sheet.run().gauges().mark(step).equals(Optional.of(gauge.id()))
                        && step.check().means().map(Check.Means::kind).equals(Optional.of(gauge.kind())))
                .isPresent();
    }
}
