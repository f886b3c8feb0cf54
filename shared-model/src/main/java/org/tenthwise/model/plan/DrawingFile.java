package org.tenthwise.model.plan;

import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * The file with the pages of the drawing, which lies in the folder of the plan.
 *
 * @param name of the file alone, without a folder
 */
public record DrawingFile(String name) {

    public static final int LONGEST = 100;

    /** No way to another folder, no sign that a file system minds, and not hidden. */
    private static final Pattern PLAIN = Pattern.compile("[^./\\\\:*?\"<>|\\p{Cntrl}][^/\\\\:*?\"<>|\\p{Cntrl}]*");

    /** What such a file is. */
    public enum Form {
        PDF,
        PICTURE
    }

    /** @throws IllegalArgumentException for what is no name of such a file */
    public DrawingFile {
        if (!canBe(name)) {
            throw new IllegalArgumentException("No file of a drawing: " + name);
        }
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
