package org.tenthwise.app.certificate;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.GeneralSecurityException;
import java.security.Key;
import java.security.KeyStore;
import java.security.PrivateKey;
import java.security.UnrecoverableKeyException;
import java.security.cert.Certificate;
import java.security.cert.CertificateExpiredException;
import java.security.cert.CertificateNotYetValidException;
import java.security.cert.X509Certificate;
import java.security.interfaces.ECKey;
import java.security.interfaces.RSAKey;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Date;
import java.util.List;
import java.util.Optional;
import org.tenthwise.model.words.Message;

/**
 * Who signs: a private key with its certificate and those that vouch for it, out of a PKCS#12 file (RFC 7292).
 *
 * @param chain the certificate of the key first
 */
public record Signer(PrivateKey key, List<X509Certificate> chain) {

    /** A hundred times a key with its certificates. */
    private static final long MOST = 1L << 20;

    /** NIST SP 800-131A: what is shorter is no longer signed with. */
    private static final int LEAST_RSA = 2048;

    private static final int MIDDLE_CURVE = 256;
    private static final int LONG_CURVE = 384;

    /** RFC 5280 section 4.2.1.3: the first two bits of a key's usage. */
    private static final int DIGITAL_SIGNATURE = 0;

    private static final int NON_REPUDIATION = 1;

    public Signer {
        chain = List.copyOf(chain);
    }

    /**
     * @param at when it is to sign; the certificate must hold then
     * @throws NoCertificate if the file is not there or no such file, the passphrase is wrong, it holds no key or more
     *     than one, or the key is none to sign documents with
     */
    public static Signer open(Path file, char[] passphrase, Instant at) throws NoCertificate {
        try {
            if (!Files.isRegularFile(file) || Files.size(file) > MOST) {
                throw new NoCertificate(Message.of("certificate.no-file", file));
            }
            KeyStore keys = KeyStore.getInstance("PKCS12");
            try (InputStream in = Files.newInputStream(file)) {
                keys.load(in, passphrase);
            }
            return only(keys, passphrase, file).checked(file, at);
        } catch (IOException e) {
            throw new NoCertificate(
                    Message.of(
                            e.getCause() instanceof UnrecoverableKeyException
                                    ? "certificate.wrong-passphrase"
                                    : "certificate.no-file",
                            file),
                    e);
        } catch (UnrecoverableKeyException e) {
            throw new NoCertificate(Message.of("certificate.wrong-passphrase", file), e);
        } catch (GeneralSecurityException e) {
            throw new NoCertificate(Message.of("certificate.no-file", file), e);
        }
    }

    private static Signer only(KeyStore keys, char[] passphrase, Path file)
            throws GeneralSecurityException, NoCertificate {
        List<Signer> found = new ArrayList<>();
        for (String alias : Collections.list(keys.aliases())) {
            if (keys.isKeyEntry(alias)) {
                Key key = keys.getKey(alias, passphrase);
                List<X509Certificate> chain = new ArrayList<>();
                for (Certificate certificate :
                        Optional.ofNullable(keys.getCertificateChain(alias)).orElse(new Certificate[0])) {
                    if (certificate instanceof X509Certificate x509) {
                        chain.add(x509);
                    }
                }
                if (key instanceof PrivateKey secret && !chain.isEmpty()) {
                    found.add(new Signer(secret, chain));
                }
            }
        }
        if (found.size() != 1) {
            throw new NoCertificate(Message.of("certificate.not-one-key", file, found.size()));
        }
        return found.get(0);
    }

    private Signer checked(Path file, Instant at) throws NoCertificate {
        try {
            own().checkValidity(Date.from(at));
        } catch (CertificateExpiredException e) {
            throw new NoCertificate(
                    Message.of("certificate.over", file, own().getNotAfter().toInstant()), e);
        } catch (CertificateNotYetValidException e) {
            throw new NoCertificate(
                    Message.of("certificate.not-yet", file, own().getNotBefore().toInstant()), e);
        }
        boolean[] usage = own().getKeyUsage();
        if (usage != null && !usage[DIGITAL_SIGNATURE] && !usage[NON_REPUDIATION]) {
            throw new NoCertificate(Message.of("certificate.not-for-signing", file));
        }
        if (algorithm().isEmpty()) {
            throw new NoCertificate(Message.of(
                    "certificate.not-this-key", file, own().getPublicKey().getAlgorithm()));
        }
        return this;
    }

    X509Certificate own() {
        return chain.get(0);
    }

    /**
     * How it signs, by the names of the Java security algorithms; absent for a kind of key readers of PDF do not know.
     */
    Optional<String> algorithm() {
        if (own().getPublicKey() instanceof RSAKey rsa) {
            return Optional.of("SHA256withRSA").filter(it -> rsa.getModulus().bitLength() >= LEAST_RSA);
        }
        if (own().getPublicKey() instanceof ECKey curve) {
            int bits = curve.getParams().getOrder().bitLength();
            return bits < MIDDLE_CURVE
                    ? Optional.empty()
                    : Optional.of(
                            bits < LONG_CURVE
                                    ? "SHA256withECDSA"
                                    : bits == LONG_CURVE ? "SHA384withECDSA" : "SHA512withECDSA");
        }
        return Optional.empty();
    }

    /** Whom the certificate names. */
    public String name() {
        return own().getSubjectX500Principal().getName();
    }
}
