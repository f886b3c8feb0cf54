package org.tenthwise.app.kept;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.Properties;
import org.tenthwise.app.session.StepsInHand;

/**
 * The steps in hand in a small file, those of the runs worked on last. One that is missing or cannot be read has none.
 */
public final class KeptSteps implements StepsInHand {

    /** Usual name of the file. */
    public static final String FILE = "steps.properties";

    private static final int MOST = 20;
    private static final String RUN = "run.";
    private static final String STEP = "step.";

    private record Kept(String run, int step) {}

    private final SmallFile file;

    public KeptSteps(Path file) {
        this.file = new SmallFile(file);
    }

    @Override
    public OptionalInt of(String run) {
        return read().stream()
                .filter(kept -> kept.run().equals(run))
                .mapToInt(Kept::step)
                .findFirst();
    }

    @Override
    public void keep(String run, int step) {
        List<Kept> all = new ArrayList<>(List.of(new Kept(run, step)));
        read().stream().filter(kept -> !kept.run().equals(run)).limit(MOST - 1).forEach(all::add);
        Properties written = new Properties();
        for (int i = 0; i < all.size(); i++) {
            written.setProperty(RUN + i, all.get(i).run());
            written.setProperty(STEP + i, String.valueOf(all.get(i).step()));
        }
        file.write(written);
    }

    private List<Kept> read() {
        Properties written = file.read();
        List<Kept> all = new ArrayList<>();
        for (int i = 0; i < MOST; i++) {
            String run = written.getProperty(RUN + i, "");
            String step = written.getProperty(STEP + i, "");
            if (!run.isEmpty() && step.matches("\\d{1,6}")) {
                all.add(new Kept(run, Integer.parseInt(step)));
            }
        }
        return all;
    }
}
