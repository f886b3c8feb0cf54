package org.tenthwise.app.ui;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import org.tenthwise.app.ui.shell.Navigator;
import org.tenthwise.checklists.drafting.Drafted;
import org.tenthwise.checklists.editing.OutlineText;
import org.tenthwise.checklists.editing.PartialCheck;
import org.tenthwise.checklists.editing.PlanInHand;
import org.tenthwise.checklists.editing.TableText;
import org.tenthwise.checklists.editing.Template;

/** The ways to where plans are made and changed, kept in a list. */
abstract class PlanWays implements Navigator {

    public final List<String> asked = new ArrayList<>();

    /** The last that is asked for a template. */
    public Optional<Consumer<Template>> template = Optional.empty();

    /** The last that is asked for another plan. */
    public Optional<BiConsumer<String, Optional<String>>> other = Optional.empty();

    @Override
    public void plans() {
        asked.add("plans");
    }

    @Override
    public void chooseList() {
        asked.add("choose list");
    }

    @Override
    public void newPlanOf(String list) {
        asked.add("new plan of " + list);
    }

    @Override
    public void drafted(String name, Drafted drafted) {
        asked.add("drafted " + name);
    }

    @Override
    public void newPlan() {
        asked.add("new plan");
    }

    @Override
    public void plan(String name) {
        asked.add("plan " + name);
    }

    @Override
    public void planHead(String name, PlanInHand plan) {
        asked.add("head of " + name);
    }

    @Override
    public void planBeside(PlanInHand plan, PlanInHand.Beside open) {
        asked.add("beside " + open);
    }

    @Override
    public void outline(String name, PlanInHand plan) {
        asked.add("outline of " + name);
    }

    @Override
    public void outlineElement(PlanInHand plan, OutlineText.Side side, int place, boolean isNew) {
        asked.add("%s element %d %s".formatted(isNew ? "new" : "old", place, side));
    }

    @Override
    public void marks(String name, PlanInHand plan, int place) {
        asked.add("marks %d of %s".formatted(place, name));
    }

    @Override
    public void markByFigures(PlanInHand plan, int place) {
        asked.add("figures of mark %d".formatted(place));
    }

    @Override
    public void planStep(String name, PlanInHand plan, int place) {
        asked.add("step %d of %s".formatted(place, name));
    }

    @Override
    public void templates(Consumer<Template> chosen) {
        asked.add("templates");
        template = Optional.of(chosen);
    }

    @Override
    public void templateSteps(Template template, Consumer<Template> chosen) {
        asked.add("steps of " + template.name());
        this.template = Optional.of(chosen);
    }

    @Override
    public void keepTemplate(List<TableText> steps, int place) {
        asked.add("keep %d of %d steps".formatted(place, steps.size()));
    }

    @Override
    public void balloons(String name, PlanInHand plan, int place) {
        asked.add("balloons %d of %s".formatted(place, name));
    }

    @Override
    public void changes(String name, PlanInHand plan, PartialCheck partial) {
        asked.add("changes of " + name);
    }

    @Override
    public void otherPlan(BiConsumer<String, Optional<String>> chosen) {
        asked.add("other plan");
        other = Optional.of(chosen);
    }

    @Override
    public void issue(String name, PlanInHand plan, PartialCheck partial) {
        asked.add("issue " + name);
    }
}
