package org.tenthwise.app.export.pdf;

import java.util.List;
import java.util.stream.Stream;
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
    /** On the first page, where no name stands beside it. */
    private final List<String> first;

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
        this.name = wrapping.lines(matter.running(), Style.SMALL, HALF);
        double beside = PageFlow.WIDTH
                - name.stream()
                        .mapToDouble(line -> wrapping.width(line, Style.SMALL))
                        .max()
                        .orElse(0)
                - APART;
        String whole = unfinished ? matter.say("record.open", said) : said;
        double shape = unfinished ? SHAPE_ROOM : 0;
        this.outcome = wrapping.lines(whole, style(), beside - shape);
        this.first = unfinished ? wrapping.lines(whole, style(), PageFlow.WIDTH - shape) : List.of();
        String proof = matter.say(
                "record.foot",
                evidence.head().place(),
                evidence.head().seq(),
                evidence.head().hash());
        String remark = matter.plan().remark();
        double besideNumber = PageFlow.WIDTH - PAGE_WIDTH;
        this.foot = remark.isBlank()
                ? wrapping.lines(proof, Style.SMALL, besideNumber)
                : Stream.of(
                                wrapping.lines(proof, Style.SMALL, PageFlow.WIDTH),
                                wrapping.lines(remark, Style.SMALL, besideNumber))
                        .flatMap(List::stream)
                        .toList();
    }

    private Style style() {
        return unfinished ? Style.STRONG : Style.SMALL;
    }

    /** Where the room for the record begins on the first page, which names it in its title. */
    double first() {
        return first.isEmpty() ? TOP : TOP + height(first) + GAP;
    }

    /** Where it begins on the others. */
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
        if (page > 1) {
            head(drawing, outcome, headHeight());
        } else if (!first.isEmpty()) {
            head(drawing, first, height(first));
        }
        double foot = lowest - footHeight();
        PageFlow.rule(drawing, foot - 4, Strokes.THIN, Role.INK);
        lines(drawing, this.foot, Style.SMALL, PageFlow.LEFT, foot, false);
        double last = foot + (this.foot.size() - 1) * Style.SMALL.leading();
        lines(drawing, List.of(matter.say("record.page", page, pages)), Style.SMALL_BOLD, PageFlow.RIGHT, last, true);
    }

    private void head(Drawing drawing, List<String> outcome, double height) {
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
        PageFlow.rule(drawing, TOP + height + 3, unfinished ? Strokes.THICK : Strokes.THIN, Role.INK);
    }

    private double headHeight() {
        return Math.max(name.size() * Style.SMALL.leading(), height(outcome));
    }

    private double height(List<String> outcome) {
        return outcome.size() * style().leading();
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
