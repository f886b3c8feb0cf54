package org.tenthwise.app.export.pdf;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.tenthwise.app.picture.Frame;
import org.tenthwise.app.picture.Picture;
import org.tenthwise.app.picture.Pictures;
import org.tenthwise.app.picture.Point;
import org.tenthwise.app.picture.Role;
import org.tenthwise.model.record.Line;

/** Everything about one characteristic: what was asked, its picture, every pass, every reading, every word about it. */
final class DetailSection {

    private static final double PICTURE_WIDTH = 316;
    private static final double PICTURE_HEIGHT = 216;
    /** For the part alone. */
    private static final double LOW_PICTURE_HEIGHT = 132;

    private static final double FACTS_WIDTH = PageFlow.WIDTH - PICTURE_WIDTH - 16;
    private static final double NAME_WIDTH = 92;
    private static final double LEAST_AT_A_FOOT = 150;
    /** A fact of so many lines is not parted. */
    private static final int LINES_TOGETHER = 4;

    /** The heading over a picture, its verdict on two lines. */
    private static final double HEADING = 86;

    private final RecordContext matter;
    private final PageFlow flow;

    DetailSection(RecordContext matter, PageFlow flow) {
        this.matter = matter;
        this.flow = flow;
    }

    void add(Line line) {
        flow.need(picture(line).isPresent() ? HEADING + height(line) : LEAST_AT_A_FOOT);
        flow.down(14);
        heading(line);
        Page named = facts(line);
        new PassTable(matter, flow, line, named).add();
    }

    private void heading(Line line) {
        flow.rule(Strokes.THICK, Role.INK);
        flow.down(5);
        double left = PageFlow.LEFT + 34;
        flow.write(String.valueOf(line.step().number()), Style.NAME, PageFlow.LEFT, flow.y());
        flow.text(line.step().name(), Style.NAME, left, PageFlow.RIGHT - left);
        flow.down(2);
        flow.shape(line.finding().verdict().standing(), 9, Style.STRONG, 7);
        flow.text(verdict(line), Style.STRONG, left, PageFlow.RIGHT - left);
        flow.down(5);
        flow.rule(Strokes.THIN, Role.INK);
        flow.down(6);
    }

    /** The verdict as a sentence, with the size and what was signed. */
    private String verdict(Line line) {
        List<String> said = new ArrayList<>();
        String standing = matter.sentences().standing(line.finding());
        String value = matter.sentences().value(line.finding());
        said.add(value.isEmpty() ? matter.words().sentence(standing) : matter.say("record.verdict", standing, value));
        said.add(matter.sentences().distance(line.finding()));
        if (line.disposed().isPresent()) {
            said.add(matter.say("record.signed-for", matter.sentences().disposition(line)));
        }
        said.add(matter.sentences().repaired(line));
        return String.join(" ", said.stream().filter(part -> !part.isEmpty()).toList());
    }

    /**
     * The facts on the left, the picture on the right; those that begin below it have the whole width.
     *
     * @return the last leaf that names the characteristic
     */
    private Page facts(Line line) {
        Optional<Picture> picture = picture(line);
        double height = height(line);
        if (picture.isPresent()) {
            flow.need(height);
        }
        double top = flow.y();
        Page leaf = flow.leaf();
        picture.ifPresent(drawn -> leaf.add(drawing -> drawn.draw(
                drawing.inset(new Point(PageFlow.RIGHT - PICTURE_WIDTH, top), Frame.print(PICTURE_WIDTH, height)))));
        Page named = leaf;
        String name = "";
        for (Facts.Fact fact : new Facts(matter).of(line)) {
            boolean beside = picture.isPresent() && leaf == flow.leaf() && flow.y() < top + height;
            double width = (beside ? FACTS_WIDTH : PageFlow.WIDTH) - NAME_WIDTH;
            name = fact.name().isEmpty() ? name : fact.name();
            flow.need(together(fact, width));
            boolean goesOn = flow.leaf() != named;
            if (goesOn) {
                flow.text(matter.named(line.step()), Style.SMALL_BOLD, PageFlow.LEFT, PageFlow.WIDTH);
                flow.down(2);
                named = flow.leaf();
            }
            flow.write(goesOn ? name : fact.name(), Style.SMALL, PageFlow.LEFT, flow.y());
            flow.text(
                    fact.words(), Style.TEXT, PageFlow.LEFT + NAME_WIDTH, goesOn ? PageFlow.WIDTH - NAME_WIDTH : width);
            flow.down(3);
        }
        if (picture.isPresent() && leaf == flow.leaf()) {
            flow.down(Math.max(0, top + height - flow.y()));
        }
        flow.down(6);
        return named;
    }

    /** A short fact stays on one page; a long one begins where there is room for a line. */
    private double together(Facts.Fact fact, double width) {
        int lines = flow.wrapping().lines(fact.words(), Style.TEXT, width).size();
        return Style.TEXT.leading() * (lines <= LINES_TOGETHER ? lines : 1);
    }

    private static double height(Line line) {
        return line.step().check().slots().isEmpty() && !line.step().check().isTakenElsewhere()
                ? LOW_PICTURE_HEIGHT
                : PICTURE_HEIGHT;
    }

    /**
     * None for something that is only asked and has no place on the part: the part alone would say nothing about it.
     */
    private Optional<Picture> picture(Line line) {
        boolean nowhere = line.step().check().slots().isEmpty()
                && !line.step().check().isTakenElsewhere()
                && line.step().mark().isEmpty();
        return nowhere ? Optional.empty() : new Pictures(matter.words()).of(matter.sheet(), line);
    }
}
