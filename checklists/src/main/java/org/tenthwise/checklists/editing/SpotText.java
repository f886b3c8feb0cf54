package org.tenthwise.checklists.editing;

import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.tenthwise.model.plan.PageSpot;

/** Where the balloon of a step is on the file of the drawing, as a plan has it. */
public final class SpotText {

    public static final String KEY = "on_page";

    private static final String BETWEEN = "\\s*,\\s*";
    private static final String FIGURE = "(\\d{1,4})";
    private static final Pattern WRITTEN =
            Pattern.compile("\\[\\s*" + FIGURE + BETWEEN + FIGURE + BETWEEN + FIGURE + "\\s*,?\\s*]");

    private SpotText() {}

    /** Absent where the step has no place, or one that is on no page. */
    public static Optional<PageSpot> of(TableText step) {
        Optional<Matcher> written = step.value(KEY).map(WRITTEN::matcher).filter(Matcher::matches);
        return written.flatMap(it -> {
            int page = Integer.parseInt(it.group(1));
            int x = Integer.parseInt(it.group(2));
            int y = Integer.parseInt(it.group(3));
            return PageSpot.isPage(page) && PageSpot.isOnPage(x) && PageSpot.isOnPage(y)
                    ? Optional.of(new PageSpot(page, x, y))
                    : Optional.empty();
        });
    }

    public static String written(PageSpot spot) {
        return TomlValue.list(
                List.of(TomlValue.number(spot.page()), TomlValue.number(spot.x()), TomlValue.number(spot.y())));
    }
}
