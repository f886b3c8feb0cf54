package org.tenthwise.app.history;

import java.time.LocalDate;
import java.util.Optional;

/**
 * Which readings and answers a history has. What is absent makes no difference.
 *
 * @param part part number
 * @param gauge mark of the gauge
 * @param person who read or answered
 * @param from first day, as it was where it happened
 * @param to last day
 * @param characteristic number of the step, or its name
 * @param balloon number on the drawing; capitals tell no two apart
 * @param designator on the drawing; capitals tell no two apart
 */
public record ReadingQuery(
        Optional<String> part,
        Optional<String> serial,
        Optional<String> gauge,
        Optional<String> person,
        Optional<LocalDate> from,
        Optional<LocalDate> to,
        Optional<String> characteristic,
        Optional<String> balloon,
        Optional<String> designator) {}
