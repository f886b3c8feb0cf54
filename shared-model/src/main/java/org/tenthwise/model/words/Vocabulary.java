package org.tenthwise.model.words;

import java.io.InputStream;

/**
 * The texts of one module: {@code words.properties} in English beside the class, {@code words_xx.properties} for the
 * language xx, with the same keys. Found by {@link java.util.ServiceLoader}, since the model names no module above it.
 */
public interface Vocabulary {

    /** The file of that name beside the class, or null if there is none. */
    InputStream open(String file);
}
