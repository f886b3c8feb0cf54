package org.tenthwise.app.kept;

import java.io.IOException;
import java.io.Reader;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Properties;

/**
 * A few values in a file that is there whole or not at all. One that is missing or cannot be read has none, and what
 * cannot be written is not there the next time: no reading hangs on either.
 */
public final class SmallFile {

    private final Path path;

    public SmallFile(Path path) {
        this.path = path.toAbsolutePath();
    }

    public Properties read() {
        Properties kept = new Properties();
        try (Reader reader = Files.newBufferedReader(path)) {
            kept.load(reader);
            return kept;
        } catch (IOException | IllegalArgumentException e) {
            return new Properties();
        }
    }

    public void write(Properties kept) {
        Path making = path.resolveSibling(path.getFileName() + ".new");
        try {
            Files.createDirectories(path.getParent());
            try (Writer writer = Files.newBufferedWriter(making)) {
                kept.store(writer, null);
            }
            Files.move(making, path, StandardCopyOption.REPLACE_EXISTING);
        } catch (IOException e) {
            // it is as it was the next time
        }
    }
}
