package org.tenthwise.app.store.sqlite;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.BooleanSupplier;

/**
 * What a disk would hold if the power went. What was written to a file is safe once the file was synchronised after it;
 * that a file has a name, or has it no more, once its folder was. Of all else each sector of 512 bytes, each cut and
 * each name is there or is not, as is asked of a coin.
 */
final class DiskWithoutPower {

    private static final int SECTOR = 512;

    /** A change to a file that is not safe yet. */
    private record Pending(long at, byte[] data, boolean cut) {}

    private static final class Content {

        private byte[] safe = {};
        private final List<Pending> pending = new ArrayList<>();

        void synchronise() {
            pending.forEach(change -> safe = apply(safe, change));
            pending.clear();
        }

        byte[] surviving(BooleanSupplier coin) {
            byte[] left = safe;
            for (Pending change : pending) {
                for (Pending part : sectors(change)) {
                    left = coin.getAsBoolean() ? apply(left, part) : left;
                }
            }
            return left;
        }

        private static List<Pending> sectors(Pending change) {
            if (change.cut) {
                return List.of(change);
            }
            List<Pending> parts = new ArrayList<>();
            int from = 0;
            while (from < change.data.length) {
                int room = SECTOR - (int) ((change.at + from) % SECTOR);
                int to = Math.min(change.data.length, from + room);
                parts.add(new Pending(change.at + from, Arrays.copyOfRange(change.data, from, to), false));
                from = to;
            }
            return parts;
        }

        private static byte[] apply(byte[] to, Pending change) {
            if (change.cut) {
                return Arrays.copyOf(to, (int) change.at);
            }
            byte[] changed = Arrays.copyOf(to, Math.max(to.length, (int) change.at + change.data.length));
            System.arraycopy(change.data, 0, changed, (int) change.at, change.data.length);
            return changed;
        }
    }

    /** A name given or, where there is no content, taken away, that is not safe yet. */
    private record Naming(String name, Content content) {}

    private static final Content NOTHING = new Content();

    private final String folder;
    private final Map<Long, String> handles = new HashMap<>();
    private final Map<Long, Content> open = new HashMap<>();
    private final Map<String, Content> names = new TreeMap<>();
    private final Map<String, Content> safeNames = new TreeMap<>();
    private final List<Naming> namings = new ArrayList<>();

    /** @param folder its files lie in it directly */
    DiskWithoutPower(Path folder) {
        this.folder = folder.toString();
    }

    void then(WatchedDisk.Act act) {
        switch (act.what()) {
            case 'O' -> opened(act);
            case 'C' -> {
                handles.remove(act.handle());
                open.remove(act.handle());
            }
            case 'W' -> content(act).pending.add(new Pending(act.number(), act.data(), false));
            case 'T' -> content(act).pending.add(new Pending(act.number(), new byte[0], true));
            case 'S' -> synchronise(act);
            case 'U' -> name(act.path(), NOTHING);
            case 'R' -> {
                Content moved = names.get(act.path());
                name(act.path(), NOTHING);
                name(new String(act.data(), UTF_8), moved);
            }
            default -> throw new IllegalStateException("Nothing is known of " + act.what());
        }
    }

    private void opened(WatchedDisk.Act act) {
        handles.put(act.handle(), act.path());
        if (!act.path().equals(folder)) {
            if (act.number() == 0) {
                name(act.path(), new Content());
            }
            open.put(act.handle(), names.get(act.path()));
        }
    }

    private void synchronise(WatchedDisk.Act act) {
        if (handles.get(act.handle()).equals(folder)) {
            namings.forEach(naming -> give(safeNames, naming));
            namings.clear();
        } else {
            content(act).synchronise();
        }
    }

    private Content content(WatchedDisk.Act act) {
        return open.get(act.handle());
    }

    private void name(String path, Content content) {
        Naming naming = new Naming(path, content);
        give(names, naming);
        namings.add(naming);
    }

    private static void give(Map<String, Content> to, Naming naming) {
        if (naming.content == NOTHING) {
            to.remove(naming.name);
        } else {
            to.put(naming.name, naming.content);
        }
    }

    /** Leaves in a folder what is left. */
    void leave(Path in, BooleanSupplier coin) throws IOException {
        Map<String, Content> left = new TreeMap<>(safeNames);
        for (Naming naming : namings) {
            if (coin.getAsBoolean()) {
                give(left, naming);
            }
        }
        for (Map.Entry<String, Content> file : left.entrySet()) {
            Files.write(
                    in.resolve(Path.of(file.getKey()).getFileName()),
                    file.getValue().surviving(coin));
        }
    }

    /** What was written to a file until now, safe or not. */
    String written(String name) {
        Content content = names.getOrDefault(folder + "/" + name, NOTHING);
        return new String(content.surviving(() -> true), UTF_8);
    }
}
