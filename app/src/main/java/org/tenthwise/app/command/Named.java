package org.tenthwise.app.command;

import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.tenthwise.checklists.catalogue.DemoPart;
import org.tenthwise.checklists.catalogue.FileText;

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
                "There is no plan file %s. The demo plans that come along are %s.");
    }

    /** A readings file, or the readings of a demo part that passes or that fails. */
    static Named readings(String given) throws CouldNotRun {
        return of(
                given,
                demo(given, part -> Stream.of(number(part) + "-pass"), DemoPart::passingReadings)
                        .or(() -> demo(given, part -> Stream.of(number(part) + "-fail"), DemoPart::failingReadings)),
                "There is no readings file %s. The demo readings that come along are those of %s, with -pass or "
                        + "-fail behind it.");
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
        throw new CouldNotRun(missing.formatted(
                given, Arrays.stream(DemoPart.values()).map(Named::number).collect(Collectors.joining(" and "))));
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
            throw new CouldNotRun(words(unreadable.why()).formatted(file));
        }
        return ((FileText.Readable) text).text();
    }

    private static String words(FileText.Why why) {
        return switch (why) {
            case FOLDER -> "%s is a folder. Name a file in it.";
            case NO_FILE -> "%s is no file that can be read. Name a text file in TOML.";
            case TOO_LONG -> "%s is longer than a plan or its readings ever are. Name a text file in TOML.";
            case BLANK -> "%s is empty. Name a file with something in it.";
            case NOT_UTF8 -> "%s is not UTF-8 text. Name a text file in TOML.";
            case FORBIDDEN -> "%s may not be read. Allow it, or name another file.";
            case BROKEN -> "%s cannot be read. See to the disk, or name another file.";
        };
    }
}
