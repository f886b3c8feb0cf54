package org.tenthwise.app.command;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.Instant;
import org.tenthwise.app.certificate.PdfSignature;
import org.tenthwise.app.certificate.PdfSignatures;
import org.tenthwise.model.words.Words;

/** What there is to say about the signatures in a PDF. */
final class PdfLines {

    private final Path path;
    private final Words words;
    private final PrintWriter to;

    PdfLines(Path path, Words words, PrintWriter to) {
        this.path = path;
        this.words = words;
        this.to = to;
    }

    /**
     * @return whether all there are prove what they cover; so where there are none
     * @throws IOException if the bytes are no PDF
     */
    boolean saySignatures(byte[] pdf) throws IOException {
        PdfSignatures signatures = PdfSignatures.in(pdf);
        signatures.found().forEach(signature -> to.println(said(signature)));
        if (signatures.found().isEmpty()) {
            to.println(words.say("command.verify.pdf.no-signature", path));
        }
        return signatures.found().stream().allMatch(PdfSignature::isGood);
    }

    private String said(PdfSignature signature) {
        return signature
                .fault()
                .map(why -> words.say("command.verify.pdf.bad-signature", path, why))
                .orElseGet(() -> words.say(
                        "command.verify.pdf.signed",
                        path,
                        signature.name(),
                        signature.issuer(),
                        signature.fingerprint(),
                        signature
                                .claimed()
                                .map(Instant::toString)
                                .orElseGet(() -> words.say("command.verify.pdf.time-not-said"))));
    }
}
