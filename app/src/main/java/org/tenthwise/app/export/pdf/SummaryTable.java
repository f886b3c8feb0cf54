package org.tenthwise.app.export.pdf;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import org.tenthwise.app.picture.Frame;
import org.tenthwise.app.picture.Point;
import org.tenthwise.app.picture.Role;
import org.tenthwise.app.picture.VerdictShape;
import org.tenthwise.model.verdict.VerdictKind;

/**
 * What there is to decide on: one line a characteristic. Columns are as wide as what stands in them; what nothing
 * stands in is left out, and the names have the rest.
 */
final class SummaryTable {

    private static final double GAP = 7;
    private static final double MARK_WIDTH = 60;
    private static final double MARK_HEIGHT = 17;
    private static final double SHAPE_ROOM = 18;
    private static final double RADIUS = 5.5;
    private static final double MOST_LIMITS = 104;
    private static final double MOST_RESULT = 106;
    private static final double MOST_SAID = 170;
    private static final double MOST_PLACE = 66;
    private static final double MOST_GAUGE = 62;
    private static final double LEAST_VERDICT = 60;
    private static final double MOST_SIGNED = 76;
    private static final double MOST_VERDICT = 96;
    /** A heading with its head and a row. */
    private static final double LEAST = 64;

    private final RecordContext matter;
    private final PageFlow flow;
    private final List<TableLine> characteristics;
    private final List<TableLine> products;
    private final List<TableLine> onTheWay;

    private final List<Column> columns = new ArrayList<>();
    private final Column number;
    private final Column check;
    private final Column place;
    private final Column name;
    private final Column limits;
    private final Column result;
    private final Column mark;
    private final Column gauge;
    private final Column verdict;
    private final Column signed;
    /** What is said in words has the room of the mark too. */
    private final Column said;

    SummaryTable(RecordContext matter, PageFlow flow) {
        this.matter = matter;
        this.flow = flow;
        TableLines lines = new TableLines(matter, flow.wrapping());
        this.characteristics = lines.characteristics();
        this.products = lines.products();
        this.onTheWay = lines.onTheWay();
        double right = PageFlow.RIGHT;
        this.signed = fitRight("record.column.signed", right, signedWidth());
        right = left(signed, right);
        this.verdict = fitRight("record.column.verdict", right, verdictWidth());
        right = verdict.left() - SHAPE_ROOM - GAP;
        this.gauge = fitRight("record.column.gauge", right, natural(TableLine::gauge, Style.CELL, MOST_GAUGE));
        right = left(gauge, right);
        double strip = all().anyMatch(SummaryTable::measured) ? MARK_WIDTH : 0;
        this.mark = Column.words("record.column.where", right - strip, strip);
        right = left(mark, right);
        this.result = fitRight("record.account.result", right, resultWidth());
        this.said = new Column("", result.left(), result.width() + strip + (strip > 0 ? GAP : 0), false);
        right = left(result, right);
        this.limits = fitRight("record.column.limits", right, natural(TableLine::limits, Style.CELL, MOST_LIMITS));
        right = left(limits, right);
        double left = PageFlow.LEFT;
        this.number = fitLeft("record.column.number", left, natural(TableLine::number, Style.SMALL_BOLD, MOST_PLACE));
        left = right(number, left);
        this.check = fitLeft("record.column.check", left, natural(TableLine::check, Style.CELL, MOST_PLACE));
        left = right(check, left);
        this.place = fitLeft("record.account.place", left, Math.min(MOST_PLACE, widest(this::placeWidth)));
        left = right(place, left);
        this.name = Column.words("record.column.requirement", left, right - left);
        Column overShape = Column.words(verdict.head(), verdict.left() - SHAPE_ROOM, verdict.width() + SHAPE_ROOM);
        columns.addAll(Stream.of(number, check, place, name, limits, result, mark, gauge, overShape, signed)
                .filter(column -> column.width() > 0)
                .toList());
    }

    void add() {
        flow.need(LEAST);
        head(columns);
        rows(characteristics);
        group("record.products", products);
        group("record.on-the-way", onTheWay);
    }

    private void group(String heading, List<TableLine> lines) {
        if (!lines.isEmpty()) {
            flow.need(LEAST);
            flow.down(6);
            flow.text(matter.say(heading), Style.STRONG, PageFlow.LEFT, PageFlow.WIDTH);
            flow.down(2);
            flow.rule(Strokes.MEDIUM, Role.INK);
            rows(lines);
        }
    }

