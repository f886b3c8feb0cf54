package org.tenthwise.checklists.catalogue;

import org.tenthwise.model.plan.Plan;

/** The two invented parts that come along for trying out: lifting gear of a canal lock gate. */
public enum DemoPart {

    /** In millimetres, aluminium bronze. */
    SCREW_CARRIER("LG-2207-C"),

    /** In inches, stainless. */
    WINCH_BARREL_END("WB-118-B");

    private final PartFile file;

    DemoPart(String name) {
        this.file = new PartFile(name);
    }

    /** File name of the plan, as it would lie in a folder. */
    public String planFile() {
        return file.planFile();
    }

    public String planText() {
        return file.planText();
    }

    public Plan plan() {
        return file.plan();
    }

    /** Readings of a part on which every check passes. */
    public String passingReadings() {
        return file.text("-pass" + PlanFolder.READINGS);
    }

    /** Readings of a part on which things go wrong. */
    public String failingReadings() {
        return file.text("-fail" + PlanFolder.READINGS);
    }
}
