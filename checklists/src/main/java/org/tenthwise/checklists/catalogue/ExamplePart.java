package org.tenthwise.checklists.catalogue;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.tenthwise.model.plan.Plan;

/**
 * Invented parts whose whole drawing is made into a plan: the list of its characteristics, the plan, readings that
 * pass, readings that do not, and readings with slips. No client offers them; they are there to be read, tried and
 * copied from.
 */
public enum ExamplePart {

    /** In millimetres, turned from both ends, with a general tolerance. */
    GATE_ROLLER_PIN("GR-341-A"),

    /** In inches, with the general tolerance of a title block. */
    HOIST_SCREW_BUSH("HB-226-B"),

    /** In millimetres, with spline, keyway, bolt circle and taper; its plan is in its second issue. */
    WINCH_SHAFT("WS-407-C", "1");

    private static final String PASSING = "-pass" + PlanFolder.READINGS;
    private static final String FAILING = "-fail" + PlanFolder.READINGS;
    private static final String SLIPS = "-slips" + PlanFolder.READINGS;
    private static final String LIST = ".characteristics.csv";

    private final PartFile file;
    private final List<String> issuesBefore;

    ExamplePart(String name, String... issuesBefore) {
        this.file = new PartFile(name);
        this.issuesBefore = List.of(issuesBefore);
    }

    public String planText() {
        return file.planText();
    }

    public Plan plan() {
        return file.plan();
    }

    /** What stands on the drawing, a characteristic a line, as {@code draft} takes it. */
    public String characteristics() {
        return file.text(LIST);
    }

    /** Readings of a part that conforms. */
    public String passingReadings() {
        return file.text(PASSING);
    }

    /** Readings of a part that went wrong as parts do: a few checks failed, a few left open, the rest right. */
    public String failingReadings() {
        return file.text(FAILING);
    }

    /** Readings of a right part, some of them gone wrong: another gauge, the other unit, a slip of the point. */
    public String readingsWithSlips() {
        return file.text(SLIPS);
    }

    /** Texts of the issues of the plan before the one in force, by their files as {@link PlanDesk} keeps them. */
    public Map<String, String> plansBefore() {
        Map<String, String> plans = new LinkedHashMap<>();
        for (String issue : issuesBefore) {
            plans.put(PlanDesk.fileOfIssue(file.name(), issue), file.text("-issue-%s.toml".formatted(issue)));
        }
        return plans;
    }

    /** All its files by their names, as they would lie in a folder of plans. */
    public Map<String, String> files() {
        Map<String, String> files = new LinkedHashMap<>();
        files.put(file.planFile(), planText());
        files.put(file.name() + LIST, characteristics());
        files.put(file.name() + PASSING, passingReadings());
        files.put(file.name() + FAILING, failingReadings());
        files.put(file.name() + SLIPS, readingsWithSlips());
        files.putAll(plansBefore());
        return files;
    }
}
