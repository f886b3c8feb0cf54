package org.tenthwise.app.export.pdf;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.tenthwise.app.picture.Frame;
import org.tenthwise.app.picture.Picture;
import org.tenthwise.app.picture.Pictures;
import org.tenthwise.app.picture.Point;
import org.tenthwise.app.picture.Role;
import org.tenthwise.app.text.DrawingWords;
import org.tenthwise.model.record.Line;
import org.tenthwise.model.verdict.VerdictKind;

/** Everything about one characteristic: what was asked, its picture, every pass, every reading, every word about it. */
final class DetailSection {

    private static final double PICTURE_WIDTH = 250;
    private static final double PICTURE_HEIGHT = 150;
    private static final double FACTS_WIDTH = PageFlow.WIDTH - PICTURE_WIDTH - 16;
    private static final double LEAST_AT_A_FOOT = 90;
    /** What is no higher is not parted. */
    private static final double TOGETHER = 230;
    /** By so much more than it takes asks a table before it begins on a leaf. */
    private static final double ASKED_MORE = 24;
    /** The heading over a picture. */
    private static final double HEADING = 34;

    private static final double LEADING = 14;
    /** So many readings are told as soon as they are drawn. */
    private static final int FEW = 2;

    /** A fact of so many letters is told once. */
    private static final int LONG = 90;

    private final Map<String, Integer> told;
    private final RecordContext matter;
    private final PageFlow flow;

    DetailSection(RecordContext matter, PageFlow flow) {
        this(matter, flow, new HashMap<>());
    }

    private DetailSection(RecordContext matter, PageFlow flow, Map<String, Integer> told) {
        this.matter = matter;
        this.flow = flow;
        this.told = told;
    }

    void add(Line line) {
        double height = height(line);
        flow.need(
                height <= TOGETHER
                        ? height + ASKED_MORE
                        : picture(line).isPresent() ? HEADING + PICTURE_HEIGHT : LEAST_AT_A_FOOT);
        put(line);
    }

    private void put(Line line) {
        flow.down(9);
        heading(line);
        Page named = facts(line);
        new PassTable(matter, flow, line, named).add();
    }

    /** On a leaf without an end. */
    private double height(Line line) {
        DetailSection apart = new DetailSection(matter, new PageFlow(flow.wrapping(), 0, Double.MAX_VALUE), told);
        apart.put(line);
        return apart.flow.y();
    }

    private void heading(Line line) {
        VerdictKind standing = line.finding().verdict().standing();
        flow.rule(Strokes.THICK, Role.INK);
        flow.down(4);
        double left = PageFlow.LEFT + 46;
        flow.write(String.valueOf(line.step().number()), Style.STRONG, PageFlow.LEFT, flow.y());
        flow.shape(standing, 34, Style.STRONG, 6);
        new RunIn(flow.wrapping())
                .add(line.step().name(), Style.STRONG)
                .add(
                        DrawingWords.apart(line.step())
                                .map(new DrawingWords(matter.words())::balloon)
                                .orElse(""),
                        Style.SMALL)
                .add(matter.aside(line.step()), Style.SMALL)
                .add(verdict(line), Style.BOLD.in(VerdictRole.of(standing)))
                .into(flow, left, PageFlow.RIGHT - left, Style.STRONG.leading());
        flow.down(4);
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
     * The facts run on from one to the next, on the left where there is a picture on the right.
     *
     * @return the last leaf that names the characteristic
     */
    private Page facts(Line line) {
        Optional<Picture> picture = picture(line);
        double top = flow.y();
        Page leaf = flow.leaf();
        picture.ifPresent(drawn -> leaf.add(drawing -> drawn.draw(drawing.inset(
                new Point(PageFlow.RIGHT - PICTURE_WIDTH, top), Frame.print(PICTURE_WIDTH, PICTURE_HEIGHT)))));
        RunIn said = new RunIn(flow.wrapping());
        for (Facts.Fact fact : new Facts(matter).of(line)) {
            said.add(fact.name(), Style.SMALL_BOLD).add(once(fact, line), Style.CELL);
        }
        said.into(flow, PageFlow.LEFT, picture.isPresent() ? FACTS_WIDTH : PageFlow.WIDTH, LEADING);
        if (picture.isPresent() && leaf == flow.leaf()) {
            flow.down(Math.max(0, top + PICTURE_HEIGHT - flow.y()));
        }
        flow.down(4);
        return leaf;
    }

    /** The fact, or under which check it stands already. */
    private String once(Facts.Fact fact, Line line) {
        boolean isLong = fact.words().length() > LONG;
        int number = isLong ? told.merge(fact.words(), line.step().number(), Math::min) : 0;
        return isLong && number != line.step().number()
                ? matter.say("record.as-under", number)
                : matter.words().sentence(fact.words());
    }

    /** Only where it says more than the figures: a turn, several places or rounds, or what is not as it is to be. */
    private Optional<Picture> picture(Line line) {
        long read =
                line.passes().stream().mapToLong(pass -> pass.readings().size()).sum();
        boolean says = line.finding().asTurn().isPresent()
                || read > FEW
                || read > 0 && !line.finding().verdict().passed();
        return says
                ? new Pictures(matter.words()).of(matter.sheet(), line).filter(Picture::isMoreThanOneSize)
                : Optional.empty();
    }
}
