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
            }
        }
        return differences;
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
