package org.tenthwise.checklists.rules;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.tenthwise.checklists.format.RawTable;
import org.tenthwise.model.compute.expression.Dimension;
import org.tenthwise.model.compute.expression.Expression;
import org.tenthwise.model.plan.CalculatedCheck;
import org.tenthwise.model.plan.CalculatedCheck.By;
import org.tenthwise.model.plan.CalculatedCheck.Use;
import org.tenthwise.model.plan.Check;
import org.tenthwise.model.quantity.QuantityKind;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.tolerance.Limits;

/** <em>calculated</em>: an expression over what earlier steps found. Nothing is taken at it, and nobody says how. */
final class CalculatedKind implements StepKind {

    private static final String OF = "of";
    private static final String NAMES = "names";
    private static final String STEP = "step";
    private static final String VALUE = "value";

    @Override
    public boolean needsMethod() {
        return false;
    }

    @Override
    public Optional<Check> read(TableKeys keys, PlanSoFar soFar) {
        Optional<Expression> of = keys.text(OF).flatMap(text -> keys.sensible(OF, () -> Expression.of(text)));
        int before = keys.problemCount();
        Map<Use, Check> uses = uses(keys, soFar);
        Optional<Dimension> made = of.filter(any -> keys.problemCount() == before)
                .flatMap(expression -> dimension(keys, expression, uses));
        Optional<Limits> limits = made.isPresent()
                ? LimitRules.OF_A_SIZE.read(keys, unit(made.get(), soFar)).map(CalculatedKind::alike)
                : unread(keys);
        return keys.built(() -> new CalculatedCheck(
                of.orElseThrow(), inOrder(of.orElseThrow(), uses.keySet()), restsOn(uses), limits.orElseThrow()));
    }

    private static Unit unit(Dimension made, PlanSoFar soFar) {
        return made.isLike(Dimension.ANGLE) ? Unit.MINUTE_OF_ARC : soFar.unit();
    }

    private static Limits alike(Limits limits) {
        return limits.unit().isOfAngle() ? AngleLimitRules.alike(limits) : limits;
    }

    /** Both are known, though nobody knows yet what they are of. */
    private static Optional<Limits> unread(TableKeys keys) {
        Stream.of("lower", "upper").forEach(limit -> keys.ifAny(limit, any -> Optional.empty()));
        return Optional.empty();
    }

    private static List<Use> inOrder(Expression of, Set<Use> uses) {
        return of.names().stream()
                .flatMap(name -> uses.stream().filter(use -> use.name().equals(name)))
                .toList();
    }

    private static List<Integer> restsOn(Map<Use, Check> uses) {
        Set<Integer> steps = new LinkedHashSet<>();
        uses.keySet().forEach(use -> steps.add(use.step()));
        uses.values().forEach(check -> steps.addAll(check.restsOn()));
        return new ArrayList<>(steps);
    }

    private static Optional<Dimension> dimension(TableKeys keys, Expression of, Map<Use, Check> uses) {
        Map<String, Dimension> names = new LinkedHashMap<>();
        uses.forEach((use, check) -> names.put(
                use.name(), unit(check).kind().equals(QuantityKind.ANGLE) ? Dimension.ANGLE : Dimension.LENGTH));
        Optional<Expression> named = keys.sensible(NAMES, () -> {
            of.expect(names.keySet());
            return of;
        });
        Optional<Dimension> made = named.flatMap(any -> keys.sensible(OF, () -> of.dimension(names)));
        made.filter(is -> !is.isLike(Dimension.LENGTH) && !is.isLike(Dimension.ANGLE))
                .ifPresent(is -> keys.problem(OF, "plan.calculated.number"));
        return made.filter(is -> is.isLike(Dimension.LENGTH) || is.isLike(Dimension.ANGLE));
    }

    private static Unit unit(Check check) {
        return check.judgedAgainst().orElseThrow().unit();
    }

    /** Those that are sound. */
    private static Map<Use, Check> uses(TableKeys keys, PlanSoFar soFar) {
        Map<Use, Check> uses = new LinkedHashMap<>();
        keys.table(NAMES).ifPresent(table -> {
            TableKeys names = keys.inside(NAMES, table);
            for (String name : table.values().keySet()) {
                use(names, name, table, soFar, uses);
            }
            names.finish();
        });
        return uses;
    }

    private static void use(TableKeys names, String name, RawTable table, PlanSoFar soFar, Map<Use, Check> uses) {
        if (table.values().get(name) instanceof RawTable inner) {
            names.any(name);
            TableKeys one = names.inside(name, inner);
            Optional<Check> check = check(one, STEP, soFar);
            Optional<By> by = one.ifAny(VALUE, key -> one.word(key, List.of(By.values()), By::key));
            check.ifPresent(of -> by(one, VALUE, of, by)
                    .ifPresent(how -> uses.put(new Use(name, one.whole(STEP).orElseThrow(), how), of)));
            one.finish();
        } else {
            check(names, name, soFar).ifPresent(of -> by(names, name, of, Optional.empty())
                    .ifPresent(how -> uses.put(new Use(name, names.whole(name).orElseThrow(), how), of)));
        }
    }

    /** The check of an earlier step that comes to a length or an angle; absent also where that step has problems. */
    private static Optional<Check> check(TableKeys keys, String key, PlanSoFar soFar) {
        Optional<Integer> number = keys.whole(key);
        Optional<PlanSoFar.Known> step = number.flatMap(soFar::step);
        if (number.isPresent() && step.isEmpty()) {
            keys.problem(key, "plan.step.not-before", key, number.get());
        }
        Optional<Check> check = step.flatMap(PlanSoFar.Known::check);
        boolean usable = check.filter(
                        of -> of.comesToASize() && !unit(of).kind().isScale())
                .isPresent();
        if (check.isPresent() && !usable) {
            keys.problem(
                    key,
                    "plan.calculated.no-size",
                    key,
                    number.get(),
                    step.get().kind());
        }
        return check.filter(any -> usable);
    }

    /** How the name counts: of a run-out and of a movement it must be said. */
    private static Optional<By> by(TableKeys keys, String key, Check check, Optional<By> said) {
        By by = said.orElse(By.EACH);
        List<By> possible = By.of(check);
        if (possible.contains(by)) {
            return Optional.of(by);
        }
        keys.problem(
                key,
                possible.contains(By.EACH) ? "plan.calculated.is-a-size" : "plan.calculated.no-size-but",
                possible.stream().map(By::key).toList());
        return Optional.empty();
    }
}
