package org.tenthwise.app.export.pdf;

import java.util.List;
import org.tenthwise.app.export.Evidence;
import org.tenthwise.app.picture.Anchor;
import org.tenthwise.app.picture.Drawing;
import org.tenthwise.app.picture.Point;
import org.tenthwise.app.picture.Role;
import org.tenthwise.app.picture.VerdictShape;
import org.tenthwise.model.verdict.VerdictKind;

/** What stands at the head and at the foot of every page, as high as its words need. */
final class Margins {

    private static final double TOP = 26;
    private static final double BOTTOM = 34;
    private static final double GAP = 12;
    private static final double PAGE_WIDTH = 96;
    private static final double HALF = 340;
    /** Between the name and what the record says. */
    private static final double APART = 30;

    private static final double SHAPE_ROOM = 24;

    private final List<String> name;
    private final List<String> outcome;
    private final List<String> foot;
    private final boolean unfinished;
    private final RecordContext matter;
    private final double lowest;

    Margins(RecordContext matter, Wrapping wrapping, Paper paper) {
        this.matter = matter;
        this.lowest = paper.height() - BOTTOM;
        Evidence evidence = matter.evidence();
        this.unfinished = matter.sheet().run().closed().isEmpty();
        String said = matter.sentences().outcome(matter.sheet());
        this.name = wrapping.lines(
                matter.say(
                        "record.running",
                        matter.part(),
                        matter.sheet().run().begun().serial()),
                Style.SMALL,
                HALF);
        double beside = PageFlow.WIDTH
                - name.stream()
                        .mapToDouble(line -> wrapping.width(line, Style.SMALL))
                        .max()
                        .orElse(0)
                - APART;
        this.outcome = wrapping.lines(
                unfinished ? matter.say("record.open", said) : said, style(), beside - (unfinished ? SHAPE_ROOM : 0));
        String proof = matter.say(
                "record.foot",
                evidence.head().place(),
                evidence.head().seq(),
                evidence.head().hash());
        String remark = matter.plan().remark();
        this.foot = wrapping.lines(
                remark.isBlank() ? proof : proof + "\n" + remark, Style.SMALL, PageFlow.WIDTH - PAGE_WIDTH);
    }

    private Style style() {
        return unfinished ? Style.STRONG : Style.SMALL;
    }

    /** Where the room for the record begins. */
    double top() {
        return TOP + headHeight() + GAP;
    }

    /** Where it ends. */
    double bottom() {
        return lowest - footHeight() - GAP;
    }

    void draw(Drawing drawing, int page, int pages) {
        if (page > 1) {
            lines(drawing, name, Style.SMALL, PageFlow.LEFT, TOP, false);
        }
        if (page > 1 || unfinished) {
            head(drawing);
        }
        double foot = lowest - footHeight();
        PageFlow.rule(drawing, foot - 4, Strokes.THIN, Role.INK);
        lines(drawing, this.foot, Style.SMALL, PageFlow.LEFT, foot, false);
        lines(drawing, List.of(matter.say("record.page", page, pages)), Style.SMALL_BOLD, PageFlow.RIGHT, foot, true);
    }

    private void head(Drawing drawing) {
        lines(drawing, outcome, style(), PageFlow.RIGHT, TOP, true);
        if (unfinished) {
            double widest = outcome.stream()
                    .mapToDouble(line -> drawing.width(style().label(line)))
                    .max()
                    .orElse(0);
            VerdictShape.draw(
                    drawing,
                    VerdictKind.OPEN,
                    new Point(PageFlow.RIGHT - widest - 14, TOP + style().leading() / 2),
                    6.5);
        }
        PageFlow.rule(drawing, TOP + headHeight() + 3, unfinished ? Strokes.THICK : Strokes.THIN, Role.INK);
    }

    private double headHeight() {
        return Math.max(name.size() * Style.SMALL.leading(), outcome.size() * style().leading());
    }

    private double footHeight() {
        return foot.size() * Style.SMALL.leading();
    }

    private static void lines(Drawing drawing, List<String> lines, Style style, double x, double top, boolean toRight) {
        double at = top + PageFlow.gap(style);
        for (String line : lines) {
            drawing.text(style.label(line), new Point(x, at), toRight ? Anchor.RIGHT_BELOW : Anchor.LEFT_BELOW);
            at += style.leading();
        }
    }
}
