package org.tenthwise.app.picture;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import org.tenthwise.model.quantity.Length;

/**
 * The readings of a size as stations along a wall: by depth from the mouth where they have one, otherwise one after
 * another. At each station there is a reading for the near wall and one for the far wall, which may be the same.
 */
final class SectionPlaces {

    /**
     * One station.
     *
     * @param along from the mouth inwards, 0 to 1
     * @param depth with its figures; absent where the places have no depth
     * @param first reading shown above; {@code second} below, absent where it is the same reading
     */
    record Station(
            double along,
            Optional<SizePicture.Sized> depth,
            Optional<SizePicture.ReadingColumn> first,
            Optional<SizePicture.ReadingColumn> second) {}

    private static final double FIRST_AT = 0.16;
    private static final double LAST_AT = 0.84;
    private static final double DEEPEST_AT = 0.95;

    private final List<Station> stations;
    private final List<BigDecimal> angles;

    SectionPlaces(SizePicture picture) {
        List<SizePicture.ReadingColumn> columns = picture.columns().stream()
                .filter(column -> column.kind() == SizePicture.Kind.TAKEN || column.kind() == SizePicture.Kind.MISSING)
                .toList();
        this.angles = columns.stream()
                .flatMap(column -> column.angle().stream())
                .distinct()
                .limit(2)
                .toList();
        boolean deep = !columns.isEmpty()
                && columns.stream().allMatch(column -> column.depth().isPresent());
        this.stations = deep ? byDepth(columns, picture.stretch().map(TurnedStretch::length)) : inOrder(columns);
    }

    List<Station> stations() {
        return stations;
    }

    /** Above and below; empty where the readings are not taken two ways. */
    List<BigDecimal> angles() {
        return angles.size() == 2 ? angles : List.of();
    }

    /** @param length of what is read, in millimetres; absent where only the depths are known */
    private List<Station> byDepth(List<SizePicture.ReadingColumn> columns, Optional<Double> length) {
        TreeMap<Length, List<SizePicture.ReadingColumn>> depths = new TreeMap<>();
        columns.forEach(
                column -> depths.computeIfAbsent(column.depth().orElseThrow().size(), none -> new ArrayList<>())
                        .add(column));
        double deepest = depths.lastKey().millimetres().doubleValue();
        Optional<Double> whole = length.filter(of -> of >= deepest);
        List<Station> result = new ArrayList<>();
        depths.forEach((depth, readings) -> {
            double deep = depth.millimetres().doubleValue();
            double share = deepest == 0 || depths.size() == 1 ? 0.5 : deep / deepest * LAST_AT;
            result.add(station(
                    whole.map(of -> Math.min(DEEPEST_AT, deep / of)).orElse(share),
                    readings.get(0).depth(),
                    readings));
        });
        return result;
    }

    private List<Station> inOrder(List<SizePicture.ReadingColumn> columns) {
        boolean twoWays = angles().size() == 2;
        List<List<SizePicture.ReadingColumn>> groups = new ArrayList<>();
        if (twoWays) {
            groups.add(columns);
        } else {
            columns.forEach(column -> groups.add(List.of(column)));
        }
        List<Station> result = new ArrayList<>();
        for (int i = 0; i < groups.size(); i++) {
            double along = groups.size() == 1 ? 0.5 : LAST_AT + (FIRST_AT - LAST_AT) * i / (groups.size() - 1);
            result.add(station(along, Optional.empty(), groups.get(i)));
        }
        return result;
    }

    private Station station(double along, Optional<SizePicture.Sized> depth, List<SizePicture.ReadingColumn> readings) {
        if (angles().isEmpty()) {
            return new Station(along, depth, shown(readings), Optional.empty());
        }
        return new Station(along, depth, shown(at(readings, angles.get(0))), shown(at(readings, angles.get(1))));
    }

    private static List<SizePicture.ReadingColumn> at(List<SizePicture.ReadingColumn> readings, BigDecimal angle) {
        return readings.stream()
                .filter(column -> column.angle().filter(angle::equals).isPresent())
                .toList();
    }

    /** Of several readings in one spot the one that decides, otherwise the last taken. */
    private static Optional<SizePicture.ReadingColumn> shown(List<SizePicture.ReadingColumn> readings) {
        return readings.stream()
                .filter(column -> column.size().isPresent())
                .filter(SizePicture.ReadingColumn::decides)
                .findFirst()
                .or(() -> readings.stream()
                        .filter(column -> column.size().isPresent())
                        .reduce((earlier, later) -> later));
    }
}
