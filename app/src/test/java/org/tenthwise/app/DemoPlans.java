package org.tenthwise.app;

import org.tenthwise.checklists.catalogue.DemoPart;
import org.tenthwise.model.plan.Plan;

/** Demo plans with a line more, for tests of what stands beside it. */
public final class DemoPlans {

    private static final String OUTSIDE = "name = \"Outside Ø48\"\n";

    private DemoPlans() {}

    /** The screw carrier, whose Ø48 is read without a word of how warm it is: its readings alone are asked. */
    public static Plan outsideAsRead() {
        String text = DemoPart.SCREW_CARRIER.planText();
        if (!text.contains(OUTSIDE)) {
            throw new AssertionError("The plan of the screw carrier has no " + OUTSIDE);
        }
        return InventedPlans.read(text.replace(OUTSIDE, OUTSIDE + "temperature = \"not-asked\"\n"));
    }
}
