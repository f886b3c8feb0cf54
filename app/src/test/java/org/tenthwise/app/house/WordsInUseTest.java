package org.tenthwise.app.house;

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
 * or of two are added to, or as a stem and an ending.
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

    private final Map<String, String> texts = Bundles.english();
    private final Set<String> keys = texts.keySet();
    private final String sources = sources();
    private final Set<String> values = enumValues();

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

    private boolean isStem(String said) {
        return keys.stream()
                .anyMatch(key -> key.startsWith(said + ".") && isOfValues(key.substring(said.length() + 1)));
    }

    private boolean isUsed(String key, Set<String> literals) {
        return literals.contains(key)
                || literals.stream()
                        .anyMatch(literal -> literal.endsWith(".")
                                ? key.startsWith(literal)
                                : key.startsWith(literal + ".")
                                        && (literals.contains(key.substring(literal.length()))
                                                || isOfValues(key.substring(literal.length() + 1))));
    }

    private boolean isOfValues(String rest) {
        List<String> parts = List.of(rest.split("\\."));
        return parts.size() <= 2 && values.containsAll(parts);
    }

    private Stream<String> found(Pattern pattern) {
        return pattern.matcher(sources).results().map(result -> result.group(1));
    }

    private static String sources() {
        StringBuilder all = new StringBuilder();
        for (Path module : SOURCES) {
            try (Stream<Path> files = Files.walk(module)) {
                for (Path file : files.filter(path -> path.toString().endsWith(".java"))
                        .sorted()
                        .toList()) {
                    all.append(Files.readString(file));
                }
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
        return all.toString();
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
