package org.tenthwise.app.ui.guide;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/** As small a plan file as is sound. */
public final class SmallPlan {

    private static final String FILE = "small-plan.toml";

    private SmallPlan() {}

    public static String text() {
        try (InputStream file = SmallPlan.class.getResourceAsStream(FILE)) {
            return new String(file.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
