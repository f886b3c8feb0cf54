package org.tenthwise.app.drafting;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.tenthwise.checklists.drafting.ListedRows;
import org.tenthwise.model.plan.BalloonNumber;
import org.tenthwise.model.words.Message;
import org.tenthwise.model.words.Refused;

/**
 * The characteristics of a QIF 3 document, of a product, a plan or results, as the rows of a list: a row for each item,
 * or one with their count for several alike that have one number together. What cannot be taken is a row that is
 * refused, so that nothing is left out unseen.
 *
 * <p>Source: QIF 3.0, ISO 23952:2020, its schemas.
 */
final class QifList {

    private static final String SPACE = "http://qifstandards.org/xsd/qif3";
    private static final String VERSION = "3.";
    private static final String ITEM = "CharacteristicItem";

    /** What is large and tells nothing of limits. */
    private static final Set<String> PASSED_OVER = Set.of(
            "Results",
            "Statistics",
            "Rules",
            "MeasurementResources",
            "Features",
            "GeometrySet",
            "TopologySet",
            "ViewSet",
            "VisualizationSet",
            "UserDataXML");

    private final Path file;
    private final XmlTree document;
    private final Map<String, XmlTree> byId = new HashMap<>();
    private final QifLine lines;

    private QifList(Path file, XmlTree document) {
        this.file = file;
        this.document = document;
        document.all().forEach(element -> element.attribute("id").ifPresent(id -> {
            if (byId.put(id, element) != null) {
                throw new Refused("list.qif.id-twice", file, id);
            }
        }));
        this.lines = new QifLine(new QifUnits(document), byId);
    }

    /**
     * Its rows.
     *
     * @throws Refused if it is no such document, or one that does not say what its lengths are in
     */
    static ListedRows rows(Path file) throws IOException {
        XmlTree document = new SafeXml(file, PASSED_OVER).root(SPACE);
        boolean known = document.name().equals("QIFDocument")
                && document.attribute("versionQIF")
                        .filter(of -> of.startsWith(VERSION))
                        .isPresent();
        if (!known) {
            throw new Refused("list.qif.no-qif", file);
        }
        return new QifList(file, document).rows();
    }

    private ListedRows rows() {
        List<List<String>> rows = new ArrayList<>();
        Map<Integer, Message> refused = new HashMap<>();
        rows.add(QifRow.HEADINGS);
        for (List<XmlTree> alike : items().values()) {
            QifRow row = lines.of(alike);
            row.refused().ifPresent(why -> refused.put(rows.size(), why));
            rows.add(row.cells());
        }
        if (rows.size() == 1) {
            throw new Refused("list.qif.no-items", file);
        }
        return new ListedRows(rows, refused);
    }

    /** Items by what they have together: those of one nominal whose definition has a number. */
    private Map<String, List<XmlTree>> items() {
        Map<String, List<XmlTree>> alike = new LinkedHashMap<>();
        XmlTree all = document.at("Characteristics", "CharacteristicItems")
                .orElseThrow(() -> new Refused("list.qif.no-items", file));
        if (all.attribute("n")
                .filter(n -> !n.equals(String.valueOf(all.children().size())))
                .isPresent()) {
            throw new Refused("list.qif.count", file);
        }
        for (XmlTree item : all.children()) {
            String own = item.attribute("id").orElse("");
            String together = lines.numberOfAll(item)
                    .flatMap(number -> item.said("CharacteristicNominalId"))
                    .map(nominal -> "of " + nominal)
                    .orElse(own);
            alike.computeIfAbsent(together, first -> new ArrayList<>()).add(item);
        }
        return alike;
    }

    /** Kind of an item: {@code Diameter}. */
    static String kind(XmlTree item) {
        return item.name().endsWith(ITEM)
                ? item.name().substring(0, item.name().length() - ITEM.length())
                : item.name();
    }

    /** Whether something can be the number of a characteristic. */
    static Optional<String> number(String text) {
        return Optional.of(text).filter(BalloonNumber::canBe);
    }
}
