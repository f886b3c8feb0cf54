package org.tenthwise.app.text;

import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.tenthwise.checklists.catalogue.DemoPart;
import org.tenthwise.model.words.Words;

/** German, and what is shown in English beside it. */
public final class German {

    private static final Pattern WORD = Pattern.compile("(?<![\\p{L}\\p{N}])\\p{L}{2,}(?![\\p{L}\\p{N}])");

    /** Words of the English texts that no German text has, and no plan: they are left where they are seen. */
    private static final Set<String> ENGLISH_ALONE = englishAlone();

    private static final Set<String> KNOWN = known();

    private German() {}

    public static Words words() {
        return Words.of(Locale.GERMAN);
    }

    /**
     * Words in {@code shown} that English has alone.
     *
     * @param data what else is shown as it was given
     */
    public static List<String> english(String shown, String data) {
        Set<String> given = words(List.of(data));
        return words(List.of(shown)).stream()
                .filter(word -> ENGLISH_ALONE.contains(word) && !given.contains(word))
                .sorted()
                .toList();
    }

    /**
     * Words in {@code shown} that no text and no plan has, nor what was given: parts of others, that did not fit.
     *
     * @param data what else is shown as it was given
     */
    public static List<String> broken(String shown, String data) {
        Set<String> given = words(List.of(data));
        return words(List.of(shown)).stream()
                .filter(word -> !KNOWN.contains(word) && !given.contains(word))
                .sorted()
                .toList();
    }

    private static Set<String> known() {
        Set<String> known = words(Words.textsOf("").values());
        known.addAll(words(Words.textsOf("_de").values()));
        known.addAll(
                words(Arrays.stream(DemoPart.values()).map(DemoPart::planText).toList()));
        return Set.copyOf(known);
    }

    private static Set<String> englishAlone() {
        Set<String> alone = words(Words.textsOf("").values());
        alone.removeAll(words(Words.textsOf("_de").values()));
        alone.removeAll(
                words(Arrays.stream(DemoPart.values()).map(DemoPart::planText).toList()));
        return Set.copyOf(alone);
    }

    private static Set<String> words(Collection<String> texts) {
        return texts.stream()
                .flatMap(German::wordsOf)
                .map(word -> word.toLowerCase(Locale.ROOT))
                .collect(Collectors.toSet());
    }

    private static Stream<String> wordsOf(String text) {
        return WORD.matcher(text).results().map(MatchResult::group);
    }
}
