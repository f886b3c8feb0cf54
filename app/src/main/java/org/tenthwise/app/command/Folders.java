package org.tenthwise.app.command;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Folders that results go into, tried before any work is done. */
final class Folders {

    private Folders() {}

    static void make(Path folder) throws CouldNotRun {
        try {
            Files.createDirectories(folder);
            Files.delete(Files.createTempFile(folder, ".tried-", ".tmp"));
        } catch (FileAlreadyExistsException e) {
            throw new CouldNotRun(
                    "%s is a file. Give a folder to write into; it is made where there is none.".formatted(e.getFile()),
                    e);
        } catch (IOException e) {
            throw new CouldNotRun(
                    "Nothing can be written into %s. Give a folder that may be written to and has room."
                            .formatted(folder),
                    e);
        }
    }
}
