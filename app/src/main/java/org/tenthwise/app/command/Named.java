package org.tenthwise.app.command;

import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.tenthwise.checklists.catalogue.DemoPart;
import org.tenthwise.checklists.catalogue.FileText;
import org.tenthwise.model.words.Message;

/**
 * A text someone named on the command line.
 *
 * @param name as it was given, to name it by in what is said about it
 */
record Named(String name, String text) {

    /** A plan file, or the plan of a demo part by part number or by file name. */
    static Named plan(String given) throws CouldNotRun {
        return of(
                given,
                demo(given, part -> Stream.of(number(part), part.planFile()), DemoPart::planText),
                "command.no-plan");
    }

    /** A readings file, or the readings of a demo part that passes or that fails. */
    static Named readings(String given) throws CouldNotRun {
        return of(
                given,
                demo(given, part -> Stream.of(number(part) + "-pass"), DemoPart::passingReadings)
                        .or(() -> demo(given, part -> Stream.of(number(part) + "-fail"), DemoPart::failingReadings)),
                "command.no-readings");
    }

    /**
     * A file is meant before a demo of its name, a folder after it: records may lie in one that is called after the
     * part.
     */
    private static Named of(String given, Optional<Named> demo, String missing) throws CouldNotRun {
        if (demo.isPresent() && !is(given, Files::isRegularFile)) {
            return demo.get();
        }
        if (is(given, Files::exists)) {
            return new Named(given, read(Path.of(given)));
        }
        throw new CouldNotRun(Message.of(
                missing,
                given,
                Arrays.stream(DemoPart.values())
                        .map(part -> Message.of("as-said", number(part)))
                        .reduce((before, next) -> Message.of("and", before, next))
                        .orElseThrow()));
    }

    private static Optional<Named> demo(
            String given, Function<DemoPart, Stream<String>> names, Function<DemoPart, String> text) {
        return Arrays.stream(DemoPart.values())
                .filter(part -> names.apply(part).anyMatch(given::equals))
                .findFirst()
                .map(part -> new Named(given, text.apply(part)));
    }

    private static String number(DemoPart part) {
        return part.plan().part().number();
    }

    private static boolean is(String given, Predicate<Path> asked) {
        try {
            return asked.test(Path.of(given));
        } catch (InvalidPathException e) {
            return false;
        }
    }

    private static String read(Path file) throws CouldNotRun {
        FileText text = FileText.of(file);
        if (text instanceof FileText.Unreadable unreadable) {
            throw new CouldNotRun(Message.ofValue("command.file", unreadable.why(), file));
        }
        return ((FileText.Readable) text).text();
    }
}
