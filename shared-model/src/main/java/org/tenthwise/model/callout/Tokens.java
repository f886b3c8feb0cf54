package org.tenthwise.model.callout;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.tenthwise.model.callout.Token.Type;
import org.tenthwise.model.words.Refused;

/** The pieces of a callout in their order, and how far they are read. */
final class Tokens {

    private final String text;
    private final List<Token> all;
    private int at;

    private Tokens(String text, List<Token> all) {
        this.text = text;
        this.all = all;
    }

    /** @param tidy text with one sign for each that looks alike */
    static Tokens of(String tidy) {
        List<Token> all = new ArrayList<>();
        int at = 0;
        while (at < tidy.length()) {
            int end = end(tidy, at);
            Type type = type(tidy.charAt(at));
            if (type != Type.END) {
                all.add(token(tidy, type, at, end));
            }
            at = end;
        }
        all.add(new Token(Type.END, "", tidy.length(), tidy.length(), true, true));
        return new Tokens(tidy, all);
    }

    private static Token token(String tidy, Type type, int start, int end) {
        boolean before = start == 0 || Character.isWhitespace(tidy.charAt(start - 1));
        boolean after = end == tidy.length() || Character.isWhitespace(tidy.charAt(end));
        return new Token(type, tidy.substring(start, end), start, end, before, after);
    }

    /** A blank is of no token, here called the end. */
    private static Type type(char sign) {
        if (sign == '\n') {
            return Type.BREAK;
        }
        if (Character.isWhitespace(sign)) {
            return Type.END;
        }
        if (isDigit(sign) || sign == '.') {
            return Type.FIGURE;
        }
        return Character.isLetter(sign) ? Type.WORD : Type.SIGN;
    }

    private static int end(String tidy, int start) {
        Type type = type(tidy.charAt(start));
        int end = start + 1;
        if (type == Type.FIGURE) {
            while (end < tidy.length() && type(tidy.charAt(end)) == Type.FIGURE) {
                end++;
            }
        } else if (type == Type.WORD && !isTimes(tidy, start)) {
            while (end < tidy.length() && isInWord(tidy, end)) {
                end++;
            }
            boolean stop = end < tidy.length()
                    && tidy.charAt(end) == '.'
                    && (end + 1 == tidy.length() || !isDigit(tidy.charAt(end + 1)));
            return stop ? end + 1 : end;
        }
        return end;
    }

    /** An X behind digits stands by itself, so that R and M may follow without a blank. */
    private static boolean isTimes(String tidy, int at) {
        return Character.toUpperCase(tidy.charAt(at)) == 'X' && at > 0 && isDigit(tidy.charAt(at - 1));
    }

    private static boolean isInWord(String tidy, int at) {
        char sign = tidy.charAt(at);
        boolean joins = sign == '\'' && at + 1 < tidy.length() && Character.isLetter(tidy.charAt(at + 1));
        return Character.isLetter(sign) || joins;
    }

    static boolean isDigit(char sign) {
        return sign >= '0' && sign <= '9';
    }

    Token peek() {
        return peek(0);
    }

    Token peek(int ahead) {
        return all.get(Math.min(at + ahead, all.size() - 1));
    }

    Token next() {
        Token token = peek();
        at = Math.min(at + 1, all.size() - 1);
        return token;
    }

    void skip(int tokens) {
        at = Math.min(at + tokens, all.size() - 1);
    }

    boolean accept(char sign) {
        boolean there = peek().is(sign);
        if (there) {
            next();
        }
        return there;
    }

    /** The word taken, if it is one of these. */
    Optional<Token> accept(String... words) {
        return peek().isWord(words) ? Optional.of(next()) : Optional.empty();
    }

    boolean acceptBreak() {
        boolean there = peek().type() == Type.BREAK;
        if (there) {
            next();
        }
        return there;
    }

    boolean atEnd() {
        return peek().type() == Type.END;
    }

    /** What is not read yet, as it stands. */
    List<Token> rest() {
        return all.subList(at, all.size() - 1);
    }

    /** From what is next to before the token {@code ahead}, as it stands. */
    String text(int ahead) {
        return text.substring(peek().start(), peek(ahead).start()).strip();
    }

    /** @throws Refused if something is left over */
    void requireEnd() {
        if (!atEnd()) {
            throw new Refused("model.callout.left-over", text.substring(peek().start()));
        }
    }
}
