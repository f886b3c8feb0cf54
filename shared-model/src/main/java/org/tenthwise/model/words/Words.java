package org.tenthwise.model.words;

import com.ibm.icu.text.PluralRules;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.Collection;
import java.util.Locale;
import java.util.Map;
import java.util.MissingResourceException;
import java.util.Optional;
import java.util.Properties;
import java.util.ServiceLoader;
import java.util.Set;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The words of one language, from every {@link Vocabulary} there is.
 *
 * <p>A text is in ICU's message syntax: gaps {@code {0}} or {@code {name}}, and {@code {0, plural, one {…} other {…}}}
 * and {@code {0, select, …}}, where a hyphen of a name is written as an underscore, and {@code {0, small}} for a
 * sentence that goes on behind a colon. An apostrophe is an apostrophe, but before a brace, which it makes a plain
 * brace.
 */
public final class Words {

    /** The language of files, of commands that other programs read, and of whatever has no words of its own. */
    public static final Words ENGLISH = of(Locale.ENGLISH);

    private final Locale locale;
    private final Map<String, String> texts;
    private final PluralRules plurals;
    private final Optional<UnaryOperator<String>> names;
    private final boolean lettered;
    private final Map<String, Phrase> phrases;

    /** Words from {@code texts} by key, with the plurals of {@code locale}. */
    public Words(Locale locale, Map<String, String> texts) {
        this.locale = locale;
        this.texts = Map.copyOf(texts);
        this.plurals = PluralRules.forLocale(locale);
        this.names = Optional.empty();
        this.lettered = false;
        this.phrases = new ConcurrentHashMap<>();
    }

    private Words(Words same, Optional<UnaryOperator<String>> names, boolean lettered) {
        this.locale = same.locale;
        this.texts = same.texts;
        this.plurals = same.plurals;
        this.names = names;
        this.lettered = lettered;
        this.phrases = same.phrases;
    }

    /** The words for {@code locale}; English of no place in particular where there are none in its language. */
    public static Words of(Locale locale) {
        Map<String, String> own = textsOf("_" + locale.getLanguage());
        Map<String, String> texts = textsOf("");
        texts.putAll(own);
        boolean english = locale.getLanguage().equals(Locale.ENGLISH.getLanguage());
        return new Words(own.isEmpty() && !english ? Locale.ENGLISH : locale, texts);
    }

    /** What stands in the files of all modules for one language by its ending; that of English is empty. */
    public static Map<String, String> textsOf(String ending) {
        Properties texts = new Properties();
        for (Vocabulary module : ServiceLoader.load(Vocabulary.class, Vocabulary.class.getClassLoader())) {
            try (InputStream file = module.open("words" + ending + ".properties")) {
                if (file != null) {
                    texts.load(new InputStreamReader(file, StandardCharsets.UTF_8));
                }
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
        Map<String, String> sorted = new TreeMap<>();
        texts.forEach((key, text) -> sorted.put((String) key, (String) text));
        return sorted;
    }

    /**
     * The same words for a reader of whom {@code names} tells what to call a thing by its key: each {@link Keyed} that
     * fills a gap, and what belongs into a gap that nothing is given for and that bears a key as its name, not a
     * number.
     */
    public Words naming(UnaryOperator<String> names) {
        return new Words(this, Optional.of(names), lettered);
    }

    /** The same words for a screen or a page, on which every text that fills a gap is {@link #readable}. */
    public Words lettered() {
        return new Words(this, names, true);
    }

    /**
     * A text of a plan as the lettering brought along can show it: with the signs of drawings said in words, since an
     * empty box in place of a counterbore reads as a square. What is stored keeps its signs.
     */
    public String readable(String text) {
        return DrawingSign.readable(text, this);
    }

    /** The same words for whoever knows things by their keys. */
    public Words byKey() {
        return naming(UnaryOperator.identity());
    }

    public Locale locale() {
        return locale;
    }

    /** The keys that begin with {@code stem}, without it. */
    public Set<String> keysBelow(String stem) {
        return texts.keySet().stream()
                .filter(key -> key.startsWith(stem))
                .map(key -> key.substring(stem.length()))
                .collect(Collectors.toSet());
    }

    /** Whether there is a text of {@code key}. */
    public boolean has(String key) {
        return texts.containsKey(key);
    }

    /**
     * What {@code message} says in these words.
     *
     * @throws MissingResourceException if there is no such key
     * @throws IllegalArgumentException if the text has a gap nothing was given for
     */
    public String say(Message message) {
        return phrase(message.key()).say(message.values(), this);
    }

    /** The text of {@code key}, its gaps filled in order. */
    public String say(String key, Object... fillings) {
        return say(Message.of(key, fillings));
    }

    /**
     * The text of {@code stem} and the value's name: {@code say("verdict", CUT_AGAIN)} is the text of
     * {@code verdict.cut-again}.
     */
    public String say(String stem, Enum<?> value) {
        return say(key(stem, value));
    }

    /** The key of a value below a stem: {@code key("verdict", CUT_AGAIN)} is {@code verdict.cut-again}. */
    public String key(String stem, Enum<?> value) {
        return keyOf(stem, value);
    }

    static String keyOf(String stem, Enum<?> value) {
        return stem + "." + Word.of(value);
    }

    /** Several things in one line, each as it would fill a gap; empty for none. */
    public String list(Collection<?> several) {
        return list("list", several);
    }

    /** The same by the text of {@code key}, which sets one more behind those that are there. */
    public String list(String key, Collection<?> several) {
        return several.stream()
                .map(this::show)
                .reduce((before, one) -> say(key, before, one))
                .orElse("");
    }

    /** A thing for those who listen: what is to be said of it, one part after the other; one that is empty is not. */
    public String spoken(String... parts) {
        return list("spoken", Stream.of(parts).filter(part -> !part.isEmpty()).toList());
    }

    /** {@code said} as a sentence beside others: with the mark that ends one, unless it has one. */
    public String sentence(String said) {
        return said.matches("(?s).*[.!?…]") ? said : say("sentence", said);
    }

    /** What fills a gap of that name where nothing is given for it. */
    Optional<String> named(String gap) {
        return names.map(known -> known.apply(gap));
    }

    /** A value as it fills a gap. */
    String show(Object value) {
        if (value instanceof Keyed thing) {
            return named(thing.key()).orElse(thing.key());
        }
        if (value instanceof Message message) {
            return say(message);
        }
        if (value instanceof Enum<?> one) {
            return Word.of(one);
        }
        if (value instanceof Collection<?> several) {
            return list(several);
        }
        if (value instanceof BigDecimal figure) {
            return figure.toPlainString();
        }
        return lettered ? readable(String.valueOf(value)) : String.valueOf(value);
    }

    PluralRules plurals() {
        return plurals;
    }

    private Phrase phrase(String key) {
        return phrases.computeIfAbsent(key, this::parsed);
    }

    private Phrase parsed(String key) {
        String text = texts.get(key);
        if (text == null) {
            throw new MissingResourceException("There are no words for " + key, Words.class.getName(), key);
        }
        return new Phrase(key, text);
    }
}
