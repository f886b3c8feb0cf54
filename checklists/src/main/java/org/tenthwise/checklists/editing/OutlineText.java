package org.tenthwise.checklists.editing;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import org.tenthwise.checklists.format.RawList;
import org.tenthwise.checklists.format.RawValue;
import org.tenthwise.checklists.format.TomlReading;
import org.tenthwise.checklists.format.TomlText;
import org.tenthwise.model.plan.Mark;
import org.tenthwise.model.plan.Outline;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.words.Message;

/**
 * The outline of a plan as its elements, from left to right. An inside that begins within the part has a solid element
 * before it.
 */
public record OutlineText(List<ProfileElement> outside, List<ProfileElement> inside) {

    /** Whose elements they are. */
    public enum Side {
        OUTSIDE,
        INSIDE
    }

    private static final String TABLE = "outline";
    private static final String OUTSIDE = "outside";
    private static final String INSIDE = "inside";

    private record Spot(BigDecimal at, BigDecimal diameter) {

        boolean isAt(Spot other) {
            return at.compareTo(other.at) == 0 && diameter.compareTo(other.diameter) == 0;
        }
    }

    public OutlineText {
        outside = List.copyOf(outside);
        inside = List.copyOf(inside);
    }

    /** Without an element where the plan has no profile, or one that goes back. */
    public static OutlineText of(PlanText plan) {
        Optional<TableText> table = plan.table(TABLE);
        return new OutlineText(
                table.flatMap(outline -> outline.value(OUTSIDE))
                        .map(OutlineText::elements)
                        .orElse(List.of()),
                table.flatMap(outline -> outline.value(INSIDE))
                        .map(OutlineText::elements)
                        .orElse(List.of()));
    }

    private static List<ProfileElement> elements(String written) {
        List<Spot> spots = spots(written);
        List<ProfileElement> elements = new ArrayList<>();
        if (!spots.isEmpty() && spots.get(0).at().signum() > 0) {
            elements.add(new ProfileElement(BigDecimal.ZERO, spots.get(0).at(), BigDecimal.ZERO));
        }
        for (int i = 1; i < spots.size(); i++) {
            Spot from = spots.get(i - 1);
            BigDecimal length = spots.get(i).at().subtract(from.at());
            if (length.signum() < 0) {
                return List.of();
            }
            if (length.signum() > 0) {
                elements.add(
                        new ProfileElement(from.diameter(), length, spots.get(i).diameter()));
            }
        }
        return elements;
    }

    /** None where anything is no point of a profile. */
    private static List<Spot> spots(String written) {
        List<Spot> spots = new ArrayList<>();
        if (new TomlText().read("it = " + written) instanceof TomlReading.Readable read
                && read.top().values().get("it") instanceof RawList points) {
            for (RawValue point : points.items()) {
                if (point instanceof RawList figures
                        && figures.items().size() == 2
                        && figures.items().get(0) instanceof RawValue.Number at
                        && figures.items().get(1) instanceof RawValue.Number diameter
                        && at.figure().signum() >= 0
                        && diameter.figure().signum() >= 0) {
                    spots.add(new Spot(at.figure(), diameter.figure()));
                } else {
                    return List.of();
                }
            }
        }
        return spots;
    }

    public List<ProfileElement> of(Side side) {
        return side == Side.OUTSIDE ? outside : inside;
    }

    public OutlineText with(Side side, List<ProfileElement> elements) {
        return side == Side.OUTSIDE ? new OutlineText(elements, inside) : new OutlineText(outside, elements);
    }

    /** Into a plan. A profile that is as it was stays as it is written there. */
    public PlanText into(PlanText plan) {
        OutlineText now = of(plan);
        return plan.withTable(TABLE, table -> {
            TableText outer = written(table, OUTSIDE, outside, now.outside.equals(outside));
            return written(outer, INSIDE, inside, now.inside.equals(inside));
        });
    }

    private static TableText written(TableText table, String key, List<ProfileElement> elements, boolean isThere) {
        if (isThere) {
            return table;
        }
        List<Spot> spots = spots(elements);
        return spots.isEmpty()
                ? table.without(key)
                : table.with(
                        key,
                        TomlValue.list(spots.stream()
                                .map(spot -> TomlValue.list(
                                        List.of(TomlValue.number(spot.at()), TomlValue.number(spot.diameter()))))
                                .toList()));
    }

    /** Points from left to right; what is solid at an end is no part of a profile. */
    private static List<Spot> spots(List<ProfileElement> elements) {
        int last = elements.size();
        while (last > 0 && elements.get(last - 1).isSolid()) {
            last--;
        }
        List<Spot> spots = new ArrayList<>();
        BigDecimal at = BigDecimal.ZERO;
        for (ProfileElement element : elements.subList(0, last)) {
            if (!spots.isEmpty() || !element.isSolid()) {
                add(spots, new Spot(at, element.diameter()));
                add(spots, new Spot(at.add(element.length()), element.end()));
            }
            at = at.add(element.length());
        }
        return spots;
    }

