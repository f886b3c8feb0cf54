package org.tenthwise.app.ui.begin;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.tenthwise.app.text.OccasionWords;
import org.tenthwise.app.ui.form.Field;
import org.tenthwise.model.run.OccasionSaid;
import org.tenthwise.model.run.Purpose;
import org.tenthwise.model.words.Words;

/**
 * What a run is for, and what goes with that. It begins with every check asked and nothing claimed, which can do no
 * harm; a first article is never assumed. What a purpose does not need is not asked.
 */
final class PurposeFields {

    private static final int MOST = 80;
    private static final int MOST_DIGITS = 6;

    private final Words words;
    private final Field<Purpose> purpose;
    private final Field<String> piece;
    private final Field<String> baseline;
    private final Field<String> reason;
    private final Field<String> order;
    private final Field<String> changes;
    private List<String> wholeRuns = List.of();
    private List<String> allRuns = List.of();

    PurposeFields(Words words) {
        this.words = words;
        OccasionWords called = new OccasionWords(words);
        Function<Purpose, String> reads = any ->
                any == Purpose.NOT_STATED ? words.say("begin.purpose.not-stated") : called.kind(any, Optional.empty());
        purpose = Field.choice("purpose", words.say("begin.purpose"), words.say("begin.purpose.question"), reads);
        purpose.offer(List.of(Purpose.values()));
        piece = Field.words("piece", words.say("begin.piece"), words.say("begin.piece.question"), true, MOST_DIGITS);
        baseline =
                Field.choice("baseline", words.say("begin.baseline"), words.say("begin.baseline.question"), run -> run);
        reason = Field.words("reason", words.say("begin.reason"), words.say("begin.reason.question"), true, MOST);
        order = wanted("order");
        changes = wanted("changes");
        purpose.valueProperty().subscribe(this::weigh);
        purpose.choice().choose(Purpose.NOT_STATED);
    }

    private Field<String> wanted(String id) {
        return Field.words(id, words.say("begin." + id), words.say("begin." + id + ".question"), false, MOST)
                .onlyIfWanted();
    }

    Field<Purpose> purpose() {
        return purpose;
    }

    /** @param then done whenever something else is said that which checks are asked hangs on */
    void onSaid(Runnable then) {
        purpose.valueProperty().subscribe(then);
        piece.valueProperty().subscribe(then);
        baseline.valueProperty().subscribe(then);
    }

    List<Field<?>> all() {
        return List.of(purpose, piece, baseline, reason, order, changes);
    }

    /**
     * @param whole ids of the runs a partial first article can stand on
     * @param any ids of the runs that can be measured again
     */
    void offer(List<String> whole, List<String> any) {
        wholeRuns = whole;
        allRuns = any;
        purpose.offer(Arrays.stream(Purpose.values()).filter(this::canBe).toList());
        weigh();
    }

    /** What would stand on an earlier run is not offered where there is none to stand on. */
    private boolean canBe(Purpose any) {
        return !any.hasBaseline() || !runs(any).isEmpty();
    }

    private List<String> runs(Purpose of) {
        return of == Purpose.FIRST_ARTICLE_PARTIAL ? wholeRuns : allRuns;
    }

    private void weigh() {
        Purpose now = purpose.valueProperty().get().orElse(Purpose.NOT_STATED);
        baseline.offer(runs(now));
        piece.askedProperty().set(now == Purpose.IN_PROCESS);
        baseline.askedProperty().set(now.hasBaseline());
        reason.askedProperty().set(now.isFirstArticle());
        order.askedProperty().set(now.isFirstArticle());
        changes.askedProperty().set(now.isFirstArticle());
    }

    /** What was said; what the purpose does not ask is left out, whatever was typed before. */
    OccasionSaid said() {
        Purpose now = purpose.valueProperty().get().orElse(Purpose.NOT_STATED);
        return new OccasionSaid(
                now,
                said(baseline),
                said(reason),
                Optional.of(said(piece)).filter(text -> !text.isEmpty()).map(PurposeFields::number),
                List.of(),
                said(order),
                Arrays.stream(said(changes).split(";"))
                        .map(String::strip)
                        .filter(change -> !change.isEmpty())
                        .toList());
    }

    private static String said(Field<String> field) {
        return field.askedProperty().get() ? field.reads().strip() : "";
    }

    /** What is no number is none of a piece, and is refused as such. */
    private static int number(String text) {
        return text.matches("[0-9]{1,6}") ? Integer.parseInt(text) : 0;
    }
}
