package org.tenthwise.app.house;

import static java.util.stream.Collectors.joining;
import static java.util.stream.Collectors.toCollection;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaField;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;

/**
 * The sources against the bundle of words. A key stands whole in the sources, or as a stem that the values of one enum
 * or of two are added to, or as a stem and an ending. What a sum says of itself or of an input is named by its ending
 * only, and stands where the sum stands.
 */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class WordsInUseTest {

    private static final List<Path> SOURCES = Stream.of("shared-model", "checklists", "app")
            .map(module -> Path.of("..", module, "src/main/java"))
            .toList();
    private static final Pattern LITERAL = Pattern.compile("\"(\\.?[a-z0-9]+(?:[.-][a-z0-9]+)*\\.?)\"");
    private static final Pattern SAID =
            Pattern.compile("\\b(?:(?:say|key|Message\\.of|Message\\.ofValue|new Refused)\\("
                    + "|(?:problem|problemUnlessKept|unknown)\\(\\s*(?:\"\\w+\"|[\\w.()]+),)\\s*\"([^\"]+)\"");

    /** Of a sum: {@code .note("ending"}; of an input: {@code new CannotAnswer(INPUT, "ending"}. */
    private static final Pattern OF_A_SUM = Pattern.compile("\\.?\\b(?:note|on|said)\\(([^,;]*)[,;]");

    private static final Pattern OF_AN_INPUT =
            Pattern.compile("\\b(?:CannotAnswer|about)\\(\\s*(?:\\w+\\.)?([A-Z][A-Z0-9_]*),\\s*(\"[a-z-]+\")");
    private static final Pattern NAME_OF_A_SUM = Pattern.compile("\\b(?:NAME = |named\\()\"([a-z0-9-]+)\"");
    private static final Pattern KEY_OF_AN_INPUT = Pattern.compile("\"([a-z0-9_]+)\"");

    private final Map<String, String> texts = Bundles.english();
    private final Set<String> keys = texts.keySet();
    private final String sources = sources();
    private final Set<String> values = enumValues();
    private final List<String> sumsByTrade = sumsByTrade();

    @Test
    void everyKeySaidIsInTheBundle() {
        Set<String> missing = found(SAID)
                .filter(said -> !said.endsWith(".") && !keys.contains(said) && !isStem(said))
                .collect(toCollection(TreeSet::new));
        assertEquals(Set.of(), missing);
    }

    @Test
    void everyKeyOfTheBundleIsUsed() {
        Set<String> literals = found(LITERAL).collect(toCollection(TreeSet::new));
        Set<String> unused = keys.stream().filter(key -> !isUsed(key, literals)).collect(toCollection(TreeSet::new));
        assertEquals(Set.of(), unused);
    }

    @Test
    void noTextIsEmpty() {
        assertEquals(
                List.of(), keys.stream().filter(key -> texts.get(key).isBlank()).toList());
    }

    @Test
    void theBundleAndTheSourcesWereSeen() {
        assertTrue(keys.contains("verdict.cut-again"));
        assertTrue(found(SAID).count() > 5, "hardly anything is said");
    }

    /** A sum and what it says of itself stand in one package. */
    @Test
    void everyEndingOfASumIsInTheBundle() {
        Set<String> missing = new TreeSet<>();
        int seen = 0;
        for (String trade : sumsByTrade) {
            List<String> names = found(NAME_OF_A_SUM, trade).distinct().toList();
            for (String ending : found(OF_A_SUM, trade)
                    .flatMap(said -> found(LITERAL, said))
                    .filter(ending -> !ending.contains(".") && !ending.equals("as-said"))
                    .toList()) {
                seen++;
                if (names.stream().noneMatch(name -> keys.contains("sum." + name + "." + ending))) {
                    missing.add(ending);
                }
            }
            names.stream()
                    .filter(name -> keys.stream().noneMatch(key -> key.startsWith("sum." + name + ".")))
                    .forEach(missing::add);
        }
        assertEquals(Set.of(), missing);
        assertTrue(seen > 120, "only %d were seen".formatted(seen));
    }

    /** A constant is called as its key. */
    @Test
    void everyReasonOfAnInputIsInTheBundle() {
        List<String> reasons = OF_AN_INPUT
                .matcher(sources)
                .results()
                .map(found -> "given.%s.%s"
                        .formatted(
                                found.group(1).toLowerCase(Locale.ROOT).replace('_', '-'),
                                found.group(2).replace("\"", "")))
                .toList();
        assertEquals(
                List.of(), reasons.stream().filter(key -> !keys.contains(key)).toList());
        assertTrue(reasons.size() > 40, "only %d were seen".formatted(reasons.size()));
    }

    /** A gap of a text of the sums is the place of a value or the key of something given or found. */
    @Test
    void everyNamedGapOfASumIsAKey() {
        Set<String> known = found(KEY_OF_AN_INPUT, String.join("", sumsByTrade)).collect(toCollection(TreeSet::new));
        known.addAll(Set.of("unit", "calc", "id"));
        Set<String> unknown = keys.stream()
                .filter(key -> key.startsWith("sum.") || key.startsWith("given."))
                .flatMap(key -> Bundles.gaps(texts.get(key)).stream())
                .filter(gap -> !gap.matches("\\d") && !known.contains(gap))
                .collect(toCollection(TreeSet::new));
        assertEquals(Set.of(), unknown);
    }

    private boolean isStem(String said) {
        return keys.stream()
                .anyMatch(key -> key.startsWith(said + ".") && isOfValues(key.substring(said.length() + 1)));
    }

    private boolean isUsed(String key, Set<String> literals) {
        return literals.contains(key)
                || isOfASum(key)
                || isOfAnInput(key)
                || literals.stream()
                        .filter(literal -> !literal.equals("sum.") && !literal.equals("given."))
                        .anyMatch(literal -> literal.endsWith(".")
                                ? key.startsWith(literal)
                                : key.startsWith(literal + ".")
                                        && (literals.contains(key.substring(literal.length()))
                                                || isOfValues(key.substring(literal.length() + 1))));
    }

    private boolean isOfASum(String key) {
        String[] parts = key.split("\\.");
        return parts.length == 3
                && parts[0].equals("sum")
                && sumsByTrade.stream()
                        .filter(trade -> found(NAME_OF_A_SUM, trade).anyMatch(parts[1]::equals))
                        .anyMatch(trade -> parts[2].equals("basis") || trade.contains('"' + parts[2] + '"'));
    }

    private boolean isOfAnInput(String key) {
        String[] parts = key.split("\\.");
        return parts.length == 3
                && parts[0].equals("given")
                && sources.contains('"' + parts[1].replace('-', '_') + '"')
                && sources.contains('"' + parts[2] + '"');
    }

    private boolean isOfValues(String rest) {
        List<String> parts = List.of(rest.split("\\."));
        return parts.size() <= 2 && values.containsAll(parts);
    }

    private Stream<String> found(Pattern pattern) {
        return found(pattern, sources);
    }

    private static Stream<String> found(Pattern pattern, String source) {
        return pattern.matcher(source).results().map(result -> result.group(1));
    }

    private static String sources() {
        return SOURCES.stream().map(WordsInUseTest::sources).collect(joining());
    }

    private static String sources(Path below) {
        StringBuilder all = new StringBuilder();
        try (Stream<Path> files = Files.walk(below)) {
            for (Path file : files.filter(path -> path.toString().endsWith(".java"))
                    .sorted()
                    .toList()) {
                all.append(Files.readString(file));
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return all.toString();
    }

    private static List<String> sumsByTrade() {
        try (Stream<Path> trades = Files.list(Path.of("src/main/java/org/tenthwise/app/sums"))) {
            return trades.filter(Files::isDirectory)
                    .map(WordsInUseTest::sources)
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The values of every enum of ours, as a key ends in them. */
    private static Set<String> enumValues() {
        Set<String> values = new TreeSet<>();
        for (JavaClass type : new ClassFileImporter()
                .withImportOption(new ImportOption.DoNotIncludeTests())
                .importPackages("org.tenthwise")) {
            if (type.isEnum()) {
                type.getFields().stream()
                        .filter(field -> field.getRawType().equals(type))
                        .map(JavaField::getName)
                        .map(name -> name.toLowerCase(Locale.ROOT).replace('_', '-'))
                        .forEach(values::add);
            }
        }
        return values;
    }
}
