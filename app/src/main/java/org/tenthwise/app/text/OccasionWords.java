package org.tenthwise.app.text;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.tenthwise.model.record.Sheet;
import org.tenthwise.model.run.Occasion;
import org.tenthwise.model.run.Purpose;
import org.tenthwise.model.words.Words;

/** What a run was begun for, in words, and what is said in place of what it does not ask. */
public final class OccasionWords {

    private final Words words;

    public OccasionWords(Words words) {
        this.words = words;
    }

    /** "In process, piece 5". */
    public String kind(Purpose purpose, Optional<Integer> piece) {
        return piece.map(number -> words.say("occasion.purpose.in-process.piece", number))
                .orElseGet(() -> words.say("occasion.purpose", purpose));
    }

    public String kind(Occasion occasion) {
        return kind(occasion.purpose(), occasion.piece());
    }

    /** "Piece 5", for a heading; empty where nobody said, which claims nothing. */
    public String inShort(Occasion occasion) {
        return occasion.purpose() == Purpose.NOT_STATED
                ? ""
                : words.say(
                        words.key("occasion.short", occasion.purpose()),
                        occasion.piece().orElse(0));
    }

    /** All there is to say of a run: its lines, what of the plan it asks, and what it was begun to look at. */
    public List<String> whole(Sheet sheet) {
        Occasion occasion = sheet.run().begun().occasion();
        if (occasion.saysNothing()) {
            return List.of();
        }
        List<String> lines = new ArrayList<>(lines(occasion));
        if (!occasion.affected().isEmpty()) {
            lines.add(words.say(
                    occasion.purpose() == Purpose.MEASURED_AGAIN ? "occasion.again" : "occasion.affected",
                    occasion.affected().stream()
                            .map(sheet.plan()::step)
                            .map(step -> words.say("occasion.check", step.number(), step.name()))
                            .toList()));
        }
        int all = sheet.lines().size();
        lines.add(words.say("occasion.asks", all - sheet.leftOut().size(), all));
        return lines;
    }

    /** The kind, what it stands on and why, what order it is made under and what changes are in force, a line each. */
    public List<String> lines(Occasion occasion) {
        List<String> lines = new ArrayList<>();
        String kind = kind(occasion);
        lines.add(occasion.baseline()
                .map(baseline -> words.say("occasion.on", kind, baseline.run(), baseline.head()))
                .orElseGet(() -> words.sentence(kind)));
        if (!occasion.reason().isEmpty()) {
            lines.add(words.say("occasion.reason", occasion.reason()));
        }
        if (!occasion.order().isEmpty()) {
            lines.add(words.say("occasion.order", occasion.order()));
        }
        if (!occasion.changes().isEmpty()) {
            lines.add(words.say("occasion.changes", occasion.changes()));
        }
        return lines;
    }

    /** What stands in place of a check that the run does not ask; never a figure of an earlier run. */
    public String notHere(Occasion occasion) {
        return occasion.purpose() == Purpose.FIRST_ARTICLE_PARTIAL
                ? words.say(
                        "occasion.not-in-report",
                        occasion.baseline().orElseThrow().run())
                : words.say("occasion.not-here");
    }

    /** How many checks of the plan are not in the run; empty where all are. */
    public String leftOut(Sheet sheet) {
        int left = sheet.leftOut().size();
        return left == 0 ? "" : words.say("occasion.left-out", left);
    }
}
