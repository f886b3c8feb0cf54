package org.tenthwise.app.export.pdf;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.GregorianCalendar;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentNameDictionary;
import org.apache.pdfbox.pdmodel.PDEmbeddedFilesNameTreeNode;
import org.apache.pdfbox.pdmodel.common.filespecification.PDComplexFileSpecification;
import org.apache.pdfbox.pdmodel.common.filespecification.PDEmbeddedFile;
import org.tenthwise.app.export.Evidence;
import org.tenthwise.app.export.RecordFormat;
import org.tenthwise.app.export.RecordName;

/**
 * The same record in other formats, each a file inside the printed one (ISO 19005-3, 6.8 and annex E): named in the
 * list of attachments and associated with the document, with what it is to it. Its time is that of the last entry, so
 * that the same evidence gives the same bytes.
 */
final class Enclosures {

    private static final COSName RELATIONSHIP = COSName.getPDFName("AFRelationship");
    private static final COSName SOURCE = COSName.getPDFName("Source");
    private static final COSName DATA = COSName.getPDFName("Data");

    private final List<RecordFormat> formats;

    Enclosures(List<RecordFormat> formats) {
        this.formats = formats;
    }

    /** What the file of a format is called inside: as beside the printed record. */
    static String name(RecordFormat format, Evidence evidence) {
        return RecordName.of(evidence.sheet().run().id(), evidence.head()) + "." + format.extension();
    }

    void into(PDDocument document, Evidence evidence) throws IOException {
        if (formats.isEmpty()) {
            return;
        }
        Map<String, PDComplexFileSpecification> named = new TreeMap<>();
        COSArray associated = new COSArray();
        for (RecordFormat format : formats) {
            String name = name(format, evidence);
            PDComplexFileSpecification file = new PDComplexFileSpecification();
            file.setFile(name);
            file.setFileUnicode(name);
            PDEmbeddedFile content = content(document, format, evidence);
            file.setEmbeddedFile(content);
            file.setEmbeddedFileUnicode(content);
            file.getCOSObject().setItem(RELATIONSHIP, format.isSource() ? SOURCE : DATA);
            named.put(name, file);
            associated.add(file);
        }
        PDEmbeddedFilesNameTreeNode tree = new PDEmbeddedFilesNameTreeNode();
        tree.setNames(named);
        PDDocumentNameDictionary names = new PDDocumentNameDictionary(document.getDocumentCatalog());
        names.setEmbeddedFiles(tree);
        document.getDocumentCatalog().setNames(names);
        document.getDocumentCatalog().getCOSObject().setItem(COSName.AF, associated);
    }

    private static PDEmbeddedFile content(PDDocument document, RecordFormat format, Evidence evidence)
            throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        format.write(evidence, bytes);
        PDEmbeddedFile content =
                new PDEmbeddedFile(document, new ByteArrayInputStream(bytes.toByteArray()), COSName.FLATE_DECODE);
        content.setSubtype(format.mediaType());
        content.setSize(bytes.size());
        content.setModDate(GregorianCalendar.from(evidence.stands().toZonedDateTime()));
        return content;
    }
}
