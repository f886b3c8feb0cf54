package org.tenthwise.app.export.pdf;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.tenthwise.app.picture.Point;
import org.tenthwise.app.picture.Role;
import org.tenthwise.app.picture.VerdictShape;
import org.tenthwise.app.text.DrawingWords;
import org.tenthwise.app.text.IssueWords;
import org.tenthwise.app.text.OutcomeWords;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.run.Event;
import org.tenthwise.model.verdict.VerdictKind;

/** What the record is of, and what it says in one sentence. */
final class TitleSection {

    private static final double PART_WIDTH = 440;
    private static final double[] CELLS = {148, 92, 86, 186, 186};
    private static final double COUNTS_LEFT = 500;
    private static final double COUNTS_APART = 124;
    private static final double COUNT_GAP = 12;
    private static final double COUNT_SHAPE_ROOM = 22;
    private static final double SHAPE_ROOM = 24;

    private final RecordContext matter;
    private final PageFlow flow;

    TitleSection(RecordContext matter, PageFlow flow) {
        this.matter = matter;
        this.flow = flow;
    }

    void add() {
        title();
        cells();
        issued();
        outcome();
    }

    private void title() {
        List<String> part = flow.wrapping().lines(matter.part(), Style.HEADING, PART_WIDTH);
        flow.write(matter.say("record.title"), Style.TITLE, PageFlow.LEFT, flow.y());
        double at = flow.y() + Style.TITLE.leading() - Style.HEADING.leading();
        for (String line : part) {
            flow.writeToRight(line, Style.HEADING, PageFlow.RIGHT, at);
            at += Style.HEADING.leading();
        }
        flow.down(Style.TITLE.leading() + (part.size() - 1) * Style.HEADING.leading() + 6);
        flow.rule(Strokes.THICK, Role.INK);
    }

    private void cells() {
        Plan plan = matter.plan();
        Event.Begun begun = matter.sheet().run().begun();
        new CellGrid(flow, CELLS)
                .cell(matter.say("record.cell.part"), plan.name())
                .cell(matter.say("record.cell.serial"), begun.serial())
                .cell(matter.say("record.cell.lot"), matter.sentences().lot(begun))
                .cell(matter.say("record.cell.material"), plan.material())
                .cell(matter.say("record.cell.drawing"), new DrawingWords(matter.words()).drawing(plan.drawing()))
                .end();
        new CellGrid(flow, CELLS)
                .cell(matter.say("record.cell.plan"), plan(plan))
                .cell(matter.say("record.cell.unit"), plan.unit().symbol())
                .cell(matter.say("record.cell.machine"), begun.machine())
                .cell(
                        matter.say("record.cell.begun"),
                        RecordContext.time(matter.sheet().run().entries().get(0).at()))
                .cell(
                        matter.say("record.cell.ended"),
                        matter.last(Event.Closed.class::isInstance)
                                .map(entry -> RecordContext.time(entry.at()))
                                .orElse(matter.say("record.not-ended")))
                .end();
    }

    /** Why the plan was issued, who answers for it, and what its first article takes in. */
    private void issued() {
        List<String> lines = new IssueWords(matter.words()).lines(matter.plan());
        flow.down(lines.isEmpty() ? 0 : 6);
        lines.forEach(line -> flow.text(line, Style.SMALL, PageFlow.LEFT, PageFlow.WIDTH));
    }

    /** The plan with its issue, and the planning sheet the part is made by, where it names one. */
    private String plan(Plan plan) {
        String issue = matter.say("record.plan-issue", matter.part(), plan.issue());
        return plan.route()
                .map(route -> matter.words().list(List.of(issue, route)))
                .orElse(issue);
    }

    private void outcome() {
        flow.down(16);
        double top = flow.y();
        Optional<VerdictKind> shape = OutcomeWords.shape(matter.sheet());
        double indent = shape.isPresent() ? SHAPE_ROOM : 0;
        double secondCounts = Math.min(COUNTS_LEFT + COUNTS_APART, PageFlow.RIGHT - widestCount(1));
        double firstCounts = Math.min(COUNTS_LEFT, secondCounts - COUNT_GAP - widestCount(0));
        double width = firstCounts - PageFlow.LEFT - 16;
        shape.ifPresent(standing -> flow.shape(standing, 9, Style.HEADING, 8));
        flow.text(matter.sentences().outcome(matter.sheet()), Style.HEADING, PageFlow.LEFT + indent, width - indent);
        flow.down(2);
        flow.text(
                matter.say("record.accounted", new OutcomeWords(matter.words()).counts(matter.sheet())),
                Style.STRONG.in(Role.INK2).regular(),
                PageFlow.LEFT,
                width);
        double at = top;
        for (VerdictKind standing : VerdictKind.values()) {
            count(standing, standing.ordinal() % 2 == 0 ? firstCounts : secondCounts, at);
            at += standing.ordinal() % 2 == 1 ? 19 : 0;
        }
        flow.down(Math.max(0, top + 3 * 19 - flow.y()) + 8);
        flow.rule(Strokes.MEDIUM, Role.INK);
    }

    private void count(VerdictKind standing, double left, double top) {
        flow.leaf().add(drawing -> VerdictShape.draw(drawing, standing, new Point(left + 7, top + 9), 6.5));
        flow.write(counted(standing), Style.TEXT, left + COUNT_SHAPE_ROOM, top + 1);
    }

    private String counted(VerdictKind standing) {
        return matter.say(
                "record.count", matter.sheet().count(standing), matter.words().say("verdict", standing));
    }

    /** @param column 0 for the first, 1 for the second */
    private double widestCount(int column) {
        return Arrays.stream(VerdictKind.values())
                .filter(standing -> standing.ordinal() % 2 == column)
                .mapToDouble(standing -> COUNT_SHAPE_ROOM + flow.wrapping().width(counted(standing), Style.TEXT))
                .max()
                .orElse(0);
    }
}
