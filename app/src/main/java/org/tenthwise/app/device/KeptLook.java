package org.tenthwise.app.device;

import java.nio.file.Path;
import java.util.Optional;
import java.util.Properties;
import java.util.concurrent.Executor;
import org.tenthwise.app.kept.SmallFile;
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

    private final SmallFile file;
    private final Executor worker;

    /** @param worker does the writing, one after the other */
    public KeptLook(Path file, Executor worker) {
        this.file = new SmallFile(file);
        this.worker = worker;
    }

    @Override
    public Kept kept() {
        Properties kept = file.read();
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
        worker.execute(() -> file.write(kept));
    }

    private static boolean isSet(Properties kept, String name) {
        return Boolean.parseBoolean(kept.getProperty(name));
    }
}
