package org.tenthwise.model.plan;

import org.tenthwise.model.quantity.Expansion;
import org.tenthwise.model.quantity.TemperatureRange;
import org.tenthwise.model.quantity.TemperatureScale;
import org.tenthwise.model.words.Message;

/**
 * What a plan says of heat: how part and gauges grow, and how cold and how warm it gets where they are measured.
 *
 * @param part of the part
 * @param gauge of the gauges and of what they are set on
 * @param shop in which part and gauges lie when they are read
 * @param scale in which the plan has temperatures read
 */
public record ThermalData(Growth part, Growth gauge, TemperatureRange shop, TemperatureScale scale) {

    /**
     * How much something grows, and who says so.
     *
     * @param source a material of the table with its source, or the plan itself
     */
    public record Growth(Expansion expansion, Message source) {}

    public Growth of(MeasuredBody body) {
        return body == MeasuredBody.PART ? part : gauge;
    }
}
