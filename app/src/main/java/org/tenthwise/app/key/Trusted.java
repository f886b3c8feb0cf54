package org.tenthwise.app.key;

import static java.nio.charset.StandardCharsets.US_ASCII;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import org.tenthwise.model.words.Message;

/** The keys somebody relies on, because they came another way than what they are to check. */
public final class Trusted {

    /** None is given: then nothing can be said of whose key it was. */
    public static final Trusted NOBODY = new Trusted(Set.of());

    private static final Pattern FINGERPRINT = Pattern.compile("[0-9a-f]{64}");
    private static final long MOST_OF_A_FILE = 4096;
    private static final String BEGIN = "-----BEGIN PUBLIC KEY-----";
    private static final String END = "-----END PUBLIC KEY-----";

    private final Set<String> fingerprints;

    private Trusted(Set<String> fingerprints) {
        this.fingerprints = Set.copyOf(fingerprints);
    }

    /**
     * @param given files of public keys (PEM), or whole fingerprints, with blanks or without
     * @throws NoKey if one is neither
     */
    public static Trusted of(List<String> given) throws NoKey {
        Set<String> fingerprints = new TreeSet<>();
        for (String one : given) {
            fingerprints.add(fingerprint(one));
        }
        return new Trusted(fingerprints);
    }

    /** Whether no key was named. */
    public boolean isNobody() {
        return fingerprints.isEmpty();
    }

    /** @param fingerprint 64 small hex digits */
    public boolean holds(String fingerprint) {
        return fingerprints.contains(fingerprint);
    }

    private static String fingerprint(String given) throws NoKey {
        String digits = given.replaceAll("[\\s:]+", "").toLowerCase(Locale.ROOT);
        if (FINGERPRINT.matcher(digits).matches()) {
            return digits;
        }
        return inFile(given)
                .map(PublicKeyOfStation::fingerprint)
                .orElseThrow(() -> new NoKey(Message.of("key.not-to-trust", given)));
    }

    /**
     * Line ends, blanks and what stands around the key do not matter (RFC 7468, section 2): what is compared is the key
     * itself, and there is one in the file.
     */
    private static Optional<PublicKeyOfStation> inFile(String given) {
        try {
            Path file = Path.of(given);
            if (!Files.isRegularFile(file) || Files.size(file) > MOST_OF_A_FILE) {
                return Optional.empty();
            }
            List<String> lines = new ArrayList<>(new String(Files.readAllBytes(file), US_ASCII)
                    .strip()
                    .lines()
                    .toList());
            lines.replaceAll(String::strip);
            int begin = lines.indexOf(BEGIN);
            int end = lines.indexOf(END);
            if (begin < 0 || end < begin || begin != lines.lastIndexOf(BEGIN) || end != lines.lastIndexOf(END)) {
                return Optional.empty();
            }
            return PublicKeyOfStation.ofText(
                    String.join("", lines.subList(begin + 1, end)).replaceAll("\\s+", ""));
        } catch (IOException | InvalidPathException e) {
            return Optional.empty();
        }
    }
}
