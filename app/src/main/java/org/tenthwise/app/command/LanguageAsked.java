package org.tenthwise.app.command;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.tenthwise.model.words.Languages;
import org.tenthwise.model.words.Message;

/**
 * The language a command line asks for. It is looked for before anything else is read: what is wrong with the rest is
 * said in it too.
 *
 * @param named as it was typed; absent where none was
 */
public record LanguageAsked(Optional<String> named) {

    static final String OPTION = "--language";

    /** What is behind it is no option any more. */
    private static final String END = "--";

    public static LanguageAsked in(String... typed) {
        List<String> options =
                Stream.of(typed).takeWhile(word -> !word.equals(END)).toList();
        return new LanguageAsked(IntStream.range(0, options.size())
                .mapToObj(i -> named(options, i))
                .flatMap(Optional::stream)
                .findFirst());
    }

    private static Optional<String> named(List<String> options, int at) {
        String option = options.get(at);
        if (option.equals(OPTION)) {
            return options.stream().skip(at + 1).findFirst();
        }
        return option.startsWith(OPTION + "=") ? Optional.of(option.substring(OPTION.length() + 1)) : Optional.empty();
    }

    /** Absent where none was asked for, or one there are no words of. */
    public Optional<Locale> of(Languages languages) {
        return named.flatMap(languages::find);
    }

    /** That there are no words of what was asked for; absent where all is well. */
    public Optional<Message> refused(Languages languages) {
        return named.filter(asked -> of(languages).isEmpty())
                .map(asked -> Message.of(
                        "command.no-language",
                        asked,
                        languages.all().stream()
                                .map(one -> Message.of("command.language", one.getLanguage(), languages.name(one)))
                                .toList()));
    }
}
