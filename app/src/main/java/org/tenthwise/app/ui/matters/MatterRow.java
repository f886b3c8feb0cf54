package org.tenthwise.app.ui.matters;

import java.time.LocalDate;
import org.tenthwise.app.history.Matter;
import org.tenthwise.app.history.MatterKind;
import org.tenthwise.app.matters.OpenMatter;
import org.tenthwise.app.text.Dates;
import org.tenthwise.model.words.Words;

/** An open matter in words. */
record MatterRow(Words words) {

    /** What it is, and of which part or gauge. */
    String title(OpenMatter of) {
        return words.say("matters.row", words.say("matters.kind", of.matter().kind()), subject(of));
    }

    private String subject(OpenMatter of) {
        return of.run()
                .map(run -> words.say(
                        "matters.of-run", words.say("ask.part-revision", run.part(), run.revision()), run.serial()))
                .orElseGet(() -> words.say("matters.of-gauge", of.matter().about()));
    }

    private String check(Matter matter) {
        return words.say(
                matter.kind() == MatterKind.GAUGE_IN_DOUBT ? "matters.check-read" : "matters.check",
                matter.check(),
                matter.about());
    }

    /** At which check, since when and by whom. */
    String where(OpenMatter of) {
        Matter matter = of.matter();
        String since = words.say("matters.since", new Dates(words).day(matter.since()), matter.by());
        if (matter.kind() == MatterKind.GAUGE_PAST_DUE) {
            String due = new Dates(words).day(LocalDate.parse(matter.number()));
            return words.say("matters.line", words.say("matters.read-with", matter.about(), due), since);
        }
        return matter.check() == 0 ? since : words.say("matters.line", check(matter), since);
    }
}
