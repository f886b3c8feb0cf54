package org.tenthwise.model.run;

import java.util.Optional;
import org.tenthwise.model.words.Refused;

/**
 * Somebody signed for what becomes of an open matter, outside of the run it is of. It holds while what the matter rests
 * on stands as it stood then; nothing that was found in a run is another by it.
 *
 * @param words what becomes of it
 * @param document number of the document that says so; empty where there is none
 */
public record MatterSettled(SettledMatter matter, String signedBy, String words, String document) implements Event {

    /**
     * Which matter.
     *
     * @param kind its word
     * @param run as this store calls it; empty for what is of a gauge
     * @param about number of the check, or the mark of the gauge, with its day where that is past; empty for what is of
     *     the whole run
     * @param rests hash of what it rests on as it stood, 64 hex digits: the head of the run, or the entry of the gauge
     */
    public record SettledMatter(String kind, String run, String about, String rests) {}

    public MatterSettled {
        if (signedBy.isBlank() || words.isBlank()) {
            throw new Refused("model.matter.unsigned");
        }
    }

    @Override
    public Optional<String> names() {
        return Optional.of(signedBy);
    }

    @Override
    public <R> R match(Cases<R> cases) {
        return cases.matterSettled(this);
    }
}
