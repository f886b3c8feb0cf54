package org.tenthwise.model.plan;

import java.util.Locale;
import org.junit.jupiter.params.converter.TypedArgumentConverter;

/** A feature by its word, in capitals or not, for a table of a test. */
@SuppressWarnings("exports") // a module of tests exports nothing
public final class FeatureNamed extends TypedArgumentConverter<String, Feature> {

    public FeatureNamed() {
        super(String.class, Feature.class);
    }

    @Override
    protected Feature convert(String word) {
        return Feature.known(word.toLowerCase(Locale.ROOT)).orElseThrow();
    }
}
