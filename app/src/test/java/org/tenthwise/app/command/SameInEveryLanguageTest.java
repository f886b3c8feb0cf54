package org.tenthwise.app.command;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.tenthwise.app.key.KeyFile;
import org.tenthwise.app.store.CouldNotOpen;
import org.tenthwise.app.store.KeptEntries;
import org.tenthwise.app.store.sqlite.SqliteStores;
import org.tenthwise.app.text.MadeUpLanguage;
import org.tenthwise.model.words.Words;

/** What is kept, and what other programs read, does not hang on the language it was worked in. */
class SameInEveryLanguageTest extends Walking {

    private List<Path> walked(Words language, String run, Path into) throws IOException, CouldNotOpen {
        Typed.in(
                language,
                "walk",
                run.replaceFirst("-\\w+$", ""),
                "--readings",
                run,
                "--store",
                into.resolve("s.db"),
                "--out",
                into.resolve("out"));
        return Typed.files(into.resolve("out"));
    }

    private static String head(Path store) throws CouldNotOpen {
        try (KeptEntries kept = new SqliteStores().openToRead(store)) {
            return kept.head().toString();
        }
    }

    /**
     * By a clock that stands still, with one key: each entry is hashed with those before it, so the last hash tells of
     * all.
     */
    @ParameterizedTest
    @ValueSource(strings = {"LG-2207-fail", "WB-118-pass"})
    void everyEntryAndEveryByteIsTheSame(String run) throws Exception {
        Path english = Files.createDirectory(folder.resolve("english"));
        Path other = Files.createDirectory(folder.resolve("other"));
        List<Path> inEnglish = walked(Words.ENGLISH, run, english);
        Files.copy(
                KeyFile.beside(english.resolve("s.db")).path(),
                KeyFile.beside(other.resolve("s.db")).path());
        List<Path> inOther = walked(MadeUpLanguage.words(), run, other);
        assertEquals(head(english.resolve("s.db")), head(other.resolve("s.db")));
        assertEquals(2, inEnglish.size(), "as CSV and as JSON");
        for (int i = 0; i < inEnglish.size(); i++) {
            assertEquals(inEnglish.get(i).getFileName(), inOther.get(i).getFileName());
            assertArrayEquals(Files.readAllBytes(inEnglish.get(i)), Files.readAllBytes(inOther.get(i)));
        }
    }
}
