package org.tenthwise.checklists.catalogue;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import org.tenthwise.checklists.rules.PlanReader;
import org.tenthwise.checklists.rules.PlanReading;
import org.tenthwise.model.plan.Plan;

/** The two invented parts that come along for trying out: lifting gear of a canal lock gate. */
public enum DemoPart {

    /** In millimetres, aluminium bronze. */
    SCREW_CARRIER("LG-2207-C"),

    /** In inches, stainless. */
    WINCH_BARREL_END("WB-118-B");

    private final String file;

    DemoPart(String file) {
        this.file = file;
    }

    /** File name of the plan, as it would lie in a folder. */
    public String planFile() {
        return file + ".toml";
    }

    public String planText() {
        return text(planFile());
    }

    public Plan plan() {
        PlanReading reading = new PlanReader().read(planText());
        if (reading instanceof PlanReading.Bad bad) {
            throw new IllegalStateException("%s: %s".formatted(planFile(), bad.problems()));
        }
        return ((PlanReading.Good) reading).plan();
    }

    /** Readings of a part on which every check passes. */
    public String passingReadings() {
        return text(file + "-pass" + PlanFolder.READINGS);
    }

    /** Readings of a part on which things go wrong. */
    public String failingReadings() {
        return text(file + "-fail" + PlanFolder.READINGS);
    }

    private static String text(String name) {
        try (InputStream in = DemoPart.class.getResourceAsStream("/parts/" + name)) {
            if (in == null) {
                throw new IllegalStateException("The demo file %s is not in the program".formatted(name));
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
