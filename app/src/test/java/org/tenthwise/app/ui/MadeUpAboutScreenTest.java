package org.tenthwise.app.ui;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.tenthwise.app.text.TestLanguage;

/** The same screens in a language that is not English and a third longer: nothing is left in English or cut off. */
class MadeUpAboutScreenTest extends AboutScreenTest {

    private static final String LIBRARIES = libraries();

    @Override
    protected TestLanguage language() {
        return TestLanguage.MADE_UP;
    }

    /** Folders, what is said of backups, and the list of libraries. */
    @Override
    protected String data() {
        return "there here data user org tenthwise app files plans toml "
                + "The last complete backup was made on November One is made after each closed run and once a day "
                + "Closed runs are sealed with the key Its whole fingerprint "
                + LIBRARIES;
    }

    /** The list of them, and the texts of their licences. */
    private static String libraries() {
        Path resources = Path.of("src/main/resources");
        try (Stream<Path> licences = Files.list(resources.resolve("META-INF/licenses"))) {
            StringBuilder all =
                    new StringBuilder(Files.readString(resources.resolve("org/tenthwise/app/ui/about/libraries.tsv")));
            for (Path licence : licences.toList()) {
                all.append(Files.readString(licence));
            }
            return all.toString();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
