package org.tenthwise.app.command;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tenthwise.app.certificate.Issued;
import org.tenthwise.app.export.Records;
import org.tenthwise.app.export.pdf.Paper;
import org.tenthwise.app.export.pdf.PdfRecord;
import org.tenthwise.app.export.pdf.RecordLayout;
import org.tenthwise.checklists.catalogue.DemoPart;
import org.tenthwise.model.words.Words;

class SignPdfTest {

    @TempDir
    private Path folder;

    private Path record;
    private Path certificate;
    private Path passphrase;
    private Path signed;

    @BeforeEach
    void print() throws Exception {
        record = folder.resolve("record.pdf");
        try (OutputStream out = Files.newOutputStream(record)) {
            new PdfRecord(new RecordLayout(Words.ENGLISH, Paper.A4, Records.DATA))
                    .write(Records.whole(DemoPart.SCREW_CARRIER, Records.passing(DemoPart.SCREW_CARRIER)), out);
        }
        certificate = Issued.atAnyTime(folder);
        passphrase = Files.writeString(folder.resolve("passphrase"), Issued.passphrase() + "\n");
        signed = folder.resolve("signed.pdf");
    }

    private Typed sign() {
        return Typed.line("sign", record, "--with", certificate, "--passphrase", passphrase, "--out", signed);
    }

    @Test
    void aRecordIsSignedBesideTheOneThereWasAndVerified() throws Exception {
        byte[] before = Files.readAllBytes(record);
        Typed done = sign();
        assertEquals(0, done.exit(), () -> String.join("\n", done.err()));
        assertTrue(
                done.out().get(0).contains("signed by CN=Inspector 1"),
                done.out().get(0));
        assertArrayEquals(before, Files.readAllBytes(record));
        Typed verified = Typed.line("verify", signed);
        assertEquals(2, verified.exit(), "its pages were made by another release");
        assertTrue(verified.out().get(0).contains("signed by CN=Inspector 1, certificate issued by CN=Invented shop"));
        assertTrue(verified.out().get(1).contains("entries"), verified.out().get(1));
    }

    @Test
    void aRecordWithoutASignatureSaysSo() {
        assertTrue(Typed.line("verify", record).out().get(0).endsWith("not signed with a certificate."));
    }

    @Test
    void aByteChangedAfterSigningIsSaid() throws Exception {
        sign();
        byte[] bytes = Files.readAllBytes(signed);
        bytes[bytes.length - 8] ^= 1;
        Files.write(signed, bytes);
        Typed verified = Typed.line("verify", signed);
        assertFalse(verified.exit() == 0);
    }

    @Test
    void nothingIsWrittenOverAndAWrongPassphraseIsSaid() throws Exception {
        sign();
        Typed again = sign();
        assertEquals(2, again.exit());
        assertTrue(
                again.err().get(0).startsWith("There is already a file"),
                again.err().get(0));
        Files.writeString(passphrase, "another");
        signed = folder.resolve("second.pdf");
        Typed wrong = sign();
        assertEquals(2, wrong.exit());
        assertTrue(
                wrong.err().get(0).startsWith("The passphrase does not open"),
                wrong.err().get(0));
        assertFalse(Files.exists(signed));
    }
}
