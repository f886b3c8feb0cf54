package org.tenthwise.app.certificate;

import java.time.Instant;
import java.util.Optional;
import org.tenthwise.model.words.Message;

/**
 * A signature found in a PDF.
 *
 * @param name whom its certificate names
 * @param issuer who issued the certificate
 * @param fingerprint SHA-256 over the certificate, 64 small hex digits
 * @param claimed when it says it was made; nothing proves it
 * @param fault why it proves nothing; absent where what it covers is as it was signed
 */
public record PdfSignature(
        String name, String issuer, String fingerprint, Optional<Instant> claimed, Optional<Message> fault) {

    /** Whether what it covers is as it was signed; whose certificate it is, it does not prove. */
    public boolean isGood() {
        return fault.isEmpty();
    }
}
