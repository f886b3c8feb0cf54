package org.tenthwise.app.reference;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;

/** The published cases of the program: a file a topic, a line a case. */
public final class PublishedCases {

    private static final String LEFT_OUT = "left-out.jsonl";

    private PublishedCases() {}

    /** @throws IllegalStateException with file and line if a case is not as it should be */
    public static List<PublishedCase> of(Topic topic) {
        String file = topic.word() + ".jsonl";
        return read(file, text(file), CaseLine::published);
    }

    /** What no sum runs, of every topic. */
    public static List<LeftOut> leftOut() {
        return read(LEFT_OUT, text(LEFT_OUT), CaseLine::leftOut);
    }

    static <T> List<T> read(String file, String text, Function<String, T> of) {
        Set<T> all = new LinkedHashSet<>();
        List<String> lines = text.lines().toList();
        for (int i = 0; i < lines.size(); i++) {
            try {
                if (!all.add(of.apply(lines.get(i)))) {
                    throw new IllegalArgumentException("it stands twice");
                }
            } catch (IllegalArgumentException e) {
                throw new IllegalStateException("%s line %s: %s".formatted(file, i + 1, e.getMessage()), e);
            }
        }
        return List.copyOf(all);
    }

    private static String text(String file) {
        try (InputStream in = PublishedCases.class.getResourceAsStream(file)) {
            if (in == null) {
                throw new IllegalStateException(file + " is not in the program");
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
