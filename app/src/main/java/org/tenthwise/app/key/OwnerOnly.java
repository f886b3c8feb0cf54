package org.tenthwise.app.key;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.AclEntry;
import java.nio.file.attribute.AclEntryPermission;
import java.nio.file.attribute.AclEntryType;
import java.nio.file.attribute.AclFileAttributeView;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.PosixFilePermission;
import java.nio.file.attribute.PosixFilePermissions;
import java.nio.file.attribute.UserPrincipal;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;

/** Files that nobody but their owner may read or write: by POSIX permissions where there are any, else by its ACL. */
final class OwnerOnly {

    private static final Set<PosixFilePermission> OWNER = PosixFilePermissions.fromString("rw-------");

    private OwnerOnly() {}

    /**
     * Writes a file that is closed to others before a byte is in it, and has its name only when it is whole and on the
     * disk.
     *
     * @throws java.nio.file.FileAlreadyExistsException if something lies under the name
     */
    static void write(Path file, byte[] bytes) throws IOException {
        Path making = file.resolveSibling(file.getFileName() + "." + UUID.randomUUID() + ".new");
        try {
            try (FileChannel channel = FileChannel.open(
                    making, Set.of(StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE), from(file))) {
                close(making);
                ByteBuffer left = ByteBuffer.wrap(bytes);
                while (left.hasRemaining()) {
                    channel.write(left);
                }
                channel.force(true);
            }
            Files.move(making, file);
        } finally {
            Files.deleteIfExists(making);
        }
    }

    /** As far as the system can tell. */
    static boolean isOpenToOthers(Path file) {
        try {
            if (hasPosix(file)) {
                Set<PosixFilePermission> others = EnumSet.copyOf(Files.getPosixFilePermissions(file));
                others.removeAll(EnumSet.of(
                        PosixFilePermission.OWNER_READ,
                        PosixFilePermission.OWNER_WRITE,
                        PosixFilePermission.OWNER_EXECUTE));
                return !others.isEmpty();
            }
            Optional<AclFileAttributeView> acl = acl(file);
            if (acl.isEmpty()) {
                return false;
            }
            UserPrincipal owner = acl.get().getOwner();
            return acl.get().getAcl().stream()
                    .anyMatch(entry -> entry.type() == AclEntryType.ALLOW
                            && !entry.principal().equals(owner)
                            && entry.permissions().contains(AclEntryPermission.READ_DATA));
        } catch (IOException | IllegalArgumentException e) {
            return false;
        }
    }

    private static FileAttribute<?>[] from(Path file) {
        return hasPosix(file)
                ? new FileAttribute<?>[] {PosixFilePermissions.asFileAttribute(OWNER)}
                : new FileAttribute<?>[0];
    }

    private static void close(Path making) throws IOException {
        Optional<AclFileAttributeView> acl = hasPosix(making) ? Optional.empty() : acl(making);
        if (acl.isPresent()) {
            acl.get()
                    .setAcl(List.of(AclEntry.newBuilder()
                            .setType(AclEntryType.ALLOW)
                            .setPrincipal(acl.get().getOwner())
                            .setPermissions(EnumSet.allOf(AclEntryPermission.class))
                            .build()));
        }
    }

    private static boolean hasPosix(Path file) {
        return file.getFileSystem().supportedFileAttributeViews().contains("posix");
    }

    private static Optional<AclFileAttributeView> acl(Path file) {
        return Optional.ofNullable(Files.getFileAttributeView(file, AclFileAttributeView.class));
    }
}
