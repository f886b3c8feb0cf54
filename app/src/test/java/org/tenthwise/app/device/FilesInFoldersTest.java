package org.tenthwise.app.device;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class FilesInFoldersTest {

    @TempDir
    private Path folder;

    private Path file(String name) throws IOException {
        Path file = folder.resolve(name);
        Files.createDirectories(file.getParent());
        return Files.writeString(file, "");
    }

    @Test
    void everyFileOfTheKindIsOfferedFolderByFolder() throws IOException {
        Path late = file("a/CM-2.csv");
        Path early = file("a/CM-1.CSV");
        Path other = file("b/CM-0.csv");
        file("a/plan.toml");
        assertEquals(
                List.of(early, late, other),
                new FilesInFolders(
                                List.of(folder.resolve("a"), folder.resolve("not there"), folder.resolve("b")), ".csv")
                        .files());
    }
}
