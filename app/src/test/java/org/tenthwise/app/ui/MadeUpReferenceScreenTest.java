package org.tenthwise.app.ui;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.tenthwise.app.text.TestLanguage;

/** The same screens in a language that is not English and a third longer: nothing is left in English or cut off. */
class MadeUpReferenceScreenTest extends ReferenceScreenTest {

    @Override
    protected TestLanguage language() {
        return TestLanguage.MADE_UP;
    }

    /** The published cases, their sources and what is said of each. */
    @Override
    protected String data() {
        try (Stream<Path> files = Files.list(Path.of("src/main/resources/org/tenthwise/app/reference"))) {
            StringBuilder cases = new StringBuilder();
            for (Path file : files.toList()) {
                cases.append(Files.readString(file));
            }
            return cases.toString();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
