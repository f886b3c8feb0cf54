package org.tenthwise.app.ui.article;

import java.util.List;
import org.tenthwise.app.firstarticle.ReportShelf;
import org.tenthwise.app.ui.form.Field;
import org.tenthwise.app.ui.form.FormViewModel;
import org.tenthwise.app.ui.shell.LedgerTasks;
import org.tenthwise.app.ui.shell.Navigator;
import org.tenthwise.model.words.Words;

/** Which part number a report is on: one with closed runs, ready to be taken or typed. */
public final class ReportPartViewModel {

    private static final int MOST = 40;

    private final ReportShelf shelf;
    private final LedgerTasks tasks;
    private final Field<String> part;
    private final FormViewModel form;

    public ReportPartViewModel(ReportShelf shelf, LedgerTasks tasks, Words words, Navigator navigator) {
        this.shelf = shelf;
        this.tasks = tasks;
        part = Field.mark("part", words.say("ask.part"), words.say("report.ask.part"), true, MOST);
        form = new FormViewModel(
                List.of(part), words, words.say("report.ask.part.act"), () -> navigator.reportRuns(part.reads()));
        form.about(part);
    }

    public FormViewModel form() {
        return form;
    }

    public void load() {
        tasks.run(shelf::parts, part::offer);
    }
}
