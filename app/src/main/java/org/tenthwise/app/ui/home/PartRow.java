package org.tenthwise.app.ui.home;

import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.words.Words;

/** A part to begin a run on, in words. */
public record PartRow(Plan plan, String number, String name, String about, String checks) {

    static PartRow of(Plan plan, Words words) {
        long holds =
                plan.steps().stream().filter(step -> !step.hold().isEmpty()).count();
        return new PartRow(
                plan,
                plan.part().number(),
                plan.name(),
                words.say(
                        "home.about",
                        plan.part().revision(),
                        words.say("home.unit." + plan.unit().symbol()),
                        plan.material()),
                words.say("home.checks", plan.steps().size(), holds));
    }
}
