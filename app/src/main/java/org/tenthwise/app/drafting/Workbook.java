package org.tenthwise.app.drafting;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import org.dhatim.fastexcel.reader.Cell;
import org.dhatim.fastexcel.reader.ReadableWorkbook;
import org.dhatim.fastexcel.reader.ReadingOptions;
import org.dhatim.fastexcel.reader.Row;
import org.dhatim.fastexcel.reader.Sheet;
import org.tenthwise.model.words.Refused;

/**
 * A workbook of Office Open XML (ISO/IEC 29500-1), read as the rows of text that a person sees on it: a drawing says
 * 12.50 with its last nought, and a figure in a cell has none but by the way it is shown.
 *
 * <p>What a cell shows otherwise than its figure has it (rounded, in per cent, as a fraction) is given with the way it
 * is shown behind it, so that no reader of requirements takes it; a day is given as a day.
 */
final class Workbook {

    /** A list of some hundred lines has less than a thousandth of it. */
    private static final long MOST_UNPACKED = 64_000_000;

    private static final int MOST_PARTS = 1_000;
    private static final int MOST_ROWS = 20_000;
    private static final int MOST_COLUMNS = 500;

    /** What a spreadsheet keeps of a figure; beyond that stands the remainder of a binary fraction. */
    private static final MathContext KEPT = new MathContext(15, RoundingMode.HALF_EVEN);

    /** As it is typed, and a number of places. */
    private static final Pattern PLAIN = Pattern.compile("(?i)general|@");

    private static final Pattern PLACES = Pattern.compile("0(?:\\.(0+))?");
    private static final Pattern OF_A_DAY = Pattern.compile("(?i)[dmy]");
    private static final Pattern SAID_ONLY = Pattern.compile("\"[^\"]*\"|\\[[^]]*]|\\\\.");

    /**
     * A sheet, seen or hidden.
     *
     * @param rows from its first line on, hidden ones among them; an empty cell is an empty text, as are all of a
     *     merged cell but its first
     */
    record NamedSheet(String name, List<List<String>> rows) {}

    private Workbook() {}

    /**
     * Every sheet, in the order of the workbook.
     *
     * @throws Refused if it is no such workbook, or one that holds more than any list
     */
    static List<NamedSheet> sheets(Path file) {
        try {
            refuseAFlood(file);
            try (ReadableWorkbook book = new ReadableWorkbook(file.toFile(), new ReadingOptions(true, true));
                    Stream<Sheet> sheets = book.getSheets()) {
                return sheets.map(sheet -> new NamedSheet(sheet.getName(), rows(sheet, file)))
                        .toList();
            }
        } catch (Refused e) {
            throw e;
        } catch (IOException | RuntimeException e) { // the library throws many kinds for a damaged file
            throw new Refused("list.no-workbook", file);
        }
    }

    /** Unpacks it once into nothing: what it says of its own size cannot be trusted. */
    private static void refuseAFlood(Path file) throws IOException {
        long left = MOST_UNPACKED;
        try (ZipFile packed = new ZipFile(file.toFile())) {
            if (packed.size() > MOST_PARTS) {
                throw new Refused("list.too-long", file);
            }
            for (ZipEntry part : Collections.list(packed.entries())) {
                try (InputStream unpacked = packed.getInputStream(part)) {
                    left -= unpacked.skip(left + 1);
                }
                if (left < 0) {
                    throw new Refused("list.too-long", file);
                }
            }
        }
    }

    /** What is only shaded or framed far below or far to the right is no line and no cell of it. */
    private static List<List<String>> rows(Sheet sheet, Path file) {
        try (Stream<Row> rows = sheet.openStream()) {
            List<List<String>> all = new ArrayList<>();
            rows.filter(Workbook::isFilledIn).forEach(row -> {
                if (row.getRowNum() > MOST_ROWS) {
                    throw new Refused("list.too-long", file);
                }
                while (all.size() < row.getRowNum() - 1) {
                    all.add(List.of());
                }
                all.add(cells(row, file));
            });
            return all;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static boolean isFilledIn(Row row) {
        return row.stream().anyMatch(cell -> !shown(cell).isEmpty());
    }

    private static List<String> cells(Row row, Path file) {
        if (row.stream().skip(MOST_COLUMNS).anyMatch(cell -> !shown(cell).isEmpty())) {
            throw new Refused("list.too-long", file);
        }
        return row.stream().limit(MOST_COLUMNS).map(Workbook::shown).toList();
    }

    /** @param cell none where nothing was ever written */
    private static String shown(Cell cell) {
        return Optional.ofNullable(cell).map(Workbook::shownOf).orElse("");
    }

    private static String shownOf(Cell cell) {
        return switch (cell.getType()) {
            case EMPTY -> "";
            case STRING -> cell.asString().strip();
            case NUMBER -> figure(cell);
            case BOOLEAN, ERROR, FORMULA -> result(cell);
        };
    }

    /** What a cell came to when it was last worked out. */
    private static String result(Cell cell) {
        String raw = Optional.ofNullable(cell.getRawValue()).orElse("").strip();
        return isFigure(raw) ? figure(cell) : raw;
    }

    private static boolean isFigure(String raw) {
        return raw.matches("[+-]?(\\d+\\.?\\d*|\\.\\d+)([eE][+-]?\\d{1,3})?");
    }

    private static String figure(Cell cell) {
        BigDecimal figure = new BigDecimal(cell.getRawValue().strip()).round(KEPT);
        String format = Optional.ofNullable(cell.getDataFormatString()).orElse("General");
        if (PLAIN.matcher(format).matches()) {
            return plain(figure);
        }
        Matcher places = PLACES.matcher(format);
        if (places.matches()) {
            int number = places.group(1) == null ? 0 : places.group(1).length();
            if (figure.stripTrailingZeros().scale() <= number) {
                return figure.setScale(number, RoundingMode.UNNECESSARY).toPlainString();
            }
        }
        if (OF_A_DAY.matcher(SAID_ONLY.matcher(format).replaceAll("")).find()) {
            return cell.asDate().toLocalDate().toString();
        }
        return "%s [%s]".formatted(plain(figure), format);
    }

    private static String plain(BigDecimal figure) {
        return figure.signum() == 0 ? "0" : figure.stripTrailingZeros().toPlainString();
    }
}
