package org.tenthwise.app.key;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.math.BigInteger;
import java.security.GeneralSecurityException;
import java.security.KeyPair;
import java.security.cert.Certificate;
import java.security.cert.CertificateFactory;
import java.time.Instant;
import java.util.Date;
import org.bouncycastle.asn1.x500.X500Name;
import org.bouncycastle.cert.jcajce.JcaX509v3CertificateBuilder;
import org.bouncycastle.operator.OperatorCreationException;
import org.bouncycastle.operator.jcajce.JcaContentSignerBuilder;

/**
 * The certificate PKCS#12 wants beside a key: X.509 (RFC 5280), signed by the key itself. It proves nothing and is
 * never handed out; a station is known by the fingerprint of its key. It ends on the day RFC 5280 section 4.1.2.5 gives
 * what has no end.
 */
final class StationCertificate {

    private static final X500Name NAME = new X500Name("CN=Tenthwise station");
    private static final Date NO_BEGINNING = Date.from(Instant.EPOCH);
    private static final Date NO_END = Date.from(Instant.parse("9999-12-31T23:59:59Z"));

    private StationCertificate() {}

    static Certificate of(KeyPair pair) throws GeneralSecurityException, IOException {
        try {
            byte[] made = new JcaX509v3CertificateBuilder(
                            NAME, BigInteger.ONE, NO_BEGINNING, NO_END, NAME, pair.getPublic())
                    .build(new JcaContentSignerBuilder(StationKey.ALGORITHM).build(pair.getPrivate()))
                    .getEncoded();
            return CertificateFactory.getInstance("X.509").generateCertificate(new ByteArrayInputStream(made));
        } catch (OperatorCreationException e) {
            throw new GeneralSecurityException(e);
        }
    }
}
