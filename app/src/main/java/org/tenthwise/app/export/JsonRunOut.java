package org.tenthwise.app.export;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.util.List;
import org.tenthwise.model.compute.roundness.JawMoves;
import org.tenthwise.model.plan.Holding;
import org.tenthwise.model.plan.RunOutCheck;
import org.tenthwise.model.plan.Section;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.record.AtSection;
import org.tenthwise.model.record.RunOutFinding;

/**
 * What is told of a run-out: what holds the work, and section by section the movement over a full turn, by which it is
 * judged, beside what the readings by angle show.
 */
final class JsonRunOut {

    /** Writes a length under a key, with the places it is known to. */
    interface Put {
        void put(String key, Length length, ObjectNode to);
    }

    private JsonRunOut() {}

    /** What the plan says of it. */
    static void write(RunOutCheck check, ObjectNode to) {
        if (check.holding() != Holding.UNSAID) {
            to.put("holding", check.holding().key());
        }
        if (check.jaws() > 0) {
            ArrayNode jaws = to.putArray("jaws");
            List<BigDecimal> angles = JawMoves.evenly(check.jaws(), check.firstJaw());
            angles.forEach(angle -> jaws.addObject().put("jaw", jaws.size()).put("at-degrees", angle.toPlainString()));
        }
        if (!check.sections().isEmpty()) {
            ArrayNode sections = to.putArray("sections");
            check.sections().forEach(section -> write(section, sections.addObject()));
        }
    }

    private static void write(Section section, ObjectNode to) {
        to.put("name", section.name())
                .put("from-jaws", section.at().text())
                .put("unit", section.at().unit().symbol());
    }

    /** The circle nearest to the jaws stands by itself too, where it stood before there were sections. */
    static void write(RunOutFinding finding, Put put, ObjectNode to) {
        circle(finding.near(), put, to);
        ArrayNode sections = to.putArray("sections");
        for (AtSection at : finding.sections()) {
            ObjectNode section = sections.addObject();
            at.section().ifPresent(named -> section.put("section", named.name()));
            at.sweptMovement().ifPresent(movement -> put.put("movement-over-a-turn", movement, section));
            at.pointsMovement().ifPresent(movement -> put.put("movement-by-angle", movement, section));
            at.wholeTurn().ifPresent(movement -> put.put("turn-by-circle", movement, section));
            circle(at, put, section);
        }
        finding.shiftAndTilt().ifPresent(axis -> put.put("coaxial-error", axis.coaxialError(), to));
    }

    private static void circle(AtSection at, Put put, ObjectNode to) {
        at.fit().ifPresent(fit -> {
            put.put("eccentricity", fit.eccentricity(), to);
            to.put("high-at-degrees", fit.highAtDegrees().toPlainString());
            put.put("form", fit.residual(), to);
        });
    }
}
