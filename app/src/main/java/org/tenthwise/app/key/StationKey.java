package org.tenthwise.app.key;

import java.security.GeneralSecurityException;
import java.security.KeyPair;
import java.security.KeyPairGenerator;
import java.security.PrivateKey;
import java.security.Signature;

/** The key a station signs with: Ed25519 (RFC 8032). The same bytes always get the same signature. */
public final class StationKey {

    static final String ALGORITHM = "Ed25519";

    private final PrivateKey secret;
    private final PublicKeyOfStation shown;

    StationKey(PrivateKey secret, PublicKeyOfStation shown) {
        this.secret = secret;
        this.shown = shown;
    }

    static KeyPair pair() throws GeneralSecurityException {
        return KeyPairGenerator.getInstance(ALGORITHM).generateKeyPair();
    }

    static StationKey of(KeyPair pair) {
        return new StationKey(pair.getPrivate(), PublicKeyOfStation.of(pair.getPublic()));
    }

    /** The half that anybody may have. */
    public PublicKeyOfStation shown() {
        return shown;
    }

    /** @return 64 bytes */
    public byte[] sign(byte[] said) {
        try {
            Signature signature = Signature.getInstance(ALGORITHM);
            signature.initSign(secret);
            signature.update(said);
            return signature.sign();
        } catch (GeneralSecurityException e) {
            throw new IllegalStateException("Every Java platform since 15 has Ed25519", e);
        }
    }
}
