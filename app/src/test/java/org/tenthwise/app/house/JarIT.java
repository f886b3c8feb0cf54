package org.tenthwise.app.house;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.jar.JarFile;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import org.junit.jupiter.api.Test;

/** The one file that is handed over, and what lies in it. */
class JarIT {

    private static final Path JAR = Path.of("target", "tenthwise.jar").toAbsolutePath();
    private static final String LICENCES = "META-INF/licenses/";

    /** What may lie in it: our own, what comes with a library, and what names it all. */
    private static final Pattern KNOWN = Pattern.compile("org/tenthwise/.*|parts/.*|templates/.*"
            + "|(?:com/sun|javafx)/.*|javafx\\.properties"
            + "|lib[a-z0-9_]+\\.so|[a-z0-9_]+\\.dll|lib[a-z0-9_]+\\.dylib"
            + "|com/(?:gluonhq/attach|google/zxing|fasterxml/(?:jackson|aalto)|ibm/icu)/.*"
            + "|com/formdev/flatlaf/fonts/roboto/Roboto-(?:Regular|Medium|Bold)\\.ttf"
            + "|net/sf/jasperreports/fonts/dejavu/DejaVuSans(?:-Bold)?\\.ttf"
            + "|org/sqlite/native/(?:Linux|Mac|Windows)/(?:x86_64|aarch64)/.*|org/sqlite/[^/]+|sqlite-jdbc\\.properties"
            + "|org/sqlite/(?:core|date|javax|jdbc3|jdbc4|util)/.*"
            + "|org/(?:dhatim/fastexcel|codehaus/stax2|bouncycastle)/.*|com/github/rzymek/opczip/.*"
            + "|(?:org/(?:antlr|tomlj|slf4j|apache/(?:commons|pdfbox|fontbox|xmpbox))|picocli)/.*"
            + "|META-INF/(?:MANIFEST\\.MF|LICENSE|licenses/.*|maven/.*|services/.*|versions/\\d+/(?:com|org)/.*)");

    @Test
    void nothingLiesInItThatIsNotUsed() throws IOException {
        try (JarFile jar = new JarFile(JAR.toFile())) {
            List<String> files = jar.stream()
                    .filter(entry -> !entry.isDirectory())
                    .map(ZipEntry::getName)
                    .toList();
            assertTrue(files.size() > 5000, () -> "only %d files were seen".formatted(files.size()));
            assertEquals(
                    List.of(),
                    files.stream()
                            .filter(file -> !KNOWN.matcher(file).matches())
                            .toList());
        }
    }

    @Test
    void everyLibraryInItHasItsLicenceInIt() throws IOException {
        try (JarFile jar = new JarFile(JAR.toFile())) {
            assertTrue(text(jar, "META-INF/LICENSE").contains("GNU GENERAL PUBLIC LICENSE"));
            Set<String> listed = new TreeSet<>();
            Pattern.compile("\\([^()]*:([^():]+):[^():]+ - ")
                    .matcher(text(jar, LICENCES + "LIBRARIES.txt"))
                    .results()
                    .forEach(found -> listed.add(found.group(1)));
            assertTrue(listed.size() > 30, listed::toString);
            Map<String, String> texts = new TreeMap<>();
            text(jar, "org/tenthwise/app/ui/about/libraries.tsv")
                    .lines()
                    .filter(line -> !line.startsWith("#"))
                    .map(line -> line.split("\t"))
                    .forEach(values -> Stream.of(values[0].split(" ")).forEach(name -> texts.put(name, values[3])));
            assertEquals(listed, texts.keySet());
            for (String name : texts.values().stream()
                    .flatMap(names -> Stream.of(names.split(" ")))
                    .collect(Collectors.toSet())) {
                assertTrue(text(jar, LICENCES + name + ".txt").length() > 100, name);
            }
        }
    }

    private static String text(JarFile jar, String name) throws IOException {
        ZipEntry entry = jar.getEntry(name);
        assertTrue(entry != null, name + " is not in the jar");
        return new String(jar.getInputStream(entry).readAllBytes(), StandardCharsets.UTF_8);
    }
}
