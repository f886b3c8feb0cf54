package org.tenthwise.checklists.editing;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.tenthwise.checklists.format.RawList;
import org.tenthwise.checklists.format.RawValue;
import org.tenthwise.checklists.format.TomlReading;
import org.tenthwise.checklists.format.TomlText;
import org.tenthwise.model.plan.Mark;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.quantity.Written;

/**
 * A profile of an outline as a person types it: an axial position and a diameter, then a semicolon and the next two,
 * {@code 0 40; 90 40; 90 70}.
 */
public final class ProfileText {

    private static final String BETWEEN = "; ";
    private static final int POSITION_AND_DIAMETER = 2;

    private ProfileText() {}

    /** @param written in a plan file; empty text for anything that is no list of points */
    public static String reads(String written) {
        if (!(new TomlText().read("it = " + written) instanceof TomlReading.Readable read)
                || !(read.top().values().get("it") instanceof RawList points)) {
            return "";
        }
        return points.items().stream().map(ProfileText::point).collect(Collectors.joining(BETWEEN));
    }

    private static String point(RawValue value) {
        return value instanceof RawList figures
                ? figures.items().stream()
                        .filter(RawValue.Number.class::isInstance)
                        .map(figure -> ((RawValue.Number) figure).figure().toPlainString())
                        .collect(Collectors.joining(" "))
                : "";
    }

    /** As a plan file has it, with the places that were typed; absent where a point has not two plain figures. */
    public static Optional<String> written(String typed) {
        return points(typed)
                .map(points -> TomlValue.list(points.stream()
                        .map(point -> TomlValue.list(
                                point.stream().map(TomlValue::number).toList()))
                        .toList()));
    }

    /** The points, as far as what is typed comes to any: from left to right, two or more; else absent. */
    public static Optional<List<Mark>> profile(String typed, Unit unit) {
        return points(typed)
                .map(points -> points.stream()
                        .map(point -> new Mark(Length.of(point.get(0), unit), Length.of(point.get(1), unit)))
                        .toList())
                .filter(marks -> marks.size() > 1 && runsOn(marks));
    }

    private static boolean runsOn(List<Mark> marks) {
        for (int i = 1; i < marks.size(); i++) {
            if (marks.get(i).at().isBelow(marks.get(i - 1).at())) {
                return false;
            }
        }
        return marks.get(marks.size() - 1).at().isAbove(marks.get(0).at());
    }

    private static Optional<List<List<BigDecimal>>> points(String typed) {
        List<List<BigDecimal>> points = new ArrayList<>();
        for (String point : typed.strip().replaceAll(";\\s*$", "").split(";")) {
            List<String> figures = Arrays.asList(point.strip().split("\\s+"));
            if (figures.size() != POSITION_AND_DIAMETER
                    || !figures.stream()
                            .allMatch(figure -> Written.isPlainDecimal(figure) && !figure.startsWith("-"))) {
                return Optional.empty();
            }
            points.add(figures.stream().map(BigDecimal::new).toList());
        }
        return Optional.of(points);
    }
}
