package org.tenthwise.app.certificate;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.security.GeneralSecurityException;
import java.security.MessageDigest;
import java.security.cert.CertificateException;
import java.security.cert.CertificateFactory;
import java.security.cert.X509Certificate;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Calendar;
import java.util.Comparator;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.interactive.digitalsignature.PDSignature;
import org.bouncycastle.asn1.ASN1InputStream;
import org.bouncycastle.asn1.cms.Attribute;
import org.bouncycastle.asn1.cms.ContentInfo;
import org.bouncycastle.asn1.ess.ESSCertIDv2;
import org.bouncycastle.asn1.ess.SigningCertificateV2;
import org.bouncycastle.asn1.pkcs.PKCSObjectIdentifiers;
import org.bouncycastle.cert.X509CertificateHolder;
import org.bouncycastle.cms.CMSException;
import org.bouncycastle.cms.CMSProcessableByteArray;
import org.bouncycastle.cms.CMSSignedData;
import org.bouncycastle.cms.SignerInformation;
import org.bouncycastle.cms.jcajce.JcaSimpleSignerInfoVerifierBuilder;
import org.bouncycastle.operator.OperatorCreationException;
import org.tenthwise.app.key.Sha256;
import org.tenthwise.model.words.Message;

/**
 * The signatures in a PDF, looked at offline. A good one proves that the bytes it covers are those that were signed
 * with the key of its certificate. Whether that certificate is to be relied on, whether it was withdrawn, and when it
 * was signed, is not looked up.
 */
public final class PdfSignatures {

    private static final int PARTS = 4;

    private final List<PdfSignature> found;
    private final int first;

    private PdfSignatures(List<PdfSignature> found, int first) {
        this.found = List.copyOf(found);
        this.first = first;
    }

    /** In the order they were made. */
    public List<PdfSignature> found() {
        return found;
    }

    /**
     * How many bytes of the file lie before the first byte that the first signature brought with it; all without one.
     */
    public int bytesBefore() {
        return first;
    }

