package org.tenthwise.app.certificate;

import java.io.IOException;
import java.nio.file.Path;
import java.security.GeneralSecurityException;
import java.time.Instant;
import org.bouncycastle.asn1.x509.KeyUsage;

/** A certificate that holds whatever the clock says. */
public final class Issued {

    private Issued() {}

    public static Path atAnyTime(Path folder) throws GeneralSecurityException, IOException {
        return Made.file(
                folder,
                Made.pair("EC", "secp256r1"),
                KeyUsage.nonRepudiation,
                Instant.EPOCH,
                Instant.parse("9999-12-31T23:59:59Z"));
    }

    public static String passphrase() {
        return new String(Made.PASSPHRASE);
    }
}
