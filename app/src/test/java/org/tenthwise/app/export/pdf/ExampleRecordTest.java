package org.tenthwise.app.export.pdf;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.util.List;
import java.util.Locale;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.tenthwise.app.export.Records;
import org.tenthwise.checklists.catalogue.ExamplePart;
import org.tenthwise.model.words.Words;

/** The printed record of whole drawings: every kind of check there is can be printed, passed or not. */
class ExampleRecordTest {

    @ParameterizedTest
    @EnumSource(ExamplePart.class)
    void everyCheckIsPrintedWhateverCameOfIt(ExamplePart part) throws Exception {
        for (String readings : List.of(part.passingReadings(), part.failingReadings(), part.readingsWithSlips())) {
            for (Locale language : List.of(Locale.ENGLISH, Locale.GERMAN)) {
                ByteArrayOutputStream out = new ByteArrayOutputStream();
                new PdfRecord(new RecordLayout(Words.of(language), Paper.A4))
                        .write(Records.whole(part.plan(), readings), out);
                try (PDDocument document = Loader.loadPDF(out.toByteArray())) {
                    String text = new PDFTextStripper().getText(document).replaceAll("\\s+", " ");
                    part.plan().steps().forEach(step -> assertTrue(text.contains(step.name()), step::name));
                }
            }
        }
    }
}
