package org.tenthwise.app.export.pdf;

import java.util.List;
import java.util.stream.Stream;
import org.tenthwise.app.picture.Frame;
import org.tenthwise.app.picture.Pictures;
import org.tenthwise.app.picture.Point;
import org.tenthwise.app.picture.Role;
import org.tenthwise.app.picture.VerdictShape;
import org.tenthwise.app.text.DrawingWords;
import org.tenthwise.app.text.Figures;
import org.tenthwise.app.text.ModifierWords;
import org.tenthwise.app.text.StepFigures;
import org.tenthwise.model.record.Finding;
import org.tenthwise.model.record.Line;
import org.tenthwise.model.record.Measured;
import org.tenthwise.model.verdict.VerdictKind;

/** One row for every characteristic of the plan, measured or not. */
final class CharacteristicTable {

    private static final Column NUMBER = Column.words("record.column.number", PageFlow.LEFT, 30);
    /** For what is said in words: all four columns of figures. */
    private static final Column SAID = Column.figures("", 546, 240);

    private static final Column MARK = Column.words("record.column.where", 554, 84);
    private static final double MARK_HEIGHT = 24;
    private static final double SHAPE = 649;
    private static final Column VERDICT = Column.words("record.column.verdict", 661, PageFlow.RIGHT - 661);

    private final RecordContext matter;
    private final PageFlow flow;
    private final Column name;
    private final Column limits;
    private final Column read;
    private final Column setOn;
    private final Column correction;
    private final Column size;
    private final FigureText figure;
    private final Pictures pictures;

    CharacteristicTable(RecordContext matter, PageFlow flow) {
        this.matter = matter;
        this.flow = flow;
        this.size = figures("record.column.size", 546, 56);
        this.correction = figures("record.column.correction", size.left() - 2, 60);
        this.setOn = figures("record.column.set-on", correction.left() - 2, 60);
        this.read = figures("record.column.read", setOn.left() - 4, 58);
        this.limits = figures("record.column.limits", read.left() - 4, 66);
        this.name = Column.words("record.column.name", 80, limits.left() - 2 - 80);
        this.figure = new FigureText(matter.words());
        this.pictures = new Pictures(matter.words());
    }

    /** As wide as its figures need, or as the longest word over them; it is the names that have less room then. */
    private Column figures(String head, double right, double least) {
        return Column.figures(head, right, Math.max(least, flow.wrapping().widestWord(matter.say(head), Style.SMALL)));
    }

    void add() {
        flow.need(90);
        head();
        matter.sheet().lines().stream()
                .filter(line -> !ProductTable.holds(line))
                .forEach(line -> (line.asked() ? row(line) : leftOut(line)).into(flow, this::head));
    }

    private void head() {
        flow.down(4);
        flow.head(
                List.of(NUMBER, name, limits, read, setOn, correction, size, MARK, VERDICT),
                matter::say,
                4,
                Strokes.MEDIUM);
    }

    /** No verdict, no shape and no figure but those of the drawing. */
    private Row leftOut(Line line) {
        Row row = new Row(flow.wrapping())
                .text(NUMBER, String.valueOf(line.step().number()), Style.BOLD)
                .text(name, line.step().name(), Style.BOLD);
        figure.limits(line.step()).forEach(limit -> row.text(limits, limit, Style.TEXT));
        return row.text(SAID, matter.notInThisRun(), Style.SMALL);
    }

    private Row row(Line line) {
        Finding finding = line.finding();
        VerdictKind standing = finding.verdict().standing();
        Row row = new Row(flow.wrapping())
                .text(NUMBER, String.valueOf(line.step().number()), Style.BOLD)
                .text(name, line.step().name(), Style.BOLD)
                .text(name, means(finding), Style.SMALL);
        figure.limits(line.step()).forEach(limit -> row.text(limits, limit, Style.TEXT));
        figures(finding, row);
        row.text(VERDICT, matter.sentences().standing(finding), Style.BOLD.in(role(standing)));
        figure.beside(line).forEach(said -> row.text(VERDICT, said, Style.SMALL));
        pictures.mark(line)
                .ifPresent(mark -> row.ornament((drawing, middle) -> mark.draw(drawing.inset(
                        new Point(MARK.left(), middle - MARK_HEIGHT / 2), Frame.print(MARK.width(), MARK_HEIGHT)))));
        return row.ornament((drawing, middle) -> VerdictShape.draw(drawing, standing, new Point(SHAPE, middle), 6));
    }

