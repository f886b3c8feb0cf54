package org.tenthwise.checklists.rules;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** A folder of wrong files {@code x.toml}, each with its problems beside it in {@code x.txt}, one a line. */
record Corpus(Path folder) {

    static Corpus of(String name) {
        try {
            return new Corpus(Path.of(Corpus.class.getResource("/" + name).toURI()));
        } catch (URISyntaxException e) {
            throw new IllegalStateException(e);
        }
    }

    List<String> names() {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(file -> file.getFileName().toString())
                    .filter(name -> name.endsWith(".toml"))
                    .map(name -> name.replace(".toml", ""))
                    .sorted()
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    String text(String name) {
        return content(name + ".toml");
    }

    String problems(String name) {
        return content(name + ".txt").stripTrailing();
    }

    private String content(String file) {
        try {
            return Files.readString(folder.resolve(file));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static String lines(List<PlanProblem> problems) {
        return String.join("\n", problems.stream().map(PlanProblem::toString).toList());
    }
}
