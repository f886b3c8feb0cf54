package org.tenthwise.model.worked;

import java.util.List;
import org.tenthwise.model.compute.taper.TaperOverRollers;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.QuantityKind;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.words.Refused;

/**
 * The included angle of an outside taper that stands on a plate: over two equal rollers on the plate, and again with
 * both on blocks.
 *
 * @param height of the blocks
 * @param smallEndDown which end stands on the plate: readings the wrong way round are of other work
 */
public record RollersOnTaper(Written height, boolean smallEndDown) implements WorkedBy {

    @Override
    public WorkedWay way() {
        return WorkedWay.ROLLERS;
    }

    @Override
    public List<WorkedReading> readings() {
        return List.of(WorkedReading.LOW, WorkedReading.HIGH);
    }

    @Override
    public List<Given> given() {
        return List.of(Given.of(KnownSize.HEIGHT, height));
    }

    @Override
    public QuantityKind gives() {
        return QuantityKind.ANGLE;
    }

    @Override
    public Length of(List<Length> readings) {
        TaperOverRollers over = new TaperOverRollers(readings.get(0), readings.get(1), height.length());
        if (over.smallEndDown() != smallEndDown) {
            throw new Refused("model.worked.other-end");
        }
        return WorkedBy.angle(over.taper().included());
    }

    @Override
    public <R> R match(Cases<R> cases) {
        return cases.rollersOnTaper(this);
    }
}
