package org.tenthwise.app.text;

import com.ibm.icu.text.MessagePattern;
import com.ibm.icu.text.MessagePattern.Part;
import java.util.ArrayDeque;
import java.util.Arrays;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.tenthwise.checklists.catalogue.DemoPart;
import org.tenthwise.model.words.Words;

/**
 * A language made of the English one: every letter has an accent, and every word of four letters or more is a third
 * longer. What is shown and has plain letters was not taken from the words.
 */
public final class MadeUpLanguage {

    /** What it is chosen by: art is any language that is made up, in ISO 639-2. */
    public static final Locale LOCALE = Locale.forLanguageTag("art");

    private static final String PLAIN = "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz";
    private static final String ACCENTED = "ÁБĆĎÉФĠĤÍĴĶĹḾŃÓÞŊŔŚŤÚЎŴЖÝŹáбćďéфġĥíĵķĺḿńóþŋŕśťúўŵжýź";
    private static final Pattern WORD = Pattern.compile("[A-Za-z]+");
    private static final Pattern PLAIN_WORD = Pattern.compile("(?<![\\p{L}\\p{N}])[A-Za-z]{3,}(?![\\p{L}\\p{N}])");
    private static final int LONG = 4;

    /** Which signs lie on the keys is no text: each stands by itself. */
    private static final String SIGNS = "letters.rows";

    /** Letters of this language alone; English has none of them. */
    private static final Pattern ACCENTED_WORD = Pattern.compile("[%s]+".formatted(ACCENTED + "ö"));

    private static final Set<String> VOCABULARY = vocabulary();

    /** Names, marks and terms of standards: what is data, or is written so in every language. */
    private static final Set<String> DATA = data();

    private MadeUpLanguage() {}

    public static Words words() {
        return new Words(Locale.ENGLISH, texts());
    }

    private static Map<String, String> texts() {
        Map<String, String> texts = new TreeMap<>();
        Words.textsOf("").forEach((key, text) -> texts.put(key, key.equals(SIGNS) ? text : of(text)));
        return texts;
    }

    /**
     * Words in {@code shown} that are plain English and no data.
     *
     * @param data what else is shown as it was given
     */
    public static List<String> plainEnglish(String shown, String data) {
        return plainWords(shown)
                .filter(word -> !DATA.contains(word) && !data.contains(word))
                .toList();
    }

    /** Words in {@code shown} that are parts of others: they did not fit. */
    public static List<String> broken(String shown) {
        return ACCENTED_WORD
                .matcher(shown)
                .results()
                .map(MatchResult::group)
                .filter(word -> !VOCABULARY.contains(word))
                .toList();
    }

    private static Set<String> vocabulary() {
        return texts().values().stream()
                .flatMap(text -> ACCENTED_WORD.matcher(text).results().map(MatchResult::group))
                .collect(Collectors.toUnmodifiableSet());
    }

    private static Stream<String> plainWords(String text) {
        return PLAIN_WORD.matcher(text).results().map(MatchResult::group);
    }

    /** A text with its words respelt, its gaps and what chooses between its parts left as they are. */
    private static String of(String text) {
        MessagePattern pattern = new MessagePattern(text);
        StringBuilder out = new StringBuilder();
        Deque<Boolean> isText = new ArrayDeque<>();
        int from = 0;
        for (int i = 0; i < pattern.countParts(); i++) {
            Part part = pattern.getPart(i);
            if (part.getIndex() >= from) { // the number of a choice =0 lies within its name
                String before = text.substring(from, part.getIndex());
                out.append(!isText.isEmpty() && isText.peek() ? respelt(before) : before);
                out.append(text, part.getIndex(), part.getLimit());
                from = part.getLimit();
            }
            switch (part.getType()) {
                case MSG_START -> isText.push(true);
                case ARG_START -> isText.push(false);
                case MSG_LIMIT, ARG_LIMIT -> isText.pop();
                default -> {
                    // no other part opens or closes anything
                }
            }
        }
        return out.append(text.substring(from)).toString();
    }

    private static String respelt(String text) {
        return WORD.matcher(text).replaceAll(found -> longer(accented(found.group())));
    }

    private static String accented(String word) {
        return word.chars()
                .mapToObj(letter -> String.valueOf(ACCENTED.charAt(PLAIN.indexOf(letter))))
                .collect(Collectors.joining());
    }

    private static String longer(String word) {
        return word.length() < LONG ? word : word + "ö".repeat(word.length() / 3);
    }

    private static Set<String> data() {
        Set<String> data = new HashSet<>(Set.of(
                "Tenthwise",
                "ISO",
                "ANSI",
                "ASME",
                "JCGM",
                "PDF",
                "CSV",
                "JSON",
                "QIF",
                "Jan",
                "Mar",
                "Nov",
                "Setter",
                "Inspector",
                "Lathe"));
        Arrays.stream(DemoPart.values())
                .map(part -> part.planText().replaceAll("(?m)^\\s*#.*$", ""))
                .flatMap(MadeUpLanguage::plainWords)
                .forEach(data::add);
        return Set.copyOf(data);
    }
}
