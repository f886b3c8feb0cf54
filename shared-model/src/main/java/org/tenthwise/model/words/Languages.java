package org.tenthwise.model.words;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.ServiceLoader;
import java.util.function.Function;
import java.util.stream.Stream;

/** The languages there are words of, each as it is spoken at one place. */
public final class Languages {

    private final List<Locale> all;
    private final Locale usual;
    private final Function<Locale, Words> words;

    /** @param usual what is spoken where nothing is chosen */
    public Languages(List<Locale> all, Locale usual, Function<Locale, Words> words) {
        this.all = List.copyOf(all);
        this.usual = usual;
        this.words = words;
    }

    /** English, and the languages that every module has words of. A language that is chosen does not move the place. */
    public static Languages at(Locale place) {
        List<Vocabulary> modules = ServiceLoader.load(Vocabulary.class, Vocabulary.class.getClassLoader()).stream()
                .map(ServiceLoader.Provider::get)
                .toList();
        Stream<String> others = Arrays.stream(Locale.getISOLanguages())
                .filter(language -> modules.stream().allMatch(module -> speaks(module, language)))
                .sorted();
        return new Languages(
                Stream.concat(Stream.of(Locale.ENGLISH.getLanguage()), others)
                        .map(language -> language.equals(place.getLanguage())
                                ? place
                                : new Locale.Builder()
                                        .setLanguage(language)
                                        .setRegion(place.getCountry())
                                        .build())
                        .toList(),
                place,
                Words::of);
    }

    private static boolean speaks(Vocabulary module, String language) {
        try (InputStream file = module.open("words_" + language + ".properties")) {
            return file != null;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    public List<Locale> all() {
        return all;
    }

    public Locale usual() {
        return usual;
    }

    /** A language by its two letters of ISO 639; absent where there are no words of it. */
    public Optional<Locale> find(String language) {
        return all.stream()
                .filter(one -> one.getLanguage().equalsIgnoreCase(language))
                .findFirst();
    }

    public Words words(Locale language) {
        return words.apply(language);
    }

    /** What a language is called in itself. */
    public String name(Locale language) {
        return words(language).say("language.name");
    }
}
