package org.tenthwise.app.ui.plan;

import org.tenthwise.app.ui.shell.LedgerTasks;
import org.tenthwise.checklists.catalogue.PlanDesk;
import org.tenthwise.checklists.editing.PlanInHand;
import org.tenthwise.checklists.editing.PlanText;

/**
 * What is changed in a plan on one screen. Every change is kept as a draft as soon as it is seen; what was changed
 * before the screen was opened is not taken back here.
 */
final class ChangesHere {

    private final String name;
    private final PlanInHand plan;
    private final PlanDesk desk;
    private final LedgerTasks tasks;
    private PlanText seen;
    private int count;

    ChangesHere(String name, PlanInHand plan, PlanDesk desk, LedgerTasks tasks) {
        this.name = name;
        this.plan = plan;
        this.desk = desk;
        this.tasks = tasks;
        this.seen = plan.text();
    }

    /** The plan as it was when a change was last looked for. */
    PlanText before() {
        return seen;
    }

    /** Whether the plan was changed since this was asked last: then one change more can be taken back. */
    boolean isAnother() {
        if (plan.text().text().equals(seen.text())) {
            return false;
        }
        count++;
        keep();
        return true;
    }

    boolean canUndo() {
        return count > 0;
    }

    /** Takes the last change back, if there was one here. */
    void undo() {
        if (canUndo()) {
            plan.undo();
            count--;
            keep();
        }
    }

    private void keep() {
        seen = plan.text();
        PlanText kept = seen;
        tasks.run(
                () -> {
                    desk.keep(name, kept);
                    return true;
                },
                done -> {});
    }
}
