package org.tenthwise.app.export;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import org.tenthwise.model.record.WorkedFinding;
import org.tenthwise.model.worked.WorkedBy;
import org.tenthwise.model.worked.WorkedWay;

/**
 * What is told of a size or an angle worked out of readings: what is known beforehand, and what each place comes to.
 */
final class JsonWorked {

    private JsonWorked() {}

    static void write(WorkedFinding finding, JsonRunOut.Put put, ObjectNode to) {
        WorkedBy by = finding.check().by();
        to.put("by", by.way().key());
        ObjectNode given = to.putObject("given");
        by.given().forEach(one -> given.put(one.what().key(), one.figure()));
        ArrayNode places = to.putArray("places");
        finding.at().forEach(at -> write(at, by.way(), put, places.addObject()));
    }

    private static void write(WorkedFinding.At at, WorkedWay way, JsonRunOut.Put put, ObjectNode to) {
        to.put("place", at.place().name());
        at.worked().ifPresent(size -> put.put("size", size.value(), to));
        at.beside()
                .ifPresent(beside -> to.put(
                        way == WorkedWay.BALLS ? "mouth" : "tooth-thickness",
                        WorkedOut.figure(
                                beside, at.raw().get(0).reading().typed().unit(), 0)));
        at.refused().ifPresent(why -> to.put("refused", why.toString()));
    }
}
