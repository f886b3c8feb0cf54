package org.tenthwise.model.words;

import com.ibm.icu.text.DateTimePatternGenerator;
import com.ibm.icu.text.UnicodeSet;
import com.ibm.icu.util.LocaleData;
import com.ibm.icu.util.ULocale;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;

/** What is done otherwise from place to place, by the Unicode CLDR that comes with ICU4J. */
public record LocaleCustoms(Locale locale) {

    /** English of no place in particular: day before month. Without a place CLDR would take the United States. */
    private static final Locale WORLD_ENGLISH = Locale.forLanguageTag("en-001");

    private static final int LETTER_WIDTH_MM = 216;

    /**
     * The pattern of a date or an hour, its parts in the order of the place.
     *
     * @param parts which parts and how long, by the letters of CLDR: {@code yMMMd}, {@code Hm}
     */
    public String datePattern(String parts) {
        return DateTimePatternGenerator.getInstance(locale.equals(Locale.ENGLISH) ? WORLD_ENGLISH : locale)
                .getBestPattern(parts);
    }

    /** Whether paper is cut to US letter here and not to A4; A4 where no place is named. */
    public boolean printsOnLetterPaper() {
        return !locale.getCountry().isEmpty()
                && LocaleData.getPaperSize(ULocale.forLocale(locale)).getWidth() == LETTER_WIDTH_MM;
    }

    /**
     * Small letters beside a to z, in the order of Unicode: first those of the language, then those that it writes
     * names from abroad with.
     */
    public List<String> otherLetters() {
        return Stream.of(LocaleData.ES_STANDARD, LocaleData.ES_AUXILIARY)
                .flatMap(kind -> letters(LocaleData.getExemplarSet(ULocale.forLocale(locale), 0, kind)))
                .distinct()
                .toList();
    }

    private static Stream<String> letters(UnicodeSet set) {
        return StreamSupport.stream(set.spliterator(), false)
                .filter(letter -> letter.codePointCount(0, letter.length()) == 1)
                .filter(letter -> Character.isLetter(letter.codePointAt(0)) && !letter.matches("[a-z]"));
    }
}
