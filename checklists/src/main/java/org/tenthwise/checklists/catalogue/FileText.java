package org.tenthwise.checklists.catalogue;

import java.io.IOException;
import java.nio.charset.CharacterCodingException;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.tenthwise.checklists.format.TomlText;

/**
 * The text of a file, or why it has none to read. Nothing is read of what is no file, nor of one that is far too long.
 */
public sealed interface FileText {

    record Readable(String text) implements FileText {}

    record Unreadable(Why why) implements FileText {}

    /** What can be the matter with a file. */
    enum Why {
        FOLDER,
        /** A pipe, a device, a link to nothing. */
        NO_FILE,
        TOO_LONG,
        NOT_UTF8,
        BLANK,
        FORBIDDEN,
        BROKEN
    }

    static FileText of(Path file) {
        try {
            if (Files.isDirectory(file)) {
                return new Unreadable(Why.FOLDER);
            }
            if (!Files.isRegularFile(file)) {
                return new Unreadable(Why.NO_FILE);
            }
            if (Files.size(file) > 4L * TomlText.MOST_CHARACTERS) {
                return new Unreadable(Why.TOO_LONG);
            }
            String text = Files.readString(file);
            return text.isBlank() ? new Unreadable(Why.BLANK) : new Readable(text);
        } catch (CharacterCodingException e) {
            return new Unreadable(Why.NOT_UTF8);
        } catch (AccessDeniedException e) {
            return new Unreadable(Why.FORBIDDEN);
        } catch (IOException e) {
            return new Unreadable(Why.BROKEN);
        }
    }
}
