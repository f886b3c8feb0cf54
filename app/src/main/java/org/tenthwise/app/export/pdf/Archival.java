package org.tenthwise.app.export.pdf;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.awt.color.ColorSpace;
import java.awt.color.ICC_Profile;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.zip.CRC32;
import javax.xml.transform.TransformerException;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentCatalog;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.apache.pdfbox.pdmodel.common.PDMetadata;
import org.apache.pdfbox.pdmodel.graphics.color.PDOutputIntent;
import org.apache.pdfbox.pdmodel.interactive.viewerpreferences.PDViewerPreferences;
import org.apache.xmpbox.XMPMetadata;
import org.apache.xmpbox.schema.AdobePDFSchema;
import org.apache.xmpbox.schema.DublinCoreSchema;
import org.apache.xmpbox.schema.PDFAIdentificationSchema;
import org.apache.xmpbox.type.BadFieldValueException;
import org.apache.xmpbox.xml.XmpSerializer;
import org.tenthwise.app.export.Evidence;
import org.tenthwise.model.words.Words;

/**
 * What makes a PDF an archival one besides embedded lettering: the colour space named and brought along, and the same
 * particulars in both places a reader may look for them. There is no date of making, and the id comes from the
 * evidence, so that the same evidence gives the same file.
 */
final class Archival {

    private static final String COLOURS = "sRGB IEC61966-2.1";

    private final String tool;
    private final String seed;
    private final String title;
    private final String language;

    Archival(Evidence evidence, Words words) {
        this(
                new RecordContext(evidence, words).running(),
                evidence.tool(),
                evidence.head().hash(),
                words);
    }

    /** @param seed what the page is made from, as its id tells */
    Archival(String title, String tool, String seed, Words words) {
        this.title = PrintableText.of(title);
        this.tool = tool;
        this.seed = seed;
        this.language = words.locale().toLanguageTag();
    }

    void prepare(PDDocument document) throws IOException {
        PDDocumentCatalog catalog = document.getDocumentCatalog();
        information(document.getDocumentInformation());
        PDMetadata metadata = new PDMetadata(document);
        metadata.importXMPMetadata(particulars());
        catalog.setMetadata(metadata);
        catalog.addOutputIntent(colours(document));
        catalog.setLanguage(language);
        PDViewerPreferences preferences = new PDViewerPreferences(catalog.getCOSObject());
        preferences.setDisplayDocTitle(true);
        catalog.setViewerPreferences(preferences);
        document.setDocumentId(id());
    }

    private void information(PDDocumentInformation information) {
        information.setTitle(title);
        information.setProducer(producer());
    }

    private byte[] particulars() throws IOException {
        try {
            XMPMetadata xmp = XMPMetadata.createXMPMetadata();
            PDFAIdentificationSchema archival = xmp.createAndAddPDFAIdentificationSchema();
            archival.setPart(3);
            archival.setConformance("B");
            DublinCoreSchema work = xmp.createAndAddDublinCoreSchema();
            work.setTitle(title);
            AdobePDFSchema pdf = xmp.createAndAddAdobePDFSchema();
            pdf.setProducer(producer());
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            new XmpSerializer().serialize(xmp, out, true);
            return out.toByteArray();
        } catch (BadFieldValueException | TransformerException e) {
            throw new IOException("The particulars of the record could not be written", e);
        }
    }

    private static PDOutputIntent colours(PDDocument document) throws IOException {
        byte[] profile = ICC_Profile.getInstance(ColorSpace.CS_sRGB).getData();
        PDOutputIntent intent = new PDOutputIntent(document, new ByteArrayInputStream(profile));
        intent.setInfo(COLOURS);
        intent.setOutputCondition(COLOURS);
        intent.setOutputConditionIdentifier(COLOURS);
        intent.setRegistryName("http://www.color.org");
        return intent;
    }

    private String producer() {
        return PrintableText.of(tool);
    }

    private long id() {
        CRC32 sum = new CRC32();
        sum.update((seed + tool).getBytes(UTF_8));
        return sum.getValue();
    }
}
