package org.tenthwise.checklists.rules;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.tenthwise.checklists.format.RawList;
import org.tenthwise.checklists.format.RawValue;
import org.tenthwise.model.plan.AffectedSince;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.run.Baseline;
import org.tenthwise.model.run.OccasionSaid;
import org.tenthwise.model.run.Purpose;
import org.tenthwise.model.words.Word;

/** What the run of a readings file is for: {@code purpose} and what goes with it. */
final class SampleOccasion {

    private static final String PURPOSE = "purpose";
    private static final String AFFECTED = "affected";
    private static final String CHANGES = "changes";

    private SampleOccasion() {}

    /** Absent where a problem was noted. */
    static Optional<OccasionSaid> read(TableKeys keys, Plan plan) {
        int before = keys.problemCount();
        Optional<Purpose> purpose = keys.ifAny(PURPOSE, key -> keys.word(key, List.of(Purpose.values()), Word::spaced));
        Optional<Integer> piece = keys.ifAny("piece", keys::whole);
        Optional<String> baseline = keys.ifAny("baseline", keys::text);
        Optional<String> reason = keys.ifAny("reason", keys::prose);
        Optional<String> order = keys.ifAny("order", keys::text);
        List<String> changes = keys.has(CHANGES) ? texts(keys, CHANGES) : List.of();
        List<Integer> affected = keys.has(AFFECTED) ? affected(keys, plan) : List.of();
        if (keys.problemCount() > before) {
            return Optional.empty();
        }
        OccasionSaid said = new OccasionSaid(
                purpose.orElse(Purpose.NOT_STATED),
                baseline.orElse(""),
                reason.orElse(""),
                piece,
                affected,
                order.orElse(""),
                changes);
        return keys.sensible(PURPOSE, () -> {
            said.on(baseline.map(run -> new Baseline(run, "any")), about(said, plan));
            return said;
        });
    }

    /** A partial one that names nothing is about what the plan says, which is something. */
    private static List<Integer> about(OccasionSaid said, Plan plan) {
        return said.affected().isEmpty() && said.purpose() == Purpose.FIRST_ARTICLE_PARTIAL
                ? List.of(plan.steps().get(0).number())
                : said.affected();
    }

    private static List<Integer> affected(TableKeys keys, Plan plan) {
        List<Integer> steps = new ArrayList<>();
        for (String called : texts(keys, AFFECTED)) {
            List<Integer> meant = AffectedSince.called(plan, called);
            if (meant.isEmpty()) {
                keys.problem(AFFECTED, "readings.affected", called);
            }
            steps.addAll(meant);
        }
        return steps;
    }

    private static List<String> texts(TableKeys keys, String key) {
        List<String> texts = new ArrayList<>();
        for (RawValue item : keys.list(key).map(RawList::items).orElse(List.of())) {
            if (item instanceof RawValue.Text text && !text.text().isBlank()) {
                texts.add(text.text().strip());
            } else {
                keys.problem(item.spot(), "readings.texts", key, item.what());
            }
        }
        return texts;
    }
}
