package org.tenthwise.app.command;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.tenthwise.app.bundle.Making;
import org.tenthwise.app.certificate.PdfSignature;
import org.tenthwise.app.certificate.PdfSignatures;
import org.tenthwise.app.export.Evidence;
import org.tenthwise.app.export.RecordFormat;
import org.tenthwise.app.export.pdf.OnlySigned;
import org.tenthwise.app.export.pdf.PdfContent;
import org.tenthwise.app.export.pdf.PdfParticulars;
import org.tenthwise.app.store.StoredEntry;
import org.tenthwise.model.words.Words;

/** What there is to say about a printed record beside what lies inside it: its signatures and its pages. */
final class PdfLines {

    private final Path path;
    private final Making making;
    private final Words words;
    private final PrintWriter to;

    PdfLines(Path path, Making making, Words words, PrintWriter to) {
        this.path = path;
        this.making = making;
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

    /**
     * Sets the pages, and all else that was there before anybody signed, beside what the entries inside come to; behind
     * that nothing but signatures may stand.
     *
     * @param inside the entries of the record inside, found to be whole
     * @return whether they are the same, or cannot be compared: the same release, language and paper make the same
     *     record
     * @throws IOException if the bytes are no PDF
     */
    int sayPages(byte[] pdf, List<StoredEntry> inside) throws IOException {
        byte[] before = Arrays.copyOf(pdf, PdfSignatures.in(pdf).bytesBefore());
        PdfParticulars said = PdfParticulars.of(before);
        Optional<byte[]> due = due(said, inside);
        if (due.isEmpty() || !PdfParticulars.of(due.get()).equals(said)) {
            to.println(words.say("command.verify.pdf.pages-not-compared", path, said.tool(), said.language()));
            return Exit.COULD_NOT;
        }
        boolean isSame = (Arrays.equals(before, due.get()) || PdfContent.isSame(before, due.get()))
                && (before.length == pdf.length || OnlySigned.isAllThatIsNew(before, pdf));
        to.println(words.say(isSame ? "command.verify.pdf.pages" : "command.verify.pdf.other-pages", path));
        return isSame ? Exit.WELL : Exit.NOT_WELL;
    }

    private Optional<byte[]> due(PdfParticulars said, List<StoredEntry> inside) throws IOException {
        Optional<RecordFormat> printed = making.whole(said.language()).stream()
                .filter(format -> format.extension().equals("pdf"))
                .findFirst();
        Optional<Evidence> evidence = Evidence.ofStored(inside, making.version());
        if (!said.tool().equals(making.tool()) || printed.isEmpty() || evidence.isEmpty()) {
            return Optional.empty();
        }
        ByteArrayOutputStream made = new ByteArrayOutputStream();
        printed.get().write(evidence.get(), made);
        return Optional.of(made.toByteArray());
    }
}
