package org.tenthwise.model.plan;

import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * The file with the pages of the drawing, which lies in the folder of the plan.
 *
 * @param name of the file alone, without a folder
 * @param sha256 of the file as it was when its balloons were placed (SHA-256, FIPS 180-4), 64 small hex digits; absent
 *     where the plan does not say
 */
public record DrawingFile(String name, Optional<String> sha256) {

    public static final int LONGEST = 100;

    /** No way to another folder, no sign that a file system minds, and not hidden. */
    private static final Pattern PLAIN = Pattern.compile("[^./\\\\:*?\"<>|\\p{Cntrl}][^/\\\\:*?\"<>|\\p{Cntrl}]*");

    private static final Pattern HASH = Pattern.compile("[0-9a-f]{64}");

    /** What such a file is. */
    public enum Form {
        PDF,
        PICTURE
    }

    /** @throws IllegalArgumentException for what is no name of such a file, or no hash of one */
    public DrawingFile {
        if (!canBe(name) || !sha256.stream().allMatch(DrawingFile::isHash)) {
            throw new IllegalArgumentException("No file of a drawing: " + name + ", " + sha256);
        }
    }

    /** A file of that name, whatever lies there. */
    public static DrawingFile named(String name) {
        return new DrawingFile(name, Optional.empty());
    }

    /** Whether {@code text} is 64 small hex digits. */
    public static boolean isHash(String text) {
        return HASH.matcher(text).matches();
    }

    /** Whether a file with that hash may be the one the balloons were placed on; true where nothing is known. */
    public boolean canHave(String hash) {
        return sha256.isEmpty() || sha256.get().equals(hash);
    }

    /** Whether {@code text} is a plain name that ends as a PDF or a picture does. */
    public static boolean canBe(String text) {
        return text.length() <= LONGEST
                && PLAIN.matcher(text).matches()
                && formOf(text).isPresent();
    }

    public Form form() {
        return formOf(name).orElseThrow();
    }

    private static Optional<Form> formOf(String name) {
        String end = name.substring(name.lastIndexOf('.') + 1).toLowerCase(Locale.ROOT);
        return switch (end) {
            case "pdf" -> Optional.of(Form.PDF);
            case "png", "jpg", "jpeg" -> Optional.of(Form.PICTURE);
            default -> Optional.empty();
        };
    }
}
