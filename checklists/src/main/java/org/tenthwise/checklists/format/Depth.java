package org.tenthwise.checklists.format;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * How deep tables and lists lie in each other. No parser need be trusted with a text that goes deeper than a person
 * writes.
 */
final class Depth {

    static final int DEEPEST = 32;
    /** A key or a header as it begins a line, of names with points between them. */
    private static final Pattern DOTTED = Pattern.compile(
            "(?m)^[ \\t]*\\[{0,2}(?:[ \\t]*[A-Za-z0-9_\"'-]++[ \\t]*+\\.){%s,%s}+".formatted(DEEPEST, DEEPEST));

    /** A bracket, or a text or remark in which a bracket is none. */
    private static final Pattern BRACKET = Pattern.compile("(?s)\"\"\".*?\"\"\"|'''.*?'''"
            + "|\"[^\"\\\\\\n]*+(?:\\\\.[^\"\\\\\\n]*+)*+\"|'[^'\\n]*+'|#[^\\n]*+|(?<open>[\\[{])|(?<shut>[]}])");

    private Depth() {}

    /** Whether a key, a header or the brackets go too deep, as they stand in the text. */
    static boolean isTooDeep(String text) {
        if (DOTTED.matcher(text).find()) {
            return true;
        }
        int depth = 0;
        Matcher found = BRACKET.matcher(text);
        while (found.find() && depth <= DEEPEST) {
            depth += found.group("open") != null ? 1 : found.group("shut") != null && depth > 0 ? -1 : 0;
        }
        return depth > DEEPEST;
    }
}
