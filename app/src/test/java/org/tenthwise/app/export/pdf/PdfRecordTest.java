package org.tenthwise.app.export.pdf;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.tenthwise.app.export.Evidence;
import org.tenthwise.app.export.Records;
import org.tenthwise.checklists.catalogue.DemoPart;
import org.tenthwise.checklists.rules.ReadingsFile;
import org.tenthwise.checklists.rules.SampleReader;
import org.tenthwise.checklists.rules.SampleReading;
import org.tenthwise.model.plan.Aim;
import org.tenthwise.model.plan.IssueOfPlan;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.plan.PlanBuilder;
import org.tenthwise.model.plan.Register;
import org.tenthwise.model.run.Disposition;
import org.tenthwise.model.run.Event;
import org.tenthwise.model.run.ShopEvent;
import org.tenthwise.model.run.StepEvent;
import org.tenthwise.model.words.Words;

class PdfRecordTest {

    private static final Path TO_LOOK_AT = Path.of("target", "records");

    @ParameterizedTest
    @EnumSource(Scene.class)
    void everyRecordIsArchival(Scene scene) throws Exception {
        byte[] pdf = pdf(scene.evidence());
        Files.createDirectories(TO_LOOK_AT);
        Files.write(TO_LOOK_AT.resolve(scene.name().toLowerCase(Locale.ROOT) + ".pdf"), pdf);
        Archived.check(pdf);
    }

    @Test
    void theSameEvidenceGivesTheSameBytes() throws IOException {
        assertArrayEquals(pdf(Scene.PASSED.evidence()), pdf(Scene.PASSED.evidence()));
    }

