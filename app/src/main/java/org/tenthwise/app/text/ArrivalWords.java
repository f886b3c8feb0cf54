package org.tenthwise.app.text;

import java.util.ArrayList;
import java.util.List;
import org.tenthwise.app.store.Arrivals;
import org.tenthwise.app.store.Arrivals.What;
import org.tenthwise.model.words.Words;

/** What is said of runs of another station: what would come in, and what did. */
public final class ArrivalWords {

    /** More than a person reads at once. */
    private static final int MOST = 12;

    private final Words words;

    public ArrivalWords(Words words) {
        this.words = words;
    }

    /** A line a run, those of which something comes in first; the others are counted behind so many. */
    public List<String> runs(Arrivals arrivals) {
        List<Arrivals.OfRun> ordered = new ArrayList<>(arrivals.coming());
        arrivals.runs().stream().filter(run -> run.added().isEmpty()).forEach(ordered::add);
        List<String> lines = new ArrayList<>();
        ordered.stream().limit(MOST).forEach(run -> lines.add(run(run)));
        if (ordered.size() > MOST) {
            lines.add(words.say("arrival.more", ordered.size() - MOST));
        }
        return lines;
    }

    private String run(Arrivals.OfRun run) {
        return words.say(
                words.key("arrival", run.what()), run.run(), run.added().size(), run.had());
    }

    /** How many runs are new or longer; that nothing is new, where none is. */
    public String inShort(Arrivals arrivals) {
        long fresh = count(arrivals, What.NEW);
        long longer = count(arrivals, What.LONGER);
        if (!arrivals.addAnything()) {
            return words.say("arrival.nothing");
        }
        return fresh + longer == 0 ? words.say("arrival.signer-now-known") : words.say("arrival.short", fresh, longer);
    }

    /** @param signer short fingerprint */
    public String signer(String signer, boolean known) {
        return words.say(known ? "arrival.signer" : "arrival.signer-not-known", signer);
    }

    private static long count(Arrivals arrivals, What what) {
        return arrivals.runs().stream().filter(run -> run.what() == what).count();
    }
}
