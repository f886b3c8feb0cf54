package org.tenthwise.app.session.hostile;

import java.math.BigDecimal;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.tenthwise.model.gauge.ReadingDirection;
import org.tenthwise.model.gauge.Setting;
import org.tenthwise.model.plan.Answer;
import org.tenthwise.model.plan.MeasuredBody;
import org.tenthwise.model.plan.Question;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.run.Disposition;
import org.tenthwise.model.run.Entry;
import org.tenthwise.model.run.Event;
import org.tenthwise.model.run.StepEvent;

/** What of the entries of a run still counts for a step, by the rules of the {@link Oracle}. */
final class Counting {

    private static final Set<Disposition> CHANGING = Set.of(Disposition.REWORK, Disposition.REPAIR);

    private final List<Entry> entries;
    private final Set<Long> struck = new HashSet<>();

    Counting(List<Entry> entries) {
        this.entries = entries;
        entries.forEach(entry -> {
            if (entry.event() instanceof Event.StruckOut out) {
                struck.add(out.entry());
            }
        });
    }

    /** Whether an entry changes what a step came to. */
    boolean changes(Entry entry, int step) {
        Event event = entry.event();
        return event instanceof StepEvent.ReadingTaken read && read.step() == step
                || event instanceof StepEvent.TemperatureTaken taken && taken.step() == step
                || event instanceof StepEvent.Answered answered && answered.step() == step
                || event instanceof StepEvent.DocumentGiven given && given.step() == step
                || event instanceof StepEvent.PassBegun begun && begun.step() == step
                || event instanceof StepEvent.DispositionSigned disposed
                        && disposed.step() == step
                        && CHANGING.contains(disposed.disposition())
                || event instanceof Event.StruckOut out && stepOf(out.entry()) == step;
    }

    private int stepOf(long seq) {
        for (Entry entry : entries) {
            if (entry.seq() == seq) {
                Event event = entry.event();
                return event instanceof StepEvent.ReadingTaken read
                        ? read.step()
                        : event instanceof StepEvent.TemperatureTaken taken
                                ? taken.step()
                                : event instanceof StepEvent.Answered answered
                                        ? answered.step()
                                        : event instanceof StepEvent.DocumentGiven given
                                                ? given.step()
                                                : event instanceof StepEvent.GaugeSet set ? set.step() : 0;
            }
        }
        return 0;
    }

    private boolean counts(Entry entry) {
        return !struck.contains(entry.seq());
    }

    /** The entries that may count for a step: those after the last thing that began it anew. */
    List<Entry> counting(Facts step) {
        int start = 0;
        for (int i = 0; i < entries.size(); i++) {
            Entry entry = entries.get(i);
            boolean anew = entry.event() instanceof StepEvent.PassBegun begun && begun.step() == step.number()
                    || entry.event() instanceof StepEvent.DispositionSigned disposed
                            && disposed.step() == step.number()
                            && CHANGING.contains(disposed.disposition())
                    || step.restsOn().stream().anyMatch(on -> changes(entry, on));
            start = anew ? i + 1 : start;
        }
        return entries.subList(start, entries.size());
    }

    /** The readings that count, as the sizes they stand for, by slot. */
    Map<String, Read> readings(Facts step) {
        Map<String, Read> readings = new LinkedHashMap<>();
        for (Entry entry : counting(step)) {
            if (entry.event() instanceof StepEvent.ReadingTaken taken && taken.step() == step.number()) {
                readings.remove(taken.slot());
                setting(step, entry)
                        .filter(any -> counts(entry))
                        .ifPresent(setting -> readings.put(
                                taken.slot(), new Read(millimetres(taken.typed()), setting, set(step, entry))));
            }
        }
        return readings;
    }

    /** Whether an entry is a reading, or an answer with a limit gauge, that counts now for a step. */
    boolean isCounted(Facts step, Entry entry) {
        Event event = entry.event();
        boolean read = event instanceof StepEvent.ReadingTaken taken
                && taken.step() == step.number()
                && isLastOf(step, entry, taken.slot())
                && setting(step, entry).isPresent();
        boolean answered = event instanceof StepEvent.Answered given
                && given.step() == step.number()
                && given.question().byLimitGauge()
                && answers(step).containsKey(given.question())
                && isLastOf(step, entry, given.question());
        return counts(entry) && (read || answered) && counting(step).contains(entry);
    }

