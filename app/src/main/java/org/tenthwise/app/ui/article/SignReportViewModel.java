package org.tenthwise.app.ui.article;

import java.util.List;
import org.tenthwise.app.firstarticle.ReportShelf;
import org.tenthwise.app.ui.form.Field;
import org.tenthwise.app.ui.form.FormViewModel;
import org.tenthwise.app.ui.shell.LedgerTasks;
import org.tenthwise.app.ui.shell.Navigator;
import org.tenthwise.model.run.ReportRole;
import org.tenthwise.model.words.Words;

/** Who signs a report, and as what. */
public final class SignReportViewModel {

    private static final int MOST = 40;

    private final List<String> people;
    private final Field<String> who;
    private final FormViewModel form;

    /** @param people names to be offered */
    public SignReportViewModel(
            String identifier,
            List<String> people,
            ReportShelf shelf,
            LedgerTasks tasks,
            Words words,
            Navigator navigator) {
        this.people = List.copyOf(people);
        who = Field.words("who", words.say("sign.who"), words.say("sign.who.question"), true, MOST);
        Field<ReportRole> role = Field.choice(
                "role",
                words.say("sign.meaning"),
                words.say("sign.meaning.question"),
                one -> words.say("report.role", one));
        role.offer(List.of(ReportRole.values()), one -> words.say("report.role.means", one));
        form = new FormViewModel(
                List.of(role, who),
                words,
                words.say("sign.act"),
                () -> sign(identifier, role, shelf, tasks, navigator));
        form.about(who);
    }

    private void sign(
            String identifier, Field<ReportRole> role, ReportShelf shelf, LedgerTasks tasks, Navigator navigator) {
        ReportRole as = role.valueProperty().get().orElseThrow();
        String name = who.reads();
        form.busy(true);
        tasks.run(() -> shelf.sign(identifier, as, name), report -> navigator.back(), () -> form.busy(false));
    }

    public FormViewModel form() {
        return form;
    }

    public void load() {
        who.offer(people);
    }
}
