package org.tenthwise.app.export.pdf;

import java.util.List;
import org.tenthwise.app.export.Evidence;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.run.Entry;
import org.tenthwise.model.run.Event;

/** What the record rests on, and how to find out whether it still holds. */
final class ProofSection {

    private static final double NAME_WIDTH = 150;

    private final RecordContext matter;
    private final PageFlow flow;

    ProofSection(RecordContext matter, PageFlow flow) {
        this.matter = matter;
        this.flow = flow;
    }

    void add() {
        Evidence evidence = matter.evidence();
        Plan plan = matter.plan();
        flow.need(190);
        flow.heading(matter.say("record.proof"));
        fact("record.proof.run", matter.sheet().run().id());
        fact("record.proof.plan", matter.say("record.plan-issue", matter.part(), plan.issue()));
        fact("record.proof.plan-hash", plan.source().sha256());
        fact(
                "record.proof.entries",
                matter.say(
                        "record.entries",
                        evidence.entries().size(),
                        evidence.first().seq(),
                        evidence.last().seq()));
        fact(
                "record.proof.last-hash",
                matter.say(
                        "record.entry-hash",
                        evidence.last().seq(),
                        evidence.last().hash()));
        fact(
                "record.proof.head",
                matter.say(
                        "record.run-head",
                        evidence.head().place(),
                        evidence.head().hash()));
        fact("record.proof.seal", seal());
        fact("record.proof.stands", RecordContext.time(evidence.stands()));
        fact("record.proof.tool", evidence.tool());
        flow.down(6);
        flow.text(matter.say("record.proof.how"), Style.CELL, PageFlow.LEFT, PageFlow.WIDTH);
    }

    /** By which key the run is sealed, where the last that was entered is a seal. */
    private String seal() {
        List<Entry> entries = matter.sheet().run().entries();
        return entries.get(entries.size() - 1)
                .event()
                .as(Event.Sealed.class)
                .map(Event.Sealed::fingerprint)
                .orElseGet(() -> matter.say("record.proof.not-sealed"));
    }

    private void fact(String key, String words) {
        flow.need(Style.CELL.leading());
        flow.write(matter.say(key), Style.SMALL, PageFlow.LEFT, flow.y());
        flow.text(words, Style.CELL, PageFlow.LEFT + NAME_WIDTH, PageFlow.WIDTH - NAME_WIDTH);
        flow.down(1);
    }
}
