package org.tenthwise.app.export.pdf;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.common.filespecification.PDComplexFileSpecification;
import org.apache.pdfbox.pdmodel.common.filespecification.PDEmbeddedFile;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.tenthwise.app.export.Evidence;
import org.tenthwise.app.export.RecordFormat;
import org.tenthwise.app.export.Records;
import org.tenthwise.model.words.Words;

/** The other formats of a record, as they lie inside the printed one. */
class EnclosuresTest {

    private static final List<RecordFormat> WHOLE =
            Records.DATA.stream().filter(RecordFormat::isWhole).toList();

    @ParameterizedTest
    @EnumSource(
            value = Scene.class,
            names = {"PASSED", "INCH_FAILED", "UNFINISHED", "LONG_NAMES"})
    void everyWholeFormatIsInsideToTheByte(Scene scene) throws IOException {
        Evidence evidence = scene.evidence();
        try (PDDocument document = Loader.loadPDF(pdf(evidence))) {
            Map<String, PDComplexFileSpecification> files = files(document);
            assertEquals(
                    WHOLE.stream()
                            .map(format -> Enclosures.name(format, evidence))
                            .collect(Collectors.toSet()),
                    files.keySet());
            for (RecordFormat format : WHOLE) {
                PDEmbeddedFile inside =
                        files.get(Enclosures.name(format, evidence)).getEmbeddedFile();
                ByteArrayOutputStream bytes = new ByteArrayOutputStream();
                format.write(evidence, bytes);
                assertArrayEquals(bytes.toByteArray(), inside.toByteArray());
                assertEquals(bytes.size(), inside.getSize());
                assertEquals(format.mediaType(), inside.getSubtype());
                assertEquals(evidence.stands().toInstant(), inside.getModDate().toInstant());
            }
        }
    }

    /** ISO 32000-2, 7.11.3 and 14.13: both names of the file, its stream under each, and what it is to the document. */
    @Test
    void everyFileIsAssociatedWithTheDocumentUnderBothItsNames() throws IOException {
        Evidence evidence = Scene.PASSED.evidence();
        try (PDDocument document = Loader.loadPDF(pdf(evidence))) {
            COSArray associated = document.getDocumentCatalog().getCOSObject().getCOSArray(COSName.AF);
            List<String> said = new ArrayList<>();
            IntStream.range(0, associated.size()).forEach(i -> {
                COSDictionary file = (COSDictionary) associated.getObject(i);
                assertEquals(file.getString(COSName.F), file.getString(COSName.UF));
                COSDictionary streams = file.getCOSDictionary(COSName.EF);
                assertEquals(
                        streams.getDictionaryObject(COSName.F), streams.getDictionaryObject(COSName.UF), "streams");
                said.add(file.getString(COSName.UF).replaceFirst(".*\\.", "") + " "
                        + file.getNameAsString(COSName.getPDFName("AFRelationship")));
            });
            assertEquals(List.of("csv Data", "json Source", "qif Data"), said);
        }
    }

    private static Map<String, PDComplexFileSpecification> files(PDDocument document) throws IOException {
        return document.getDocumentCatalog().getNames().getEmbeddedFiles().getNames();
    }

    private static byte[] pdf(Evidence evidence) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        new PdfRecord(new RecordLayout(Words.ENGLISH, Paper.A4, Records.DATA)).write(evidence, out);
        return out.toByteArray();
    }
}
