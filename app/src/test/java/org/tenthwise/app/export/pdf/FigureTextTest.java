package org.tenthwise.app.export.pdf;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.tenthwise.app.export.Records;
import org.tenthwise.checklists.catalogue.DemoPart;
import org.tenthwise.checklists.catalogue.ExamplePart;
import org.tenthwise.model.record.Line;
import org.tenthwise.model.record.Sheet;
import org.tenthwise.model.words.Words;

class FigureTextTest {

    private final FigureText text = new FigureText(Words.ENGLISH);

    private static List<Line> felt(Sheet sheet) {
        return sheet.lines().stream()
                .filter(line -> line.finding().isFeltOtherwise())
                .toList();
    }

    /** A plug that goes in with drag fails, whatever room the gauges say it has: no page says that it lies inside. */
    @Test
    void aPlugFeltOtherwiseIsNeverSaidToLieInside() {
        ExamplePart bush = ExamplePart.HOIST_SCREW_BUSH;
        List<Line> felt =
                felt(Records.whole(bush.plan(), bush.failingReadings()).sheet());
        assertFalse(felt.isEmpty());
        felt.forEach(line -> assertEquals(List.of("felt otherwise"), text.beside(line)));
    }

    @Test
    void aPlugFeltAsWantedSaysNothingBesideItsPass() {
        Sheet sheet = Records.whole(DemoPart.SCREW_CARRIER, Records.passing(DemoPart.SCREW_CARRIER))
                .sheet();
        assertEquals(List.of(), felt(sheet));
        assertEquals(List.of(), text.beside(sheet.line(14)));
    }
}
