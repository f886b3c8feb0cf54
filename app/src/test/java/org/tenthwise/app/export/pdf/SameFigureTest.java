package org.tenthwise.app.export.pdf;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.tenthwise.app.picture.Picture;
import org.tenthwise.app.picture.Pictures;
import org.tenthwise.app.picture.RecordingPen;
import org.tenthwise.app.picture.SizePicture;
import org.tenthwise.app.picture.WirePicture;
import org.tenthwise.app.story.StepStory;
import org.tenthwise.app.story.StoryLine;
import org.tenthwise.app.text.Figures;
import org.tenthwise.app.text.Sentences;
import org.tenthwise.model.record.Line;
import org.tenthwise.model.record.PassStory;
import org.tenthwise.model.record.Sheet;
import org.tenthwise.model.record.Taken;
import org.tenthwise.model.run.Pass;
import org.tenthwise.model.tolerance.Limits;
import org.tenthwise.model.verdict.VerdictKind;
import org.tenthwise.model.words.Words;

/**
 * A size is written alike wherever a person reads it: over the verdict, in the picture, where the step is told, and on
 * the pages of the record.
 */
class SameFigureTest {

    /** A reading as it is told: its size, and what was read where that is another figure. */
    private static final Pattern TOLD =
            Pattern.compile("^.*?: ([−+0-9.°′″]+(?: mm| in)?)(?:, read ([−+0-9.°′″]+(?: mm| in)?))?(?: \\(.*|\\..*|$)");

    private static final double A_LINE = 2;

    @ParameterizedTest
    @EnumSource(Scene.class)
    void everySizeReadsTheSameEverywhere(Scene scene) {
        Sheet sheet = scene.evidence().sheet();
        List<List<String>> printed = rows(scene);
        for (Line line : sheet.lines()) {
            if (line.step().limits().isPresent() && line.step().check().asTurn().isEmpty()) {
                readings(sheet, line, printed);
                judged(sheet, line, printed);
            }
        }
    }

    private static void readings(Sheet sheet, Line line, List<List<String>> printed) {
        for (PassStory story : PassStory.of(sheet.run(), line)) {
            for (Taken<Pass.Reading> taken : story.readings()) {
                if (taken.counts()) {
                    Pass.Reading reading = taken.what();
                    String typed = Figures.read(
                            reading.typed(),
                            line.step().limits().map(Limits::unit).orElseThrow());
                    String size = told(sheet, line, taken, typed);
                    String entry = String.valueOf(reading.entry().seq());
                    assertTrue(
                            printed.stream().anyMatch(row -> row.containsAll(List.of(entry, typed, size))),
                            () -> "entry " + entry + " of " + line.step().name() + ", told as " + size);
                }
            }
        }
    }

    /** The size of a reading as it is told behind its row, and so under More. */
    private static String told(Sheet sheet, Line line, Taken<Pass.Reading> taken, String typed) {
        List<String> sizes = new ArrayList<>();
        for (StoryLine said : lines(sheet, line)) {
            Matcher told = TOLD.matcher(said.words());
            if (said.counts()
                    && told.matches()
                    && typed.equals(Optional.ofNullable(told.group(2)).orElse(told.group(1)))) {
                sizes.add(told.group(1));
            }
        }
        assertTrue(
                !sizes.isEmpty(),
                () -> line.step().name() + ": " + taken.entry().seq() + ", " + typed + " in " + lines(sheet, line));
        return sizes.get(0);
    }

    private static List<StoryLine> lines(Sheet sheet, Line line) {
        return StepStory.inRecord(sheet, line, sheet.run().last().at(), Words.ENGLISH).chapters().stream()
                .filter(chapter -> chapter.heading().startsWith("This part"))
                .flatMap(chapter -> chapter.lines().stream())
                .toList();
    }

    /** The size judged, in the picture and in the table; where one reading decides, it is the size of that. */
    private static void judged(Sheet sheet, Line line, List<List<String>> printed) {
        String value = new Sentences(Words.ENGLISH).value(line.finding());
        if (!line.finding().isOfOneSize()
                || value.isEmpty()
                || line.finding().verdict().standing() == VerdictKind.OPEN) {
            return;
        }
        String number = String.valueOf(line.step().number());
        boolean isInTable = line.isOfDrawing() || !line.finding().verdict().passed();
        assertTrue(
                !isInTable
                        || printed.stream()
                                .anyMatch(row -> row.contains(number)
                                        && row.stream().anyMatch(text -> List.of(text.split(" "))
                                                .contains(value))),
                () -> value + " of " + line.step().name() + " in the table");
        new Pictures(Words.ENGLISH)
                .of(sheet, line)
                .flatMap(SameFigureTest::strip)
                .ifPresent(strip -> {
                    assertEquals(
                            Optional.of(value),
                            strip.judged().map(SizePicture.Sized::figures),
                            line.step().name());
                    strip.columns().stream()
                            .filter(column -> column.kind() == SizePicture.Kind.TAKEN)
                            .flatMap(column -> column.size().stream())
                            .forEach(size -> assertTrue(
                                    told(sheet, line).contains(size.figures()),
                                    () -> size.figures() + " of " + line.step().name() + ", told as "
                                            + told(sheet, line)));
                });
        if (line.finding().deciding().isPresent()) {
            assertTrue(
                    told(sheet, line).contains(value),
                    () -> value + " of " + line.step().name());
        }
    }

    private static TreeSet<String> told(Sheet sheet, Line line) {
        TreeSet<String> sizes = new TreeSet<>();
        for (StoryLine said : lines(sheet, line)) {
            Matcher told = TOLD.matcher(said.words());
            if (told.matches()) {
                sizes.add(told.group(1));
            }
        }
        return sizes;
    }

    private static Optional<SizePicture> strip(Picture picture) {
        if (picture instanceof WirePicture wires) {
            return wires.strip();
        }
        return picture instanceof SizePicture strip ? Optional.of(strip) : Optional.empty();
    }

    /** What stands on one line of a page, line by line. */
    private static List<List<String>> rows(Scene scene) {
        List<List<String>> rows = new ArrayList<>();
        for (RecordingPen page : PrintedPages.of(Words.ENGLISH, scene.evidence())) {
            for (RecordingPen.Lettered first : page.lettered()) {
                rows.add(page.lettered().stream()
                        .filter(other ->
                                Math.abs(other.box().top() - first.box().top()) < A_LINE)
                        .map(RecordingPen.Lettered::text)
                        .toList());
            }
        }
        return rows;
    }
}