    private static void add(List<Spot> spots, Spot next) {
        if (spots.isEmpty() || !spots.get(spots.size() - 1).isAt(next)) {
            spots.add(next);
        }
    }

    /**
     * The part as far as there is one; absent without an outside.
     *
     * @param before has the threads, pockets and cross holes; those that lie beyond the part now are left out
     */
    public Optional<Outline> outline(Unit unit, Optional<Outline> before) {
        List<Mark> outer = marks(outside, unit);
        if (outer.isEmpty()) {
            return Optional.empty();
        }
        Length end = outer.get(outer.size() - 1).at();
        List<Mark> inner = marks(inside, unit);
        return Optional.of(new Outline(
                outer,
                inner.stream().anyMatch(mark -> mark.at().isAbove(end)) ? List.of() : inner,
                before.stream()
                        .flatMap(outline -> outline.threads().stream())
                        .filter(thread -> !thread.to().isAbove(end))
                        .toList(),
                before.stream()
                        .flatMap(outline -> outline.pockets().stream())
                        .filter(pocket -> !pocket.to().isAbove(end))
                        .toList(),
                before.stream()
                        .flatMap(outline -> outline.crossHoles().stream())
                        .filter(hole -> !hole.at().isAbove(end))
                        .toList()));
    }

    private static List<Mark> marks(List<ProfileElement> elements, Unit unit) {
        return spots(elements).stream()
                .map(spot -> new Mark(Length.of(spot.at(), unit), Length.of(spot.diameter(), unit)))
                .toList();
    }

    /** The middle of an element, on its surface. */
    public Mark middle(Side side, int place, Unit unit) {
        ProfileElement element = of(side).get(place);
        Length from = Length.of(start(of(side), place), unit);
        return new Mark(
                from.plus(Length.of(element.length(), unit).half()),
                Length.of(element.diameter(), unit)
                        .plus(Length.of(element.end(), unit))
                        .half());
    }

    private static BigDecimal start(List<ProfileElement> elements, int place) {
        return length(elements.subList(0, place));
    }

    /** How long a profile is from the left end of the part, solid ends included. */
    public static BigDecimal length(List<ProfileElement> elements) {
        return elements.stream().map(ProfileElement::length).reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    /** What no part can be: an inside that is longer than the outside, or leaves no wall; absent if all is well. */
    public Optional<Message> wrong(Unit unit) {
        List<Spot> inner = spots(inside);
        if (inner.isEmpty() || outside.isEmpty()) {
            return Optional.empty();
        }
        BigDecimal end = length(outside);
        BigDecimal innerEnd = inner.get(inner.size() - 1).at();
        if (innerEnd.compareTo(end) > 0) {
            return Optional.of(Message.of("plan.outline.inside-longer", said(innerEnd, unit), said(end, unit)));
        }
        TreeSet<BigDecimal> edges = new TreeSet<>();
        for (Side side : Side.values()) {
            for (int place = 0; place <= of(side).size(); place++) {
                edges.add(start(of(side), place));
            }
        }
        List<BigDecimal> all =
                edges.stream().filter(edge -> edge.compareTo(end) <= 0).toList();
        for (int i = 1; i < all.size(); i++) {
            for (BigDecimal at : List.of(all.get(i - 1), all.get(i))) {
                BigDecimal outer = diameter(outside, all.get(i - 1), all.get(i), at);
                BigDecimal bore = diameter(inside, all.get(i - 1), all.get(i), at);
                if (bore.signum() > 0 && bore.compareTo(outer) >= 0) {
                    return Optional.of(
                            Message.of("plan.outline.no-wall", said(at, unit), said(bore, unit), said(outer, unit)));
                }
            }
        }
        return Optional.empty();
    }

    /** At a position, as seen from the stretch it bounds; 0 where there is no element. */
    private static BigDecimal diameter(List<ProfileElement> elements, BigDecimal from, BigDecimal to, BigDecimal at) {
        BigDecimal start = BigDecimal.ZERO;
        for (ProfileElement element : elements) {
            BigDecimal end = start.add(element.length());
            if (start.compareTo(from) <= 0 && end.compareTo(to) >= 0) {
                return element.diameter()
                        .add(element.end()
                                .subtract(element.diameter())
                                .multiply(at.subtract(start))
                                .divide(element.length(), MathContext.DECIMAL64));
            }
            start = end;
        }
        return BigDecimal.ZERO;
    }

    private static String said(BigDecimal figure, Unit unit) {
        return figure.toPlainString() + " " + unit.symbol();
    }
}
