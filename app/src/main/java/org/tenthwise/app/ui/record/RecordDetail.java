package org.tenthwise.app.ui.record;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.tenthwise.app.text.Dates;
import org.tenthwise.app.text.Figures;
import org.tenthwise.app.text.GaugeWords;
import org.tenthwise.app.text.Heat;
import org.tenthwise.app.text.JawWords;
import org.tenthwise.app.text.Sentences;
import org.tenthwise.app.text.StepFigures;
import org.tenthwise.model.gauge.Setting;
import org.tenthwise.model.plan.Slot;
import org.tenthwise.model.record.Line;
import org.tenthwise.model.record.PassStory;
import org.tenthwise.model.record.Taken;
import org.tenthwise.model.run.Entry;
import org.tenthwise.model.run.Pass;
import org.tenthwise.model.run.Remark;
import org.tenthwise.model.run.Run;
import org.tenthwise.model.words.Words;

/**
 * One line of what lies behind a row of the record.
 *
 * @param words a reading with its place, an answer, what a pass came to, or a fact
 * @param beside who and when, or the name of the fact; may be empty
 * @param under the gauge and what it was set on where that is new, or why an entry does not count; may be empty
 */
record RecordDetail(Kind kind, String words, String beside, String under) {

    enum Kind {
        FACT,
        PASS,
        TAKEN,
        /** Does not count any more. */
        STRUCK
    }

    /** Pass by pass all that was taken, then what it was judged by and what was signed. */
    static List<RecordDetail> of(Line line, Run run, Words words) {
        return new Telling(line, run, words).all();
    }

    private static final class Telling {

        private final Line line;
        private final Run run;
        private final Words words;
        private final Dates dates;
        private final Sentences sentences;
        private final List<RecordDetail> said = new ArrayList<>();
        private Optional<Setting> above = Optional.empty();

        Telling(Line line, Run run, Words words) {
            this.line = line;
            this.run = run;
            this.words = words;
            this.dates = new Dates(words);
            this.sentences = new Sentences(words);
        }

        List<RecordDetail> all() {
            List<PassStory> stories = PassStory.of(run, line).stream()
                    .filter(story -> !story.pass().isEmpty())
                    .toList();
            for (PassStory story : stories) {
                if (line.passes().size() > 1) {
                    said.add(new RecordDetail(Kind.PASS, pass(story), "", ""));
                }
                above = Optional.empty();
                story.temperatures().forEach(this::temperature);
                story.readings().forEach(taken -> reading(story, taken));
                story.answers().forEach(this::answer);
            }
            if (stories.isEmpty()) {
                said.add(new RecordDetail(Kind.FACT, words.say("record.nothing-taken"), "", ""));
            }
            facts();
            return List.copyOf(said);
        }

        private String pass(PassStory story) {
            String number = story.pass()
                    .why()
                    .map(why -> words.say(
                            words.key("record.pass", why), story.pass().number()))
                    .orElse(words.say("record.pass", story.pass().number()));
            String value = story.finding().map(sentences::value).orElse("");
            String standing = story.finding().map(sentences::standing).orElse("");
            return value.isEmpty()
                    ? (number + " " + words.sentence(standing)).strip()
                    : words.say("sheet.detail.pass", number, value, standing);
        }

        private void temperature(Taken<Pass.Temperature> taken) {
            taken(
                    taken,
                    words.say(
                            "sheet.detail.read",
                            words.say(words.key(
                                    "record.temperature-of", taken.what().of())),
                            taken.what().read()));
        }

        private void answer(Taken<Pass.Answering> taken) {
            Pass.Answering given = taken.what();
            taken(taken, words.say(words.key("answered", given.question()), given.answer()));
        }

        private void reading(PassStory story, Taken<Pass.Reading> taken) {
            Slot slot = story.slot(taken.what());
            String at = new JawWords(words).place(story.step().check(), slot);
            String place = slot.repeat() > 1 ? words.say("record.repeat", at, slot.repeat()) : at;
            String read = story.step()
                    .limits()
                    .map(limits -> Figures.read(taken.what().typed(), limits.unit()))
                    .orElseGet(() -> Figures.written(taken.what().typed()));
            String size = line.step().check().asTurn().isPresent()
                    ? read
                    : story.measured(taken.what())
                            .flatMap(measured -> story.finding().map(finding -> StepFigures.of(finding).size(measured)))
                            .orElse(read);
            taken(
                    taken,
                    size.equals(read)
                            ? words.say("sheet.detail.read", place, read)
                            : words.say("sheet.detail.read-size", place, size, read));
        }

        /** The gauge is told where it or its setting is another than in the line above. */
        private void taken(Taken<?> taken, String reads) {
            boolean other = taken.setting().isPresent() && !taken.setting().equals(above);
            above = taken.setting().or(() -> above);
            String gauge = other ? new GaugeWords(words).line(taken.setting().orElseThrow()) : "";
            String gone = taken.counts()
                    ? ""
                    : taken.struck()
                            .map(out -> words.say("record.struck-out", out.reason(), by(out.entry())))
                            .orElse(words.say("record.taken-again"));
            said.add(new RecordDetail(
                    taken.counts() ? Kind.TAKEN : Kind.STRUCK,
                    reads,
                    by(taken.entry()),
                    Stream.of(gauge, gone).filter(part -> !part.isEmpty()).reduce("", (a, b) -> (a + "\n" + b)
                            .strip())));
        }

        private void facts() {
            fact("record.fact.limits", sentences.limits(line.step()));
            fact("record.fact.limits-from", sentences.limitsFrom(line.step()));
            fact("record.fact.uncertainty", sentences.uncertainty(line.step()));
            fact("record.fact.found", sentences.doubts(line.finding()));
            new Heat(words).figures(line.finding()).forEach(figures -> fact("record.fact.expansion", figures));
            line.dispositions()
                    .forEach(signed -> fact(
                            "record.fact.disposition",
                            (words.say(
                                                    "record.disposition",
                                                    words.say(
                                                            "disposition",
                                                            signed.disposed().disposition()),
                                                    words.sentence(
                                                            signed.disposed().reason()),
                                                    by(
                                                            signed.disposed().signedBy(),
                                                            signed.entry().at()))
                                            + " "
                                            + sentences.document(signed.disposed()))
                                    .strip()));
            run.doubtsAndNotes(line.step())
                    .forEach(remark -> fact(
                            remark.kind() == Remark.Kind.DOUBT ? "record.fact.doubt" : "record.fact.note",
                            words.say("record.noted", remark.words(), by(remark.entry()))));
        }

        private void fact(String key, String told) {
            if (!told.isBlank()) {
                said.add(new RecordDetail(Kind.FACT, told, words.say(key), ""));
            }
        }

        private String by(Entry entry) {
            return by(entry.by(), entry.at());
        }

        private String by(String person, OffsetDateTime at) {
            return words.say("sheet.detail.by", person, dates.dayAndHour(at));
        }
    }
}
