package org.tenthwise.app.history;

import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.tenthwise.model.words.Languages;

/** By what words people tell of tools, in every language there are words of: beginnings of words, capitals alike. */
final class ToolWords {

    private static final List<String> TOOLS = all("history.words.tools");
    private static final List<String> NEW = all("history.words.new");

    private ToolWords() {}

    static boolean speakOfATool(String words) {
        return speakOf(TOOLS, words);
    }

    static boolean speakOfANewTool(String words) {
        return speakOfATool(words) && speakOf(NEW, words);
    }

    private static boolean speakOf(List<String> beginnings, String words) {
        return Stream.of(words.toLowerCase(Locale.ROOT).split("[^\\p{L}]+"))
                .anyMatch(word -> beginnings.stream().anyMatch(word::startsWith));
    }

    private static List<String> all(String key) {
        Languages languages = Languages.at(Locale.ENGLISH);
        return languages.all().stream()
                .flatMap(
                        language -> Stream.of(languages.words(language).say(key).split("\\|")))
                .map(word -> word.strip().toLowerCase(Locale.ROOT))
                .distinct()
                .toList();
    }
}
