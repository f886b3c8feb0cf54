package org.tenthwise.model.callout;

import java.util.Optional;
import org.tenthwise.model.words.Refused;

/**
 * How many alike a callout stands for: {@code 4X} or {@code 4 PLACES} before it, {@code 4 PL} or {@code (4X)} behind.
 */
final class CalloutCount {

    private static final String[] PLACES = {"PL", "PLS", "PLC", "PLCS", "PLACE", "PLACES"};
    private static final int MOST = 9999;

    private CalloutCount() {}

    /**
     * The count a callout begins with. There is no blank before its X; with one it is a size by another.
     *
     * @throws Refused if it is none, nothing follows, or what follows could as well be the other of two sizes
     */
    static Optional<Integer> leading(Tokens row) {
        Token figure = row.peek();
        Token sign = row.peek(1);
        boolean places = sign.isWord(PLACES);
        if (!figure.isWhole() || !(places || sign.isWord("X") && !sign.blankBefore())) {
            return Optional.empty();
        }
        Token next = row.peek(2);
        if (next.isFigure() && !sign.blankAfter()) {
            throw new Refused("model.callout.count-or-by", figure.text(), next.text());
        }
        if (next.type() == Token.Type.END) {
            throw new Refused("model.callout.count-alone", figure.text());
        }
        row.skip(2);
        return Optional.of(count(figure));
    }

    /** Whether a count stands here, behind the size. */
    static boolean isBehind(Tokens row) {
        int from = row.peek().isWord("IN") ? 1 : 0;
        boolean places = row.peek(from).isWhole() && row.peek(from + 1).isWord(PLACES);
        return places || row.peek().isWhole() && isTimesAtEnd(row, 0) || isInBrackets(row);
    }

    private static boolean isTimesAtEnd(Tokens row, int ahead) {
        Token sign = row.peek(ahead + 1);
        return sign.isWord("X") && !sign.blankBefore() && row.peek(ahead + 2).type() == Token.Type.END;
    }

    static boolean isInBrackets(Tokens row) {
        return row.peek().is('(')
                && row.peek(1).isWhole()
                && (row.peek(2).isWord("X") || row.peek(2).isWord(PLACES))
                && row.peek(3).is(')');
    }

    /** Takes the count behind the size, where there is one. */
    static Optional<Integer> behind(Tokens row) {
        if (!isBehind(row)) {
            return Optional.empty();
        }
        row.accept("IN");
        boolean bracket = row.accept('(');
        Token figure = row.next();
        row.skip(bracket ? 2 : 1);
        return Optional.of(count(figure));
    }

    private static int count(Token figure) {
        int count = FigureReader.decimal(figure).intValue();
        if (count == 0) {
            throw new Refused("model.callout.count-nought");
        }
        if (count > MOST) {
            throw new Refused("model.callout.too-many-digits", figure.text());
        }
        return count;
    }
}
