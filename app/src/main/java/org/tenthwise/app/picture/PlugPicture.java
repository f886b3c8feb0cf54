package org.tenthwise.app.picture;

import java.util.List;
import java.util.Optional;
import org.tenthwise.model.plan.Answer;
import org.tenthwise.model.quantity.Length;

/**
 * A plug in its bore, the play between them drawn large; beside it the strip, with the plug's surface at the bottom and
 * the wall of the bore above it at the least and at the most play.
 *
 * @param strip clearances, wanted and found: a column for the least and one for the most
 * @param wanted what the section is drawn with before both are measured
 * @param widest the widest play wanted, more than zero
 * @param boreSpread greatest bore less least bore; zero before both are measured
 * @param hand what the hand found
 * @param notes lines under the section: sizes of bore and plug
 */
public record PlugPicture(
        SizePicture strip,
        Length wanted,
        Length widest,
        Length boreSpread,
        Optional<Hand> hand,
        List<String> notes,
        String spoken)
        implements Picture {

    /**
     * What the hand found, and that in words.
     *
     * @param wrong whether it is not what it must be
     * @param contradiction short words where hand and gauges cannot both be right
     */
    public record Hand(Answer feel, String words, boolean wrong, Optional<String> contradiction) {}

    public PlugPicture {
        notes = List.copyOf(notes);
    }

    @Override
    public void draw(Drawing drawing) {
        SectionAndStrip.draw(strip, drawing, false, false, (on, room, scale) -> new PlugSection(this, on, room).draw());
    }

    SizePicture.ReadingColumn least() {
        return strip.columns().get(0);
    }

    SizePicture.ReadingColumn most() {
        return strip.columns().get(1);
    }
}
