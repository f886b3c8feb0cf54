package org.tenthwise.checklists.rules;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.tenthwise.checklists.format.RawList;
import org.tenthwise.checklists.format.RawTable;
import org.tenthwise.checklists.format.RawValue;
import org.tenthwise.model.plan.Mark;
import org.tenthwise.model.plan.Outline;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.quantity.Written;

/** The half section: profiles from left to right, and what lies along them. */
final class OutlineRules {

    private static final String OUTSIDE = "outside";

    private final TableKeys keys;
    private final Unit unit;

    OutlineRules(TableKeys keys, Unit unit) {
        this.keys = keys;
        this.unit = unit;
    }

    Optional<Outline> read() {
        List<Mark> outside = profile(OUTSIDE);
        if (!outside.isEmpty() && outside.get(0).at().signum() != 0) {
            keys.problem(OUTSIDE, "plan.outline.start");
        }
        Optional<Length> length = outside.isEmpty()
                ? Optional.empty()
                : Optional.of(outside.get(outside.size() - 1).at());
        List<Mark> inside =
                keys.ifAny("inside", key -> Optional.of(profile(key))).orElse(List.of());
        inside.stream()
                .filter(mark -> length.filter(l -> mark.at().isAbove(l)).isPresent()
                        || mark.at().signum() < 0)
                .findFirst()
                .ifPresent(mark -> keys.problem("inside", "plan.outline.inside"));
        List<Outline.ThreadedLength> threads = each(
                "thread",
                (part, from, to) -> {
                    Optional<Written> pitch = part.size("pitch", unit);
                    Optional<Written> depth = part.size("depth", unit);
                    return pitch.flatMap(
                            p -> depth.map(d -> new Outline.ThreadedLength(from, to, p.length(), d.length())));
                },
                length);
        List<Outline.Pocket> pockets = each(
                "pocket",
                (part, from, to) -> {
                    Optional<Written> width = part.size("width", unit);
                    boolean rounded = part.ifAny("rounded", part::truth).orElse(false);
                    return width.map(w -> new Outline.Pocket(from, to, w.length(), rounded));
                },
                length);
        List<Outline.CrossHole> holes = crossHoles(length);
        keys.finish();
        return keys.built(() -> new Outline(outside, inside, threads, pockets, holes));
    }

    /** Empty where a problem was noted. */
    private List<Mark> profile(String key) {
        MarkRules points = new MarkRules(keys, unit);
        List<Mark> profile = new ArrayList<>();
        int problemsBefore = keys.problemCount();
        List<RawValue> items = keys.list(key).map(RawList::items).orElse(List.of());
        if (items.size() == 1) {
            keys.problem(key, "plan.outline.two-points");
        }
        for (RawValue item : items) {
            points.point(item).ifPresent(mark -> {
                if (!profile.isEmpty()
                        && mark.at().isBelow(profile.get(profile.size() - 1).at())) {
                    keys.problem(
                            item.spot(),
                            "plan.outline.back",
                            key,
                            words(profile.get(profile.size() - 1).at()),
                            words(mark.at()));
                }
                profile.add(mark);
            });
        }
        return keys.problemCount() == problemsBefore ? profile : List.of();
    }

    /** What lies along the part from one axial position to another. */
    private interface Part<T> {
        Optional<T> read(TableKeys part, Length from, Length to);
    }

    private <T> List<T> each(String key, Part<T> build, Optional<Length> length) {
        List<T> parts = new ArrayList<>();
        List<RawTable> tables = keys.has(key) ? keys.tables(key) : List.of();
        for (RawTable table : tables) {
            TableKeys part = keys.inside(key, table);
            Optional<Length> from = part.figure("from", unit).map(Written::length);
            Optional<Length> to = part.figure("to", unit).map(Written::length);
            if (from.isPresent() && to.isPresent() && !to.get().isAbove(from.get())) {
                part.problem("to", "plan.outline.ends", words(to.get()), words(from.get()));
            } else if (length.isPresent()
                    && (from.filter(f -> f.signum() < 0).isPresent()
                            || to.filter(t -> t.isAbove(length.get())).isPresent())) {
                part.problem("to", "plan.outline.beyond", words(length.get()));
            }
            build.read(part, from.orElse(Length.ZERO), to.orElse(Length.ZERO)).ifPresent(parts::add);
            part.finish();
        }
        return parts;
    }

    private List<Outline.CrossHole> crossHoles(Optional<Length> length) {
        List<Outline.CrossHole> holes = new ArrayList<>();
        List<RawTable> tables = keys.has("cross_hole") ? keys.tables("cross_hole") : List.of();
        for (RawTable table : tables) {
            TableKeys hole = keys.inside("cross_hole", table);
            Optional<Length> at = hole.figure("at", unit).map(Written::length);
            Optional<Written> diameter = hole.size("diameter", unit);
            if (at.isPresent()
                    && length.isPresent()
                    && (at.get().signum() < 0 || at.get().isAbove(length.get()))) {
                hole.problem("at", "plan.outline.hole-beyond", words(length.get()));
            }
            at.ifPresent(a -> diameter.ifPresent(d -> holes.add(new Outline.CrossHole(a, d.length()))));
            hole.finish();
        }
        return holes;
    }

    private String words(Length length) {
        return length.in(unit).toPlainString() + " " + unit.symbol();
    }
}
