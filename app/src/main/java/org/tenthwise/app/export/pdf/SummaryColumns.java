package org.tenthwise.app.export.pdf;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import org.tenthwise.app.picture.Frame;
import org.tenthwise.app.picture.Point;
import org.tenthwise.app.picture.VerdictShape;
import org.tenthwise.model.verdict.VerdictKind;
import org.tenthwise.model.words.Words;

/**
 * The columns of the table of characteristics, and how a line stands in them. What nothing stands in is left out, and
 * the names have the rest; of all widths those are taken that make the table lowest.
 */
final class SummaryColumns {

    /** Columns that may be narrower than what stands in them, and as wide as this at the most. */
    private enum Yielding {
        VERDICT(118),
        SIGNED(76),
        RESULT(106),
        LIMITS(104),
        MARK(62);

        private final double most;

        Yielding(double most) {
            this.most = most;
        }
    }

    private static final double GAP = 6;
    private static final double LEAST_MARK = 46;
    private static final double MARK_HEIGHT = 17;
    private static final double SHAPE_ROOM = 17;
    private static final double RADIUS = 5.5;
    private static final double MOST_SAID = 170;
    private static final double MOST_NUMBER = 66;
    private static final double MOST_GAUGE = 62;
    private static final double STEP = 4;
    /** Over all columns: what one gives up another may need less then. */
    private static final int ROUNDS = 2;

    private final Words words;
    private final Wrapping wrapping;
    private final List<TableLine> lines;
    private final Map<Yielding, Double> widths;

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
    /** What is said in words has the room of the mark too, and that of the gauge where there is none. */
    private final Column said;

    private final Column saidOfNoGauge;
    /** What is asked of something without limits has their room too. */
    private final Column asked;

    private SummaryColumns(Words words, Wrapping wrapping, List<TableLine> lines, Map<Yielding, Double> widths) {
        this.words = words;
        this.wrapping = wrapping;
        this.lines = lines;
        this.widths = widths;
        double right = PageFlow.RIGHT;
        this.signed = fitRight("record.column.signed", right, widths.get(Yielding.SIGNED));
        right = left(signed, right);
        this.verdict = fitRight("record.column.verdict", right, widths.get(Yielding.VERDICT));
        right = verdict.left() - SHAPE_ROOM - GAP;
        this.gauge = fitRight("record.column.gauge", right, Math.min(MOST_GAUGE, widest(TableLine::gauge)));
        right = left(gauge, right);
        double strip = widths.get(Yielding.MARK);
        this.mark = Column.words("record.column.where", right - strip, strip);
        right = left(mark, right);
        this.result = fitRight("record.account.result", right, widths.get(Yielding.RESULT));
        this.said = new Column("", result.left(), result.width() + strip + (strip > 0 ? GAP : 0), false);
        this.saidOfNoGauge = new Column("", result.left(), verdict.left() - SHAPE_ROOM - GAP - result.left(), false);
        right = left(result, right);
        this.limits = fitRight("record.column.limits", right, widths.get(Yielding.LIMITS));
        right = left(limits, right);
        double left = PageFlow.LEFT;
        this.number = fitLeft("record.column.number", left, Math.min(MOST_NUMBER, widest(TableLine::number)));
        left = right(number, left);
        this.check = fitLeft("record.column.check", left, widest(TableLine::check));
        left = right(check, left);
        this.place = fitLeft("record.account.place", left, Math.min(MOST_NUMBER, widest(TableLine::place)));
        left = right(place, left);
        this.name = Column.words("record.column.requirement", left, right - left);
        this.asked = Column.words("", left, Math.max(limits.right(), name.right()) - left);
    }

    /**
     * @param part characteristics, materials, processes and tests: only what is signed for those has a column
     * @param onTheWay what else stands in the table
     */
    static SummaryColumns lowest(Words words, Wrapping wrapping, List<TableLine> part, List<TableLine> onTheWay) {
        List<TableLine> lines = Stream.of(part, onTheWay).flatMap(List::stream).toList();
        Map<Yielding, Double> natural = widths(words, wrapping, lines, RunIn::width);
        Map<Yielding, Double> least = widths(words, wrapping, lines, RunIn::widestWord);
        boolean isDrawn = lines.stream().anyMatch(SummaryColumns::measured);
        natural.put(Yielding.MARK, isDrawn ? Yielding.MARK.most : 0);
        least.put(Yielding.MARK, isDrawn ? LEAST_MARK : 0);
        if (part.stream().allMatch(line -> line.signed().isEmpty())) {
            natural.put(Yielding.SIGNED, 0.0);
        }
        least.put(Yielding.RESULT, natural.get(Yielding.RESULT));
        double inWords = lines.stream()
                .filter(line -> !measured(line))
                .mapToDouble(line -> line.result().width())
                .max()
                .orElse(0);
        natural.merge(Yielding.RESULT, Math.min(MOST_SAID, inWords) - natural.get(Yielding.MARK), Math::max);
        return new SummaryColumns(words, wrapping, lines, natural).lowest(natural, least);
    }

    /** Of every column that yields, over all lines. */
    private static Map<Yielding, Double> widths(
            Words words, Wrapping wrapping, List<TableLine> lines, ToDoubleFunction<RunIn> width) {
        Map<Yielding, Double> widths = new EnumMap<>(Yielding.class);
        for (Yielding column : Yielding.values()) {
            double widest = lines.stream()
                    .flatMap(line -> texts(column, line, words, wrapping))
                    .mapToDouble(width)
                    .max()
                    .orElse(0);
            widths.put(column, Math.min(column.most, widest));
        }
        return widths;
    }

