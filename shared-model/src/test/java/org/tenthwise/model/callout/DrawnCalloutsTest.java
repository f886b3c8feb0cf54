package org.tenthwise.model.callout;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.words.Refused;

/** Hundreds of callouts as they stand on drawings, each read as it is meant or refused, whole and damaged. */
class DrawnCalloutsTest {

    private static final Pattern FIGURE = Pattern.compile("\\d+(?:[.,]\\d+)?|\\.\\d+");
    private static final String DAMAGE = "0123456789.,+-±/ XØRHhGgMmNnAab°'\"()|%";

    private record Row(Unit unit, String text, String read) {

        static Row of(String line) {
            String[] cells = line.split("\\|", -1);
            return new Row(Unit.ofSymbol(cells[0]).orElseThrow(), cells[1].replace("\\n", "\n"), cells[2]);
        }

        String readAs(UnaryOperator<String> written) {
            return DrawnCalloutsTest.read(unit, written.apply(text))
                    .map(Callout::parts)
                    .map(parts -> parts.stream().map(DrawnCalloutsTest::said).collect(Collectors.joining("; ")))
                    .orElse("refused");
        }
    }

    private static List<Row> rows() throws IOException {
        try (InputStream in = DrawnCalloutsTest.class.getResourceAsStream("drawn.txt")) {
            return new String(in.readAllBytes(), UTF_8)
                    .lines()
                    .filter(line -> !line.startsWith("# "))
                    .map(Row::of)
                    .toList();
        }
    }

    private static Optional<Callout> read(Unit unit, String text) {
        try {
            return Optional.of(new CalloutReader(unit, Optional.empty()).read(text));
        } catch (Refused e) {
            return Optional.empty();
        }
    }

    private static String said(CalloutPart part) {
        return String.join(
                " ",
                part.kind().key(),
                figure(part, part.nominal()),
                figure(part, part.lower()),
                figure(part, part.upper()),
                part.count().map(String::valueOf).orElse("-"));
    }

    private static String figure(CalloutPart part, Optional<BigDecimal> figure) {
        return figure.map(part::decimal).orElse("-");
    }

    @TestFactory
    Stream<DynamicTest> eachIsReadAsItIsMeantOrRefused() throws IOException {
        return rows().stream()
                .map(row -> DynamicTest.dynamicTest(
                        row.unit() + " " + row.text().replace("\n", "\\n"),
                        () -> assertEquals(row.read(), row.readAs(UnaryOperator.identity()))));
    }

    @Test
    void thereAreHundredsOfThem() throws IOException {
        assertTrue(rows().size() > 600);
    }

    /** Signs that look alike, and blanks around, change nothing. */
    @Test
    void signsThatLookAlikeAreOne() throws IOException {
        List<UnaryOperator<String>> ways = List.of(
                text -> "  " + text + "\u00A0",
                text -> text.replace(' ', '\u00A0'),
                text -> text.replace(" ", "  "),
                text -> text.replace('Ø', 'ø'),
                text -> text.replace('Ø', '⌀'),
                text -> text.replace('Ø', '∅'),
                text -> text.replace("±", "+/-"),
                text -> text.replace('-', '−'),
                text -> text.replace('µ', 'μ'),
                text -> text.replaceAll("(?<=\\d) ?X (?=[\\dØR(])", "× ").length() == text.length()
                        ? text.replaceAll("(?<=\\dX? )X(?= )", "×")
                        : text,
                text -> text.contains(",") ? text : text + "\r\n");
        for (Row row : rows()) {
            for (UnaryOperator<String> way : ways) {
                assertEquals(row.read(), row.readAs(way), () -> way.apply(row.text()));
            }
        }
    }

    /** A decimal comma on a drawing in millimetres is a point. */
    @Test
    void aCommaIsAPointInMillimetres() throws IOException {
        for (Row row : rows()) {
            if (row.unit().equals(Unit.MILLIMETRE) && row.text().matches("(?s)(?:[^.,]|(?<=\\d)\\.(?=\\d))*")) {
                assertEquals(row.read(), row.readAs(text -> text.replaceAll("(?<=\\d)\\.(?=\\d)", ",")), row::text);
            }
        }
    }

    /**
     * Whatever a hand or a scanner does to a text: what is read from it stands in it. Every limit is a figure of the
     * text, or one of them with another added or taken off; only a class and a thread bring limits of their own, and
     * they name where from.
     */
    @Test
    void noLimitIsReadThatDoesNotStandThere() throws IOException {
        List<Row> rows = rows();
        Random random = new Random(6410);
        int read = 0;
        for (int i = 0; i < 60_000; i++) {
            Row row = rows.get(random.nextInt(rows.size()));
            String damaged = row.text();
            for (int times = random.nextInt(3); times >= 0; times--) {
                damaged = damaged(damaged, random);
            }
            String text = damaged;
            Optional<Callout> callout = read(row.unit(), text);
            callout.ifPresent(of -> of.parts().forEach(part -> requireInText(part, text)));
            read += callout.isPresent() ? 1 : 0;
        }
        assertTrue(read > 5_000, "read " + read);
    }

    private static String damaged(String text, Random random) {
        if (text.isEmpty()) {
            return text;
        }
        int at = random.nextInt(text.length());
        String sign = String.valueOf(DAMAGE.charAt(random.nextInt(DAMAGE.length())));
        return switch (random.nextInt(5)) {
            case 0 -> text.substring(0, at) + text.substring(at + 1);
            case 1 -> text.substring(0, at) + sign + text.substring(at);
            case 2 -> text.substring(0, at) + sign + text.substring(at + 1);
            case 3 -> text.substring(0, at) + text.charAt(at) + text.substring(at);
            default -> text.substring(at) + text.substring(0, at);
        };
    }

    private static void requireInText(CalloutPart part, String text) {
        if (part.origin().isPresent() || part.unit().filter(Unit::isOfAngle).isPresent() || text.contains("/")) {
            return;
        }
        Set<BigDecimal> figures = new TreeSet<>(List.of(BigDecimal.ZERO));
        Matcher found = FIGURE.matcher(text);
        while (found.find()) {
            figures.add(new BigDecimal(found.group().replace(',', '.')));
        }
        Set<BigDecimal> possible = new TreeSet<>(figures);
        figures.forEach(one -> figures.forEach(other -> {
            possible.add(one.add(other));
            possible.add(one.subtract(other));
        }));
        part.nominal().ifPresent(size -> assertTrue(figures.contains(size), () -> text + " -> " + said(part)));
        Stream.of(part.lower(), part.upper())
                .flatMap(Optional::stream)
                .forEach(limit -> assertTrue(possible.contains(limit), () -> text + " -> " + said(part)));
    }
}