    /** US letter is 8½ by 11 inches of 72 points; the language is that of the words. */
    @Test
    void aRecordIsOnThePaperOfThePlaceAndNamesItsLanguage() throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        new PdfRecord(new RecordLayout(Words.of(Locale.US), Paper.LETTER, Records.DATA))
                .write(Scene.FAILED.evidence(), out);
        try (PDDocument document = Loader.loadPDF(out.toByteArray())) {
            assertEquals(612, document.getPage(0).getMediaBox().getWidth(), 0.01);
            assertEquals(792, document.getPage(0).getMediaBox().getHeight(), 0.01);
            assertEquals("en-US", document.getDocumentCatalog().getLanguage());
        }
    }

    @Test
    void theHeadSaysWhyThePlanWasIssuedAndWhatItsFirstArticleTakesIn() throws IOException {
        DemoPart part = DemoPart.SCREW_CARRIER;
        Plan plan = new PlanBuilder(part.plan())
                .issues(List.of(new IssueOfPlan(
                        part.plan().issue(),
                        "Drawing changed",
                        "Planner 1",
                        Optional.of("Planner 2"),
                        Optional.empty(),
                        Optional.of(List.of("10", "13")))))
                .build();
        ReadingsFile sample = assertInstanceOf(
                        SampleReading.Good.class, new SampleReader().read(part.passingReadings(), plan))
                .sample();
        String text = text(new Records.Walk(plan, sample.by())
                        .add(sample.begun())
                        .addAll(sample.events())
                        .evidence())
                .replaceAll("\\s+", " ");
        assertTrue(
                text.contains(": Drawing changed, by Planner 1, approved by Planner 2. With an accepted first article"
                        + " of the issue before, check again: 10, 13. Without one: in full"),
                text);
    }

    @Test
    void theTextCanBeReadOutAgain() throws IOException {
        String text = text(Scene.CONCEDED.evidence());
        assertTrue(text.contains("First-part record"), text.substring(0, 200));
        assertTrue(text.contains("Conforms with one concession. Accepted by"), text.substring(0, 800));
    }

    /** On each page: a page that lies alone must not look like one of a run that goes on. */
    @Test
    void aRunPutAwaySaysSoOnEveryPage() throws IOException {
        DemoPart carrier = DemoPart.SCREW_CARRIER;
        Evidence evidence = Records.walk(carrier, Records.passing(carrier), 60)
                .add(new Event.PutAway("Setter 3", "Started twice"))
                .evidence();
        String said = "Put away by Setter 3 (Started twice), neither closed nor accepted";
        try (PDDocument document = Loader.loadPDF(pdf(evidence))) {
            for (int page = 1; page <= document.getNumberOfPages(); page++) {
                PDFTextStripper one = new PDFTextStripper();
                one.setStartPage(page);
                one.setEndPage(page);
                String text = one.getText(document).replaceAll("\\s+", " ");
                assertTrue(text.contains(said), page + ": " + text);
            }
        }
        assertTrue(text(evidence).replaceAll("\\s+", " ").contains("Put away by Setter 3: Started twice."));
    }

    @Test
    void aReasonTypedWithoutAFullStopRunsIntoNothingBehindIt() throws IOException {
        DemoPart carrier = DemoPart.SCREW_CARRIER;
        String text = text(Records.walk(carrier, Records.failing(carrier), 0)
                        .add(new StepEvent.DispositionSigned(
                                1,
                                Disposition.USE_AS_IS,
                                "Over by 0.003 at the mouth",
                                "Design office",
                                Optional.of("C-117")))
                        .evidence())
                .replaceAll("\\s+", " ");
        assertTrue(text.contains("Over by 0.003 at the mouth. Concession number: C-117."), text);
    }

    @Test
    void theModifierOfTheDrawingStandsBehindHowReadingsBecomeASize() throws IOException {
        DemoPart barrel = DemoPart.WINCH_BARREL_END;
        String text = text(Records.whole(barrel, Records.passing(barrel))).replace('\u00a0', ' ');
        assertTrue(text.contains("mean of 4 (SA)"), text);
    }

    @Test
    void whatWasSaidOfTheMachineAndWhoCutOnHalfAPassStandInTheCourse() throws IOException {
        DemoPart carrier = DemoPart.SCREW_CARRIER;
        String text = text(Records.walk(carrier, Records.passing(carrier), 40)
                        .add(new ShopEvent.MachineKnown("Lathe 4", Register.RADIUS, Aim.ByLimits.THIRD))
                        .add(new StepEvent.CutOnThese(9, "Tail end is behind the centre."))
                        .evidence())
                .replaceAll("\\s+", " ");
        assertTrue(
                text.contains(
                        "X offset of the machine is on radius; aim where the plan does not say: a third in from the "
                                + "side where metal is left."),
                text);
        assertTrue(
                text.contains("to be cut on the readings so far, though something was missing. Tail end is behind the "
                        + "centre."),
                text);
    }

    /**
     * Sizes of bore 13 by hand: mean at 8 before the cut 29.8560, after it 30.0107; of bore 10 1.36884 and 1.37540,
     * half of the difference counted.
     */
    @Test
    void everyPassTellsWhatItsCutTookOffAndWhoCutWithSomethingMissing() throws IOException {
        String carrier = line(DemoPart.SCREW_CARRIER, "fail");
        assertTrue(
                carrier.contains(
                        "Round 1. Result 29.856: Cut again. To be cut with something missing. Not read: at 38, 0°, "
                                + "at 38, 90°. "
                                + "Chips stand deep down, and 0.15 is left. (Setter 2,"),
                carrier);
        assertTrue(carrier.contains("Result 29.985: Cut again. Cut 1: asked 0.154, came off 0.155."), carrier);
        assertTrue(carrier.contains("Result 30.024: Fail. Cut 2: came off 0.022."), carrier);
        assertTrue(
                line(DemoPart.WINCH_BARREL_END, "pass").contains("Cut 1: asked 0.0032, came off 0.0033. On radius."));
    }

    /** 40.560 less 4.569 is 35.991; a millionth is not broken over two lines. */
    @Test
    void aReadingAndWhatIsPrintedBesideItAddUpToTheSize() throws IOException {
        assertTrue(line(DemoPart.SCREW_CARRIER, "fail").contains("less 4.569"));
        assertTrue(line(DemoPart.WINCH_BARREL_END, "fail").split("−0\\.000001", -1).length > 2);
    }

    @Test
    void oneReadingShortItStillSaysHowManyHaveToBeInside() throws IOException {
        String carrier = line(DemoPart.SCREW_CARRIER, "fail");
        assertTrue(
                carrier.contains("All 4 must be inside; the worst decides. 0.01 mm difference going round."), carrier);
    }

    /**
     * 0.7524 and 0.7526 at the step, 0.7523 deep: two ways at one depth, and what lies between two depths is no out of
     * round.
     */
    @Test
    void whatTwoWaysDifferByIsReadAtOneDepth() throws IOException {
        String barrel = line(DemoPart.WINCH_BARREL_END, "fail");
        assertTrue(
                barrel.contains("All 3 must be inside; the worst decides. 0.0002 in difference between the two ways."),
                barrel);
    }

    /** As whoever searches the record has it, who knows nothing of joined letters. */
    @Test
    void everyLetterIsASignOfItsOwn() throws IOException {
        StringBuilder signs = new StringBuilder();
        PDFTextStripper each = new PDFTextStripper() {
            @Override
            protected void processTextPosition(TextPosition sign) {
                signs.append(sign.getUnicode());
            }
        };
        DemoPart carrier = DemoPart.SCREW_CARRIER;
        try (PDDocument document = Loader.loadPDF(pdf(Records.whole(carrier, Records.failing(carrier))))) {
            each.getText(document);
        }
        assertTrue(signs.indexOf("Torn flank stops the thread ring") >= 0, signs::toString);
    }

    private static String line(DemoPart part, String which) throws IOException {
        return text(Records.whole(part, which.equals("pass") ? Records.passing(part) : Records.failing(part)))
                .replaceAll("\\s+", " ");
    }

    private static String text(Evidence evidence) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf(evidence))) {
            return new PDFTextStripper().getText(document);
        }
    }

    private static byte[] pdf(Evidence evidence) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        new PdfRecord(new RecordLayout(Words.ENGLISH, Paper.A4, Records.DATA)).write(evidence, out);
        return out.toByteArray();
    }
}
