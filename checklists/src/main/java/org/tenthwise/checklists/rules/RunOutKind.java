package org.tenthwise.checklists.rules;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.tenthwise.checklists.format.RawList;
import org.tenthwise.checklists.format.RawValue;
import org.tenthwise.model.compute.roundness.CircleFit;
import org.tenthwise.model.plan.Check;
import org.tenthwise.model.plan.Holding;
import org.tenthwise.model.plan.RunOutCheck;
import org.tenthwise.model.plan.Section;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.quantity.Written;

/** <em>run-out</em>: full indicator movement of a round surface, what holds the work, and where along it is read. */
final class RunOutKind implements StepKind {

    private static final String ANGLES = "angles";
    /** Eight, an eighth of a turn apart: enough to tell the eccentric part from an oval or a three-lobed one. */
    private static final List<BigDecimal> EIGHT =
            IntStream.range(0, 8).mapToObj(i -> BigDecimal.valueOf(45L * i)).toList();

    @Override
    public Optional<Check> read(TableKeys keys, PlanSoFar soFar) {
        Unit unit = soFar.unit();
        Optional<Written> limit = keys.size("limit", unit);
        List<BigDecimal> angles =
                keys.ifAny(ANGLES, key -> Optional.of(angles(keys))).orElse(EIGHT);
        Holding holding = HoldingRules.read(keys);
        BigDecimal firstJaw = HoldingRules.firstJaw(keys, holding);
        List<Section> sections = SectionRules.read(keys, unit);
        Optional<Check.Means> means = MeansRules.read(keys, soFar, List.of(RunOutCheck.KEY));
        return keys.built(
                () -> new RunOutCheck(limit.orElseThrow(), angles, holding, firstJaw, sections, means.orElseThrow()));
    }

    private static List<BigDecimal> angles(TableKeys keys) {
        int before = keys.problemCount();
        List<BigDecimal> angles = new ArrayList<>();
        for (RawValue item : keys.list(ANGLES).map(RawList::items).orElse(List.of())) {
            if (!(item instanceof RawValue.Number number)) {
                keys.problem(item.spot(), "plan.angle-number", item.what());
                continue;
            }
            BigDecimal angle = number.figure();
            if (!PlaceRules.isOnTheCircle(angle)) {
                keys.problem(item.spot(), "plan.angle", angle);
            } else if (angles.stream().anyMatch(other -> other.compareTo(angle) == 0)) {
                keys.problem(item.spot(), "plan.angle-twice", angle);
            }
            angles.add(angle);
        }
        boolean sound = keys.problemCount() == before;
        CircleFit.refusal(angles)
                .filter(why -> sound)
                .ifPresent(why -> keys.problemUnlessKept(ANGLES, "plan.angles-unfit", why));
        return angles;
    }
}
