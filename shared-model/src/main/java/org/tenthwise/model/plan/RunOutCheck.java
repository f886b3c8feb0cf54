package org.tenthwise.model.plan;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.tolerance.Limits;

/**
 * Run-out of a round surface.
 *
 * <p>It is judged by a full slow turn, {@link #HIGHEST} and {@link #LOWEST}. Readings by angle, in the same pass, tell
 * to which side the work stands.
 *
 * @param limit greatest full indicator movement
 * @param angles degrees, in the order they come under the indicator; at least one
 * @param holding what holds the work
 * @param firstJaw degrees at which jaw 1 stands; the others follow evenly, in the direction of rising angle
 * @param sections where along the part it is read, the one nearest to the jaws first; empty where the plan does not
 *     say, and then it is read at one
 */
public record RunOutCheck(
        Written limit,
        List<BigDecimal> angles,
        Holding holding,
        BigDecimal firstJaw,
        List<Section> sections,
        Means with)
        implements Check {

    /** The word plans and files for programs have for it. */
    public static final String KEY = "run-out";

    /** Slot of the highest reading over a full turn. */
    public static final String HIGHEST = "highest";
    /** Slot of the lowest reading over a full turn. */
    public static final String LOWEST = "lowest";

    public RunOutCheck {
        angles = List.copyOf(angles);
        sections = List.copyOf(sections);
    }

    /** 3 or 4; 0 where there are none. */
    public int jaws() {
        return holding.jaws();
    }

    /** The room at each section, the one nearest to the jaws first; one where the plan names no section. */
    public List<SectionSlots> bySection() {
        return SectionSlots.of(sections, angles);
    }

    /** The section a slot belongs to; absent where the plan names none. */
    public Optional<Section> section(Slot slot) {
        return bySection().stream()
                .filter(at -> at.slots().anyMatch(slot::equals))
                .findFirst()
                .flatMap(SectionSlots::section);
    }

    @Override
    public String key() {
        return KEY;
    }

    /** The slots by angle, at every section. */
    @Override
    public List<Slot> slots() {
        return bySection().stream().flatMap(at -> at.byAngle().stream()).toList();
    }

    @Override
    public List<Slot> everySlot() {
        return bySection().stream().flatMap(SectionSlots::slots).toList();
    }

    @Override
    public Optional<Means> means() {
        return Optional.of(with);
    }

    @Override
    public List<Integer> restsOn() {
        return List.of();
    }

    @Override
    public Optional<Limits> judgedAgainst() {
        return Optional.of(Limits.atMost(limit));
    }

    @Override
    public Optional<String> judgedBy() {
        return Optional.of("movement");
    }

    @Override
    public boolean isBestAtZero() {
        return true;
    }

    @Override
    public Optional<RunOutCheck> asTurn() {
        return Optional.of(this);
    }

    @Override
    public <R> R match(Cases<R> cases) {
        return cases.runOut(this);
    }
}
