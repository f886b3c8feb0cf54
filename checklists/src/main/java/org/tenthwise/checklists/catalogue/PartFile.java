package org.tenthwise.checklists.catalogue;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import org.tenthwise.checklists.rules.PlanReader;
import org.tenthwise.checklists.rules.PlanReading;
import org.tenthwise.model.plan.Plan;

/**
 * The files of an invented part that come along in the program.
 *
 * @param name of the part and its revision, as its files are called
 */
record PartFile(String name) {

    private static final String PLAN = ".toml";

    /** File name of the plan, as it would lie in a folder. */
    String planFile() {
        return name + PLAN;
    }

    String planText() {
        return text(PLAN);
    }

    /** @throws IllegalStateException where the plan in the program has an error */
    Plan plan() {
        PlanReading reading = new PlanReader().read(planText());
        if (reading instanceof PlanReading.Bad bad) {
            throw new IllegalStateException("%s: %s".formatted(planFile(), bad.problems()));
        }
        return ((PlanReading.Good) reading).plan();
    }

    /**
     * The text of one of its files.
     *
     * @param ending of the file name, behind the name of the part
     */
    String text(String ending) {
        try (InputStream in = PartFile.class.getResourceAsStream("/parts/" + name + ending)) {
            if (in == null) {
                throw new IllegalStateException("The file %s%s is not in the program".formatted(name, ending));
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