    /** A column after the other as wide as makes the table lowest; of widths that do so alike the widest. */
    private SummaryColumns lowest(Map<Yielding, Double> most, Map<Yielding, Double> least) {
        SummaryColumns best = this;
        double height = height();
        for (int round = 0; round < ROUNDS; round++) {
            for (Yielding column : Yielding.values()) {
                for (double width = most.get(column); width > 0 && width >= least.get(column); width -= STEP) {
                    SummaryColumns other = best.with(column, width);
                    double lower = other.height();
                    if (lower < height) {
                        best = other;
                        height = lower;
                    }
                }
            }
        }
        return best;
    }

    private SummaryColumns with(Yielding column, double width) {
        Map<Yielding, Double> other = new EnumMap<>(widths);
        other.put(column, width);
        return new SummaryColumns(words, wrapping, lines, other);
    }

    /** What stands in a column of a line that must not be broken inside a word. */
    private static Stream<RunIn> texts(Yielding column, TableLine line, Words words, Wrapping wrapping) {
        return switch (column) {
            case VERDICT -> Stream.of(verdict(line, words, wrapping));
            case SIGNED -> line.signed().stream().map(said -> new RunIn(wrapping).add(said, Style.SMALL));
            case RESULT -> measured(line) ? Stream.of(line.result()) : Stream.empty();
            case LIMITS -> Stream.of(new RunIn(wrapping).add(line.limits(), Style.CELL));
            case MARK -> Stream.empty();
        };
    }

    private static RunIn standing(TableLine line, Words words, Wrapping wrapping) {
        RunIn said = new RunIn(wrapping);
        line.standing()
                .ifPresent(standing ->
                        said.add(words.say("verdict", standing), Style.SMALL_BOLD.in(VerdictRole.of(standing))));
        return said;
    }

    /** With what must be known beside it. */
    private static RunIn verdict(TableLine line, Words words, Wrapping wrapping) {
        RunIn said = standing(line, words, wrapping);
        line.beside().forEach(beside -> said.add(beside, Style.SMALL));
        return said;
    }

    /** Those there are, each with what stands over it. */
    List<Column> heads() {
        Column overShape = Column.words(verdict.head(), verdict.left() - SHAPE_ROOM, verdict.width() + SHAPE_ROOM);
        return Stream.of(number, check, place, name, limits, result, mark, gauge, overShape, signed)
                .filter(column -> column.width() > 0)
                .toList();
    }

    /** Of all rows and of what stands over them. */
    private double height() {
        int head = heads().stream()
                .mapToInt(column -> wrapping.lines(words.say(column.head()), Style.SMALL, column.width())
                        .size())
                .max()
                .orElse(0);
        return head * Style.SMALL.leading()
                + lines.stream().mapToDouble(line -> row(line).height()).sum();
    }

    Row row(TableLine line) {
        Row row = new Row(wrapping)
                .text(number, line.number(), Style.SMALL_BOLD)
                .text(line.limits().isEmpty() ? asked : name, line.name())
                .text(result(line), line.result());
        verdict(row, line);
        line.standing().ifPresent(standing -> shape(row, standing));
        cell(row, check, line.check());
        cell(row, place, line.place());
        cell(row, limits, line.limits());
        cell(row, gauge, line.gauge());
        line.signed().forEach(said -> row.text(signed.width() > 0 ? signed : verdict, said, Style.SMALL));
        line.mark()
                .ifPresent(picture -> row.ornament((drawing, middle) -> picture.draw(drawing.inset(
                        new Point(mark.left(), middle - MARK_HEIGHT / 2), Frame.print(mark.width(), MARK_HEIGHT)))));
        return row;
    }

    private Column result(TableLine line) {
        if (measured(line)) {
            return result;
        }
        return line.gauge().isEmpty() ? saidOfNoGauge : said;
    }

    /** What stands beside the verdict is on its line, or begins one of its own. */
    private void verdict(Row row, TableLine line) {
        RunIn whole = verdict(line, words, wrapping);
        if (whole.isEmpty()) {
            return;
        }
        if (whole.width() <= verdict.width()) {
            row.text(verdict, whole);
        } else {
            row.text(verdict, standing(line, words, wrapping));
            line.beside().forEach(said -> row.text(verdict, said, Style.SMALL));
        }
    }

    private void shape(Row row, VerdictKind standing) {
        double shape = verdict.left() - SHAPE_ROOM + RADIUS;
        row.ornament((drawing, middle) -> VerdictShape.draw(drawing, standing, new Point(shape, middle), RADIUS));
    }

    private static void cell(Row row, Column column, String text) {
        if (column.width() > 0 && !text.isEmpty()) {
            row.text(column, text, Style.CELL);
        }
    }

    private static boolean measured(TableLine line) {
        return line.mark().isPresent();
    }

    private double widest(Function<TableLine, String> text) {
        return lines.stream()
                .mapToDouble(line -> wrapping.width(text.apply(line), Style.SMALL_BOLD))
                .max()
                .orElse(0);
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
        return width <= 0 ? 0 : Math.ceil(Math.max(width, wrapping.widestWord(words.say(head), Style.SMALL)) + 0.5);
    }

    private static double left(Column column, double otherwise) {
        return column.width() > 0 ? column.left() - GAP : otherwise;
    }

    private static double right(Column column, double otherwise) {
        return column.width() > 0 ? column.right() + GAP : otherwise;
    }
}
