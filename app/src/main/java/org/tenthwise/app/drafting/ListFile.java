package org.tenthwise.app.drafting;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.charset.CharacterCodingException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.tenthwise.checklists.drafting.ListColumn;
import org.tenthwise.model.words.Refused;

/** A list of characteristics as a file of rows: RFC 4180, its cells parted by commas, semicolons or tabs. */
public final class ListFile {

    /** How the name of such a file ends. */
    public static final String ENDING = ".csv";

    private static final String WORKBOOK = ".xlsx";
    private static final long MOST_BYTES = 4_000_000;
    private static final List<Character> BETWEEN = List.of(',', ';', '\t');

    private ListFile() {}

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
            if (file.getFileName().toString().toLowerCase(Locale.ROOT).endsWith(WORKBOOK)) {
                throw new Refused("list.workbook", file);
            }
            if (Files.size(file) > MOST_BYTES) {
                throw new Refused("list.too-long", file);
            }
            String text = Files.readString(file);
            String plain = text.startsWith("\uFEFF") ? text.substring(1) : text;
            return BETWEEN.stream()
                    .map(sign -> rows(plain, sign))
                    .max(Comparator.comparingLong(ListFile::headings))
                    .orElseThrow();
        } catch (CharacterCodingException e) {
            throw new Refused("list.not-utf8", file);
        } catch (IOException e) {
            throw new Refused("list.broken", file);
        }
    }

    private static List<List<String>> rows(String text, char between) {
        CSVFormat format = CSVFormat.DEFAULT
                .builder()
                .setDelimiter(between)
                .setIgnoreEmptyLines(false)
                .setTrim(true)
                .get();
        try (CSVParser parser = CSVParser.parse(new StringReader(text), format)) {
            return StreamSupport.stream(parser.spliterator(), false)
                    .map(row -> List.copyOf(row.toList()))
                    .toList();
        } catch (IOException | UncheckedIOException | IllegalStateException e) {
            return List.of();
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
            return all.map(file -> file.getFileName().toString())
                    .filter(name -> name.toLowerCase(Locale.ROOT).endsWith(ENDING))
                    .sorted()
                    .toList();
        }
    }
}
