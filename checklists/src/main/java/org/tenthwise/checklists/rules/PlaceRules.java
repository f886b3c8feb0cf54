package org.tenthwise.checklists.rules;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.tenthwise.checklists.format.RawList;
import org.tenthwise.checklists.format.RawTable;
import org.tenthwise.checklists.format.RawValue;
import org.tenthwise.model.plan.Place;
import org.tenthwise.model.plan.Signs;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.words.Message;

/** Where readings are taken: names, or tables of name, depth and angle. */
final class PlaceRules {

    private static final String PLACES = "places";
    private static final BigDecimal FULL_TURN = new BigDecimal(360);

    private final TableKeys keys;
    private final Unit unit;

    PlaceRules(TableKeys keys, Unit unit) {
        this.keys = keys;
        this.unit = unit;
    }

    /** Empty where a problem was noted. */
    List<Place> read() {
        if (!keys.has(PLACES) && OnDrawingRules.several(keys).isPresent()) {
            return oneEach(OnDrawingRules.several(keys).get());
        }
        List<Place> places = new ArrayList<>();
        Map<String, String> names = new HashMap<>();
        for (RawValue item : keys.list(PLACES).map(RawList::items).orElse(List.of())) {
            place(item).ifPresent(place -> {
                Optional.ofNullable(names.putIfAbsent(place.name().toLowerCase(Locale.ROOT), place.name()))
                        .ifPresent(other -> twice(item, place.name(), other));
                places.add(place);
            });
        }
        return places;
    }

    /** Of several alike, with nothing said of where: each is read once, and goes by its number. */
    private static List<Place> oneEach(int count) {
        return IntStream.rangeClosed(1, count)
                .mapToObj(String::valueOf)
                .map(Place::named)
                .toList();
    }

    /** Names alone, under {@code key}; none twice. */
    static List<String> names(TableKeys keys, String key) {
        List<String> names = new ArrayList<>();
        for (RawValue item : keys.list(key).map(RawList::items).orElse(List.of())) {
            if (!(item instanceof RawValue.Text text) || text.text().isBlank()) {
                keys.problem(item.spot(), "plan.place.name", item.what());
            } else if (names.stream().anyMatch(text.text().strip()::equalsIgnoreCase)) {
                keys.problem(item.spot(), "plan.place.twice", text.text().strip());
            } else {
                Signs.hiddenIn(text.text().strip())
                        .ifPresent(sign -> keys.problem(item.spot(), "plan.place.hidden", sign));
                names.add(text.text().strip());
            }
        }
        return names;
    }

    /** Two names that only capitals tell apart are one name to whoever reads them at the machine. */
    private void twice(RawValue item, String name, String other) {
        if (name.equals(other)) {
            keys.problem(item.spot(), "plan.place.twice", name);
        } else {
            keys.problemUnlessKept(item.spot(), "plan.place.capitals", other, name);
        }
    }

    private Optional<Place> place(RawValue item) {
        if (item instanceof RawTable table) {
            return place(keys.inside(Message.of("plan.in.place"), table));
        }
        if (item instanceof RawValue.Text text && !text.text().isBlank()) {
            String name = text.text().strip();
            Signs.hiddenIn(name).ifPresent(sign -> keys.problemUnlessKept(item.spot(), "plan.place.hidden", sign));
            return Optional.of(Place.named(name));
        }
        keys.problem(
                item.spot(), item instanceof RawValue.Text ? "plan.place.blank" : "plan.place.written", item.what());
        return Optional.empty();
    }

    private Optional<Place> place(TableKeys place) {
        Optional<String> name = place.text("name");
        Optional<Written> depth = place.ifAny("depth", key -> place.figure(key, unit));
        Optional<BigDecimal> angle = place.ifAny("angle", place::number);
        depth.filter(d -> d.figure().signum() < 0).ifPresent(d -> place.problem("depth", "plan.place.depth", d));
        angle.filter(a -> !isOnTheCircle(a)).ifPresent(a -> place.problem("angle", "plan.angle", a));
        place.finish();
        return place.built(() -> new Place(name.orElseThrow(), depth, angle));
    }

    static boolean isOnTheCircle(BigDecimal degrees) {
        return degrees.signum() >= 0 && degrees.compareTo(FULL_TURN) < 0;
    }
}
