package org.tenthwise.app.text;

import java.util.List;
import java.util.Optional;
import org.tenthwise.model.plan.CheckOfDimension;
import org.tenthwise.model.plan.Combine;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.record.Finding;
import org.tenthwise.model.record.Measured;
import org.tenthwise.model.words.Words;

/** What is said of every size that is read at places and set against limits. */
abstract class OfSizeSentences extends FindingSentences {

    OfSizeSentences(Finding finding, Words words) {
        super(finding, words);
    }

    /** Every reading that is asked for has to be inside; any other way what was read so far makes the size. */
    final void together(CheckOfDimension check, List<Measured> read, List<Weighed> said) {
        if (read.size() > 1) {
            said.add(Weighed.how(words.say(
                    words.key("combined", check.combine()),
                    check.combine() == Combine.EACH ? check.slots().size() : read.size(),
                    ModifierWords.behind(check),
                    over(check, read))));
        }
    }

    /** How many lie over the upper limit. */
    private static long over(CheckOfDimension check, List<Measured> read) {
        return check.limits().upper().stream()
                .flatMap(upper -> read.stream().filter(one -> one.value().isAbove(upper.length())))
                .count();
    }

    final void past(Optional<Measured> past, StepFigures figures, List<Weighed> said) {
        past.ifPresent(place -> said.add(Weighed.stays(
                words.say("size.past", figures.size(place), place.slot().place().name()))));
    }

    final void guardBand(Written band, List<Weighed> said) {
        if (band.length().signum() > 0) {
            said.add(new Weighed(Weighed.Weight.PROOF, words.say("form.guard-band", Figures.withUnit(band))));
        }
    }
}
