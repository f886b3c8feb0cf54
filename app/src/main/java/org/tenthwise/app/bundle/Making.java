package org.tenthwise.app.bundle;

import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import org.tenthwise.app.export.RecordFormat;

/**
 * How records are made here.
 *
 * @param formats those there are, in the language and on the paper of a place
 * @param spoken where
 * @param version of the tool, as records name it
 */
public record Making(Function<Locale, List<RecordFormat>> formats, Locale spoken, String version) {

    /** Those that are a record by themselves, as they were made where that language is spoken. */
    public List<RecordFormat> whole(String language) {
        return formats.apply(Locale.forLanguageTag(language)).stream()
                .filter(RecordFormat::isWhole)
                .toList();
    }

    String language() {
        return spoken.toLanguageTag();
    }

    public String tool() {
        return "Tenthwise " + version;
    }
}
