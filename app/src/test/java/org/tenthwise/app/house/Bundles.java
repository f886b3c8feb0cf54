package org.tenthwise.app.house;

import com.ibm.icu.text.MessagePattern;
import com.ibm.icu.text.MessagePattern.Part;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.tenthwise.model.words.Words;

/** The texts of one language against those of another. */
final class Bundles {

    private Bundles() {}

    /** What {@code other} has not, has beyond, or fills with other values than {@code one}. */
    static List<String> differences(Map<String, String> one, Map<String, String> other) {
        List<String> differences = new ArrayList<>();
        Set<String> keys = new TreeSet<>(one.keySet());
        keys.addAll(other.keySet());
        for (String key : keys) {
            if (!one.containsKey(key) || !other.containsKey(key)) {
                differences.add(key + (one.containsKey(key) ? " is missing" : " is one too many"));
            } else if (!gaps(one.get(key)).equals(gaps(other.get(key)))) {
                differences.add("%s takes %s, not %s".formatted(key, gaps(other.get(key)), gaps(one.get(key))));
            } else if (!counted(one.get(key)).equals(counted(other.get(key)))) {
                differences.add("%s counts %s, not %s".formatted(key, counted(other.get(key)), counted(one.get(key))));
            } else if (parts(one.get(key)) != parts(other.get(key))) {
                differences.add("%s has %d parts, not %d".formatted(key, parts(other.get(key)), parts(one.get(key))));
            }
        }
        return differences;
    }

    /** How many ready answers or sentences a text is a list of. */
    private static int parts(String text) {
        return text.split(" \\| ", -1).length;
    }

    /** The gaps a text has another form for according to their number. */
    private static Set<String> counted(String text) {
        MessagePattern pattern = new MessagePattern(text);
        Set<String> counted = new TreeSet<>();
        for (int i = 0; i < pattern.countParts(); i++) {
            if (pattern.getPartType(i) == Part.Type.ARG_START
                    && pattern.getPart(i).getArgType() == MessagePattern.ArgType.PLURAL) {
                counted.add(pattern.getSubstring(pattern.getPart(i + 1)));
            }
        }
        return counted;
    }

    /**
     * The forms a plural of a text lacks that numbers of its language take, each with its gap.
     *
     * @param forms the kinds of number of the language
     */
    static List<String> formsMissing(String text, Set<String> forms) {
        MessagePattern pattern = new MessagePattern(text);
        List<String> missing = new ArrayList<>();
        for (int i = 0; i < pattern.countParts(); i++) {
            if (pattern.getPartType(i) == Part.Type.ARG_START
                    && pattern.getPart(i).getArgType() == MessagePattern.ArgType.PLURAL) {
                String gap = pattern.getSubstring(pattern.getPart(i + 1));
                Set<String> has = selectors(pattern, i);
                forms.stream()
                        .filter(form -> !has.contains(form) && !(form.equals("one") && has.contains("=1")))
                        .forEach(form -> missing.add(gap + " " + form));
            }
        }
        return missing;
    }

    private static Set<String> selectors(MessagePattern pattern, int gap) {
        Set<String> selectors = new TreeSet<>();
        for (int i = gap + 1; i < pattern.getLimitPartIndex(gap); i++) {
            Part.Type type = pattern.getPartType(i);
            if (type == Part.Type.ARG_SELECTOR) {
                selectors.add(pattern.getSubstring(pattern.getPart(i)));
            } else if (type == Part.Type.MSG_START) {
                i = pattern.getLimitPartIndex(i);
            }
        }
        return selectors;
    }

    static Map<String, String> english() {
        return Words.textsOf("");
    }

    /**
     * The names of what a text is filled with.
     *
     * @throws IllegalArgumentException if it cannot be read, or has a gap of a kind that {@link Words} does not fill
     */
    static Set<String> gaps(String text) {
        MessagePattern pattern = new MessagePattern(text);
        Set<String> gaps = new TreeSet<>();
        for (int i = 0; i < pattern.countParts(); i++) {
            Part.Type type = pattern.getPartType(i);
            if (type == Part.Type.ARG_TYPE
                    && !pattern.getSubstring(pattern.getPart(i)).equals("small")) {
                throw new IllegalArgumentException(text);
            }
            if (type == Part.Type.ARG_NAME || type == Part.Type.ARG_NUMBER) {
                gaps.add(pattern.getSubstring(pattern.getPart(i)));
            }
        }
        return gaps;
    }
}
