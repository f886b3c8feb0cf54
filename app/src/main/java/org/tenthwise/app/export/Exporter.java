package org.tenthwise.app.export;

import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.tenthwise.model.words.Explained;
import org.tenthwise.model.words.Message;

/**
 * Puts records into a folder.
 *
 * <p>The same run after the same entry gives the same bytes under the same name, so asking twice leaves one file.
 * Whatever else lies under a name is never touched: the record goes beside it. Where one format fails, no file of that
 * call has its name yet.
 */
public final class Exporter {

    /**
     * @param folder made if it is not there
     * @return the files, in the order of {@code formats}
     * @throws CouldNotExport if not all of them could be written; what was in the folder before is still there
     */
    public List<Path> export(Evidence evidence, List<RecordFormat> formats, Path folder) throws CouldNotExport {
        Map<String, Content> files = new LinkedHashMap<>();
        formats.forEach(format -> files.put(format.extension(), out -> format.write(evidence, out)));
        return export(RecordName.of(evidence.sheet().run().id(), evidence.head()), files, folder);
    }

    /** What is written into a file; the stream is left open. */
    @FunctionalInterface
    public interface Content {
        void write(OutputStream out) throws IOException;
    }

    /**
     * Puts one file into a folder, in the same way.
     *
     * @param name without its ending
     */
    public Path export(String name, String ending, Content content, Path folder) throws CouldNotExport {
        return export(name, Map.of(ending, content), folder).get(0);
    }

    /**
     * Puts several files of one name into a folder, in the same way.
     *
     * @param name without their endings
     * @param contents by their endings
     * @return the files, in the order of {@code contents}
     */
    public List<Path> export(String name, Map<String, Content> contents, Path folder) throws CouldNotExport {
        List<FileInTheMaking> inTheMaking = new ArrayList<>();
        try {
            Files.createDirectories(folder);
            FileInTheMaking.clearLeftOver(folder);
            for (Map.Entry<String, Content> content : contents.entrySet()) {
                FileInTheMaking file = new FileInTheMaking(folder, name, content.getKey());
                inTheMaking.add(file);
                file.write(content.getValue());
            }
            List<Path> files = new ArrayList<>();
            for (FileInTheMaking file : inTheMaking) {
                files.add(file.put());
            }
            return files;
        } catch (UncheckedIOException e) {
            throw trouble(folder, e.getCause());
        } catch (IOException e) {
            throw trouble(folder, e);
        } finally {
            inTheMaking.forEach(Exporter::discard);
        }
    }

    /** One that cannot be taken away now is taken away by the next export. */
    private static void discard(FileInTheMaking file) {
        try {
            file.close();
        } catch (IOException e) {
            // the disk is gone or full, which has been said
        }
    }

    private static CouldNotExport trouble(Path folder, IOException e) {
        if (e instanceof Explained explained) {
            return new CouldNotExport(CouldNotExport.Reason.OTHER, explained.why(), e);
        }
        String name = folder.toString();
        if (e instanceof FileInTheMaking.BeingMade) {
            return new CouldNotExport(CouldNotExport.Reason.OTHER, Message.of("not-exported.being-made", name), e);
        }
        if (e instanceof FileAlreadyExistsException exists) {
            return new CouldNotExport(
                    CouldNotExport.Reason.NOT_A_FOLDER, Message.of("not-exported.in-the-way", exists.getFile()), e);
        }
        if (says(e, "not a directory")) {
            return new CouldNotExport(
                    CouldNotExport.Reason.NOT_A_FOLDER, Message.of("not-exported.no-folder", name), e);
        }
        if (e instanceof AccessDeniedException || says(e, "read-only", "permission denied")) {
            return new CouldNotExport(
                    CouldNotExport.Reason.NOT_ALLOWED, Message.of("not-exported.not-allowed", name), e);
        }
        if (says(e, "no space left", "not enough space", "disk quota")) {
            return new CouldNotExport(CouldNotExport.Reason.DISK_FULL, Message.of("not-exported.disk-full", name), e);
        }
        return new CouldNotExport(CouldNotExport.Reason.OTHER, Message.of("not-exported.other", name), e);
    }

    private static boolean says(IOException e, String... parts) {
        String message = String.valueOf(e.getMessage()).toLowerCase(Locale.ROOT);
        for (String part : parts) {
            if (message.contains(part)) {
                return true;
            }
        }
        return false;
    }
}
