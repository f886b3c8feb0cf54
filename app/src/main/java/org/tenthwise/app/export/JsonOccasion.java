package org.tenthwise.app.export;

import com.fasterxml.jackson.databind.node.ObjectNode;
import org.tenthwise.model.record.Sheet;
import org.tenthwise.model.run.Occasion;
import org.tenthwise.model.words.Word;

/** What a run was begun for, as JSON. */
final class JsonOccasion {

    /** In place of a verdict. */
    static final String NOT_IN_THIS_RUN = "not-in-this-run";

    private JsonOccasion() {}

    static void write(Sheet sheet, ObjectNode to) {
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
