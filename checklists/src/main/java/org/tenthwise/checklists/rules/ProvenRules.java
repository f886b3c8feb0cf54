package org.tenthwise.checklists.rules;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.IntUnaryOperator;
import org.tenthwise.checklists.format.RawTable;
import org.tenthwise.model.plan.AskedCheck;
import org.tenthwise.model.plan.Check;
import org.tenthwise.model.plan.DocumentCheck;
import org.tenthwise.model.plan.OnDrawing;
import org.tenthwise.model.plan.Operation;
import org.tenthwise.model.plan.ProofOf;
import org.tenthwise.model.plan.Specified;
import org.tenthwise.model.plan.Step;
import org.tenthwise.model.plan.StepBuilder;
import org.tenthwise.model.plan.StepClass;
import org.tenthwise.model.plan.WhenAsked;
import org.tenthwise.model.tolerance.Limits;
import org.tenthwise.model.words.Message;

/**
 * What the drawing asks for beside the steps of the order of work: its notes, which are confirmed or looked at in their
 * turn, and what papers prove, each in tables of its own.
 */
final class ProvenRules {

    static final String NOTE = "note";
    private static final List<ProofOf> PROOFS =
            List.of(ProofOf.ELSEWHERE, ProofOf.MATERIAL, ProofOf.PROCESS, ProofOf.TEST);
    private static final List<String> ANSWERED = List.of(AskedCheck.Confirm.KEY, AskedCheck.VisualCheck.KEY);

    private final TableKeys plan;
    private final PlanSoFar soFar;
    private final BalloonRules balloons;

    ProvenRules(TableKeys plan, PlanSoFar soFar, BalloonRules balloons) {
        this.plan = plan;
        this.soFar = soFar;
        this.balloons = balloons;
    }

    /** The notes, each at its number in the order of work, in the operation of the step before it. */
    List<Step> notes(List<Step> steps) {
        return tables(NOTE, this::note, number -> operationAt(number, steps));
    }

    private int operationAt(int number, List<Step> steps) {
        return steps.stream()
                .filter(step -> step.number() < number)
                .reduce((earlier, later) -> later)
                .map(Step::operation)
                .orElseGet(this::first);
    }

    /** What papers prove, in the order of the file, those of one kind together. */
    List<Step> proven() {
        List<Step> proven = new ArrayList<>();
        for (ProofOf proof : PROOFS) {
            proven.addAll(tables(proof.key(), keys -> paper(keys, proof), number -> last()));
        }
        return proven;
    }

    /** What one table asks. */
    private interface Asked {
        Optional<Check> of(TableKeys keys);
    }

    private List<Step> tables(String key, Asked asked, IntUnaryOperator operation) {
        if (!plan.has(key) || plan.isText(key)) {
            plan.ifAny(key, any -> Optional.empty());
            return List.of();
        }
        List<Step> steps = new ArrayList<>();
        for (RawTable table : plan.tables(key)) {
            TableKeys unnamed = plan.inside(key, table);
            Optional<Integer> number = unnamed.whole("number");
            TableKeys keys = number.map(n -> unnamed.about(Message.of("plan.in.check", n)))
                    .orElse(unnamed);
            step(keys, number, key, asked, operation).ifPresent(steps::add);
        }
        return steps;
    }

    private Optional<Step> step(
            TableKeys keys, Optional<Integer> number, String table, Asked asked, IntUnaryOperator operation) {
        number.ifPresent(n -> judge(keys, n));
        Optional<String> name = keys.text("name");
        OnDrawing drawing = OnDrawingRules.read(keys);
        Optional<Check> check = asked.of(keys);
        drawing.balloon()
                .ifPresent(balloon -> number.ifPresent(n -> balloons.judge(keys, n, balloon, drawing.instances())));
        Optional<WhenAsked> when = keys.ifAny(WhenRules.KEY, key -> WhenRules.read(keys));
        check.ifPresent(of -> OnDrawingRules.judge(keys, drawing.instances(), of));
        keys.finish();
        number.ifPresent(
                n -> soFar.add(n, new PlanSoFar.Known(table, keys.spot().line(), check)));
        return keys.built(() -> new StepBuilder(
                        number.orElseThrow(),
                        operation.applyAsInt(number.get()),
                        name.orElseThrow(),
                        check.orElseThrow())
                .drawing(drawing)
                .stepClass(StepClass.DRAWING)
                .when(when)
                .build());
    }

    private void judge(TableKeys keys, int number) {
        if (number < 1) {
            keys.problem("number", "plan.step.from-one");
        }
        soFar.step(number).ifPresent(same -> keys.problem("number", "plan.step.twice", same.line()));
    }

    private int first() {
        return soFar.operations().isEmpty() ? 0 : soFar.operations().get(0).number();
    }

    /** What a paper proves is done in none of them; it stands behind all. */
    private int last() {
        List<Operation> operations = soFar.operations();
        return operations.isEmpty() ? 0 : operations.get(operations.size() - 1).number();
    }

    private Optional<Check> note(TableKeys keys) {
        Optional<String> kind = keys.word("kind", ANSWERED, word -> word);
        Optional<String> what = keys.prose("what");
        return kind.flatMap(word -> what.map(said ->
                word.equals(AskedCheck.Confirm.KEY) ? new AskedCheck.Confirm(said) : new AskedCheck.VisualCheck(said)));
    }

    private Optional<Check> paper(TableKeys keys, ProofOf proof) {
        Optional<String> what = keys.ifAny("what", keys::prose);
        Optional<String> where = proof.isOfProduct() ? Optional.empty() : keys.text("where");
        Optional<Limits> limits = proof.isOfProduct() ? Optional.empty() : DocumentKind.limits(keys, soFar);
        Specified specified = proof.isOfProduct() ? specified(keys, proof) : Specified.NOTHING;
        return Optional.of(new DocumentCheck(proof, what.orElse(""), where.orElse(""), limits, specified));
    }

    private static Specified specified(TableKeys keys, ProofOf proof) {
        return new Specified(
                keys.ifAny("specification", keys::text).orElse(""),
                proof == ProofOf.MATERIAL ? keys.ifAny("form", keys::text).orElse("") : "",
                keys.ifAny("code", keys::text).orElse(""),
                keys.ifAny("supplier", keys::text).orElse(""));
    }
}