    private boolean isLastOf(Facts step, Entry entry, Object what) {
        return entries.stream()
                .filter(later -> later.seq() > entry.seq())
                .noneMatch(later -> later.event() instanceof StepEvent.ReadingTaken taken
                                && taken.step() == step.number()
                                && taken.slot().equals(what)
                        || later.event() instanceof StepEvent.Answered given
                                && given.step() == step.number()
                                && given.question().equals(what));
    }

    /** What a reading was made with; absent where that is struck out, or a gauge was taken after it and not set. */
    private Optional<Setting> setting(Facts step, Entry reading) {
        Optional<Setting> setting = Optional.empty();
        for (Entry entry : entries) {
            if (entry.seq() > reading.seq()) {
                break;
            }
            if (entry.event() instanceof StepEvent.GaugeSet set && set.step() == step.number()) {
                setting = struck.contains(entry.seq()) ? Optional.empty() : Optional.of(set.setting());
            } else if (entry.event() instanceof StepEvent.GaugeChosen chosen && chosen.step() == step.number()) {
                setting = Optional.empty();
            }
        }
        return setting;
    }

    /** The entry that set the gauge of a reading. */
    private long set(Facts step, Entry reading) {
        return entries.stream()
                .filter(entry -> entry.seq() < reading.seq())
                .filter(entry -> entry.event() instanceof StepEvent.GaugeSet set && set.step() == step.number())
                .mapToLong(Entry::seq)
                .max()
                .orElseThrow();
    }

    /** @param set the entry that set the gauge it was read with */
    record Read(BigDecimal figure, Setting setting, long set) {

        BigDecimal size() {
            if (setting.zero().isEmpty()) {
                return figure;
            }
            BigDecimal moved = figure.subtract(millimetres(setting.zero().get()));
            boolean falls = setting.gauge().sense().orElseThrow() == ReadingDirection.FALLS_WITH_SIZE;
            return millimetres(setting.certified().orElseThrow()).add(falls ? moved.negate() : moved);
        }
    }

    /** An angle in minutes. */
    static BigDecimal millimetres(Written written) {
        if (written.unit() == Unit.DEGREE) {
            return new BigDecimal(written.text()).multiply(new BigDecimal("60"));
        }
        if (written.text().contains("°")) {
            String[] parts = written.text().split("[°′″]");
            return new BigDecimal(parts[0]).multiply(new BigDecimal("60")).add(new BigDecimal(parts[1]));
        }
        BigDecimal figure = new BigDecimal(written.text());
        return written.unit() == Unit.INCH ? figure.multiply(new BigDecimal("25.4")) : figure;
    }

    Map<Question, Answer> answers(Facts step) {
        Map<Question, Answer> answers = new EnumMap<>(Question.class);
        for (Entry entry : counting(step)) {
            if (entry.event() instanceof StepEvent.Answered answered && answered.step() == step.number()) {
                answers.put(answered.question(), answered.answer());
                answers.keySet().removeIf(question -> question == answered.question() && !counts(entry));
            }
        }
        return answers;
    }

    /** The entry of the document that counts. */
    Optional<Entry> document(Facts step) {
        Optional<Entry> last = Optional.empty();
        for (Entry entry : counting(step)) {
            if (entry.event() instanceof StepEvent.DocumentGiven given && given.step() == step.number()) {
                last = Optional.of(entry);
            }
        }
        return last.filter(this::counts);
    }

    Map<MeasuredBody, BigDecimal> temperatures(Facts step) {
        Map<MeasuredBody, BigDecimal> temperatures = new EnumMap<>(MeasuredBody.class);
        for (Entry entry : counting(step)) {
            if (entry.event() instanceof StepEvent.TemperatureTaken taken && taken.step() == step.number()) {
                temperatures.put(taken.of(), taken.read().celsius().degrees());
                temperatures.keySet().removeIf(body -> body == taken.of() && !counts(entry));
            }
        }
        return temperatures;
    }
}
