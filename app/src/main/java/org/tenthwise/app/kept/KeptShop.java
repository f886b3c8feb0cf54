package org.tenthwise.app.kept;

import java.nio.file.Path;
import java.util.List;
import java.util.Properties;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.tenthwise.app.session.ShopBook;

/** What a shop said of itself in a small file. One that is missing or cannot be read says nothing. */
public final class KeptShop implements ShopBook {

    /** Usual name of the file. */
    public static final String FILE = "shop.properties";

    private static final String MACHINE = "machine.";
    private static final String PERSON = "person.";
    private static final String BEGUN = "begun";

    private final SmallFile file;

    public KeptShop(Path file) {
        this.file = new SmallFile(file);
    }

    @Override
    public synchronized Shop kept() {
        Properties kept = file.read();
        return new Shop(names(kept, MACHINE), names(kept, PERSON), Boolean.parseBoolean(kept.getProperty(BEGUN)));
    }

    @Override
    public synchronized void keep(Shop shop) {
        Properties kept = new Properties();
        put(kept, MACHINE, shop.machines());
        put(kept, PERSON, shop.people());
        kept.setProperty(BEGUN, String.valueOf(shop.begun()));
        file.write(kept);
    }

    private static void put(Properties kept, String stem, List<String> names) {
        IntStream.range(0, names.size()).forEach(i -> kept.setProperty(stem + i, names.get(i)));
    }

    private static List<String> names(Properties kept, String stem) {
        return Stream.iterate(0, i -> kept.getProperty(stem + i) != null, i -> i + 1)
                .map(i -> kept.getProperty(stem + i))
                .toList();
    }
}
