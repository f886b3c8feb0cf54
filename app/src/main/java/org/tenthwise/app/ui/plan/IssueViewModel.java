package org.tenthwise.app.ui.plan;

import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.tenthwise.app.session.Runs;
import org.tenthwise.app.ui.form.Field;
import org.tenthwise.app.ui.form.FormViewModel;
import org.tenthwise.app.ui.shell.LedgerTasks;
import org.tenthwise.app.ui.shell.Navigator;
import org.tenthwise.app.ui.shell.Notice;
import org.tenthwise.checklists.catalogue.PlanDesk;
import org.tenthwise.checklists.editing.PartialCheck;
import org.tenthwise.checklists.editing.PlanInHand;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.words.Words;

/** Asks why a plan is issued and who answers for it, and puts it in force. */
public final class IssueViewModel {

    private static final int MOST_WORDS = 200;
    private static final int MOST_NAME = 40;

    private final String name;
    private final PlanInHand plan;
    private final PartialCheck partial;
    private final PlanDesk desk;
    private final Runs shop;
    private final LedgerTasks tasks;
    private final Words words;
    private final Navigator navigator;
    private final Clock clock;
    private final Field<String> reason;
    private final Field<String> by;
    private final Field<String> approvedBy;
    private final FormViewModel form;

    public IssueViewModel(
            String name,
            PlanInHand plan,
            PartialCheck partial,
            PlanDesk desk,
            Runs shop,
            LedgerTasks tasks,
            Words words,
            Navigator navigator,
            Clock clock) {
        this.name = name;
        this.plan = plan;
        this.partial = partial;
        this.desk = desk;
        this.shop = shop;
        this.tasks = tasks;
        this.words = words;
        this.navigator = navigator;
        this.clock = clock;
        reason = Field.words(
                "reason", words.say("planning.reason"), words.say("planning.reason.question"), true, MOST_WORDS);
        reason.offer(List.of(
                words.say("planning.reason.first"),
                words.say("planning.reason.drawing"),
                words.say("planning.reason.method"),
                words.say("planning.reason.order"),
                words.say("planning.reason.mended")));
        by = Field.words("by", words.say("planning.by"), words.say("planning.by.question"), true, MOST_NAME);
        approvedBy = Field.words(
                "approved-by",
                words.say("planning.approved-by"),
                words.say("planning.approved-by.question"),
                false,
                MOST_NAME);
        form = new FormViewModel(List.of(reason, by, approvedBy), words, words.say("planning.issue-it"), this::issue);
        form.aboutProperty().set(name);
    }

    public FormViewModel form() {
        return form;
    }

    /** Offers the people of the shop. */
    public void load() {
        tasks.run(() -> shop.names().people(), people -> {
            by.offer(people);
            approvedBy.offer(people);
        });
    }

    private void issue() {
        if (approvedBy.reads().equalsIgnoreCase(by.reads())) {
            tell("planning.alone", words.say("planning.alone.next"));
            return;
        }
        if (partial.isHalfAnswered(plan)) {
            tell("planning.alone", words.say("planning.half-answered"));
            return;
        }
        PlanDesk.Why why = new PlanDesk.Why(
                reason.reads(),
                by.reads(),
                Optional.of(approvedBy.reads()).filter(second -> !second.isEmpty()),
                LocalDate.now(clock),
                partial.affected(plan));
        form.busy(true);
        tasks.run(() -> desk.issue(name, plan.text(), why), this::issued, () -> form.busy(false));
    }

    private void issued(Plan inForce) {
        navigator.back();
        navigator.back();
        tell(
                "planning.in-force",
                words.say("planning.in-force.next", inForce.part().number(), inForce.issue()));
    }

    private void tell(String title, String sentence) {
        navigator.tell(Notice.plain(words.say(title), sentence, words.say("shell.understood")));
    }
}
