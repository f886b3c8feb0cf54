package org.tenthwise.app.export.qif;

import java.math.BigDecimal;
import java.util.Optional;
import org.tenthwise.model.plan.AngleCheck;
import org.tenthwise.model.plan.AskedCheck;
import org.tenthwise.model.plan.CalculatedCheck;
import org.tenthwise.model.plan.Check;
import org.tenthwise.model.plan.DocumentCheck;
import org.tenthwise.model.plan.Feature;
import org.tenthwise.model.plan.IndicatedCheck;
import org.tenthwise.model.plan.OverWiresCheck;
import org.tenthwise.model.plan.PlugFitCheck;
import org.tenthwise.model.plan.PositionCheck;
import org.tenthwise.model.plan.RunOutCheck;
import org.tenthwise.model.plan.ScaleCheck;
import org.tenthwise.model.plan.SizeCheck;
import org.tenthwise.model.plan.Step;
import org.tenthwise.model.plan.WorkedCheck;
import org.tenthwise.model.tolerance.MaterialModifier;

/** Which characteristic of the standard a check is. */
final class KindOf implements Check.Cases<CharacteristicKind> {

    private final Step step;
    private final FileUnits units;
    private final Datums datums;
    private final Optional<BigDecimal> nominal;

    private KindOf(Step step, FileUnits units, Datums datums, Optional<BigDecimal> nominal) {
        this.step = step;
        this.units = units;
        this.datums = datums;
        this.nominal = nominal;
    }

    /** @param nominal as the drawing has it, in the unit of the limits; absent where it gives limits alone */
    static CharacteristicKind of(Step step, FileUnits units, Datums datums, Optional<BigDecimal> nominal) {
        return step.check().match(new KindOf(step, units, datums, nominal));
    }

    private PlainFigures figures() {
        return new PlainFigures(units, step.limits().orElseThrow());
    }

    private CharacteristicKind dimension(String name) {
        return new DimensionKind(name, Optional.empty(), nominal, figures());
    }

    /** What the standard has no name for. */
    private CharacteristicKind own(String what) {
        boolean angle = figures().limits().unit().isOfAngle();
        return new DimensionKind(
                angle ? "UserDefinedAngular" : "UserDefinedLinear", Optional.of(what), nominal, figures());
    }

    private CharacteristicKind zone(String name, ZoneKind.ZoneShape shape, Optional<String> datum) {
        return new ZoneKind(name, datum.flatMap(datums::frame), shape, MaterialModifier.NONE, figures());
    }

    @Override
    public CharacteristicKind asked(AskedCheck check) {
        return new AttributeKind(step.name());
    }

    @Override
    public CharacteristicKind runOut(RunOutCheck check) {
        return zone("CircularRunout", ZoneKind.ZoneShape.PLAIN, Optional.empty());
    }

    /** How far sizes lie apart is no size. */
    @Override
    public CharacteristicKind size(SizeCheck check) {
        return check.combine().isRange() ? own(check.combine().key()) : dimension(name(check.feature()));
    }

    private static String name(Feature feature) {
        return switch (feature.form()) {
            case TURNED, HOLE -> "Diameter";
            case FACES -> feature.isInside() ? "Width" : "Thickness";
            case LENGTH -> feature.equals(Feature.DEPTH) ? "Depth" : "Length";
            case CHAMFER -> "Length";
            case RADIUS -> "Radius";
        };
    }

    @Override
    public CharacteristicKind angle(AngleCheck check) {
        return check.combine().isRange() ? own(check.combine().key()) : dimension("Angle");
    }

    @Override
    public CharacteristicKind indicated(IndicatedCheck check) {
        return switch (check.of()) {
            case CIRCULAR_RUN_OUT, AXIAL_RUN_OUT -> zone("CircularRunout", ZoneKind.ZoneShape.PLAIN, check.datum());
            case TOTAL_RUN_OUT -> zone("TotalRunout", ZoneKind.ZoneShape.PLAIN, check.datum());
            case SQUARENESS -> zone("Perpendicularity", ZoneKind.ZoneShape.PLANAR, check.datum());
            case PARALLELISM -> zone("Parallelism", ZoneKind.ZoneShape.PLANAR, check.datum());
            case FLATNESS -> zone("Flatness", ZoneKind.ZoneShape.OF_A_FORM, check.datum());
            case SYMMETRY -> zone("Symmetry", ZoneKind.ZoneShape.PLAIN, check.datum());
        };
    }

    @Override
    public CharacteristicKind position(PositionCheck check) {
        return new ZoneKind("Position", Optional.empty(), ZoneKind.ZoneShape.DIAMETRICAL, check.modifier(), figures());
    }

    @Override
    public CharacteristicKind scale(ScaleCheck check) {
        return new OwnUnitKind(nominal, figures());
    }

    @Override
    public CharacteristicKind worked(WorkedCheck check) {
        return own(check.by().way().key());
    }

    @Override
    public CharacteristicKind plugFit(PlugFitCheck check) {
        return own("clearance");
    }

    @Override
    public CharacteristicKind calculated(CalculatedCheck check) {
        return own(check.of().toString());
    }

    @Override
    public CharacteristicKind overWires(OverWiresCheck check) {
        return own("pitch-diameter");
    }

    /** By its figures where the drawing gives them limits, else by what the paper says. */
    @Override
    public CharacteristicKind document(DocumentCheck check) {
        if (check.limits().isEmpty()) {
            return new AttributeKind(step.name());
        }
        return figures().unit().isOfScale() ? new OwnUnitKind(nominal, figures()) : own(step.name());
    }
}
