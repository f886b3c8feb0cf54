package org.tenthwise.model.words;

import com.ibm.icu.text.MessagePattern;
import com.ibm.icu.text.MessagePattern.Part;
import java.util.Locale;
import java.util.Map;

/**
 * One text, parsed once by ICU. Its own formatter would group the digits of a number and round it, and a figure of this
 * trade stays as it is; so the values are filled in here.
 */
final class Phrase {

    private static final String ANY = "other";

    /** A text that begins and ends, and has nothing to be filled in or left out between. */
    private static final int NO_GAP = 2;

    private final String key;
    private final MessagePattern pattern;

    Phrase(String key, String text) {
        this.key = key;
        this.pattern = new MessagePattern(text);
    }

    String say(Map<String, Object> values, Words words) {
        if (pattern.countParts() == NO_GAP) {
            return pattern.getPatternString();
        }
        StringBuilder out = new StringBuilder();
        append(0, values, "", words, out);
        return out.toString();
    }

    /** What begins at part {@code start}; {@code count} is the number of the plural around it. */
    private void append(int start, Map<String, Object> values, String count, Words words, StringBuilder out) {
        int from = pattern.getPart(start).getLimit();
        for (int i = start + 1; ; i++) {
            Part part = pattern.getPart(i);
            out.append(pattern.getPatternString(), from, part.getIndex());
            switch (part.getType()) {
                case MSG_LIMIT -> {
                    return;
                }
                case REPLACE_NUMBER -> out.append(count);
                case ARG_START -> {
                    fill(i, values, words, out);
                    i = pattern.getLimitPartIndex(i);
                }
                default -> {
                    // apostrophes before braces, and what would quote the others
                }
            }
            from = pattern.getPart(i).getLimit();
        }
    }

    private void fill(int gap, Map<String, Object> values, Words words, StringBuilder out) {
        String name = pattern.getSubstring(pattern.getPart(gap + 1));
        Object value = values.get(name);
        if (value == null && pattern.getPartType(gap + 1) == Part.Type.ARG_NAME) {
            value = words.named(name).orElse(null);
        }
        if (value == null) {
            throw new IllegalArgumentException("Nothing is given for gap %s of %s".formatted(name, key));
        }
        String shown = words.show(value);
        switch (pattern.getPart(gap).getArgType()) {
            case NONE -> out.append(shown);
            case SIMPLE -> out.append(begunSmall(shown));
            case SELECT -> {
                String selector = shown.replace('-', '_');
                append(chosen(gap + 2, selector, selector), values, shown, words, out);
            }
            case PLURAL -> {
                String kind = words.plurals().select(((Number) value).doubleValue());
                append(chosen(gap + 2, "=" + shown, kind), values, shown, words, out);
            }
            default ->
                throw new IllegalArgumentException("The gap %s of %s is of no kind known here".formatted(name, key));
        }
    }

    /** A sentence as it goes on behind a colon; a sign or a name of one letter stays as it is. */
    private static String begunSmall(String sentence) {
        boolean word = sentence.length() > 1 && Character.isLowerCase(sentence.charAt(1));
        return word ? sentence.substring(0, 1).toLowerCase(Locale.ROOT) + sentence.substring(1) : sentence;
    }

    /** Where the text begins that is chosen for a value: that for it exactly, else that of its kind, else any other. */
    private int chosen(int first, String exactly, String kind) {
        int any = -1;
        int ofKind = -1;
        for (int i = first; pattern.getPartType(i) == Part.Type.ARG_SELECTOR; ) {
            String selector = pattern.getSubstring(pattern.getPart(i));
            int text = pattern.getPartType(i + 1) == Part.Type.MSG_START ? i + 1 : i + 2;
            if (selector.equals(exactly)) {
                return text;
            }
            any = selector.equals(ANY) ? text : any;
            ofKind = selector.equals(kind) ? text : ofKind;
            i = pattern.getLimitPartIndex(text) + 1;
        }
        return ofKind >= 0 ? ofKind : any;
    }
}
