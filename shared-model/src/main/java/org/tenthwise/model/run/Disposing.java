package org.tenthwise.model.run;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.tenthwise.model.plan.Step;

/**
 * A disposition as it was signed, and whether it still holds. It was signed for one finding: whatever changes that
 * finding later, or what it rests on, makes it lapse, a cut of what the same tool cuts, and so does the next
 * disposition of the same step.
 *
 * @param entry that holds it
 * @param lapsed the entry it lapsed with; absent while it is in force
 */
public record Disposing(Entry entry, StepEvent.DispositionSigned disposed, Optional<Entry> lapsed) {

    public boolean inForce() {
        return lapsed.isEmpty();
    }

    /**
     * All that were ever signed for a step, in their order; only the last can be in force.
     *
     * @param entries of the step and of those that can change what is found there
     */
    static List<Disposing> of(Step step, Run run, List<Entry> entries) {
        Changes changes = new Changes(run);
        List<Disposing> signed = new ArrayList<>();
        for (Entry entry : entries) {
            Optional<StepEvent.DispositionSigned> disposed =
                    entry.event() instanceof StepEvent.DispositionSigned by && by.step() == step.number()
                            ? Optional.of(by)
                            : Optional.empty();
            boolean changed = disposed.isPresent()
                    || changes.step(entry)
                            .filter(number -> number == step.number()
                                    || step.check().restsOn().contains(number)
                                    || entry.event().takesMetal()
                                            && step.check().cutWith().contains(number))
                            .isPresent();
            int last = signed.size() - 1;
            if (changed && last >= 0 && signed.get(last).inForce()) {
                signed.set(
                        last,
                        new Disposing(signed.get(last).entry(), signed.get(last).disposed(), Optional.of(entry)));
            }
            disposed.ifPresent(by -> signed.add(new Disposing(entry, by, Optional.empty())));
        }
        return signed;
    }
}
