package org.tenthwise.app.export;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.record.CalculatedFinding;

/** What is told of a size worked out of others: the expression, what went into it, and both ends of what came out. */
final class JsonCalculated {

    private JsonCalculated() {}

    static void write(CalculatedFinding finding, JsonRunOut.Put put, ObjectNode to) {
        to.put("expression", finding.check().of().toString());
        ArrayNode parts = to.putArray("names");
        finding.parts().forEach(part -> write(part, parts.addObject()));
        finding.least().ifPresent(least -> put.put("least", least, to));
        finding.greatest().ifPresent(greatest -> put.put("greatest", greatest, to));
        finding.expanded().ifPresent(expanded -> put.put("expanded-uncertainty", expanded, to));
        finding.noAnswer().ifPresent(why -> to.put("no-answer", why.toString()));
    }

    private static void write(CalculatedFinding.Part part, ObjectNode to) {
        to.put("name", part.use().name())
                .put("step", part.use().step())
                .put("by", part.use().by().key());
        Unit unit = part.step().limits().orElseThrow().unit();
        List<Length> sizes = part.sizes();
        if (!sizes.isEmpty()) {
            to.put("least", WorkedOut.figure(Length.least(sizes), unit, part.places()));
            to.put("greatest", WorkedOut.figure(Length.greatest(sizes), unit, part.places()));
        }
        to.put("unit", unit.symbol());
    }
}
