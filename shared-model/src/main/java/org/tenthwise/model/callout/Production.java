package org.tenthwise.model.callout;

import java.util.List;
import java.util.Optional;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.words.Refused;

/**
 * What a callout is behind its count: a frame, a roughness, a hardness, a figure on a scale, words, a size in brackets,
 * or sizes.
 */
record Production(Tokens row, Unit ofDrawing, GeneralLimits general, Tail tail) {

    List<CalloutPart> read() {
        if (FrameReader.isNext(row)) {
            return List.of(new FrameReader(row, ofDrawing).read());
        }
        if (RoughnessReader.isNext(row)) {
            return List.of(new RoughnessReader(row, ofDrawing).read());
        }
        if (isFullRadius()) {
            row.skip(2);
            return List.of(CalloutPart.of(CalloutKind.RADIUS));
        }
        if (row.peek().isWord("C") && row.peek(1).isFigure()) {
            throw new Refused("model.callout.c-alone", row.peek(1).text());
        }
        if (HardnessReader.isNext(row)) {
            return List.of(new HardnessReader(row).read());
        }
        if (ScaleReader.isNext(row)) {
            return List.of(new ScaleReader(row).read());
        }
        if (WordsReader.isNext(row)) {
            return List.of(new WordsReader(row, ofDrawing).read());
        }
        if (row.accept('(')) {
            return List.of(reference());
        }
        return new PartReader(row, ofDrawing, general, tail).read();
    }

    private boolean isFullRadius() {
        return row.peek().isWord("FULL") && row.peek(1).isWord(Symbols.RADII)
                || row.peek().isWord("R") && row.peek(1).isWord("FULL");
    }

    /** In brackets a size is for information: no tolerance stands with it, and none is looked up. */
    private CalloutPart reference() {
        Symbols.before(row);
        SizeReader sizes = new SizeReader(row, ofDrawing);
        CalloutSize size = sizes.read(sizes.boundBefore());
        Symbols.behind(row);
        if (size.hasLimits()) {
            throw new Refused("model.callout.reference-with-limits");
        }
        if (!row.accept(')')) {
            throw new Refused("model.callout.bracket-open");
        }
        return new CalloutPart(
                CalloutKind.REFERENCE,
                size.nominal(),
                Optional.empty(),
                Optional.empty(),
                Optional.of(size.unit()),
                Optional.of(1),
                Optional.empty());
    }
}
