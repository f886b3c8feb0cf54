package org.tenthwise.model.run;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import org.tenthwise.model.gauge.Setting;
import org.tenthwise.model.plan.Answer;
import org.tenthwise.model.plan.MeasuredBody;
import org.tenthwise.model.plan.Question;
import org.tenthwise.model.quantity.Degrees;
import org.tenthwise.model.quantity.Written;

/**
 * The readings, temperatures, answers and papers of a step that belong together: all were found on the work as it was
 * between two changes.
 *
 * @param number 1 for the first pass
 * @param why absent for the first pass
 * @param ended absent for the pass in hand
 * @param onThese by which someone signed to cut on what is read so far, with the {@link StepEvent.CutOnThese} in it;
 *     absent once anything of the step changed
 */
public record Pass(
        int number,
        Optional<StepEvent.PassBegun.Why> why,
        Optional<Ended> ended,
        List<Reading> readings,
        List<Answering> answers,
        List<Temperature> temperatures,
        List<Giving> documents,
        Optional<Entry> onThese) {

    /** A reading with the entry that holds it, and what it was read with. */
    public record Reading(
            Entry entry, String slot, Written typed, Optional<Setting> setting, Optional<Struck> struck) {}

    /** An answer with the entry that holds it. */
    public record Answering(Entry entry, Question question, Answer answer, Optional<Struck> struck) {}

    /** A temperature with the entry that holds it. */
    public record Temperature(Entry entry, MeasuredBody of, Degrees read, Optional<Struck> struck) {}

    /** A paper with the entry that holds it. */
    public record Giving(Entry entry, Document document, Optional<Struck> struck) {}

    /** Why and by whom an entry was struck out. */
    public record Struck(Entry entry, String reason) {}

    /**
     * How a pass ended.
     *
     * @param by the entry it ended with
     * @param why why the step was measured anew then
     * @param step the step that entry belongs to: the one measured, or one that it rests on
     */
    public record Ended(Entry by, StepEvent.PassBegun.Why why, int step) {}

    /** Of a step at which nothing was taken yet. */
    public static final Pass NOTHING = new Pass(
            1, Optional.empty(), Optional.empty(), List.of(), List.of(), List.of(), List.of(), Optional.empty());

    /**
     * The readings that count, one a slot: the latest, unless it was struck out. One that was replaced never comes
     * back.
     */
    public Map<String, Reading> standing() {
        Map<String, Reading> standing = new LinkedHashMap<>();
        readings.forEach(reading -> standing.put(reading.slot(), reading));
        standing.values().removeIf(last -> last.struck().isPresent());
        return standing;
    }

    /** The answer that counts, as it answers the question that is asked now. */
    public Optional<Answer> answer(Question question) {
        return answering(question).map(last -> last.question().today(last.answer()));
    }

    /**
     * The answer that counts, with its entry: the latest, unless it was struck out. One that was replaced never comes
     * back. One about the readings does not speak for a reading taken after it. What an older run answered to the
     * question of its day counts for the one that is asked now.
     */
    public Optional<Answering> answering(Question question) {
        return answers.stream()
                .filter(answering -> answering.question().today() == question)
                .reduce((earlier, later) -> later)
                .filter(last -> last.struck().isEmpty() && !(question.isOfReadings() && isReadAfter(last.entry())));
    }

    private boolean isReadAfter(Entry entry) {
        return readings.stream().anyMatch(reading -> reading.entry().seq() > entry.seq());
    }

    /** The temperature that counts: the latest, unless it was struck out. One that was replaced never comes back. */
    public Optional<Degrees> temperature(MeasuredBody of) {
        return taking(of).map(Temperature::read);
    }

    /** The same, with its entry. */
    public Optional<Temperature> taking(MeasuredBody of) {
        return temperatures.stream()
                .filter(taken -> taken.of() == of)
                .reduce((earlier, later) -> later)
                .filter(last -> last.struck().isEmpty());
    }

    /** The paper that counts: the latest, unless it was struck out. One that was replaced never comes back. */
    public Optional<Giving> giving() {
        return documents.stream().reduce((earlier, later) -> later).filter(last -> last.struck()
                .isEmpty());
    }

    /** What was struck out, in no order. */
    public Stream<Struck> struckOut() {
        return Stream.of(
                        readings.stream().map(Reading::struck),
                        answers.stream().map(Answering::struck),
                        temperatures.stream().map(Temperature::struck),
                        documents.stream().map(Giving::struck))
                .flatMap(Function.identity())
                .flatMap(Optional::stream);
    }

    /** Whether it was begun because the work was cut. */
    public boolean isAfterACut() {
        return why.filter(StepEvent.PassBegun.Why.CUT::equals).isPresent();
    }

    public boolean isEmpty() {
        return readings.isEmpty() && answers.isEmpty() && temperatures.isEmpty() && documents.isEmpty();
    }
}