    private void rows(List<TableLine> lines) {
        lines.forEach(line -> row(line).into(flow, () -> head(columns)));
    }

    private void head(List<Column> over) {
        flow.down(4);
        flow.head(over, matter::say, 2, Strokes.MEDIUM);
    }

    private Row row(TableLine line) {
        Row row = new Row(flow.wrapping())
                .text(number, line.number(), Style.SMALL_BOLD)
                .text(name, line.name())
                .text(measured(line) ? result : said, line.result());
        line.standing().ifPresent(standing -> standing(row, standing));
        cell(row, check, line.check());
        line.place().forEach(part -> cell(row, place, part));
        cell(row, limits, line.limits());
        cell(row, gauge, line.gauge());
        line.beside().forEach(said -> row.text(verdict, said, Style.SMALL));
        line.signed().forEach(said -> row.text(signed.width() > 0 ? signed : verdict, said, Style.SMALL));
        line.mark()
                .ifPresent(picture -> row.ornament((drawing, middle) -> picture.draw(drawing.inset(
                        new Point(mark.left(), middle - MARK_HEIGHT / 2), Frame.print(mark.width(), MARK_HEIGHT)))));
        return row;
    }

    private void standing(Row row, VerdictKind standing) {
        double shape = verdict.left() - SHAPE_ROOM + RADIUS;
        row.text(verdict, matter.words().say("verdict", standing), Style.SMALL_BOLD.in(VerdictRole.of(standing)))
                .ornament((drawing, middle) -> VerdictShape.draw(drawing, standing, new Point(shape, middle), RADIUS));
    }

    private static void cell(Row row, Column column, String text) {
        if (column.width() > 0 && !text.isEmpty()) {
            row.text(column, text, Style.CELL);
        }
    }

    private static boolean measured(TableLine line) {
        return line.mark().isPresent();
    }

    /** Only where something was signed for a characteristic; else it stands under the verdict. */
    private double signedWidth() {
        return Math.min(
                MOST_SIGNED,
                Stream.concat(characteristics.stream(), products.stream())
                        .flatMap(line -> line.signed().stream())
                        .mapToDouble(said -> flow.wrapping().width(said, Style.SMALL))
                        .max()
                        .orElse(0));
    }

    /** Wide enough for every size; with the room of the strip behind it for what is said in words, up to a measure. */
    private double resultWidth() {
        double sizes = widest(line -> measured(line) ? line.result().width() : 0);
        double words = widest(line -> measured(line) ? 0 : line.result().width());
        return Math.max(Math.min(MOST_RESULT, sizes), Math.min(MOST_SAID, words) - mark.width());
    }

    private double verdictWidth() {
        double words = Stream.of(VerdictKind.values())
                .mapToDouble(
                        standing -> flow.wrapping().width(matter.words().say("verdict", standing), Style.SMALL_BOLD))
                .max()
                .orElse(LEAST_VERDICT);
        double beside = all().flatMap(line -> line.beside().stream())
                .mapToDouble(said -> flow.wrapping().width(said, Style.SMALL))
                .max()
                .orElse(0);
        return Math.max(Math.max(LEAST_VERDICT, words), Math.min(MOST_VERDICT, beside));
    }

    private double placeWidth(TableLine line) {
        return line.place().stream()
                .mapToDouble(part -> flow.wrapping().width(part, Style.CELL))
                .max()
                .orElse(0);
    }

    private double natural(Function<TableLine, String> text, Style style, double most) {
        return Math.min(most, widest(line -> flow.wrapping().width(text.apply(line), style)));
    }

    private double widest(ToDoubleFunction<TableLine> width) {
        return all().mapToDouble(width).max().orElse(0);
    }

    private Stream<TableLine> all() {
        return Stream.of(characteristics, products, onTheWay).flatMap(List::stream);
    }

    private Column fitRight(String head, double right, double width) {
        double fitted = fitted(head, width);
        return Column.words(head, right - fitted, fitted);
    }

    private Column fitLeft(String head, double left, double width) {
        return Column.words(head, left, fitted(head, width));
    }

    /** As wide as its widest text, or as the longest word over it; nothing where it has no text. */
    private double fitted(String head, double width) {
        return width == 0
                ? 0
                : Math.ceil(Math.max(width, flow.wrapping().widestWord(matter.say(head), Style.SMALL)) + 0.5);
    }

    private static double left(Column column, double otherwise) {
        return column.width() > 0 ? column.left() - GAP : otherwise;
    }

    private static double right(Column column, double otherwise) {
        return column.width() > 0 ? column.right() + GAP : otherwise;
    }
}
