package org.tenthwise.model.callout;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.tenthwise.model.compute.thread.limits.LimitsBasis;
import org.tenthwise.model.compute.thread.limits.ThreadLimits;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.thread.ThreadDesignation;
import org.tenthwise.model.thread.ThreadSide;
import org.tenthwise.model.tolerance.Origin;
import org.tenthwise.model.words.Message;
import org.tenthwise.model.words.Refused;

/**
 * Reads the designation of a screw thread. Without a class, or with one that does not tell the screw from the nut, it
 * gets no limits: they are not assumed. Limits are of the pitch diameter, in the unit of the standard.
 */
final class ThreadReader {

    private static final String[] SERIES = {
        "UN", "UNC", "UNF", "UNEF", "UNS", "UNR", "UNRC", "UNRF", "UNREF", "UNRS", "ACME", "STUB"
    };
    private static final List<String> EXTERNAL = List.of("EXT", "EXTERNAL");
    private static final List<String> INTERNAL = List.of("INT", "INTERNAL");
    private static final String FIGURE = "(?:\\d{1,4}(?:\\.\\d{1,5})?|\\.\\d{1,5})";
    private static final Pattern WITHOUT_CLASS = Pattern.compile("(?i)(?:M ?" + FIGURE + "(?: ?[x*] ?(?:Ph ?" + FIGURE
            + " ?P ?)?" + FIGURE + ")?|Tr ?" + FIGURE + " ?[x*] ?" + FIGURE + "(?: ?\\(? ?P ?" + FIGURE
            + " ?\\)?)?|[\\d#No./ -]+(?:UNR?[CFS]|UNR?EF|UNR?|STUB[- ]ACME|ACME))(?:[- ]*LH)?");
    private static final Pattern PITCH_WITHOUT_X = Pattern.compile("(?i)M ?" + FIGURE + " " + FIGURE + "(?:[- ].*)?");

    private static final Pattern DIAMETER_BY =
            Pattern.compile("(?i)M ?(" + FIGURE + ") ?x ?(" + FIGURE + ")(?:[- ].*)?");

    private final Tokens row;

    ThreadReader(Tokens row) {
        this.row = row;
    }

    /** Whether a thread is designated here. */
    static boolean isNext(Tokens row) {
        if (row.peek().isWord("M", "TR", "MJ") && row.peek(1).isFigure()) {
            return true;
        }
        boolean size = row.peek().isFigure() || row.peek().is('#') || row.peek().isWord("NO");
        return size && row.rest().stream().anyMatch(token -> token.isWord(SERIES));
    }

    CalloutPart read() {
        int tokens = length();
        String drawn = row.text(tokens);
        row.skip(tokens);
        Optional<ThreadSide> side = side();
        if (PITCH_WITHOUT_X.matcher(drawn).matches()) {
            throw new Refused("model.callout.pitch-without-x", drawn);
        }
        requirePitch(drawn);
        if (WITHOUT_CLASS.matcher(drawn).matches()) {
            return CalloutPart.of(CalloutKind.THREAD);
        }
        ThreadDesignation read = ThreadDesignation.read(drawn);
        ThreadDesignation known = side.map(read::on).orElse(read);
        return known.side().isPresent() ? part(known, drawn) : CalloutPart.of(CalloutKind.THREAD);
    }

    /** {@code M12x20}: no pitch is a third of the diameter or more, but a length is. */
    private static void requirePitch(String drawn) {
        Matcher sizes = DIAMETER_BY.matcher(drawn);
        if (sizes.matches()) {
            BigDecimal diameter = new BigDecimal(sizes.group(1));
            BigDecimal behind = new BigDecimal(sizes.group(2));
            if (behind.multiply(BigDecimal.valueOf(3)).compareTo(diameter) >= 0) {
                throw new Refused("model.callout.pitch-or-length", drawn, sizes.group(2));
            }
        }
    }

    private Optional<ThreadSide> side() {
        if (EXTERNAL.contains(row.peek().capitals())) {
            row.next();
            return Optional.of(ThreadSide.EXTERNAL);
        }
        if (INTERNAL.contains(row.peek().capitals())) {
            row.next();
            return Optional.of(ThreadSide.INTERNAL);
        }
        return Optional.empty();
    }

    /** How many pieces the designation has: up to a depth, a count or another part. */
    private int length() {
        int ahead = 1;
        while (!isStop(ahead)) {
            ahead++;
        }
        return ahead;
    }

    private boolean isStop(int ahead) {
        Token token = row.peek(ahead);
        boolean sign = token.type() == Token.Type.SIGN
                && "↧⌴⌵⌀,;(<⟨ⒺⒻ".indexOf(token.text().charAt(0)) >= 0;
        boolean lead = token.is('(') && row.peek(ahead + 1).isWord("P");
        boolean count = token.isFigure() && row.peek(ahead + 1).isWord("PL", "PLS", "PLACES", "PLCS");
        return token.type() == Token.Type.END
                || token.type() == Token.Type.BREAK
                || sign && !lead
                || count
                || isDepthBehindTimes(ahead)
                || EXTERNAL.contains(token.capitals())
                || INTERNAL.contains(token.capitals())
                || token.isWord(Symbols.THROUGH)
                || token.isWord(Symbols.COUNTERSINKS)
                || token.isWord(Symbols.COUNTERBORES)
                || token.isWord(Symbols.DEPTHS)
                || token.isWord("TYP");
    }

    /** {@code X 12 DEEP}: the X is no pitch's where a depth is said behind it. */
    private boolean isDepthBehindTimes(int ahead) {
        boolean times = row.peek(ahead).isWord("X") && row.peek(ahead).blankBefore() && ahead > 2;
        int behind = ahead + 1;
        while (times && row.peek(behind).type() != Token.Type.END) {
            if (row.peek(behind).isWord(Symbols.DEPTHS)) {
                return true;
            }
            if (row.peek(behind).isWord("X")) {
                return false;
            }
            behind++;
        }
        return false;
    }

    private static CalloutPart part(ThreadDesignation known, String drawn) {
        ThreadLimits limits = ThreadLimits.of(known);
        if (limits.standing() == LimitsBasis.PROPOSAL) {
            throw new Refused("model.callout.thread-not-listed", drawn);
        }
        Unit unit = limits.unit();
        Origin origin =
                new Origin(drawn, Message.of("as-said", known.thread().form().limitsStandard()));
        return new CalloutPart(
                CalloutKind.THREAD,
                Optional.of(figure(known.thread().basicPitchDiameter(), limits)),
                Optional.of(figure(limits.pitchMin(), limits)),
                Optional.of(figure(limits.pitchMax(), limits)),
                Optional.of(unit),
                Optional.of(1),
                Optional.of(origin));
    }

    private static BigDecimal figure(Length size, ThreadLimits limits) {
        return size.in(limits.unit()).setScale(limits.places(), RoundingMode.HALF_EVEN);
    }
}
