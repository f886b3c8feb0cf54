package org.tenthwise.app.export.pdf;

import java.util.List;
import org.tenthwise.app.picture.Role;
import org.tenthwise.app.text.DrawingWords;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.run.Entry;
import org.tenthwise.model.run.Event;

/** What the record is of, and who made it when. */
final class TitleSection {

    private static final double PART_WIDTH = 440;
    private static final double[] CELLS = {164, 104, 80, 175, 175};

    private final RecordContext matter;
    private final PageFlow flow;

    TitleSection(RecordContext matter, PageFlow flow) {
        this.matter = matter;
        this.flow = flow;
    }

    void add() {
        title();
        cells();
        List<String> lines = HeadLines.of(matter);
        flow.down(lines.isEmpty() ? 0 : 4);
        lines.forEach(line -> flow.text(line, Style.SMALL, PageFlow.LEFT, PageFlow.WIDTH));
    }

    private void title() {
        List<String> part = flow.wrapping().lines(matter.part(), Style.HEADING, PART_WIDTH);
        flow.write(matter.title(), Style.TITLE, PageFlow.LEFT, flow.y());
        double at = flow.y() + Style.TITLE.leading() - Style.HEADING.leading();
        for (String line : part) {
            flow.writeToRight(line, Style.HEADING, PageFlow.RIGHT, at);
            at += Style.HEADING.leading();
        }
        flow.down(Style.TITLE.leading() + (part.size() - 1) * Style.HEADING.leading() + 4);
        flow.rule(Strokes.THICK, Role.INK);
    }

    private void cells() {
        Plan plan = matter.plan();
        Event.Begun begun = matter.sheet().run().begun();
        Entry first = matter.sheet().run().entries().get(0);
        new CellGrid(flow, CELLS)
                .cell(matter.say("record.cell.part"), plan.name())
                .cell(matter.say("record.cell.serial"), begun.serial())
                .cell(matter.say("record.cell.lot"), matter.sentences().lot(begun))
                .cell(matter.say("record.cell.material"), plan.material())
                .cell(matter.say("record.cell.drawing"), new DrawingWords(matter.words()).drawing(plan.drawing()))
                .end();
        new CellGrid(flow, CELLS)
                .cell(matter.say("record.cell.plan"), plan(plan))
                .cell(matter.say("record.cell.machine"), begun.machine())
                .cell(matter.say("record.cell.unit"), plan.unit().symbol())
                .cell(matter.say("record.begun-by"), by(first))
                .cell(
                        matter.say("record.cell.ended"),
                        matter.last(Event.Closed.class::isInstance)
                                .map(this::by)
                                .orElseGet(() -> matter.say(
                                        "record.not-ended",
                                        by(matter.sheet().run().last()))))
                .end();
    }

    private String by(Entry entry) {
        return matter.say("record.by-when", entry.by(), RecordContext.time(entry.at()));
    }

    /** The plan with its issue, and the planning sheet the part is made by, where it names one. */
    private String plan(Plan plan) {
        String issue = matter.say("record.plan-issue", matter.part(), plan.issue());
        return plan.route()
                .map(route -> matter.words().list(List.of(issue, route)))
                .orElse(issue);
    }
}
