package org.tenthwise.app.picture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.tenthwise.app.ui.picture.Sheets;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.verdict.VerdictKind;
import org.tenthwise.model.words.Words;

class RowPicturesTest {

    private static final Frame ROW = new Frame(104, 20, 1, 0.6, Role.SHEET);

    private final Sheets sheets = new Sheets();

    @ParameterizedTest
    @ValueSource(ints = {1, 5, 24, 40, 90})
    void anyNumberOfChecksStaysInItsRoom(int count) {
        Frame frame = Frame.small(370, 60, Role.SHEET);
        RecordingPen pen = RecordingPen.of(row(count), frame);
        assertEquals(List.of(), pen.faults(frame));
        assertEquals((count + 4) / 5, pen.drawnIn(Role.PASS).size());
        assertEquals(count / 6 * 2, pen.drawnIn(Role.INK).size());
    }

    /** The triangle stands over its check and points at it. */
    @Test
    void theOneInHandHasATriangleAboveIt() {
        RecordingPen pen = RecordingPen.of(
                new CheckRow(
                        List.of(
                                new CheckRow.CheckMark(VerdictKind.PASS, false),
                                new CheckRow.CheckMark(VerdictKind.FAIL, false)),
                        OptionalInt.of(0),
                        ""),
                Frame.small(370, 60, Role.SHEET));
        Box triangle = pen.drawnIn(Role.ACCENT).get(0).shape().bounds();
        Box disc = pen.drawnIn(Role.PASS).get(0).shape().bounds();
        assertEquals(disc.centreX(), triangle.centreX(), 1e-9);
        assertTrue(triangle.bottom() < disc.top());
    }

    @ParameterizedTest
    @CsvSource(
            textBlock =
                    """
            # size,   share of the way from lower to upper limit
            30.000,   0
            30.0105,  0.5
            30.021,   1
            29.999,   -0.0476
            """)
    void theMarkLiesWhereTheSizeDoes(String size, double share) {
        RecordingPen pen = RecordingPen.of(mark(Optional.of("30.000"), Optional.of("30.021"), size, true), ROW);
        List<Double> bars = pen.drawnIn(Role.INK).stream()
                .filter(drawn -> drawn.width() > 0)
                .map(drawn -> drawn.shape().bounds().centreX())
                .toList();
        Point tip = ((Shape.Polyline) pen.drawnIn(Role.INK).stream()
                        .filter(drawn -> drawn.width() == 0)
                        .findFirst()
                        .orElseThrow()
                        .shape())
                .points()
                .get(0);
        assertEquals(share, (tip.x() - bars.get(0)) / (bars.get(1) - bars.get(0)), 0.001);
    }

    @ParameterizedTest
    @ValueSource(strings = {"31", "29", "30.03", "-4"})
    void aSizeFarOutStandsAtTheEnd(String size) {
        assertEquals(
                List.of(),
                RecordingPen.of(mark(Optional.of("30.000"), Optional.of("30.021"), size, false), ROW)
                        .faults(ROW));
        assertEquals(
                List.of(),
                RecordingPen.of(mark(Optional.of("30.000"), Optional.empty(), size, false), ROW)
                        .faults(ROW));
    }

    @Test
    void rowsAreSavedToBeLookedAt() {
        for (Palette palette : List.of(Palette.DAY, Palette.NIGHT)) {
            DemoRun run = DemoRun.of("LG-2207-C-fail");
            Picture checks = new Pictures(Words.of(Locale.ENGLISH))
                    .checks(
                            run.plan().steps(),
                            run.sheet().lines().stream()
                                    .map(line -> line.finding().verdict().standing())
                                    .toList(),
                            Optional.of(run.plan().step(26)));
            assertTrue(Sheets.inked(sheets.save("row-of-checks", checks, Frame.small(370, 60, Role.SHEET), palette))
                    > 500);
            assertTrue(
                    Sheets.inked(sheets.save("row-of-90", row(90), Frame.small(370, 80, Role.SHEET), palette)) > 500);
            sheets.save(
                    "row-mark-in", mark(Optional.of("30.000"), Optional.of("30.021"), "30.015", true), ROW, palette);
            sheets.save(
                    "row-mark-out", mark(Optional.of("12.000"), Optional.of("12.043"), "12.046", false), ROW, palette);
            sheets.save(
                    "row-mark-far", mark(Optional.of("12.000"), Optional.of("12.043"), "12.3", false), ROW, palette);
            sheets.save("row-mark-one", mark(Optional.empty(), Optional.of("0.02"), "0.012", true), ROW, palette);
        }
    }

    private static CheckRow row(int count) {
        List<CheckRow.CheckMark> checks = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            checks.add(new CheckRow.CheckMark(VerdictKind.values()[i % 5], i % 6 == 5));
        }
        return new CheckRow(checks, OptionalInt.of(count / 2), "");
    }

    private static RowMark mark(Optional<String> lower, Optional<String> upper, String size, boolean inside) {
        return new RowMark(
                lower.map(DemoShapes::mm),
                upper.map(DemoShapes::mm),
                Optional.<Length>of(DemoShapes.mm(size)),
                inside,
                "");
    }
}
