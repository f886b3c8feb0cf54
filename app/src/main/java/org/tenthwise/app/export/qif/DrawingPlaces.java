package org.tenthwise.app.export.qif;

import java.util.Optional;
import org.tenthwise.model.plan.OnDrawing;

/**
 * Where a characteristic stands on the drawing.
 *
 * @param drawing id of the drawing
 */
record DrawingPlaces(String drawing) {

    /** Absent where neither sheet nor zone is named. */
    Optional<XmlElement> of(OnDrawing on) {
        if (on.sheet().isEmpty() && on.zone().isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new XmlElement("LocationOnDrawing")
                .add("DrawingId", drawing)
                .add(on.sheet().map(sheet -> XmlElement.text("SheetNumber", sheet)))
                .add(on.zone().map(zone -> XmlElement.text("DrawingZone", zone))));
    }
}