    private void figures(Finding finding, Row row) {
        String value = matter.sentences().value(finding);
        if (!finding.isOfOneSize()) {
            row.text(SAID, value, Style.BOLD);
            String beside = matter.sentences().answeredBeside(finding);
            if (!beside.isEmpty()) {
                row.text(SAID, beside, Style.SMALL);
            }
        } else {
            finding.deciding()
                    .ifPresent(measured -> measured.reading().setting().ifPresent(setting -> figure.setOn(
                                    finding, measured, setting)
                            .forEach(line -> row.text(setOn, line, Style.SMALL))));
            finding.deciding()
                    .ifPresentOrElse(measured -> decided(finding, measured, row), () -> several(finding, value, row));
        }
    }

    private void decided(Finding finding, Measured measured, Row row) {
        finding.readFor(measured)
                .forEach(one -> row.text(
                        read,
                        Figures.read(
                                one.reading().typed(), StepFigures.of(finding).unit()),
                        Style.TEXT));
        row.text(correction, FigureText.sum(finding, measured).correction(), Style.TEXT)
                .text(size, value(finding, measured), Style.BOLD);
        finding.greatestBesideDeciding()
                .map(greatest -> FigureText.sum(finding, greatest).value())
                .ifPresent(greatest -> row.text(size, matter.say("record.highest", greatest), Style.SMALL));
    }

    private String value(Finding finding, Measured measured) {
        String value = FigureText.sum(finding, measured).value();
        return finding.verdict().standing() == VerdictKind.OPEN ? matter.say("value.so-far", value) : value;
    }

    private void several(Finding finding, String value, Row row) {
        int taken = finding.measured().size();
        if (taken > 0) {
            row.text(read, matter.say("record.readings", taken), Style.SMALL);
        }
        row.text(size, value, Style.BOLD);
    }

    /**
     * The balloon of the drawing; what is no characteristic is called by its class; the gauges in hand, or the kind
     * that is asked for while there is none.
     */
    private String means(Finding finding) {
        List<String> marks = Stream.concat(
                        finding.measured().stream()
                                .map(Measured::reading)
                                .flatMap(reading -> reading.setting().stream()),
                        matter.sheet().run().gauges().setting(finding.step().number()).stream())
                .map(setting -> setting.gauge().id())
                .distinct()
                .toList();
        String gauge = marks.isEmpty()
                ? finding.step()
                        .check()
                        .means()
                        .map(means -> matter.kind(means.kind()))
                        .orElse("")
                : matter.words().list(marks);
        return matter.words()
                .list(Stream.of(balloon(finding), matter.aside(finding.step()), gauge, together(finding))
                        .filter(part -> !part.isEmpty())
                        .toList());
    }

    /** Of which balloon it is, where that is not its own number. */
    private String balloon(Finding finding) {
        return DrawingWords.apart(finding.step())
                .map(new DrawingWords(matter.words())::balloon)
                .orElse("");
    }

    /** How several readings become one size. */
    private String together(Finding finding) {
        int places =
                finding.check().asWorked().map(worked -> worked.places().size()).orElseGet(finding::readingsInAll);
        return finding.check()
                .asDimension()
                .filter(size -> places > 1)
                .map(size -> matter.say(
                        matter.words().key("record.together", size.combine()), places, ModifierWords.behind(size)))
                .orElse("");
    }

    static Role role(VerdictKind standing) {
        return switch (standing) {
            case PASS -> Role.PASS;
            case FAIL -> Role.FAIL;
            case CUT_AGAIN -> Role.CUT;
            case UNPROVEN -> Role.UNPROVEN;
            case OPEN -> Role.INK2;
        };
    }
}
