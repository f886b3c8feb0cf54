package org.tenthwise.app.ui.record;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.tenthwise.app.session.CameFrom;
import org.tenthwise.app.session.RunProof;
import org.tenthwise.model.words.Words;

/**
 * What must be known of a record before what it says.
 *
 * @param head in a few words
 * @param why and what to do; empty where that stands among the facts below, so that the verdict is seen at once
 */
public record Caution(String head, String why) {

    /** The gravest first. */
    static List<Caution> of(RunProof proof, Optional<CameFrom> from, Words words) {
        List<Caution> cautions = new ArrayList<>();
        proof.fault()
                .ifPresent(fault -> cautions.add(
                        new Caution(words.say("sheet.caution.fault"), words.say("sheet.caution.fault.why", fault))));
        from.filter(came -> !came.signerKnown())
                .ifPresent(came -> cautions.add(new Caution(
                        words.say("sheet.caution.station"), words.say("sheet.caution.station.why", came.sign()))));
        if (proof.isUnsealed()) {
            cautions.add(new Caution(words.say("sheet.caution.unsealed"), ""));
        }
        return List.copyOf(cautions);
    }
}
