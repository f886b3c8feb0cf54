package org.tenthwise.app.history;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import org.tenthwise.checklists.rules.PlanReader;
import org.tenthwise.checklists.rules.PlanReading;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.plan.PlanSource;

/** Plans kept with runs, each read once and kept by the hash of its text; those used last stay. */
public final class Plans {

    private static final int MOST = 64;

    private final PlanReader reader = new PlanReader();
    private final Map<String, Optional<Plan>> read = new LinkedHashMap<>(MOST, 0.75f, true);

    /** Absent where this release cannot read it. */
    public Optional<Plan> of(PlanSource source) {
        Optional<Plan> kept = of(source.sha256(), source::text);
        return kept.isEmpty() || kept.get().source().text().equals(source.text()) ? kept : read(source.text());
    }

    /**
     * The same, its text looked up only where it was not read yet.
     *
     * @param text absent where it is lost
     */
    public Optional<Plan> of(String sha256, Supplier<String> text) {
        Optional<Plan> kept = read.get(sha256);
        if (kept == null) {
            kept = read(text.get());
            read.put(sha256, kept);
            if (read.size() > MOST) {
                read.remove(read.keySet().iterator().next());
            }
        }
        return kept;
    }

    private Optional<Plan> read(String text) {
        return reader.readKept(text) instanceof PlanReading.Good good ? Optional.of(good.plan()) : Optional.empty();
    }
}
