package org.tenthwise.app.export.pdf;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.tenthwise.app.export.Evidence;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.plan.ThermalData;
import org.tenthwise.model.quantity.TemperatureScale;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.record.Finding;

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
        flow.need(260);
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
        fact("record.proof.stands", RecordContext.time(evidence.stands()));
        fact("record.proof.tool", evidence.tool());
        flow.down(6);
        flow.text(matter.say("record.proof.how"), Style.TEXT, PageFlow.LEFT, PageFlow.WIDTH);
        flow.down(6);
        flow.text(temperature(plan), Style.TEXT, PageFlow.LEFT, PageFlow.WIDTH);
    }

    /** Which sizes were corrected for temperature, in whatever pass. */
    private String temperature(Plan plan) {
        String unit = plan.unit().symbol();
        TemperatureScale usual = plan.unit() == Unit.INCH ? TemperatureScale.FAHRENHEIT : TemperatureScale.CELSIUS;
        String reference = matter.words()
                .say(
                        "record.temperature-in",
                        plan.climate().map(ThermalData::scale).orElse(usual));
        List<String> corrected = matter.sheet().lines().stream()
                .filter(line -> Stream.concat(line.earlier().stream(), Stream.of(line.finding()))
                        .map(Finding::warmth)
                        .flatMap(Optional::stream)
                        .anyMatch(warmth -> warmth.correction().isPresent()))
                .map(line -> String.valueOf(line.step().number()))
                .toList();
        return corrected.isEmpty()
                ? matter.say("record.temperature", unit, reference)
                : matter.say("record.temperature.corrected", unit, corrected, reference, corrected.size());
    }

    private void fact(String key, String words) {
        flow.need(Style.TEXT.leading());
        flow.write(matter.say(key), Style.SMALL, PageFlow.LEFT, flow.y());
        flow.text(words, Style.TEXT, PageFlow.LEFT + NAME_WIDTH, PageFlow.WIDTH - NAME_WIDTH);
        flow.down(3);
    }
}
