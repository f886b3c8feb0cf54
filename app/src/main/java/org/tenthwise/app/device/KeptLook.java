package org.tenthwise.app.device;

import java.io.IOException;
import java.io.Reader;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Optional;
import java.util.Properties;
import java.util.concurrent.Executor;
import org.tenthwise.app.ui.theme.LookStore;

/**
 * The look in a small file. A file that is missing or cannot be read gives the plain look, and a look that cannot be
 * written is plain the next time: no reading hangs on either.
 */
public final class KeptLook implements LookStore {

    private static final String NIGHT = "night";
    private static final String LARGE_TEXT = "large-text";
    private static final String GLOVES = "gloves";
    private static final String LANGUAGE = "language";

    private final Path file;
    private final Executor worker;

    /** @param worker does the writing, one after the other */
    public KeptLook(Path file, Executor worker) {
        this.file = file;
        this.worker = worker;
    }

    @Override
    public Kept kept() {
        Properties kept = new Properties();
        try (Reader reader = Files.newBufferedReader(file)) {
            kept.load(reader);
        } catch (IOException | IllegalArgumentException e) {
            return Kept.PLAIN;
        }
        return new Kept(
                isSet(kept, NIGHT),
                isSet(kept, LARGE_TEXT),
                isSet(kept, GLOVES),
                Optional.ofNullable(kept.getProperty(LANGUAGE)));
    }

    @Override
    public void keep(Kept look) {
        Properties kept = new Properties();
        kept.setProperty(NIGHT, String.valueOf(look.night()));
        kept.setProperty(LARGE_TEXT, String.valueOf(look.largeText()));
        kept.setProperty(GLOVES, String.valueOf(look.gloves()));
        look.language().ifPresent(language -> kept.setProperty(LANGUAGE, language));
        worker.execute(() -> write(kept));
    }

    private void write(Properties kept) {
        Path making = file.resolveSibling(file.getFileName() + ".new");
        try {
            Files.createDirectories(file.toAbsolutePath().getParent());
            try (Writer writer = Files.newBufferedWriter(making)) {
                kept.store(writer, null);
            }
            Files.move(making, file, StandardCopyOption.REPLACE_EXISTING);
        } catch (IOException e) {
            // the look is plain the next time
        }
    }

    private static boolean isSet(Properties kept, String name) {
        return Boolean.parseBoolean(kept.getProperty(name));
    }
}
