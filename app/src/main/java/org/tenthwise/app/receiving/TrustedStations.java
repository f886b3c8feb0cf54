package org.tenthwise.app.receiving;

import java.io.IOException;
import java.nio.charset.CharacterCodingException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.tenthwise.app.key.NoKey;
import org.tenthwise.app.key.Trusted;
import org.tenthwise.app.store.NotImported;
import org.tenthwise.model.words.Message;

/**
 * The stations whose key a store trusts: a file of text beside it that people write, a fingerprint a line, and behind a
 * {@code #} whose it is. While it is not there, or empty, nobody is known and nobody is kept out.
 *
 * @param file beside the store
 * @param named besides, for once: files of public keys or fingerprints
 */
public record TrustedStations(Path file, List<String> named) {

    private static final String ENDING = ".trusted";
    private static final long MOST_BYTES = 1_000_000;

    public TrustedStations {
        named = List.copyOf(named);
    }

    /** @param named to be trusted besides */
    public static TrustedStations of(Path store, List<String> named) {
        Path whole = store.toAbsolutePath().normalize();
        return new TrustedStations(whole.resolveSibling(whole.getFileName() + ENDING), named);
    }

    /** @throws NotImported if the file, or what is named besides, cannot be understood */
    public Trusted read() throws NotImported {
        try {
            return Trusted.of(Stream.concat(listed().stream(), named.stream()).toList());
        } catch (NoKey e) {
            throw new NotImported(Message.of("import.not-to-trust", e.why()), e);
        }
    }

    private List<String> listed() throws NotImported {
        if (!Files.exists(file)) {
            return List.of();
        }
        try {
            if (!Files.isRegularFile(file) || Files.size(file) > MOST_BYTES) {
                throw new NotImported(Message.of("import.no-list", file));
            }
            return Files.readString(file)
                    .lines()
                    .map(line -> line.replaceFirst("#.*", "").strip())
                    .filter(line -> !line.isEmpty())
                    .toList();
        } catch (CharacterCodingException e) {
            throw new NotImported(Message.of("import.no-list", file), e);
        } catch (IOException e) {
            throw new NotImported(Message.of("import.no-list", file), e);
        }
    }
}
