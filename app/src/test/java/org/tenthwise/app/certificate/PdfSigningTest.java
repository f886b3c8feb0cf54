package org.tenthwise.app.certificate;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.interactive.digitalsignature.PDSignature;
import org.bouncycastle.asn1.cms.CMSAttributes;
import org.bouncycastle.asn1.pkcs.PKCSObjectIdentifiers;
import org.bouncycastle.asn1.x509.KeyUsage;
import org.bouncycastle.cms.CMSSignedData;
import org.bouncycastle.cms.SignerInformation;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tenthwise.app.export.Records;
import org.tenthwise.app.export.pdf.Archived;
import org.tenthwise.app.export.pdf.Paper;
import org.tenthwise.app.export.pdf.PdfRecord;
import org.tenthwise.app.export.pdf.RecordLayout;
import org.tenthwise.checklists.catalogue.DemoPart;
import org.tenthwise.model.words.Words;

/** What PAdES B-B asks: ETSI EN 319 142-1 V1.1.1 (2016-04), table 1, column B-B. */
class PdfSigningTest {

    private static final OffsetDateTime AT = Made.NOW.atOffset(ZoneOffset.ofHours(1));

    @TempDir
    static Path folder;

    private static byte[] record;
    private static Signer inspector;
    private static byte[] signed;

    @BeforeAll
    static void signOnce() throws Exception {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        new PdfRecord(new RecordLayout(Words.ENGLISH, Paper.A4, Records.DATA))
                .write(Records.whole(DemoPart.SCREW_CARRIER, Records.passing(DemoPart.SCREW_CARRIER)), out);
        record = out.toByteArray();
        inspector = signer("EC", "secp256r1");
        signed = new PdfSigning(inspector).sign(record, AT);
    }

    private static Signer signer(String kind, String size) throws Exception {
        Path file = Made.file(folder, Made.pair(kind, size), KeyUsage.nonRepudiation);
        return Signer.open(file, Made.PASSPHRASE.clone(), Made.NOW);
    }

    @ParameterizedTest
    @CsvSource({"RSA, 2048", "EC, secp384r1", "EC, secp521r1"})
    void aSignedRecordIsAnArchivalOneStillAndItsSignatureIsGood(String kind, String size) throws Exception {
        byte[] pdf = new PdfSigning(signer(kind, size)).sign(record, AT);
        Archived.check(pdf);
        PdfSignature found = only(pdf);
        assertEquals(Optional.empty(), found.fault());
        assertEquals("CN=Inspector 1", found.name());
        assertEquals("CN=Invented shop authority", found.issuer());
        assertEquals(Optional.of(Made.NOW), found.claimed());
    }

    @Test
    void whatWasSignedIsThereByteForByteBeforeTheSignature() throws IOException {
        assertEquals(record.length, PdfSignatures.in(signed).bytesBefore());
        assertArrayEquals(record, Arrays.copyOf(signed, record.length));
        assertEquals(record.length, PdfSignatures.in(record).bytesBefore());
        assertEquals(List.of(), PdfSignatures.in(record).found());
    }

    @Test
    void theSignatureHasTheAttributesOfTheBaselineAndNoTimeOfItsOwn() throws Exception {
        try (PDDocument document = Loader.loadPDF(signed)) {
            PDSignature signature = document.getSignatureDictionaries().get(0);
            assertEquals("ETSI.CAdES.detached", signature.getSubFilter());
            assertEquals("Adobe.PPKLite", signature.getFilter());
            assertEquals(Made.NOW, signature.getSignDate().toInstant());
            CMSSignedData held = new CMSSignedData(new ByteArrayInputStream(signature.getContents(signed)));
            assertTrue(held.isDetachedSignature());
            assertEquals(2, held.getCertificates().getMatches(null).size());
            SignerInformation signer =
                    held.getSignerInfos().getSigners().iterator().next();
            assertTrue(signer.getSignedAttributes().get(PKCSObjectIdentifiers.id_aa_signingCertificateV2) != null);
            assertTrue(signer.getSignedAttributes().get(CMSAttributes.contentType) != null);
            assertTrue(signer.getSignedAttributes().get(CMSAttributes.messageDigest) != null);
            assertFalse(signer.getSignedAttributes().get(CMSAttributes.signingTime) != null);
        }
    }

    @Test
    void aSecondSignatureLeavesTheFirstGood() throws IOException {
        byte[] twice = new PdfSigning(inspector).sign(signed, AT.plusHours(1));
        PdfSignatures found = PdfSignatures.in(twice);
        assertEquals(2, found.found().size());
        assertTrue(found.found().stream().allMatch(PdfSignature::isGood));
        assertEquals(record.length, found.bytesBefore());
    }

    /**
     * By chance, half of the changes behind the record. What a signature does not cover is itself alone: there the case
     * of a digit, or an authority's certificate that it brings along, changes nothing of what is proven.
     */
    @Test
    void aByteThatIsChangedIsFoundUnlessItChangesNothingOfWhatIsProven() throws IOException {
        int[] covered = covered();
        PdfSignature proven = only(signed);
        Random random = new Random(319_142);
        for (int i = 0; i < 400; i++) {
            byte[] changed = signed.clone();
            int at = i % 2 == 0
                    ? random.nextInt(changed.length)
                    : record.length + random.nextInt(signed.length - record.length);
            changed[at] ^= (byte) (1 << random.nextInt(8));
            if (isGood(changed)) {
                assertTrue(at >= covered[1] && at < covered[2], "byte " + at);
                assertEquals(proven, only(changed));
            }
        }
    }

    private static int[] covered() throws IOException {
        try (PDDocument document = Loader.loadPDF(signed)) {
            return document.getSignatureDictionaries().get(0).getByteRange();
        }
    }

    private static boolean isGood(byte[] pdf) {
        try {
            List<PdfSignature> found = PdfSignatures.in(pdf).found();
            return found.size() == 1 && found.get(0).isGood();
        } catch (IOException | RuntimeException e) {
            return false;
        }
    }

    @Test
    void whatIsAddedBehindASignatureIsFound() throws IOException {
        byte[] more = Arrays.copyOf(signed, signed.length + 20);
        Arrays.fill(more, signed.length, more.length, (byte) ' ');
        assertFalse(isGood(more));
        try (PDDocument document = Loader.loadPDF(signed)) {
            document.getDocumentInformation().setTitle("Another title");
            document.getDocumentInformation().getCOSObject().setNeedToBeUpdated(true);
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            document.saveIncremental(out);
            assertTrue(new String(out.toByteArray(), StandardCharsets.ISO_8859_1).contains("Another title"));
            assertFalse(isGood(out.toByteArray()));
        }
    }

    /** A gap in what is covered could hold anything. */
    @Test
    void aSignatureThatLeavesMoreOutThanItselfIsFound() throws IOException {
        String text = new String(signed, StandardCharsets.ISO_8859_1);
        int at = text.lastIndexOf("/ByteRange [0 ") + "/ByteRange [0 ".length();
        byte[] wider = signed.clone();
        wider[at] = (byte) (wider[at] - 1);
        assertFalse(isGood(wider));
    }

    @Test
    void whatIsNoPdfIsNotSigned() {
        assertThrows(IOException.class, () -> new PdfSigning(inspector).sign(new byte[] {1, 2, 3}, AT));
    }

    private static PdfSignature only(byte[] pdf) throws IOException {
        List<PdfSignature> found = PdfSignatures.in(pdf).found();
        assertEquals(1, found.size());
        return found.get(0);
    }
}
