package org.tenthwise.app.text;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.tenthwise.model.plan.Slot;
import org.tenthwise.model.plan.Step;
import org.tenthwise.model.record.CutSoFar;
import org.tenthwise.model.record.Line;
import org.tenthwise.model.record.ReadOtherwise;
import org.tenthwise.model.record.Sheet;
import org.tenthwise.model.run.Pass;
import org.tenthwise.model.run.Run;
import org.tenthwise.model.tolerance.Limits;
import org.tenthwise.model.words.Words;

/**
 * What there is to say of a step beside its verdict: what to do next, what else stays in sight, and the rest, which can
 * be looked up.
 */
public final class BesideVerdict {

    private final Words words;
    private final Advice advice;
    private final Sentences sentences;

    public BesideVerdict(Words words) {
        this.words = words;
        this.advice = new Advice(words);
        this.sentences = new Sentences(words);
    }

    /**
     * Sentences, the weightiest first.
     *
     * @param next what to do, a line a move; of a closed run what was signed, and nothing else
     * @param shown all that must not be missed; where there is nothing such and nothing to do, the one thing most worth
     *     knowing
     * @param rest everything else
     * @param isToBeRead whether there is something to do, or to know, that nobody should go on without having read
     */
    public record Split(ToDo next, List<String> shown, List<String> rest, boolean isToBeRead) {}

    /** The same where nobody is asked for a reading. */
    public Split of(Sheet sheet, Line line, boolean closed) {
        return of(sheet, line, closed, Optional.empty());
    }

    /**
     * @param closed whether the run is closed: then nothing is to be done any more but what was signed
     * @param asked the reading that is asked for next; absent where none is
     */
    public Split of(Sheet sheet, Line line, boolean closed, Optional<Slot> asked) {
        String distance = sentences.distance(line.finding());
        List<Weighed> all = Stream.concat(
                        said(sheet.run(), line).stream(),
                        new CalibrationWords(words)
                                .pastDue(sheet, line).stream().map(Weighed::stays))
                .filter(said -> !said.sentence().isEmpty() && !said.sentence().equals(distance))
                .sorted(Comparator.comparing(Weighed::weight))
                .toList();
        List<String> stays = sentences(all.stream().filter(Weighed::stays));
        List<String> others = sentences(all.stream().filter(said -> !said.stays()));
        ToDo next = closed ? advice.signedAlone(line) : toDo(sheet.run(), line, asked);
        int more = next.isEmpty() && stays.isEmpty() ? Math.min(1, others.size()) : 0;
        List<String> shown = new ArrayList<>(stays);
        shown.addAll(others.subList(0, more));
        List<String> rest = new ArrayList<>(others.subList(more, others.size()));
        rest.addAll(how(sheet, line));
        return new Split(next, shown, rest, !next.isEmpty() || all.stream().anyMatch(Weighed::isToBeRead));
    }

    /** No cut while the readings contradict each other: reading again comes first, and that is said already. */
    private ToDo toDo(Run run, Line line, Optional<Slot> asked) {
        boolean cutOnWrong = line.disposed().isEmpty()
                && line.finding().proposal().isPresent()
                && ReadOtherwise.of(line, run).isPresent();
        return cutOnWrong ? ToDo.NOTHING : advice.toDo(line, asked);
    }

    private static List<String> sentences(Stream<Weighed> said) {
        return said.map(Weighed::sentence).toList();
    }

    private List<Weighed> said(Run run, Line line) {
        List<Weighed> all = new ArrayList<>(traces(run, line));
        all.addAll(new Remarks(words).weighed(line.finding()));
        if (all.stream().noneMatch(said -> said.weight() == Weighed.Weight.STAYS)) {
            new Proof(words).of(line.finding()).ifPresent(all::add);
        }
        cut(run, line).map(Weighed::how).ifPresent(all::add);
        return all;
    }

    /**
     * What was signed here and lapsed, what was read otherwise before, what was doubted last, and how much was struck
     * out or went with a wrong setting.
     */
    private List<Weighed> traces(Run run, Line line) {
        List<Weighed> traces = new ArrayList<>();
        new GaugeWords(words)
                .withdrawn(run, line.step().number())
                .forEach(withdrawn -> traces.add(Weighed.stays(withdrawn)));
        if (line.lapsed()
                .filter(signed -> !signed.disposed().disposition().changesTheWork())
                .isPresent()) {
            traces.add(Weighed.stays(words.say("run.lapsed")));
        }
        traces.add(Weighed.stays(sentences.readOtherwise(run, line)));
        traces.add(Weighed.stays(sentences.repaired(line)));
        traces.add(Weighed.stays(new EventsTold(words).doubt(run, line.step())));
        traces.removeIf(said -> said.sentence().isEmpty());
        long struck = line.passes().stream()
                .flatMap(Pass::struckOut)
                .filter(out -> !run.gauges().settingsStruck().containsValue(out))
                .count();
        if (struck > 0) {
            traces.add(Weighed.how(words.say("run.struck", struck)));
        }
        return traces;
    }

    /** What the last cut took off, where no advice on the next one tells it. */
    private Optional<String> cut(Run run, Line line) {
        return isUnread(line)
                ? Optional.empty()
                : CutSoFar.last(line)
                        .filter(cut -> !advice.tellsOfTheLastCut(line))
                        .map(cut -> new CutsTold(words).told(cut, line, run.register()));
    }

    private static boolean isUnread(Line line) {
        return line.pass().standing().isEmpty() && line.pass().answers().isEmpty();
    }

    /** How it is read, where the limits come from, and how the gauge is set, each in full. */
    private List<String> how(Sheet sheet, Line line) {
        Step step = line.step();
        List<String> how = new ArrayList<>();
        step.limits()
                .flatMap(Limits::origin)
                .map(origin -> words.say("run.limits-from", origin.designation(), origin.standard()))
                .ifPresent(how::add);
        how.add(sentences.uncertainty(step));
        how.add(new GaugeWords(words).line(sheet.run(), step));
        if (!isUnread(line)) {
            how.add(String.join(" ", new MethodWords(words).of(step, true)));
        }
        how.removeIf(String::isEmpty);
        return how.stream().map(words::sentence).toList();
    }
}
