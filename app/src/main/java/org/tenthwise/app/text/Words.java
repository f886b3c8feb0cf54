package org.tenthwise.app.text;

import java.util.Locale;
import java.util.MissingResourceException;
import java.util.ResourceBundle;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The words of one language.
 *
 * <p>A text has gaps {@code {0}}, {@code {1}} … and nothing else with a meaning: an apostrophe is an apostrophe.
 */
public final class Words {

    private static final String BUNDLE = "org.tenthwise.app.text.words";
    private static final Pattern GAP = Pattern.compile("\\{(\\d)}");

    private final ResourceBundle texts;

    private Words(ResourceBundle texts) {
        this.texts = texts;
    }

    /** The words for {@code locale}; English where there are none in its language. */
    public static Words of(Locale locale) {
        return new Words(ResourceBundle.getBundle(
                BUNDLE, locale, ResourceBundle.Control.getNoFallbackControl(ResourceBundle.Control.FORMAT_PROPERTIES)));
    }

    /**
     * The text of {@code key}, its gaps filled in order.
     *
     * @throws MissingResourceException if there is no such key
     * @throws IllegalArgumentException if the text has a gap nothing was given for
     */
    public String say(String key, Object... fillings) {
        String text = texts.getString(key);
        return GAP.matcher(text).replaceAll(gap -> {
            int place = Integer.parseInt(gap.group(1));
            if (place >= fillings.length) {
                throw new IllegalArgumentException("Nothing is given for gap %d of %s".formatted(place, key));
            }
            return Matcher.quoteReplacement(String.valueOf(fillings[place]));
        });
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
        return stem + "." + value.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
