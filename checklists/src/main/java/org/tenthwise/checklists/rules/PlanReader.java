package org.tenthwise.checklists.rules;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import org.tenthwise.checklists.format.RawTable;
import org.tenthwise.checklists.format.TomlReading;
import org.tenthwise.checklists.format.TomlText;
import org.tenthwise.model.callout.CalloutReader;
import org.tenthwise.model.plan.Aim;
import org.tenthwise.model.plan.IssueOfPlan;
import org.tenthwise.model.plan.Outline;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.plan.PlanSource;
import org.tenthwise.model.plan.Step;
import org.tenthwise.model.plan.ThermalData;
import org.tenthwise.model.quantity.Unit;

/** Reads a plan file: a plan, or every problem in it. */
public final class PlanReader {

    private static final String OUTLINE = "outline";

    private final TomlText toml;

    public PlanReader() {
        this.toml = new TomlText();
    }

    public PlanReading read(String text) {
        return read(text, new Problems());
    }

    /**
     * Reads the plan kept with a run. What was sound when the run was begun is not refused here, whatever has been
     * asked of plans since.
     */
    public PlanReading readKept(String text) {
        return read(text, new Problems(true));
    }

    private PlanReading read(String text, Problems problems) {
        TomlReading reading = toml.read(text);
        if (reading instanceof TomlReading.Unreadable unreadable) {
            return new PlanReading.Bad(Problems.of(unreadable));
        }
        return plan(((TomlReading.Readable) reading).top(), source(text), problems)
                .<PlanReading>map(good -> good)
                .orElseGet(() -> new PlanReading.Bad(problems.sorted()));
    }

    private static Optional<PlanReading.Good> plan(RawTable top, PlanSource source, Problems problems) {
        TableKeys keys = new TableKeys(top, problems);
        if (!HeaderRules.isOfThisFormat(keys)) {
            return Optional.empty();
        }
        HeaderRules.Header header = HeaderRules.read(keys);
        // without a unit the figures are still set against each other, which needs any one
        Unit unit = header.unit().orElse(Unit.MILLIMETRE);
        Optional<Aim> aim = CuttingRules.ofPlan(keys);
        OperationRules.Known operations = OperationRules.read(keys, unit);
        Optional<Outline> outline = keys.ifAny(OUTLINE, keys::table)
                .flatMap(table -> new OutlineRules(keys.inside(OUTLINE, table), unit).read());
        Optional<ThermalData> climate = ClimateRules.read(keys, unit);
        CalloutReader drawing = new CalloutReader(unit, HeaderRules.tolerance(keys, unit));
        StepRules rules = new StepRules(
                new PlanSoFar(
                        unit,
                        operations,
                        aim,
                        outline,
                        keys.has(OUTLINE),
                        UncertaintyRules.read(keys, unit),
                        GaugeKindRules.read(keys, unit)),
                keys.has(ClimateRules.KEY),
                drawing);
        List<Step> steps = rules.read(keys);
        List<IssueOfPlan> issues = IssueRules.read(keys, header.issue());
        keys.finish();
        return keys.built(() -> new PlanReading.Good(
                new Plan(
                        header.part().orElseThrow(),
                        header.issue().orElseThrow(),
                        header.name().orElseThrow(),
                        header.material().orElseThrow(),
                        header.drawing().orElseThrow(),
                        header.route(),
                        unit,
                        header.remark(),
                        operations.operations(),
                        steps,
                        outline,
                        source,
                        climate,
                        header.lotAsked(),
                        issues),
                rules.requirements()));
    }

    private static PlanSource source(String text) {
        try {
            byte[] hash = MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
            return new PlanSource(text, HexFormat.of().formatHex(hash));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("Every Java has SHA-256", e);
        }
    }
}
