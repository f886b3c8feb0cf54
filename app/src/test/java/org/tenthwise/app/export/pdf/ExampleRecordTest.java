package org.tenthwise.app.export.pdf;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
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

    private static final Path TO_LOOK_AT = Path.of("target", "records");

    @ParameterizedTest
    @EnumSource(ExamplePart.class)
    void everyCheckIsPrintedWhateverCameOfIt(ExamplePart part) throws Exception {
        Map<String, String> samples = Map.of(
                "pass", part.passingReadings(), "fail", part.failingReadings(), "slips", part.readingsWithSlips());
        for (String sample : samples.keySet()) {
            for (Locale language : List.of(Locale.ENGLISH, Locale.GERMAN)) {
                ByteArrayOutputStream out = new ByteArrayOutputStream();
                new PdfRecord(new RecordLayout(Words.of(language), Paper.A4, Records.DATA))
                        .write(Records.whole(part.plan(), samples.get(sample)), out);
                Files.createDirectories(TO_LOOK_AT);
                Files.write(TO_LOOK_AT.resolve(part + "-" + sample + "-" + language + ".pdf"), out.toByteArray());
                Archived.check(out.toByteArray());
                try (PDDocument document = Loader.loadPDF(out.toByteArray())) {
                    String text = new PDFTextStripper().getText(document).replaceAll("\\s+", " ");
                    Words words = Words.of(language);
                    assertTrue(
                            text.contains(words.say("record.where", 1, 2))
                                    || text.contains(words.say("record.where", 2, 3)),
                            () -> part + ", " + sample + ": two pages to decide on");
                    part.plan().steps().forEach(step -> assertTrue(text.contains(step.name()), step::name));
                    // what slipped is struck and told at length: more than has to stay on one leaf
                    List<String> parted = part.plan().steps().stream()
                            .filter(step -> !sample.equals("slips")
                                    && step.check().slots().size() <= 2)
                            .map(step -> step.number() + " " + step.name() + " Setter ")
                            .filter(text::contains)
                            .toList();
                    assertEquals(List.of(), parted, () -> part + ", " + sample + ": readings on another leaf");
                }
            }
        }
    }
}
