package org.tenthwise.app.ui.run;

import java.util.ArrayList;
import java.util.List;
import org.tenthwise.app.ui.shell.Navigator;
import org.tenthwise.app.ui.shell.Notice;
import org.tenthwise.model.words.Words;

/** Tells of figures that were sent and not taken. */
final class Untaken {

    private final Navigator navigator;
    private final Words words;

    Untaken(Navigator navigator, Words words) {
        this.navigator = navigator;
        this.words = words;
    }

    void tell(String first, List<String> others, String why) {
        List<String> all = new ArrayList<>(List.of(first));
        all.addAll(others);
        tell(all, why);
    }

    void tell(List<String> figures, String why) {
        navigator.tell(Notice.plain(
                words.say("run.untaken"), words.say("run.untaken.line", why, figures), words.say("shell.understood")));
    }

    void tellWhyNoSum(String why) {
        navigator.tell(Notice.plain(words.say("run.no-sum"), why, words.say("shell.understood")));
    }

    /** @param opens what is done where it is the first of the next check */
    void askWhetherItOpens(String figure, int here, int next, Runnable opens) {
        navigator.tell(new Notice(
                words.say("run.opens", next),
                words.say("run.opens.line", figure, here, next),
                List.of(
                        new Notice.NoticeKey(words.say("run.opens.yes", next), opens),
                        new Notice.NoticeKey(words.say("run.opens.no"), () -> {}))));
    }
}
