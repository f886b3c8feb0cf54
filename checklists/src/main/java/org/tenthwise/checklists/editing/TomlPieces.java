package org.tenthwise.checklists.editing;

import java.util.ArrayList;
import java.util.List;

/**
 * Cuts a text that is known to be TOML into its tables and keys, so that together they are the text again. TOML 1.0,
 * toml.io.
 */
final class TomlPieces {

    private final String text;
    private int at;

    TomlPieces(String text) {
        this.text = text;
    }

    /** The head first, then a table for every header. */
    List<TableText> tables() {
        List<TableText> tables = new ArrayList<>();
        String lead = "";
        String header = "";
        List<Pair> pairs = new ArrayList<>();
        while (true) {
            String gap = gap();
            if (at == text.length()) {
                tables.add(new TableText(lead, header, pairs, gap));
                return tables;
            }
            if (text.charAt(at) == '[') {
                int own = header.isEmpty() && pairs.isEmpty() ? gap.length() : ofTableBefore(gap);
                tables.add(new TableText(lead, header, pairs, gap.substring(0, own)));
                lead = gap.substring(own);
                header = line();
                pairs = new ArrayList<>();
            } else {
                pairs.add(pair(gap));
            }
        }
    }

    /**
     * How much of what stands between two tables belongs to the first: all above the first blank line, if there is one.
     */
    private static int ofTableBefore(String gap) {
        int start = 0;
        while (start < gap.length()) {
            int end = gap.indexOf('\n', start);
            int next = end < 0 ? gap.length() : end + 1;
            if (gap.substring(start, next).isBlank()) {
                return start;
            }
            start = next;
        }
        return 0;
    }

    /** Blank lines, comments, and the blanks before a key. */
    private String gap() {
        int start = at;
        while (at < text.length() && (Character.isWhitespace(text.charAt(at)) || text.charAt(at) == '#')) {
            if (text.charAt(at) == '#') {
                toEndOfLine();
            } else {
                at++;
            }
        }
        return text.substring(start, at);
    }

    private Pair pair(String lead) {
        int start = at;
        while (text.charAt(at) != '=') {
            if (text.charAt(at) == '"' || text.charAt(at) == '\'') {
                quoted();
            } else {
                at++;
            }
        }
        String key = text.substring(start, at).strip();
        at++;
        blanks();
        String name = text.substring(start, at);
        int value = at;
        value();
        return new Pair(lead, key, name, text.substring(value, at), line());
    }

    private void blanks() {
        while (text.charAt(at) == ' ' || text.charAt(at) == '\t') {
            at++;
        }
    }

    private void value() {
        switch (text.charAt(at)) {
            case '"', '\'' -> quoted();
            case '[', '{' -> bracketed();
            default -> bare();
        }
    }

    /** A list or an inline table, with all that stands in it. */
    private void bracketed() {
        int depth = 0;
        do {
            switch (text.charAt(at)) {
                case '"', '\'' -> quoted();
                case '#' -> toEndOfLine();
                case '[', '{' -> {
                    depth++;
                    at++;
                }
                case ']', '}' -> {
                    depth--;
                    at++;
                }
                default -> at++;
            }
        } while (depth > 0);
    }

    private void bare() {
        int end = at;
        while (at < text.length() && text.charAt(at) != '#' && text.charAt(at) != '\n') {
            if (!Character.isWhitespace(text.charAt(at))) {
                end = at + 1;
            }
            at++;
        }
        at = end;
    }

    /** Text in quotes of either kind, single or three on either side. */
    private void quoted() {
        String quote = text.substring(at, at + 1);
        String three = quote.repeat(3);
        String closing = text.startsWith(three, at) ? three : quote;
        at += closing.length();
        while (!text.startsWith(closing, at)) {
            at += quote.equals("\"") && text.charAt(at) == '\\' ? 2 : 1;
        }
        at += closing.length();
        while (closing.equals(three) && text.startsWith(quote, at)) {
            at++;
        }
    }

    private String line() {
        int start = at;
        toEndOfLine();
        if (at < text.length()) {
            at++;
        }
        return text.substring(start, at);
    }

    private void toEndOfLine() {
        int end = text.indexOf('\n', at);
        at = end < 0 ? text.length() : end;
    }
}
