package org.tenthwise.app.certificate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.temporal.ChronoUnit;
import java.util.Optional;
import org.bouncycastle.asn1.x509.KeyUsage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tenthwise.model.words.Words;

class SignerTest {

    private static final int TO_SIGN = KeyUsage.digitalSignature;

    @TempDir
    Path folder;

    @ParameterizedTest
    @CsvSource({
        "RSA, 2048,      SHA256withRSA",
        "EC,  secp256r1, SHA256withECDSA",
        "EC,  secp384r1, SHA384withECDSA",
        "EC,  secp521r1, SHA512withECDSA"
    })
    void aKeySignsByWhatItsLengthAsksFor(String kind, String size, String algorithm) throws Exception {
        Signer signer =
                Signer.open(Made.file(folder, Made.pair(kind, size), TO_SIGN), Made.PASSPHRASE.clone(), Made.NOW);
        assertEquals(Optional.of(algorithm), signer.algorithm());
        assertEquals("CN=Inspector 1", signer.name());
        assertEquals(2, signer.chain().size());
    }

    @ParameterizedTest
    @CsvSource({"RSA, 1024", "Ed25519, ''"})
    void aKeyThatReadersDoNotTakeIsRefused(String kind, String size) throws Exception {
        refused(Made.file(folder, Made.pair(kind, size), TO_SIGN), "RSA of 2048 bits or more");
    }

    @Test
    void aCertificateThatIsOverOrNotYetInForceIsRefusedWithItsTime() throws Exception {
        refused(
                Made.file(
                        folder,
                        Made.pair("EC", "secp256r1"),
                        TO_SIGN,
                        Made.NOW.minus(2, ChronoUnit.DAYS),
                        Made.NOW.minus(1, ChronoUnit.DAYS)),
                "ended at 2026-03-01T09:00:00Z");
        refused(
                Made.file(
                        folder,
                        Made.pair("EC", "secp256r1"),
                        TO_SIGN,
                        Made.NOW.plus(1, ChronoUnit.DAYS),
                        Made.NOW.plus(2, ChronoUnit.DAYS)),
                "counts from 2026-03-03T09:00:00Z on");
    }

    @Test
    void aCertificateForSomethingElseIsRefused() throws Exception {
        refused(Made.file(folder, Made.pair("EC", "secp256r1"), KeyUsage.keyAgreement), "not issued to sign documents");
    }

    @Test
    void aWrongPassphraseIsToldFromAFileThatIsNone() throws Exception {
        Path file = Made.file(folder, Made.pair("EC", "secp256r1"), TO_SIGN);
        NoCertificate wrong =
                assertThrows(NoCertificate.class, () -> Signer.open(file, "sluice".toCharArray(), Made.NOW));
        assertTrue(Words.ENGLISH.say(wrong.why()).startsWith("The passphrase does not open"), wrong.getMessage());
        refused(Files.writeString(folder.resolve("notes.p12"), "no keys"), "is no PKCS#12 file");
        refused(folder.resolve("not there.p12"), "is no PKCS#12 file");
        refused(folder, "is no PKCS#12 file");
    }

    private static void refused(Path file, String says) {
        NoCertificate why =
                assertThrows(NoCertificate.class, () -> Signer.open(file, Made.PASSPHRASE.clone(), Made.NOW));
        assertTrue(Words.ENGLISH.say(why.why()).contains(says), why.getMessage());
    }
}
