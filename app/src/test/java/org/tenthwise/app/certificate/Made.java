package org.tenthwise.app.certificate;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.math.BigInteger;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.GeneralSecurityException;
import java.security.KeyPair;
import java.security.KeyPairGenerator;
import java.security.KeyStore;
import java.security.cert.Certificate;
import java.security.cert.CertificateFactory;
import java.security.spec.ECGenParameterSpec;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.Date;
import org.bouncycastle.asn1.x500.X500Name;
import org.bouncycastle.asn1.x509.Extension;
import org.bouncycastle.asn1.x509.KeyUsage;
import org.bouncycastle.cert.X509v3CertificateBuilder;
import org.bouncycastle.cert.jcajce.JcaX509v3CertificateBuilder;
import org.bouncycastle.operator.OperatorCreationException;
import org.bouncycastle.operator.jcajce.JcaContentSignerBuilder;

/** PKCS#12 files with a certificate as a shop's own authority would issue them. */
final class Made {

    static final Instant NOW = Instant.parse("2026-03-02T09:00:00Z");
    static final char[] PASSPHRASE = "sluice gate".toCharArray();

    private static final X500Name SHOP = new X500Name("CN=Invented shop authority");
    private static final KeyPair OF_THE_SHOP = pair("EC", "secp256r1");

    private Made() {}

    static KeyPair pair(String kind, String size) {
        try {
            KeyPairGenerator generator = KeyPairGenerator.getInstance(kind);
            if (kind.equals("RSA")) {
                generator.initialize(Integer.parseInt(size));
            } else if (kind.equals("EC")) {
                generator.initialize(new ECGenParameterSpec(size));
            }
            return generator.generateKeyPair();
        } catch (GeneralSecurityException e) {
            throw new IllegalStateException(e);
        }
    }

    /** For a year from a day before {@link #NOW}. */
    static Path file(Path folder, KeyPair pair, int usage) throws GeneralSecurityException, IOException {
        return file(folder, pair, usage, NOW.minus(1, ChronoUnit.DAYS), NOW.plus(365, ChronoUnit.DAYS));
    }

    static Path file(Path folder, KeyPair pair, int usage, Instant from, Instant to)
            throws GeneralSecurityException, IOException {
        KeyStore keys = KeyStore.getInstance("PKCS12");
        keys.load(null, PASSPHRASE);
        keys.setKeyEntry("inspector", pair.getPrivate(), PASSPHRASE, new Certificate[] {
            certificate(new X500Name("CN=Inspector 1"), pair, usage, from, to),
            certificate(SHOP, OF_THE_SHOP, KeyUsage.keyCertSign, from, to)
        });
        Path file = Files.createTempFile(folder, "inspector", ".p12");
        try (OutputStream out = Files.newOutputStream(file)) {
            keys.store(out, PASSPHRASE);
        }
        return file;
    }

    private static Certificate certificate(X500Name of, KeyPair pair, int usage, Instant from, Instant to)
            throws GeneralSecurityException, IOException {
        X509v3CertificateBuilder made = new JcaX509v3CertificateBuilder(
                SHOP, BigInteger.valueOf(7), Date.from(from), Date.from(to), of, pair.getPublic());
        made.addExtension(Extension.keyUsage, true, new KeyUsage(usage));
        try {
            byte[] bytes = made.build(new JcaContentSignerBuilder("SHA256withECDSA").build(OF_THE_SHOP.getPrivate()))
                    .getEncoded();
            return CertificateFactory.getInstance("X.509").generateCertificate(new ByteArrayInputStream(bytes));
        } catch (OperatorCreationException e) {
            throw new GeneralSecurityException(e);
        }
    }
}
