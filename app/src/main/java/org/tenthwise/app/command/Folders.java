package org.tenthwise.app.command;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.tenthwise.model.words.Message;

/** Folders that results go into, tried before any work is done. */
final class Folders {

    private Folders() {}

    static void make(Path folder) throws CouldNotRun {
        try {
            Files.createDirectories(folder);
            Files.delete(Files.createTempFile(folder, ".tried-", ".tmp"));
        } catch (FileAlreadyExistsException e) {
            throw new CouldNotRun(Message.of("command.folder.is-file", e.getFile()), e);
        } catch (IOException e) {
            throw new CouldNotRun(Message.of("command.folder.not-writable", folder), e);
        }
    }
}
