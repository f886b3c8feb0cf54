package org.tenthwise.model.plan;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Room for the readings of a run-out at one section: the highest and the lowest over a full turn, and a reading at
 * every angle.
 *
 * @param section absent where the plan names none
 * @param byAngle in the order they come under the needle
 */
public record SectionSlots(Optional<Section> section, Slot highest, Slot lowest, List<Slot> byAngle) {

    /** Stands before the slots of the second section. */
    private static final String FAR = "far:";

    public SectionSlots {
        byAngle = List.copyOf(byAngle);
    }

    static List<SectionSlots> of(List<Section> sections, List<BigDecimal> angles) {
        return sections.isEmpty()
                ? List.of(of("", "", Optional.empty(), angles))
                : IntStream.range(0, sections.size())
                        .mapToObj(i -> of(
                                i == 0 ? "" : FAR,
                                sections.size() < 2
                                        ? ""
                                        : ", " + sections.get(i).name(),
                                Optional.of(sections.get(i)),
                                angles))
                        .toList();
    }

    private static SectionSlots of(String before, String where, Optional<Section> section, List<BigDecimal> angles) {
        List<Slot> byAngle = IntStream.range(0, angles.size())
                .mapToObj(i -> new Slot(
                        before + (i + 1) + ".1",
                        new Place(
                                angles.get(i).toPlainString() + "°" + where,
                                Optional.empty(),
                                Optional.of(angles.get(i))),
                        1))
                .toList();
        return new SectionSlots(
                section,
                ofTurn(before, RunOutCheck.HIGHEST, where),
                ofTurn(before, RunOutCheck.LOWEST, where),
                byAngle);
    }

    private static Slot ofTurn(String before, String key, String where) {
        return new Slot(before + key, Place.named(key + where), 1);
    }

    /** The two slots of a full turn. */
    public List<Slot> sweep() {
        return List.of(highest, lowest);
    }

    /** All of them, the sweep first. */
    public Stream<Slot> slots() {
        return Stream.concat(sweep().stream(), byAngle.stream());
    }
}
