package org.tenthwise.app.export.qif;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import javax.xml.XMLConstants;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import javax.xml.xpath.XPathConstants;
import javax.xml.xpath.XPathExpressionException;
import javax.xml.xpath.XPathFactory;
import org.tenthwise.app.export.Evidence;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.SAXException;

/** A document as it was written, read by nothing but what the JDK has for XML: paths are of names without a prefix. */
public final class QifFile {

    private final String text;
    private final Document document;

    QifFile(String text) {
        this.text = text;
        try {
            DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
            factory.setFeature(XMLConstants.FEATURE_SECURE_PROCESSING, true);
            // names without their name space, so that paths are short
            factory.setNamespaceAware(false);
            this.document = factory.newDocumentBuilder().parse(new ByteArrayInputStream(text.getBytes(UTF_8)));
        } catch (ParserConfigurationException | SAXException e) {
            throw new IllegalStateException(e);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    public static QifFile of(Evidence evidence) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try {
            new QifRecord().write(evidence, out);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return of(out.toString(UTF_8));
    }

    /** A document as it was written. */
    public static QifFile of(String text) {
        return new QifFile(text);
    }

    String text() {
        return text;
    }

    /** Text of the first node at a path; empty where there is none. */
    public String at(String path) {
        try {
            return XPathFactory.newInstance().newXPath().evaluate(path, document);
        } catch (XPathExpressionException e) {
            throw new IllegalArgumentException(path, e);
        }
    }

    /** Texts of all nodes at a path, in their order. */
    public List<String> all(String path) {
        try {
            NodeList nodes =
                    (NodeList) XPathFactory.newInstance().newXPath().evaluate(path, document, XPathConstants.NODESET);
            List<String> texts = new ArrayList<>();
            for (int i = 0; i < nodes.getLength(); i++) {
                texts.add(nodes.item(i).getTextContent().strip());
            }
            return texts;
        } catch (XPathExpressionException e) {
            throw new IllegalArgumentException(path, e);
        }
    }

    /** Names of all elements at a path. */
    List<String> names(String path) {
        try {
            NodeList nodes =
                    (NodeList) XPathFactory.newInstance().newXPath().evaluate(path, document, XPathConstants.NODESET);
            List<String> names = new ArrayList<>();
            for (int i = 0; i < nodes.getLength(); i++) {
                names.add(nodes.item(i).getNodeName());
            }
            return names;
        } catch (XPathExpressionException e) {
            throw new IllegalArgumentException(path, e);
        }
    }

    int count(String path) {
        return all(path).size();
    }

    /**
     * What is against the document by the schemas, and by what the schemas let through: a count that is not that of the
     * list, a greatest id that is none, no units, an uncertainty of which half is said.
     */
    public List<String> faults() {
        List<String> faults = new ArrayList<>(QifSchema.faults(text));
        NodeList all = document.getElementsByTagName("*");
        long greatest = 0;
        for (int i = 0; i < all.getLength(); i++) {
            Element element = (Element) all.item(i);
            if (element.hasAttribute("n") && Integer.parseInt(element.getAttribute("n")) != children(element)) {
                faults.add("count of " + element.getTagName());
            }
            if (element.hasAttribute("id")) {
                greatest = Math.max(greatest, Long.parseLong(element.getAttribute("id")));
            }
            if (element.hasAttribute("combinedUncertainty") != element.hasAttribute("meanError")) {
                faults.add("half of an uncertainty");
            }
        }
        if (greatest != Long.parseLong(document.getDocumentElement().getAttribute("idMax"))) {
            faults.add("greatest id");
        }
        if (at("/QIFDocument/FileUnits/PrimaryUnits/LinearUnit/UnitName").isEmpty()
                || at("/QIFDocument/FileUnits/PrimaryUnits/AngularUnit/UnitName")
                        .isEmpty()) {
            faults.add("no units");
        }
        return faults;
    }

    private static int children(Element of) {
        int count = 0;
        for (int i = 0; i < of.getChildNodes().getLength(); i++) {
            count += of.getChildNodes().item(i) instanceof Element ? 1 : 0;
        }
        return count;
    }
}
