package org.tenthwise.app.export;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import org.tenthwise.model.record.PositionFinding;
import org.tenthwise.model.words.Word;

/** What is told of a position: its modifier, and axis by axis how far it lies off its true place and may lie off it. */
final class JsonPosition {

    private JsonPosition() {}

    static void write(PositionFinding finding, JsonRunOut.Put put, ObjectNode to) {
        to.put("material-modifier", Word.of(finding.check().modifier()));
        to.put("read", Word.of(finding.check().by()));
        finding.check().ofDirection().ifPresent(uncertainty -> to.putObject("uncertainty-of-direction")
                .put("of", uncertainty.name())
                .put("expanded", uncertainty.expanded().text())
                .put("unit", uncertainty.expanded().unit().symbol())
                .put("coverage-factor", uncertainty.coverageFactor().toPlainString()));
        ArrayNode points = to.putArray("points");
        finding.points().forEach(read -> {
            ObjectNode point = points.addObject();
            point.put("at", String.join(", ", read.point().called()));
            put.put("true-x", read.point().hole().x().length(), point);
            put.put("true-y", read.point().hole().y().length(), point);
            put.put("off-x", read.deviation().x(), point);
            put.put("off-y", read.deviation().y(), point);
            put.put("deviation", read.deviation().diameter(), point);
            put.put("bonus", read.bonus(), point);
            put.put("allowed", read.allowed(), point);
            point.put("inside", read.isInside());
        });
    }
}
