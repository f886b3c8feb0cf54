package org.tenthwise.app.export.pdf;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.tenthwise.app.text.Figures;
import org.tenthwise.app.text.StepFigures;
import org.tenthwise.model.record.AtSection;
import org.tenthwise.model.record.RunOutFinding;

/** The movement of a run-out, section by section: over a full turn, by which it is judged, and by angle. */
final class TurnFacts {

    private final RecordContext matter;

    TurnFacts(RecordContext matter) {
        this.matter = matter;
    }

    /** Nothing before there is a movement. */
    List<String> of(RunOutFinding finding) {
        StepFigures figures = StepFigures.of(finding);
        List<String> said = new ArrayList<>();
        for (AtSection at : finding.sections()) {
            String movement = movement(at, figures);
            if (!movement.isEmpty()) {
                said.add(at.section()
                        .map(section ->
                                matter.say("record.turn.at", section.name(), Figures.withUnit(section.at()), movement))
                        .orElse(movement));
            }
        }
        finding.shiftAndTilt()
                .ifPresent(axis -> said.add(matter.say("record.turn.coaxial", figures.withUnit(axis.coaxialError()))));
        return said;
    }

    private String movement(AtSection at, StepFigures figures) {
        Optional<String> swept = at.sweptMovement().map(figures::withUnit);
        Optional<String> points = at.pointsMovement().map(figures::withUnit);
        if (swept.isPresent()) {
            return points.map(byAngle -> matter.say("record.turn.both", swept.get(), byAngle))
                    .orElseGet(() -> matter.say("record.turn.swept", swept.get()));
        }
        return points.map(byAngle -> matter.say("record.turn.by-angle", byAngle))
                .orElse("");
    }
}
