package org.tenthwise.app.ui.about;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;

/**
 * What only the opened program knows of itself.
 *
 * @param version of Tenthwise
 * @param dataAt where the ledger lies, for people
 * @param plansAt where plan files are looked for, for people
 * @param key what there is to say about the key of the station, a sentence each; looked up likewise
 * @param newKey makes another key for the station; answers where the one so far lies now; away from the screen
 * @param backups what there is to say about them, a sentence each; looked up away from the screen
 */
public record AboutFacts(
        String version,
        String dataAt,
        String plansAt,
        Callable<List<String>> key,
        Callable<Optional<Path>> newKey,
        Callable<List<String>> backups) {}
