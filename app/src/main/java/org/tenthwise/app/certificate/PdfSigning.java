package org.tenthwise.app.certificate;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.security.GeneralSecurityException;
import java.security.cert.X509Certificate;
import java.time.OffsetDateTime;
import java.util.GregorianCalendar;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.interactive.digitalsignature.PDSignature;
import org.apache.pdfbox.pdmodel.interactive.digitalsignature.SignatureOptions;
import org.bouncycastle.asn1.ASN1EncodableVector;
import org.bouncycastle.asn1.DERSet;
import org.bouncycastle.asn1.cms.Attribute;
import org.bouncycastle.asn1.cms.AttributeTable;
import org.bouncycastle.asn1.cms.CMSAttributes;
import org.bouncycastle.asn1.ess.ESSCertIDv2;
import org.bouncycastle.asn1.ess.SigningCertificateV2;
import org.bouncycastle.asn1.pkcs.PKCSObjectIdentifiers;
import org.bouncycastle.cert.jcajce.JcaCertStore;
import org.bouncycastle.cms.CMSException;
import org.bouncycastle.cms.CMSProcessableByteArray;
import org.bouncycastle.cms.CMSSignedDataGenerator;
import org.bouncycastle.cms.DefaultSignedAttributeTableGenerator;
import org.bouncycastle.cms.jcajce.JcaSignerInfoGeneratorBuilder;
import org.bouncycastle.operator.OperatorCreationException;
import org.bouncycastle.operator.jcajce.JcaContentSignerBuilder;
import org.bouncycastle.operator.jcajce.JcaDigestCalculatorProviderBuilder;
import org.tenthwise.app.key.Sha256;

/**
 * Signs a PDF as PAdES baseline B-B asks (ETSI EN 319 142-1 V1.1.1, 2016, clauses 5.3 and 6): a detached CMS signature
 * (RFC 5652) with the certificate it was made with named in it (RFC 5035), the time it is claimed for in the dictionary
 * and not in the signature. What was there before stays byte for byte; the signature is added behind it, on no page.
 */
public final class PdfSigning {

    private static final COSName DETACHED = COSName.getPDFName("ETSI.CAdES.detached");

    /** For what a signature holds besides its certificates; twice what has been seen. */
    private static final int ROOM = 8_192;

    private final Signer signer;

    public PdfSigning(Signer signer) {
        this.signer = signer;
    }

    /**
     * @param at what is claimed as the time of signing; nothing proves it
     * @return the file with its signature
     * @throws IOException if the file is no PDF
     */
    public byte[] sign(byte[] pdf, OffsetDateTime at) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            ByteArrayOutputStream signed = new ByteArrayOutputStream();
            sign(document, at, signed);
            return signed.toByteArray();
        }
    }

    /** Writes what a document was read from, and behind it what was changed in it since, with a signature. */
    public void sign(PDDocument document, OffsetDateTime at, OutputStream to) throws IOException {
        try (SignatureOptions options = new SignatureOptions()) {
            PDSignature signature = new PDSignature();
            signature.setFilter(PDSignature.FILTER_ADOBE_PPKLITE);
            signature.setSubFilter(DETACHED);
            signature.setSignDate(GregorianCalendar.from(at.toZonedDateTime()));
            options.setPreferredSignatureSize(room());
            document.addSignature(signature, this::signatureOf, options);
            document.saveIncremental(to);
        }
    }

    private int room() throws IOException {
        try {
            int room = ROOM;
            for (X509Certificate certificate : signer.chain()) {
                room += certificate.getEncoded().length;
            }
            return room;
        } catch (GeneralSecurityException e) {
            throw new IOException(e);
        }
    }

    private byte[] signatureOf(InputStream content) throws IOException {
        try {
            CMSSignedDataGenerator made = new CMSSignedDataGenerator();
            DefaultSignedAttributeTableGenerator usual = new DefaultSignedAttributeTableGenerator(certificateNamed());
            made.addSignerInfoGenerator(new JcaSignerInfoGeneratorBuilder(
                            new JcaDigestCalculatorProviderBuilder().build())
                    .setSignedAttributeGenerator(
                            parameters -> usual.getAttributes(parameters).remove(CMSAttributes.signingTime))
                    .build(
                            new JcaContentSignerBuilder(signer.algorithm().orElseThrow()).build(signer.key()),
                            signer.own()));
            made.addCertificates(new JcaCertStore(signer.chain()));
            return made.generate(new CMSProcessableByteArray(content.readAllBytes()), false)
                    .getEncoded();
        } catch (GeneralSecurityException | OperatorCreationException | CMSException e) {
            throw new IOException(e);
        }
    }

    /** SHA-256 over the certificate, which is what RFC 5035 takes where nothing else is said. */
    private AttributeTable certificateNamed() throws GeneralSecurityException {
        byte[] hash = Sha256.bytes(signer.own().getEncoded());
        ASN1EncodableVector named = new ASN1EncodableVector();
        named.add(new Attribute(
                PKCSObjectIdentifiers.id_aa_signingCertificateV2,
                new DERSet(new SigningCertificateV2(new ESSCertIDv2[] {new ESSCertIDv2(hash)}))));
        return new AttributeTable(named);
    }
}
