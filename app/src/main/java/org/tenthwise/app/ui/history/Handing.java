package org.tenthwise.app.ui.history;

import org.tenthwise.app.export.SeriesView;
import org.tenthwise.app.export.SeriesViewFormat;
import org.tenthwise.app.handout.ViewHandout;
import org.tenthwise.app.ui.shell.LedgerTasks;
import org.tenthwise.app.ui.shell.Navigator;
import org.tenthwise.app.ui.shell.Notice;
import org.tenthwise.model.words.Words;

/** Hands a view out and says where the file lies. */
record Handing(ViewHandout handout, LedgerTasks tasks, Words words, Navigator navigator) {

    void hand(SeriesView view, SeriesViewFormat as) {
        tasks.run(
                () -> handout.writing().write(view, as),
                file -> navigator.tell(
                        Notice.plain(words.say("history.written"), file.toString(), words.say("shell.understood"))));
    }
}
