package org.tenthwise.model.compute.statistics;

import java.math.BigDecimal;
import java.util.List;
import org.tenthwise.model.words.Refused;

/**
 * The readings of a gauge study: every person reads every part equally often.
 *
 * @param byPart part by part, person by person, repeat by repeat; two parts or more, one person or more, two repeats or
 *     more
 */
public record GaugeReadings(List<List<List<BigDecimal>>> byPart) {

    public GaugeReadings {
        byPart = byPart.stream()
                .map(part -> part.stream().map(List::copyOf).toList())
                .toList();
        if (byPart.size() < 2) {
            throw new Refused("model.gauge-readings.one-part");
        }
        int persons = byPart.get(0).size();
        int repeats = byPart.get(0).stream().mapToInt(List::size).findFirst().orElse(0);
        if (persons < 1 || repeats < 2) {
            throw new Refused("model.gauge-readings.each-person");
        }
        if (byPart.stream()
                .anyMatch(part -> part.size() != persons || part.stream().anyMatch(cell -> cell.size() != repeats))) {
            throw new Refused("model.gauge-readings.each-persons", persons, byPart.size(), repeats);
        }
    }

    int parts() {
        return byPart.size();
    }

    int persons() {
        return byPart.get(0).size();
    }

    int repeats() {
        return byPart.get(0).get(0).size();
    }

    /** With the first reading taken off every one. */
    GaugeReadings fromFirst() {
        BigDecimal first = byPart.get(0).get(0).get(0);
        return new GaugeReadings(byPart.stream()
                .map(part -> part.stream()
                        .map(cell -> cell.stream()
                                .map(reading -> reading.subtract(first))
                                .toList())
                        .toList())
                .toList());
    }
}