    /** @throws IOException if the bytes are no PDF */
    public static PdfSignatures in(byte[] pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            List<PDSignature> inOrder = new ArrayList<>(document.getSignatureDictionaries());
            inOrder.sort(Comparator.comparingInt(PdfSignatures::end));
            List<PdfSignature> found = new ArrayList<>();
            for (PDSignature signature : inOrder) {
                boolean isLast = signature == inOrder.get(inOrder.size() - 1);
                found.add(looked(signature, pdf, isLast));
            }
            int before = inOrder.isEmpty() ? pdf.length : endOfFileBefore(pdf, inOrder.get(0));
            return new PdfSignatures(found, before);
        }
    }

    private static int end(PDSignature signature) {
        int[] range = range(signature);
        return range.length == PARTS ? range[2] + range[3] : 0;
    }

    private static int[] range(PDSignature signature) {
        return Optional.ofNullable(signature.getByteRange()).orElse(new int[0]);
    }

    /** What was signed ended as every PDF does; its signature was added behind. */
    private static int endOfFileBefore(byte[] pdf, PDSignature signature) {
        int[] range = range(signature);
        byte[] mark = {'%', '%', 'E', 'O', 'F'};
        for (int at = Math.min(range.length == PARTS ? range[1] : 0, pdf.length) - mark.length; at >= 0; at--) {
            if (Arrays.equals(pdf, at, at + mark.length, mark, 0, mark.length)) {
                int end = at + mark.length;
                return end < pdf.length && pdf[end] == '\n' ? end + 1 : end;
            }
        }
        return 0;
    }

    private static PdfSignature looked(PDSignature signature, byte[] pdf, boolean isLast) {
        Optional<Instant> claimed = Optional.ofNullable(signature.getSignDate()).map(Calendar::toInstant);
        try {
            if (!coversAllButItself(signature, pdf, isLast)) {
                return unread(claimed, Message.of("signature.not-all"));
            }
            ByteArrayInputStream held = new ByteArrayInputStream(signature.getContents(pdf));
            CMSSignedData signed =
                    new CMSSignedData(new CMSProcessableByteArray(signature.getSignedContent(pdf)), whole(held));
            if (!isFilledUpWithNothing(held)) {
                return unread(claimed, Message.of("signature.not-all"));
            }
            if (signed.getSignerInfos().size() != 1) {
                return unread(claimed, Message.of("signature.unread"));
            }
            SignerInformation signer =
                    signed.getSignerInfos().getSigners().iterator().next();
            Optional<X509CertificateHolder> certificate = certificate(signed, signer);
            if (certificate.isEmpty()) {
                return unread(claimed, Message.of("signature.unread"));
            }
            X509Certificate read = read(certificate.get());
            return new PdfSignature(
                    read.getSubjectX500Principal().getName(),
                    read.getIssuerX500Principal().getName(),
                    Sha256.of(read.getEncoded()),
                    claimed,
                    fault(signer, certificate.get()));
        } catch (IOException | CMSException | GeneralSecurityException | RuntimeException e) {
            return unread(claimed, Message.of("signature.unread"));
        }
    }

    private static Optional<Message> fault(SignerInformation signer, X509CertificateHolder certificate)
            throws GeneralSecurityException, IOException {
        if (!namesItsCertificate(signer, certificate)) {
            return Optional.of(Message.of("signature.certificate-not-named"));
        }
        try {
            return signer.verify(new JcaSimpleSignerInfoVerifierBuilder().build(certificate))
                    ? Optional.empty()
                    : Optional.of(Message.of("signature.changed"));
        } catch (CMSException | OperatorCreationException e) {
            return Optional.of(Message.of("signature.changed"));
        } catch (CertificateException e) {
            return Optional.of(Message.of("signature.unread"));
        }
    }

    /**
     * From the first byte to the last, without a gap but the signature's own hexadecimal digits: in a wider gap
     * anything could stand.
     */
    private static boolean coversAllButItself(PDSignature signature, byte[] pdf, boolean isLast) {
        int[] range = range(signature);
        if (range.length != PARTS || range[0] != 0 || range[1] < 1 || range[2] <= range[1] || range[3] < 0) {
            return false;
        }
        long end = (long) range[2] + range[3];
        if (end > pdf.length || isLast && end != pdf.length) {
            return false;
        }
        if (pdf[range[1]] != '<' || pdf[range[2] - 1] != '>') {
            return false;
        }
        for (int at = range[1] + 1; at < range[2] - 1; at++) {
            if (!HexFormat.isHexDigit(pdf[at])) {
                return false;
            }
        }
        return true;
    }

    private static ContentInfo whole(ByteArrayInputStream held) throws IOException {
        return ContentInfo.getInstance(new ASN1InputStream(held).readObject());
    }

    /** The room left for a signature is zeros: it is covered by nothing. */
    private static boolean isFilledUpWithNothing(ByteArrayInputStream left) {
        for (byte one : left.readAllBytes()) {
            if (one != 0) {
                return false;
            }
        }
        return true;
    }

    private static Optional<X509CertificateHolder> certificate(CMSSignedData signed, SignerInformation signer) {
        return signed.getCertificates().getMatches(null).stream()
                .filter(signer.getSID()::match)
                .findFirst();
    }

    private static boolean namesItsCertificate(SignerInformation signer, X509CertificateHolder certificate)
            throws GeneralSecurityException, IOException {
        Attribute named = Optional.ofNullable(signer.getSignedAttributes())
                .map(attributes -> attributes.get(PKCSObjectIdentifiers.id_aa_signingCertificateV2))
                .orElse(null);
        if (named == null || named.getAttrValues().size() != 1) {
            return false;
        }
        ESSCertIDv2[] ids = SigningCertificateV2.getInstance(
                        named.getAttrValues().getObjectAt(0))
                .getCerts();
        return ids.length > 0
                && MessageDigest.isEqual(
                        ids[0].getCertHash(),
                        MessageDigest.getInstance(
                                        ids[0].getHashAlgorithm().getAlgorithm().getId())
                                .digest(certificate.getEncoded()));
    }

    private static X509Certificate read(X509CertificateHolder holder) throws GeneralSecurityException, IOException {
        return (X509Certificate) CertificateFactory.getInstance("X.509")
                .generateCertificate(new ByteArrayInputStream(holder.getEncoded()));
    }

    private static PdfSignature unread(Optional<Instant> claimed, Message why) {
        return new PdfSignature("", "", "", claimed, Optional.of(why));
    }
}
