package org.tenthwise.app.key;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.security.GeneralSecurityException;
import java.security.KeyPair;
import java.security.KeyStore;
import java.security.PrivateKey;
import java.security.cert.Certificate;
import java.util.Optional;
import org.tenthwise.model.words.Message;

/**
 * The file a station's key lies in: PKCS#12 (RFC 7292), beside the store and never in it, so that a copy of the store
 * does not sign.
 *
 * <p>What guards it is that nobody but its owner may read it; the word PKCS#12 wants is no secret.
 */
public final class KeyFile {

    private static final String BEHIND = "-station-key.p12";
    private static final char[] NO_SECRET = "station".toCharArray();
    private static final String ALIAS = "station";
    private static final String PKCS12 = "PKCS12";

    /** A hundred times a key with its certificate. */
    private static final long MOST = 64L << 10;

    private final Path file;

    public KeyFile(Path file) {
        this.file = file;
    }

    /** The one of a store. */
    public static KeyFile beside(Path store) {
        Path whole = store.toAbsolutePath().normalize();
        return new KeyFile(whole.resolveSibling(whole.getFileName() + BEHIND));
    }

    /** Where it lies, or would lie. */
    public Path path() {
        return file;
    }

    /** Whether anything lies under the name, be it a key or not. */
    public boolean isThere() {
        return Files.exists(file, LinkOption.NOFOLLOW_LINKS);
    }

    /** Whether others than its owner may read it, as far as the system can tell. */
    public boolean isOpenToOthers() {
        return OwnerOnly.isOpenToOthers(file);
    }

    /** @throws NoKey if there is none, or what is there is none */
    public StationKey open() throws NoKey {
        if (!isThere()) {
            throw new NoKey(Message.of("key.missing", file));
        }
        try {
            if (!Files.isRegularFile(file) || Files.size(file) > MOST) {
                throw new NoKey(Message.of("key.damaged", file));
            }
            KeyStore keys = KeyStore.getInstance(PKCS12);
            byte[] bytes = Files.readAllBytes(file);
            try (InputStream in = new java.io.ByteArrayInputStream(bytes)) {
                keys.load(in, NO_SECRET);
            } catch (IOException e) {
                throw new NoKey(Message.of("key.damaged", file), e);
            }
            if (!(keys.getKey(ALIAS, NO_SECRET) instanceof PrivateKey secret)) {
                throw new NoKey(Message.of("key.damaged", file));
            }
            StationKey key = new StationKey(
                    secret, PublicKeyOfStation.of(keys.getCertificate(ALIAS).getPublicKey()));
            if (!key.shown().signed(bytes, key.sign(bytes))) {
                throw new NoKey(Message.of("key.damaged", file));
            }
            return key;
        } catch (GeneralSecurityException | RuntimeException e) {
            throw new NoKey(Message.of("key.damaged", file), e);
        } catch (IOException e) {
            throw new NoKey(Message.of("key.unreadable", file), e);
        }
    }

    /**
     * Makes a key in it; never over a file that is there.
     *
     * @throws NoKey if it could not be made, or something lies under the name
     */
    public StationKey make() throws NoKey {
        try {
            KeyPair pair = StationKey.pair();
            KeyStore keys = KeyStore.getInstance(PKCS12);
            keys.load(null, NO_SECRET);
            keys.setKeyEntry(ALIAS, pair.getPrivate(), NO_SECRET, new Certificate[] {StationCertificate.of(pair)});
            ByteArrayOutputStream bytes = new ByteArrayOutputStream();
            keys.store(bytes, NO_SECRET);
            OwnerOnly.write(file, bytes.toByteArray());
            return open();
        } catch (FileAlreadyExistsException e) {
            throw new NoKey(Message.of("key.in-the-way", file), e);
        } catch (GeneralSecurityException | IOException e) {
            throw new NoKey(Message.of("key.not-made", file), e);
        }
    }

    /**
     * Makes another key in it; the one that is there, if any, is put aside.
     *
     * @return where that lies now
     */
    public Optional<Path> renew() throws NoKey {
        Optional<Path> aside = isThere() ? Optional.of(putAside()) : Optional.empty();
        make();
        return aside;
    }

    /**
     * Puts the key that is there aside, under a name of its own, so that another can be made.
     *
     * @return where it lies now
     */
    Path putAside() throws NoKey {
        Path aside = file.resolveSibling(file.getFileName() + ".old");
        for (int i = 2; Files.exists(aside, LinkOption.NOFOLLOW_LINKS); i++) {
            aside = file.resolveSibling(file.getFileName() + ".old-" + i);
        }
        try {
            return Files.move(file, aside);
        } catch (IOException e) {
            throw new NoKey(Message.of("key.not-made", file), e);
        }
    }
}
