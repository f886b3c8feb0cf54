package org.tenthwise.app.ui.about;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

/** The list of libraries against what the build takes in. */
class LibraryTest {

    @Test
    void everyLibraryThatIsShippedIsNamedWithItsLicence() throws Exception {
        Set<String> shipped = shipped(Path.of("pom.xml"));
        shipped.addAll(shipped(Path.of("..", "checklists", "pom.xml")));
        assertTrue(shipped.contains("pdfbox") && shipped.contains("tomlj"), () -> "only seen: " + shipped);
        Set<String> named = Library.all().stream().map(Library::artifact).collect(Collectors.toSet());
        shipped.removeAll(named);
        assertEquals(Set.of(), shipped);
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
