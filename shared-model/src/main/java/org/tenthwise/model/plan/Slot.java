package org.tenthwise.model.plan;

import java.util.List;
import java.util.stream.IntStream;

/**
 * Room for one reading.
 *
 * @param key what the ledger knows the slot by, unique in the step: {@code 2.1} is the first reading at the second
 *     place
 * @param place where the reading is taken
 * @param repeat 1 for the first reading at the place
 */
public record Slot(String key, Place place, int repeat) {

    /** Room for so many readings at each place, in order. */
    static List<Slot> at(List<Place> places, int readingsEach) {
        return IntStream.range(0, places.size())
                .boxed()
                .flatMap(place -> IntStream.rangeClosed(1, readingsEach)
                        .mapToObj(repeat -> new Slot((place + 1) + "." + repeat, places.get(place), repeat)))
                .toList();
    }
}
