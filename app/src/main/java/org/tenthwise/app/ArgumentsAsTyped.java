package org.tenthwise.app;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.IntStream;

/**
 * The arguments of the program in the letters they were typed in. Where no locale is set, Java 17 hands them over with
 * every byte beyond ASCII lost, so that ± and ° of a general tolerance are gone; Linux keeps the line as it was typed.
 */
final class ArgumentsAsTyped {

    private static final Path LINE = Path.of("/proc/self/cmdline");
    private static final String LOST = "\uFFFD";
    private static final Pattern BEYOND_ASCII = Pattern.compile("[^\\x00-\\x7F]");

    private ArgumentsAsTyped() {}

    static String[] of(String... given) {
        return of(LINE, given);
    }

    /** @param line file with all words of the command line, each ended by a zero byte; in UTF-8 */
    static String[] of(Path line, String... given) {
        if (Arrays.stream(given).noneMatch(word -> word.contains(LOST)) || !Files.isReadable(line)) {
            return given;
        }
        try {
            List<String> bytes = words(Files.readAllBytes(line));
            int first = bytes.size() - given.length;
            boolean same = first >= 0
                    && IntStream.range(0, given.length)
                            .allMatch(i -> lost(bytes.get(first + i)).equals(given[i]));
            return same
                    ? bytes.subList(first, bytes.size()).stream()
                            .map(ArgumentsAsTyped::decoded)
                            .toArray(String[]::new)
                    : given;
        } catch (IOException e) {
            return given;
        }
    }

    /** A letter stands for a byte. */
    private static List<String> words(byte[] line) {
        String all = new String(line, StandardCharsets.ISO_8859_1);
        return List.of(all.split("\0", -1))
                .subList(0, (int) all.chars().filter(sign -> sign == 0).count());
    }

    private static String lost(String bytes) {
        return BEYOND_ASCII.matcher(bytes).replaceAll(LOST);
    }

    private static String decoded(String bytes) {
        return new String(bytes.getBytes(StandardCharsets.ISO_8859_1), StandardCharsets.UTF_8);
    }
}
