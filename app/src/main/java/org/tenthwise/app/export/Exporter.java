package org.tenthwise.app.export;

import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.nio.file.AccessDeniedException;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.UUID;

/**
 * Puts records into a folder.
 *
 * <p>Each file is written whole under a name of its own and is on the disk before it takes the place of one of the same
 * name. Where one format fails, no file of that call has taken its place yet.
 */
public final class Exporter {

    private static final int LONGEST_NAME = 120;

    /**
     * @param folder made if it is not there
     * @return the files, in the order of {@code formats}
     * @throws CouldNotExport if not all of them could be written; what was in the folder before is still there
     */
    public List<Path> export(Evidence evidence, List<RecordFormat> formats, Path folder) throws CouldNotExport {
        Map<Path, Path> inTheMaking = new LinkedHashMap<>();
        try {
            Files.createDirectories(folder);
            for (RecordFormat format : formats) {
                Path file = folder.resolve(name(evidence) + "." + format.extension());
                Path making = folder.resolve(".%s-%s.new".formatted(file.getFileName(), UUID.randomUUID()));
                inTheMaking.put(making, file);
                write(evidence, format, making);
            }
            for (Map.Entry<Path, Path> made : inTheMaking.entrySet()) {
                move(made.getKey(), made.getValue());
            }
            return new ArrayList<>(inTheMaking.values());
        } catch (UncheckedIOException e) {
            throw trouble(folder, e.getCause());
        } catch (IOException e) {
            throw trouble(folder, e);
        } finally {
            inTheMaking.keySet().forEach(Exporter::discard);
        }
    }

    /** The name of a record's files without their ending: the run, in signs that every system takes in a name. */
    public static String name(Evidence evidence) {
        String name = evidence.sheet().run().id().replaceAll("[^A-Za-z0-9._-]+", "-").replaceAll("^[.-]+", "");
        return name.isEmpty() ? "record" : name.substring(0, Math.min(LONGEST_NAME, name.length()));
    }

    private static void write(Evidence evidence, RecordFormat format, Path making) throws IOException {
        try (FileChannel channel = FileChannel.open(making, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE);
                OutputStream out = Channels.newOutputStream(channel)) {
            format.write(evidence, out);
            out.flush();
            channel.force(true);
        }
    }

    private static void move(Path making, Path file) throws IOException {
        if (Files.isDirectory(file)) {
            throw new FileAlreadyExistsException(file.toString());
        }
        try {
            Files.move(making, file, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        } catch (AtomicMoveNotSupportedException e) {
            Files.move(making, file, StandardCopyOption.REPLACE_EXISTING);
        }
    }

    /** Takes away what is left of a file in the making; one that has been moved is not there any more. */
    private static void discard(Path making) {
        try {
            Files.deleteIfExists(making);
        } catch (IOException e) {
            making.toFile().deleteOnExit();
        }
    }

    private static CouldNotExport trouble(Path folder, IOException e) {
        String name = folder.toString();
        if (e instanceof FileAlreadyExistsException exists) {
            return new CouldNotExport(CouldNotExport.Reason.NOT_A_FOLDER, ("The record was not written: %s is in the way. "
                    + "The run is safe in the store. Name another folder.").formatted(exists.getFile()), e);
        }
        if (says(e, "not a directory")) {
            return new CouldNotExport(CouldNotExport.Reason.NOT_A_FOLDER, ("The record was not written: %s is not a folder. "
                    + "The run is safe in the store. Name another folder.").formatted(name), e);
        }
        if (e instanceof AccessDeniedException || says(e, "read-only", "permission denied")) {
            return new CouldNotExport(CouldNotExport.Reason.NOT_ALLOWED, ("The record was not written: nothing may be "
                    + "written into %s. The run is safe in the store. Allow it, or name another folder.").formatted(name), e);
        }
        if (says(e, "no space left", "not enough space", "disk quota")) {
            return new CouldNotExport(CouldNotExport.Reason.DISK_FULL, ("The record was not written: there is no room left "
                    + "in %s. The run is safe in the store. Free some space, then export again.").formatted(name), e);
        }
        return new CouldNotExport(CouldNotExport.Reason.OTHER, ("The record was not written: %s did not take it. The run is "
                + "safe in the store. See to the disk, or name another folder.").formatted(name), e);
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
