package org.tenthwise.app.ui.form;

import java.time.Clock;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.tenthwise.app.session.State;
import org.tenthwise.app.text.Dates;
import org.tenthwise.model.run.Document;
import org.tenthwise.model.run.Entry;
import org.tenthwise.model.run.StepEvent;
import org.tenthwise.model.words.Words;

/**
 * What is asked of every document. What was entered of others of the run lies ready, as one report often proves several
 * checks.
 *
 * @param dated the day on it, year-month-day
 * @param who who says so
 */
public record DocumentFields(Field<String> number, Field<String> dated, Field<String> who) {

    private static final int MOST = 60;
    private static final int MOST_DATE = 10;
    private static final int DAYS_READY = 5;

    public static DocumentFields of(Words words) {
        return new DocumentFields(
                Field.mark(
                        "number", words.say("document.number.name"), words.say("document.number.question"), true, MOST),
                Field.words(
                        "dated",
                        words.say("document.dated.name"),
                        words.say("document.dated.question"),
                        true,
                        MOST_DATE),
                Field.words("who", words.say("document.who.name"), words.say("document.who.question"), true, MOST));
    }

    /** @param named who is named beside the people of the shop; what is empty is left out */
    public void offer(State state, Stream<String> named, Suggestions known, Words words, Clock clock) {
        List<Document> before = before(state);
        number.offer(before.stream()
                .map(Document::number)
                .filter(given -> !given.isEmpty())
                .distinct()
                .toList());
        Dates dates = new Dates(words);
        dated.offer(
                Stream.iterate(LocalDate.now(clock), day -> day.minusDays(1))
                        .limit(DAYS_READY)
                        .map(LocalDate::toString)
                        .toList(),
                day -> dates.day(LocalDate.parse(day)));
        who.offer(Stream.of(before.stream().map(Document::by), named, known.people().stream())
                .flatMap(names -> names)
                .filter(name -> !name.isEmpty())
                .distinct()
                .toList());
    }

    /** The documents of the run, the latest first. */
    private static List<Document> before(State state) {
        List<Document> before = new ArrayList<>();
        for (Entry entry : state.sheet().run().entries()) {
            entry.event().as(StepEvent.DocumentGiven.class).ifPresent(given -> before.add(0, given.document()));
        }
        return before;
    }

    /** The day on it; absent where what is typed is none. */
    public Optional<LocalDate> day() {
        try {
            return Optional.of(LocalDate.parse(dated.reads().strip()));
        } catch (DateTimeParseException e) {
            return Optional.empty();
        }
    }
}
