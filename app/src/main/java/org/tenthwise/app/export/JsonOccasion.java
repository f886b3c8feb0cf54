package org.tenthwise.app.export;

import com.fasterxml.jackson.databind.node.ObjectNode;
import org.tenthwise.model.record.Sheet;
import org.tenthwise.model.run.Earlier;
import org.tenthwise.model.run.Occasion;
import org.tenthwise.model.words.Word;

/** What a run was begun for, as JSON. */
final class JsonOccasion {

    /** In place of a verdict. */
    static final String NOT_IN_THIS_RUN = "not-in-this-run";

    private JsonOccasion() {}

    /** What was accepted of the part number before, laid beside the run, and whether it was not made for two years. */
    private static void earlier(Sheet sheet, Earlier earlier, ObjectNode to) {
        ObjectNode since = to.putObject("since-accepted");
        earlier.accepted().ifPresent(before -> {
            since.put("run", before.run()).put("head", before.head());
            since.put(
                    "plan-changed",
                    !before.planHash().equals(sheet.run().begun().plan().sha256()));
            before.otherwise().forEach(since.putArray("checks-changed")::add);
            since.put("machine-before", before.machine()).put("lot-before", before.lot());
            before.gauges().forEach(since.putArray("gauges-before")::add);
        });
        earlier.lastMade().ifPresent(last -> since.put("last-made", last.toString()));
        since.put("lapsed", earlier.isLapsed(sheet.run().entries().get(0).at()));
    }

    static void write(Sheet sheet, ObjectNode to) {
        sheet.run().begun().earlier().ifPresent(earlier -> earlier(sheet, earlier, to));
        Occasion occasion = sheet.run().begun().occasion();
        if (occasion.saysNothing()) {
            return; // as records of older releases have it, which are made again to be checked
        }
        to.put("purpose", Word.of(occasion.purpose()));
        occasion.piece().ifPresent(piece -> to.put("piece", piece));
        occasion.baseline()
                .ifPresent(baseline ->
                        to.putObject("baseline").put("run", baseline.run()).put("head", baseline.head()));
        if (!occasion.reason().isEmpty()) {
            to.put("reason", occasion.reason());
        }
        if (!occasion.affected().isEmpty()) {
            occasion.affected().forEach(to.putArray("affected")::add);
        }
        if (!occasion.order().isEmpty()) {
            to.put("order", occasion.order());
        }
        if (!occasion.changes().isEmpty()) {
            occasion.changes().forEach(to.putArray("changes-in-force")::add);
        }
    }
}
