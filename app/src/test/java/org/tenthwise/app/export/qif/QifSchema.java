package org.tenthwise.app.export.qif;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import javax.xml.XMLConstants;
import javax.xml.transform.stream.StreamSource;
import javax.xml.validation.Schema;
import javax.xml.validation.SchemaFactory;
import javax.xml.validation.Validator;
import org.xml.sax.ErrorHandler;
import org.xml.sax.SAXException;
import org.xml.sax.SAXParseException;

/** The schemas of QIF 3.0 as the standard's body publishes them, compiled once. */
final class QifSchema {

    private static final String SIGNATURES = "http://www.w3.org/2000/09/xmldsig#";
    private static final Schema SCHEMA = compiled();

    private QifSchema() {}

    /** What the schemas find against a document; empty where it is valid. */
    static List<String> faults(String document) {
        List<String> faults = new ArrayList<>();
        Validator validator = SCHEMA.newValidator();
        validator.setErrorHandler(new ErrorHandler() {
            @Override
            public void warning(SAXParseException e) {
                faults.add(e.getMessage());
            }

            @Override
            public void error(SAXParseException e) {
                faults.add(e.getLineNumber() + ": " + e.getMessage());
            }

            @Override
            public void fatalError(SAXParseException e) {
                faults.add(e.getLineNumber() + ": " + e.getMessage());
            }
        });
        try {
            validator.validate(new StreamSource(new ByteArrayInputStream(document.getBytes(UTF_8))));
        } catch (SAXException e) {
            faults.add(e.getMessage());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return faults;
    }

    private static Schema compiled() {
        try {
            Path folder = Files.createTempDirectory("qif-schemas");
            try {
                unpack(folder);
                return compiled(folder);
            } finally {
                remove(folder);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (SAXException e) {
            throw new IllegalStateException(e);
        }
    }

    private static Schema compiled(Path folder) throws SAXException {
        SchemaFactory factory = SchemaFactory.newInstance(XMLConstants.W3C_XML_SCHEMA_NS_URI);
        factory.setProperty(XMLConstants.ACCESS_EXTERNAL_DTD, "");
        factory.setProperty(XMLConstants.ACCESS_EXTERNAL_SCHEMA, "file");
        factory.setResourceResolver((type, space, publicId, systemId, base) ->
                SIGNATURES.equals(space) ? new LocalInput(folder.resolve("QIFLibrary/xmldsig-core-schema.xsd")) : null);
        return factory.newSchema(new StreamSource(
                folder.resolve("QIFApplications/QIFDocument.xsd").toFile()));
    }

    private static void unpack(Path folder) throws IOException {
        try (InputStream packed = QifSchema.class.getResourceAsStream("qif-3.0-schemas.zip");
                ZipInputStream zip = new ZipInputStream(packed)) {
            for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
                Path file = folder.resolve(entry.getName());
                if (entry.isDirectory()) {
                    Files.createDirectories(file);
                } else {
                    Files.createDirectories(file.getParent());
                    Files.copy(zip, file);
                }
            }
        }
    }

    private static void remove(Path folder) throws IOException {
        try (Stream<Path> all = Files.walk(folder)) {
            for (Path file : all.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(file);
            }
        }
    }
}
