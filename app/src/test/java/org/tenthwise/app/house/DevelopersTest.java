package org.tenthwise.app.house;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The guide for developers names classes that are there, and every part of the house. */
class DevelopersTest {

    private static final Path TOP = Path.of("..").toAbsolutePath().normalize();
    /** A class alone, or with something of it. */
    private static final Pattern CLASS = Pattern.compile("`([A-Z][a-z]\\w*)(\\.\\w+)?`");
    /** Of the Java library. */
    private static final Set<String> OF_JAVA = Set.of("BigDecimal");
    /** Told as one line for all below. */
    private static final Pattern TOLD_AS_ONE = Pattern.compile("(app\\.(ui|sums|export)|model\\.compute)\\..+");

    @Test
    void everyClassItNamesIsThere() throws IOException {
        Set<String> there = sources("main", "test")
                .map(file -> file.getFileName().toString().replace(".java", ""))
                .collect(Collectors.toSet());
        Set<String> named = CLASS.matcher(guide())
                .results()
                .map(found -> found.group(1))
                .filter(name -> !OF_JAVA.contains(name))
                .collect(Collectors.toCollection(TreeSet::new));
        assertTrue(named.size() > 100, named::toString);
        named.removeAll(there);
        assertEquals(Set.of(), named);
    }

    @Test
    void everyPackageIsTold() throws IOException {
        String guide = guide();
        Set<String> untold = sources("main")
                .filter(file -> file.endsWith("package-info.java"))
                .map(DevelopersTest::packageOf)
                .filter(name -> name.contains("."))
                .filter(name -> !TOLD_AS_ONE.matcher(name).matches())
                .filter(name -> !guide.contains("`" + name + "`")
                        && !guide.contains("`" + name + ".*`")
                        && !guide.contains("`" + name.substring(name.lastIndexOf('.')) + "`"))
                .collect(Collectors.toCollection(TreeSet::new));
        assertEquals(Set.of(), untold);
    }

    private static String packageOf(Path file) {
        String path = file.getParent().toString().replace(file.getFileSystem().getSeparator(), ".");
        String root = "org.tenthwise.";
        return path.substring(path.lastIndexOf(root) + root.length());
    }

    /** The code of all modules in these folders of theirs. */
    private static Stream<Path> sources(String... folders) throws IOException {
        Stream.Builder<Path> all = Stream.builder();
        for (String module : new String[] {"shared-model", "checklists", "app"}) {
            for (String folder : folders) {
                try (Stream<Path> files =
                        Files.walk(TOP.resolve(module).resolve("src").resolve(folder))) {
                    files.filter(file -> file.toString().endsWith(".java")).forEach(all::add);
                }
            }
        }
        return all.build();
    }

    private static String guide() throws IOException {
        return Files.readString(TOP.resolve("DEVELOPERS.md"));
    }
}
