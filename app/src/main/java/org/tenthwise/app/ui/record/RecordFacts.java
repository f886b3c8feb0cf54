package org.tenthwise.app.ui.record;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.tenthwise.app.session.CameFrom;
import org.tenthwise.app.text.Dates;
import org.tenthwise.app.text.OutcomeWords;
import org.tenthwise.app.text.Sentences;
import org.tenthwise.model.record.Sheet;
import org.tenthwise.model.run.Entry;
import org.tenthwise.model.run.Event;
import org.tenthwise.model.words.Words;

/**
 * Who made a part, where, when, and who signed its record, a line each.
 *
 * @param from how the run came in, where it was made elsewhere
 * @param unsealed whether it is closed and not sealed
 */
record RecordFacts(Optional<CameFrom> from, boolean unsealed, Words words) {

    /** Of a run as it is kept. */
    List<String> of(Sheet kept) {
        Event.Begun begun = kept.run().begun();
        Dates dates = new Dates(words);
        List<String> facts = new ArrayList<>();
        if (unsealed) {
            facts.add(words.say("sheet.caution.unsealed.why"));
        }
        from.ifPresent(came -> facts.add(words.say("sheet.came", came.sign(), dates.dayAndHour(came.at()), came.by())));
        facts.add(words.say(
                "sheet.begun",
                dates.dayAndHour(kept.run().entries().get(0).at()),
                kept.run().entries().get(0).by()));
        if (!begun.machine().isEmpty()) {
            facts.add(words.say("sheet.machine", begun.machine()));
        }
        String lot = new Sentences(words).lot(begun);
        if (!lot.isEmpty()) {
            facts.add(words.say("sheet.lot", lot));
        }
        for (Entry entry : kept.run().entries()) {
            entry.event()
                    .as(Event.HandedOver.class)
                    .ifPresent(
                            over -> facts.add(words.say("sheet.handed-over", over.to(), dates.dayAndHour(entry.at()))));
        }
        OutcomeWords said = new OutcomeWords(words);
        kept.run()
                .signatures()
                .forEach(signature -> facts.add(words.say(
                        "sheet.signed",
                        said.signature(signature, kept),
                        words.say(signature.closed() ? "sheet.closed-with-it" : "sheet.signed-then"),
                        dates.dayAndHour(signature.entry().at()))));
        return facts;
    }
}
