package org.tenthwise.app.ui.about;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

/** The list of libraries against what the build takes in. */
class LibraryTest {

    private static final String END_OF_APACHE = "END OF TERMS AND CONDITIONS";

    @Test
    void everyLibraryThatIsShippedIsNamedWithItsLicence() throws Exception {
        Set<String> shipped = shipped(Path.of("pom.xml"));
        shipped.addAll(shipped(Path.of("..", "checklists", "pom.xml")));
        shipped.addAll(shipped(Path.of("..", "shared-model", "pom.xml")));
        assertTrue(shipped.contains("pdfbox") && shipped.contains("tomlj"), () -> "only seen: " + shipped);
        Set<String> named = Library.all().stream()
                .flatMap(library -> library.artifacts().stream())
                .collect(Collectors.toSet());
        shipped.removeAll(named);
        assertEquals(Set.of(), shipped);
    }

    @Test
    void everyTextThatIsNamedIsThere() {
        Stream<String> named = Library.all().stream().flatMap(library -> library.texts().stream());
        Stream.concat(named, Stream.of(LicenceText.OURS))
                .distinct()
                .forEach(text -> assertFalse(LicenceText.paragraphs(text).isEmpty(), text));
    }

    /** A licence or a notice that a library carries is read there word for word. */
    @Test
    void whatALibraryWantsSaidIsSaid() throws IOException {
        List<String> told = new ArrayList<>();
        for (Library library : Library.all()) {
            for (String artifact : library.artifacts()) {
                told.addAll(told(artifact, library));
            }
        }
        assertTrue(told.size() > 20, told::toString);
    }

    private static List<String> told(String artifact, Library library) throws IOException {
        String said = library.texts().stream().map(LibraryTest::words).collect(Collectors.joining(" "));
        List<String> told = new ArrayList<>();
        for (Path jar : jars(artifact)) {
            try (ZipFile file = new ZipFile(jar.toFile())) {
                for (ZipEntry entry : file.stream().filter(LibraryTest::isLegal).toList()) {
                    String text = new String(file.getInputStream(entry).readAllBytes(), StandardCharsets.UTF_8);
                    String own =
                            words(List.of(text.substring(text.indexOf(END_OF_APACHE) < 0 ? 0 : endOfApache(text))));
                    assertTrue(said.contains(own), () -> "%s: %s is not said of %s"
                            .formatted(jar.getFileName(), entry.getName(), library.name()));
                    told.add(artifact + " " + entry.getName());
                }
            }
        }
        return told;
    }

    /** What stands below the Apache licence and the words in which it is applied. */
    private static int endOfApache(String text) {
        String last = "limitations under the License.";
        int applied = text.indexOf(last, text.indexOf(END_OF_APACHE));
        return applied < 0 ? text.indexOf(END_OF_APACHE) + END_OF_APACHE.length() : applied + last.length();
    }

    private static boolean isLegal(ZipEntry entry) {
        String name = entry.getName();
        String file = name.substring(name.lastIndexOf('/') + 1);
        return !file.endsWith(".class") && (file.contains("LICENSE") || file.contains("NOTICE"));
    }

    private static List<Path> jars(String artifact) {
        return Arrays.stream(System.getProperty("java.class.path").split(File.pathSeparator))
                .map(Path::of)
                .filter(Files::isRegularFile)
                .filter(jar -> jar.getFileName().toString().matches(artifact + "-[0-9].*\\.jar"))
                .toList();
    }

    private static String words(String text) {
        return words(LicenceText.paragraphs(text));
    }

    private static String words(List<String> paragraphs) {
        return String.join(" ", paragraphs).replaceAll("\\s+", " ").strip();
    }

    private static Set<String> shipped(Path pom) throws Exception {
        NodeList dependencies = DocumentBuilderFactory.newInstance()
                .newDocumentBuilder()
                .parse(pom.toFile())
                .getElementsByTagName("dependency");
        Set<String> shipped = new TreeSet<>();
        for (int i = 0; i < dependencies.getLength(); i++) {
            Element dependency = (Element) dependencies.item(i);
            if (!text(dependency, "groupId").equals("org.tenthwise")
                    && !text(dependency, "scope").equals("test")) {
                shipped.add(text(dependency, "artifactId"));
            }
        }
        return shipped;
    }

    private static String text(Element dependency, String name) {
        NodeList found = dependency.getElementsByTagName(name);
        return found.getLength() == 0 ? "" : found.item(0).getTextContent();
    }
}
