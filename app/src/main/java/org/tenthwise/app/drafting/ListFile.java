package org.tenthwise.app.drafting;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.charset.CharacterCodingException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.OptionalLong;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.tenthwise.checklists.drafting.ListColumn;
import org.tenthwise.checklists.drafting.ListedRows;
import org.tenthwise.model.words.Refused;

/**
 * A list of characteristics as a file of rows: RFC 4180, its cells parted by commas, semicolons or tabs, or a sheet of
 * a workbook; or the characteristics of a QIF document.
 */
public final class ListFile {

    private static final String TEXT = ".csv";
    private static final String WORKBOOK = ".xlsx";
    private static final String QIF = ".qif";
    private static final long MOST_BYTES = 4_000_000;
    private static final List<Character> BETWEEN = List.of(',', ';', '\t');

    /**
     * What could be read.
     *
     * @param openQuote the line on which a row begins that no quotation mark ends
     */
    private record Parsed(List<List<String>> rows, OptionalLong openQuote) {}

    private ListFile() {}

    /**
     * Its rows, and what cannot be taken of them.
     *
     * @throws Refused if it cannot be read as such a list
     */
    public static ListedRows read(Path file) {
        if (!isNamed(file, QIF)) {
            return ListedRows.of(rows(file));
        }
        try {
            if (!Files.isRegularFile(file)) {
                throw new Refused("list.no-file", file);
            }
            return QifList.rows(file);
        } catch (IOException e) {
            throw new Refused("list.broken", file);
        }
    }

    /**
     * Its rows, the cells as they are written.
     *
     * @throws Refused if it cannot be read as such a list
     */
    public static List<List<String>> rows(Path file) {
        try {
            if (!Files.isRegularFile(file)) {
                throw new Refused("list.no-file", file);
            }
            if (Files.size(file) > MOST_BYTES) {
                throw new Refused("list.too-long", file);
            }
            if (isNamed(file, WORKBOOK)) {
                return sheet(file);
            }
            String text = Files.readString(file);
            return text(file, text.startsWith("\uFEFF") ? text.substring(1) : text);
        } catch (CharacterCodingException e) {
            throw new Refused("list.not-utf8", file);
        } catch (IOException e) {
            throw new Refused("list.broken", file);
        }
    }

    /** Of the sheet with the headings, hidden or not; of the first, where none has them. */
    private static List<List<String>> sheet(Path file) {
        List<Workbook.NamedSheet> sheets = Workbook.sheets(file);
        List<Workbook.NamedSheet> headed = sheets.stream()
                .filter(sheet -> ListColumn.headingsOf(sheet.rows()).isPresent())
                .toList();
        if (headed.size() > 1) {
            throw new Refused(
                    "list.several-sheets",
                    file,
                    headed.stream().map(Workbook.NamedSheet::name).toList());
        }
        return Stream.concat(headed.stream(), sheets.stream())
                .findFirst()
                .map(Workbook.NamedSheet::rows)
                .orElse(List.of());
    }

    private static List<List<String>> text(Path file, String text) {
        Parsed parsed = BETWEEN.stream()
                .map(sign -> parsed(text, sign))
                .max(Comparator.comparingLong(rows -> headings(rows.rows())))
                .orElseThrow();
        parsed.openQuote().ifPresent(line -> {
            throw new Refused("list.quote", file, line);
        });
        return parsed.rows();
    }

    private static Parsed parsed(String text, char between) {
        CSVFormat format = CSVFormat.DEFAULT
                .builder()
                .setDelimiter(between)
                .setIgnoreEmptyLines(false)
                .setTrim(true)
                .get();
        List<List<String>> rows = new ArrayList<>();
        long line = 1;
        try (CSVParser parser = CSVParser.parse(new StringReader(text), format)) {
            for (CSVRecord row : parser) {
                rows.add(List.copyOf(row.toList()));
                line = parser.getCurrentLineNumber() + 1;
            }
            return new Parsed(rows, OptionalLong.empty());
        } catch (IOException | UncheckedIOException | IllegalStateException e) {
            return new Parsed(rows, OptionalLong.of(line));
        }
    }

    /** How many headings are known, in the row that has most of them. */
    private static long headings(List<List<String>> rows) {
        return rows.stream()
                .mapToLong(row -> row.stream()
                        .flatMap(cell -> ListColumn.headed(cell).stream())
                        .distinct()
                        .count())
                .max()
                .orElse(0);
    }

    /** Names of the lists in a folder. */
    public static List<String> in(Path folder) throws IOException {
        if (!Files.isDirectory(folder)) {
            return List.of();
        }
        try (Stream<Path> all = Files.list(folder)) {
            return all.filter(file -> isNamed(file, TEXT) || isNamed(file, WORKBOOK) || isNamed(file, QIF))
                    .map(file -> file.getFileName().toString())
                    .sorted()
                    .toList();
        }
    }

    private static boolean isNamed(Path file, String ending) {
        return file.getFileName().toString().toLowerCase(Locale.ROOT).endsWith(ending);
    }
}
