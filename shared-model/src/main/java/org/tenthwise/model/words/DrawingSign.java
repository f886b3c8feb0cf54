package org.tenthwise.model.words;

import java.lang.Character.UnicodeBlock;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * A sign of drawings that common lettering lacks, said as the trade says it: a box in place of a counterbore reads as a
 * square.
 *
 * <p>What each stands for: ISO 1101:2017, tables 1 to 3; ISO 129-1:2018, 7.4; ASME Y14.5-2018, section 6; where two are
 * written for one, both. The signs of the diameter are lettered as the letter that every drawing office takes for it.
 * Of any other sign of such a kind it is said that the drawing has it: no box stands where something is asked for.
 */
enum DrawingSign {
    DIAMETER(0x2300, 0x2205),
    SQUARE(0x25A1, 0x25A2),
    COUNTERBORE(0x2334),
    COUNTERSINK(0x2335),
    DEPTH(0x21A7),
    TAPER(0x2332),
    SLOPE(0x2333),
    ORIGIN(0x2331),
    POSITION(0x2316, 0x2295),
    CONCENTRICITY(0x25CE),
    SYMMETRY(0x232F),
    STRAIGHTNESS(0x23E4),
    FLATNESS(0x23E5, 0x25B1),
    ROUNDNESS(0x25CB, 0x25EF),
    CYLINDRICITY(0x232D),
    LINE_OR_ARC(0x2312),
    SURFACE(0x2313),
    ALL_AROUND(0x232E),
    PARALLEL(0x2225),
    PERPENDICULAR(0x27C2, 0x22A5),
    ANGLE(0x2220),
    RUN_OUT(0x2197),
    TOTAL_RUN_OUT(0x2330, 0x21D7),
    BETWEEN(0x2194),
    ARROW(0x2192);

    private static final int CIRCLED_ONE = 0x2460;
    private static final int CIRCLED_TWENTY = 0x2473;
    private static final int CIRCLED_A = 0x24B6;
    private static final int CIRCLED_Z = 0x24CF;
    private static final Pattern END_OF_A_WORD = Pattern.compile("[^\\s(\\[/-]$");
    /** A letter, a figure with what may stand before it, or a sign that is said. */
    private static final Pattern BEGIN_OF_A_WORD = Pattern.compile("[\\p{L}\\p{N}⌀∅(\\[]|[±+−-]?\\.?\\d");

    private static final Map<Integer, DrawingSign> BY_SIGN = new HashMap<>();

    static {
        for (DrawingSign sign : values()) {
            sign.written.forEach(codePoint -> BY_SIGN.put(codePoint, sign));
        }
    }

    /** Where Unicode keeps signs that common lettering lacks, but for a few of arithmetic. */
    private static final Set<UnicodeBlock> BLOCKS_OF_SIGNS = Set.of(
            UnicodeBlock.ARROWS,
            UnicodeBlock.MATHEMATICAL_OPERATORS,
            UnicodeBlock.MISCELLANEOUS_TECHNICAL,
            UnicodeBlock.ENCLOSED_ALPHANUMERICS,
            UnicodeBlock.GEOMETRIC_SHAPES,
            UnicodeBlock.MISCELLANEOUS_SYMBOLS,
            UnicodeBlock.MISCELLANEOUS_MATHEMATICAL_SYMBOLS_A,
            UnicodeBlock.MISCELLANEOUS_MATHEMATICAL_SYMBOLS_B,
            UnicodeBlock.SUPPLEMENTAL_MATHEMATICAL_OPERATORS);

    private static final String OF_ARITHMETIC = "−√≤≥≈≠∞∆∑∏∫∂";

    private final List<Integer> written;

    DrawingSign(Integer... codePoints) {
        this.written = List.of(codePoints);
    }

    /** {@code text} with words for signs, and a space wherever a word would run together with what stands beside it. */
    static String readable(String text, Words words) {
        if (text.codePoints().allMatch(sign -> UnicodeBlock.of(sign) == UnicodeBlock.BASIC_LATIN)) {
            return text;
        }
        StringBuilder readable = new StringBuilder();
        boolean wordBefore = false;
        int at = 0;
        while (at < text.length()) {
            int sign = text.codePointAt(at);
            Optional<String> said = said(sign, words);
            boolean word = said.filter(shown -> shown.length() > 1).isPresent();
            boolean afterAWord =
                    !readable.isEmpty() && END_OF_A_WORD.matcher(readable).find();
            boolean beforeAWord =
                    word || BEGIN_OF_A_WORD.matcher(text.substring(at)).lookingAt();
            if (afterAWord && beforeAWord && (word || wordBefore)) {
                readable.append(' ');
            }
            readable.append(said.orElseGet(() -> Character.toString(sign)));
            wordBefore = word;
            at += Character.charCount(sign);
        }
        return readable.toString();
    }

    /** A letter or a number in a circle keeps its place in brackets. */
    private static Optional<String> said(int sign, Words words) {
        if (sign >= CIRCLED_A && sign <= CIRCLED_Z) {
            return Optional.of(words.say("sign.circled", Character.toString('A' + sign - CIRCLED_A)));
        }
        if (sign >= CIRCLED_ONE && sign <= CIRCLED_TWENTY) {
            return Optional.of(words.say("sign.circled", sign - CIRCLED_ONE + 1));
        }
        return Optional.ofNullable(BY_SIGN.get(sign))
                .map(known -> words.say("sign", known))
                .or(() -> isAnyOther(sign) ? Optional.of(words.say("sign.other")) : Optional.empty());
    }

    private static boolean isAnyOther(int sign) {
        return BLOCKS_OF_SIGNS.contains(UnicodeBlock.of(sign)) && OF_ARITHMETIC.indexOf(sign) < 0;
    }
}
