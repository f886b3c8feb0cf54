package org.tenthwise.model.callout;

import java.util.List;
import java.util.Optional;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.tolerance.GeneralTolerance;
import org.tenthwise.model.words.Refused;

/**
 * Reads what stands on a drawing. Blanks and capitals make no difference but in tolerance classes and datums, and signs
 * that look alike are one.
 *
 * <p>What is written one way and could be meant another is refused: a limit that is wrong scraps a part, a question
 * does not.
 *
 * <p>Source: notation of ASME Y14.5-2018, ISO 129-1:2018, ISO 1101, ISO 1302:2002, from memory, and common practice.
 *
 * @param ofDrawing millimetres or inches; a unit written behind a figure goes before it
 * @param general tolerance of the drawing
 */
public record CalloutReader(Unit ofDrawing, Optional<GeneralTolerance> general) {

    /** @throws Refused with what is doubtful and what would be right */
    public Callout read(String drawn) {
        Tokens row = Tokens.of(TidyText.of(drawn, ofDrawing));
        return new Callout(drawn, parts(row));
    }

    /**
     * What stands in a column of surfaces, where a figure alone is a roughness.
     *
     * @throws Refused with what is doubtful and what would be right
     */
    public Callout readSurface(String drawn) {
        Tokens row = Tokens.of(TidyText.of(drawn, ofDrawing));
        CalloutPart part = new RoughnessReader(row, ofDrawing).read();
        row.requireEnd();
        return new Callout(drawn, List.of(part));
    }

    private List<CalloutPart> parts(Tokens row) {
        Optional<Integer> before = CalloutCount.leading(row);
        Tail tail = new Tail(row);
        List<CalloutPart> parts = new Production(row, ofDrawing, new GeneralLimits(general), tail).read();
        tail.read();
        row.requireEnd();
        if (before.isPresent() && tail.count().isPresent()) {
            throw new Refused("model.callout.two-counts");
        }
        Optional<Integer> counted = before.or(tail::count);
        Optional<Integer> count = counted.isPresent() || tail.isTypical() ? counted : Optional.of(1);
        return parts.stream().map(part -> part.counted(count)).toList();
    }
}
