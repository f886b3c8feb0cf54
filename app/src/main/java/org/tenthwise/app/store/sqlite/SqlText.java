package org.tenthwise.app.store.sqlite;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;

/** SQL that comes along in a file. */
final class SqlText {

    private SqlText() {}

    static String of(String file) {
        try (InputStream in = SqlText.class.getResourceAsStream(file)) {
            if (in == null) {
                throw new IllegalStateException("There is no " + file);
            }
            return new String(in.readAllBytes(), UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
