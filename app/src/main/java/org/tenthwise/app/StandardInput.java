package org.tenthwise.app;

import java.io.FileDescriptor;
import java.io.FileInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;

/**
 * What is piped in. Where standard input was closed before the start, Java's own files take its place, and a batch
 * would be read from one of them; Linux tells that it is so.
 */
final class StandardInput {

    private static final Path PLACE = Path.of("/dev/stdin");

    private StandardInput() {}

    static InputStream open() {
        return isTaken() ? new Shut() : new FileInputStream(FileDescriptor.in);
    }

    private static boolean isTaken() {
        try {
            return PLACE.toRealPath()
                    .startsWith(Path.of(System.getProperty("java.home")).toRealPath());
        } catch (IOException e) { // a pipe has no such path, nor has Windows
            return false;
        }
    }

    private static final class Shut extends InputStream {

        @Override
        public int read() throws IOException {
            throw new IOException("Standard input is closed");
        }
    }
}
