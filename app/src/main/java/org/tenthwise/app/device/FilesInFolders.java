package org.tenthwise.app.device;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/**
 * Files of one kind, where others leave them to be taken in.
 *
 * @param folders looked through in their order; one that is not there holds none
 * @param ending of their names, with its point, in small letters; how capitals are written makes no difference
 */
public record FilesInFolders(List<Path> folders, String ending) {

    public FilesInFolders {
        folders = List.copyOf(folders);
    }

    /** Every file of the kind, folder by folder, by its name. */
    public List<Path> files() throws IOException {
        List<Path> found = new ArrayList<>();
        for (Path folder : folders) {
            if (Files.isDirectory(folder)) {
                try (Stream<Path> all = Files.list(folder)) {
                    all.filter(this::isOfTheKind)
                            .sorted(Comparator.comparing(Path::getFileName))
                            .forEach(found::add);
                }
            }
        }
        return found;
    }

    private boolean isOfTheKind(Path file) {
        return file.getFileName().toString().toLowerCase(Locale.ROOT).endsWith(ending);
    }
}
