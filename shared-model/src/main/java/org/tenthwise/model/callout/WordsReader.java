package org.tenthwise.model.callout;

import java.util.List;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.words.Refused;

/**
 * Reads callouts in words: how edges are broken, what is done to the part by a specification, and notes. Words with a
 * size among them are neither and are refused: a limit could be lost in them.
 */
final class WordsReader {

    private static final int SHORTEST = 3;
    private static final List<String> EDGES = List.of("EDGE", "EDGES", "CORNER", "CORNERS");
    /** A size behind any other word is one of something else: {@code FROM EDGE 25 ±0.1}. */
    private static final String[] OF_AN_EDGE = {
        "BREAK",
        "BROKEN",
        "ALL",
        "EDGE",
        "EDGES",
        "CORNER",
        "CORNERS",
        "SHARP",
        "DEBURR",
        "AND",
        "OTHER",
        "UNMARKED",
        "RADIUS",
        "ROUND",
        "ROUNDED",
        "TO",
        "OUTER",
        "INNER",
        "OUTSIDE",
        "INSIDE",
        "EXTERNAL",
        "INTERNAL",
        "MACHINED"
    };

    private static final List<String> PROCESSES = List.of(
            "PASSIVATE",
            "ANODIZE",
            "ANODISE",
            "PLATE",
            "COAT",
            "PAINT",
            "PRIME",
            "PHOSPHATE",
            "CHROMATE",
            "NITRIDE",
            "CARBURIZE",
            "CARBURISE",
            "HARDEN",
            "TEMPER",
            "ANNEAL",
            "AGE",
            "SOLUTION",
            "HEAT",
            "STRESS",
            "SHOT",
            "PEEN",
            "PENETRANT",
            "FLUORESCENT",
            "MAGNETIC",
            "RADIOGRAPHIC",
            "ULTRASONIC",
            "WELD",
            "BRAZE",
            "ETCH",
            "PICKLE",
            "BLACK",
            "ELECTROPOLISH",
            "CADMIUM",
            "CHROME",
            "NICKEL",
            "ZINC",
            "SILVER",
            "COPPER",
            "HIP");
    private static final String[] NO_NOTE = {
        "MAX",
        "MAXIMUM",
        "MIN",
        "MINIMUM",
        "DIA",
        "DIAM",
        "DIAMETER",
        "RAD",
        "RADIUS",
        "THRU",
        "THROUGH",
        "TYP",
        "TYPICAL",
        "REF",
        "REFERENCE",
        "BSC",
        "BASIC",
        "TED",
        "DEPTH",
        "DEEP",
        "CSK",
        "CBORE",
        "C'BORE",
        "C'SINK",
        "CSINK",
        "COUNTERBORE",
        "COUNTERSINK",
        "SPOTFACE",
        "S'FACE",
        "PLACES",
        "PLACE",
        "DEG",
        "SQUARE",
        "CHAMFER",
        "CHAM",
        "FULL",
        "HRC",
        "HRB",
        "HRA",
        "HBW",
        "HBS",
        "HRN",
        "ACME",
        "UNC",
        "UNF",
        "UNEF",
        "STUB"
    };

    private final Tokens row;
    private final Unit ofDrawing;

    WordsReader(Tokens row, Unit ofDrawing) {
        this.row = row;
        this.ofDrawing = ofDrawing;
    }

    /** Whether it begins with a word of a sentence, and no word that stands at sizes. */
    static boolean isNext(Tokens row) {
        Token first = row.peek();
        boolean letters = first.isWord()
                && !first.isWord(NO_NOTE)
                && (first.capitals().length() >= SHORTEST || isShortBeforeAWord(row));
        return letters && !row.peek(1).isFigure() || letters && isOfEdges(row) || letters && isProcess(first);
    }

    /** {@code NO CHATTER}. */
    private static boolean isShortBeforeAWord(Tokens row) {
        Token next = row.peek(1);
        return row.peek().capitals().length() == SHORTEST - 1
                && !row.peek().isWord(Symbols.RADII)
                && next.isWord()
                && next.capitals().length() >= SHORTEST
                && !next.isWord(NO_NOTE);
    }

    private static boolean isOfEdges(Tokens row) {
        return row.rest().stream().anyMatch(token -> EDGES.contains(token.capitals()));
    }

    private static boolean isProcess(Token first) {
        return PROCESSES.contains(first.capitals());
    }

    CalloutPart read() {
        if (isOfEdges(row) && row.rest().stream().anyMatch(Token::isFigure)) {
            return edge();
        }
        if (row.rest().stream().anyMatch(WordsReader::isOfASize) || hasAWidth()) {
            throw new Refused("model.callout.size-among-words");
        }
        CalloutKind kind = isProcess(row.peek()) ? CalloutKind.PROCESS : CalloutKind.NOTE;
        row.skip(row.rest().size());
        return CalloutPart.of(kind);
    }

    /** A figure with a point, and the signs and words of a tolerance. */
    private static boolean isOfASize(Token token) {
        return token.isFigure() && token.text().contains(".")
                || token.is('±')
                || token.is('⌀')
                || token.is('°')
                || token.isWord(HardnessReader.SCALES)
                || token.isWord("MAX", "MIN", "MM", "MAXIMUM", "MINIMUM");
    }

    /** {@code RELIEF 3 WIDE}. */
    private boolean hasAWidth() {
        return row.rest().stream().anyMatch(Token::isFigure)
                && row.rest().stream().anyMatch(token -> token.isWord("WIDE", "DEEP", "LONG", "HIGH", "THICK"));
    }

    private CalloutPart edge() {
        SizeReader sizes = new SizeReader(row, ofDrawing);
        while (row.peek().isWord() && !row.peek().isWord("MAX", "MIN", "R")) {
            if (!row.peek().isWord(OF_AN_EDGE)) {
                throw new Refused("model.callout.size-among-words");
            }
            row.next();
        }
        row.accept("R");
        return CalloutPart.of(CalloutKind.EDGE, sizes.read(sizes.boundBefore()));
    }
}
