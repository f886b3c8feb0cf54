package org.tenthwise.app.picture.chart;

import java.math.BigDecimal;

/**
 * A figure as it is written and where it lies on a scale.
 *
 * @param value in the unit of the picture
 * @param text as it was typed, or as it is told
 */
public record ChartFigure(BigDecimal value, String text) {

    /** Where it is drawn; no limit is judged by it. */
    double at() {
        return value.doubleValue();
    }
}
