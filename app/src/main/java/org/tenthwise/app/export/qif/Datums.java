package org.tenthwise.app.export.qif;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The datums of a document: each by its letters, with a frame of its own. */
final class Datums {

    private final XmlIds ids;
    private final Map<String, String> frames = new LinkedHashMap<>();
    private final List<XmlElement> definitions = new ArrayList<>();
    private final List<XmlElement> inFrames = new ArrayList<>();

    Datums(XmlIds ids) {
        this.ids = ids;
    }

    /** Id of the frame of a datum; absent where its letters are none that the standard takes. */
    Optional<String> frame(String datum) {
        String label = datum.strip().replaceAll("[^A-Za-z0-9._:-]+", "-");
        return label.matches("-*") ? Optional.empty() : Optional.of(frames.computeIfAbsent(label, this::made));
    }

    private String made(String label) {
        XmlElement definition = ids.give(new XmlElement("DatumDefinition")).add("DatumLabel", label);
        definitions.add(definition);
        XmlElement simple = new XmlElement("SimpleDatum")
                .add("DatumDefinitionId", definition.id())
                .add("MaterialModifier", "REGARDLESS")
                .add("ReferencedComponent", "ACTUAL");
        XmlElement datum =
                new XmlElement("Datum").add(simple).add(new XmlElement("Precedence").add("PrecedenceEnum", "PRIMARY"));
        XmlElement frame = ids.give(new XmlElement("DatumReferenceFrame"))
                .add(XmlElement.list("Datums", List.of(datum)))
                .add("Name", label);
        inFrames.add(frame);
        return frame.id();
    }

    void addTo(XmlElement document) {
        document.addList("DatumDefinitions", definitions).addList("DatumReferenceFrames", inFrames);
    }
}
