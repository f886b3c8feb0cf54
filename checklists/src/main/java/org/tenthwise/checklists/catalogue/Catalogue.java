package org.tenthwise.checklists.catalogue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.tenthwise.checklists.rules.PlanProblem;
import org.tenthwise.model.plan.PartId;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.words.Message;

/**
 * The plans there are, one a part and revision.
 *
 * @param listed plans to begin a run with, in the order they were found
 * @param refused files that hold no sound plan
 */
public record Catalogue(List<Listed> listed, List<RefusedFile> refused) {

    /** @param file name of the file it comes from */
    public record Listed(String file, Plan plan) {}

    /** @param problems at least one */
    public record RefusedFile(String file, List<PlanProblem> problems) {

        public RefusedFile {
            problems = List.copyOf(problems);
        }
    }

    public Catalogue {
        listed = List.copyOf(listed);
        refused = List.copyOf(refused);
    }

    /** The two invented parts that come along. */
    public static Catalogue ofDemoParts() {
        return new Catalogue(
                Arrays.stream(DemoPart.values())
                        .map(part -> new Listed(part.planFile(), part.plan()))
                        .toList(),
                List.of());
    }

    /** These alone, where there is a sound one among them: the demo parts do not stand among the parts of a shop. */
    public Catalogue orDemoParts() {
        return listed.isEmpty() ? ofDemoParts().and(this) : this;
    }

    public List<Plan> plans() {
        return listed.stream().map(Listed::plan).toList();
    }

    /** Both together. A plan of {@code more} for a part and revision that is listed here already is refused. */
    public Catalogue and(Catalogue more) {
        List<Listed> both = new ArrayList<>(listed);
        List<RefusedFile> out = new ArrayList<>(refused);
        out.addAll(more.refused);
        for (Listed next : more.listed) {
            both.stream()
                    .filter(here -> here.plan().part().equals(next.plan().part()))
                    .findFirst()
                    .ifPresentOrElse(here -> out.add(second(here, next)), () -> both.add(next));
        }
        return new Catalogue(both, out);
    }

    private static RefusedFile second(Listed first, Listed second) {
        PartId part = second.plan().part();
        return new RefusedFile(
                second.file(),
                List.of(PlanProblem.ofFile(Message.of("file.second", part.number(), part.revision(), first.file()))));
    }
}
