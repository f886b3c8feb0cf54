package org.tenthwise.app.receiving;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.tenthwise.app.bundle.BundleFile;

/**
 * Where bundles of other stations lie.
 *
 * @param folders looked through in their order; one that is not there holds none
 */
public record BundleFolders(List<Path> folders) {

    public BundleFolders {
        folders = List.copyOf(folders);
    }

    /** Every bundle in them by its name. */
    public List<Path> files() throws IOException {
        List<Path> found = new ArrayList<>();
        for (Path folder : folders) {
            if (Files.isDirectory(folder)) {
                try (Stream<Path> all = Files.list(folder)) {
                    all.filter(file -> file.getFileName()
                                    .toString()
                                    .toLowerCase(Locale.ROOT)
                                    .endsWith("." + BundleFile.ENDING))
                            .sorted(Comparator.comparing(Path::getFileName))
                            .forEach(found::add);
                }
            }
        }
        return found;
    }
}
