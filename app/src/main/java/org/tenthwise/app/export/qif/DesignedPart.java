package org.tenthwise.app.export.qif;

import java.util.List;
import java.util.stream.Stream;
import org.tenthwise.model.plan.DrawingInForce;
import org.tenthwise.model.plan.Plan;

/** The part as it is designed, and its drawing. */
final class DesignedPart {

    private final XmlElement drawing;
    private final XmlElement part;

    DesignedPart(XmlIds ids, Plan plan) {
        drawing = drawing(ids, plan);
        part = ids.give(new XmlElement("Part"))
                .with("label", plan.name())
                .add(new XmlElement("Header").add("Name", plan.name()))
                .add(
                        "UUID",
                        PersistentId.of(
                                "part", plan.part().number(), plan.part().revision()))
                .add("ModelNumber", plan.part().number())
                .addSaid("Version", plan.part().revision())
                .add(ids.give(XmlElement.list("DefinitionExternal", List.of(drawing))));
    }

    private static XmlElement drawing(XmlIds ids, Plan plan) {
        DrawingInForce drawing = plan.drawing();
        String title = Stream.of(drawing.title(), drawing.number().orElse(""), plan.name())
                .filter(name -> !name.isBlank())
                .findFirst()
                .orElseThrow();
        return ids.give(new XmlElement("PrintedDrawing"))
                .add("Name", title)
                .addSaid("Version", drawing.revision().orElse(""))
                .addSaid("DrawingNumber", drawing.number().orElse(""))
                .addSaid("AdditionalChanges", String.join("; ", drawing.changes()));
    }

    /** Id of the drawing. */
    String drawing() {
        return drawing.id();
    }

    XmlElement element() {
        return new XmlElement("Product")
                .addList("PartSet", List.of(part))
                .add(new XmlElement("RootPart").add("Id", part.id()));
    }
}
