package org.tenthwise.app.export;

import static org.tenthwise.app.export.CsvColumn.*;
import static org.tenthwise.app.export.CsvColumn.GAUGE_CERTIFICATE;
import static org.tenthwise.app.export.CsvColumn.GAUGE_DUE;
import static org.tenthwise.app.export.CsvColumn.PAST_DUE;
import static org.tenthwise.app.export.CsvColumn.SET_ON_CERTIFICATE;
import static org.tenthwise.app.export.CsvColumn.SET_ON_DUE;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.tenthwise.model.gauge.Setting;
import org.tenthwise.model.plan.MeasuredBody;
import org.tenthwise.model.plan.Slot;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.TemperatureScale;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.record.PassStory;
import org.tenthwise.model.record.Taken;
import org.tenthwise.model.run.Document;
import org.tenthwise.model.run.Entry;
import org.tenthwise.model.run.Pass;
import org.tenthwise.model.words.Word;

/** What was read, taken or answered, written into a row of its own: its own cells, behind those of the pass. */
final class CsvTaken {

    private CsvTaken() {}

    static CsvRow reading(CsvRow row, PassStory story, Taken<Pass.Reading> taken) {
        Pass.Reading reading = taken.what();
        Slot slot = story.slot(reading);
        row.text(PLACE, slot.place().name());
        row.number(REPEAT, slot.repeat());
        story.step().check().asTurn().flatMap(turn -> turn.section(slot)).ifPresent(section -> {
            row.text(SECTION, section.name());
            row.figure(FROM_JAWS, section.at());
        });
        row.figure(READING, reading.typed());
        row.text(READING_UNIT, reading.typed().unit().symbol());
        if (taken.counts()) {
            story.measured(reading).ifPresent(measured -> {
                int known = row.known(measured);
                story.overWires(reading).ifPresent(bigger -> row.size(OVER_WIRES, bigger, known));
                row.size(CORRECTION, measured.correction(), known);
                row.size(SIZE, measured);
                measured.forContact().ifPresent(correction -> row.size(CONTACT_CORRECTION, correction, known));
                measured.forTemperature().ifPresent(correction -> heat(row, story, correction, known));
            });
            row.text(PLACE_VERDICT, story.standing(reading).map(Word::of).orElse("together"));
        } else {
            row.text(TAKEN_AGAIN, again(taken));
        }
        return entry(row, taken);
    }

    private static void heat(CsvRow row, PassStory story, Length correction, int known) {
        row.size(TEMPERATURE_CORRECTION, correction, known);
        story.warmth().ifPresent(warmth -> {
            warmth.part().ifPresent(part -> row.number(PART_TEMPERATURE, part.figure()));
            warmth.gauge().ifPresent(gauge -> row.number(GAUGE_TEMPERATURE, gauge.figure()));
            TemperatureScale scale = warmth.climate().scale();
            row.text(DEGREES, scale.symbol());
            row.number(PART_EXPANSION, scale.perDegree(warmth.climate().part().expansion()));
            row.text(PART_EXPANSION_FROM, warmth.climate().part().source().toString());
            row.number(GAUGE_EXPANSION, scale.perDegree(warmth.climate().gauge().expansion()));
            row.text(GAUGE_EXPANSION_FROM, warmth.climate().gauge().source().toString());
        });
    }

    /** A temperature has a row of its own, as it is an entry of its own. */
    static CsvRow temperature(CsvRow row, Taken<Pass.Temperature> taken) {
        Pass.Temperature temperature = taken.what();
        row.number(
                temperature.of() == MeasuredBody.PART ? PART_TEMPERATURE : GAUGE_TEMPERATURE,
                temperature.read().figure());
        row.text(DEGREES, temperature.read().scale().symbol());
        row.text(TAKEN_AGAIN, again(taken));
        return entry(row, taken);
    }

    static CsvRow answer(CsvRow row, Taken<Pass.Answering> taken) {
        row.text(QUESTION, Word.of(taken.what().question()));
        row.text(ANSWER, Word.of(taken.what().answer()));
        row.text(TAKEN_AGAIN, again(taken));
        return entry(row, taken);
    }

    /** A document has a row of its own, or one for each figure it gives. */
    static List<CsvRow> document(CsvRow row, Taken<Pass.Giving> taken) {
        Document document = taken.what().document();
        row.text(DOCUMENT, document.number());
        row.text(DATED, document.dated().toString());
        row.text(SAYS, Word.of(document.says()));
        row.text(SAID_BY, document.by());
        row.text(TAKEN_AGAIN, again(taken));
        entry(row, taken);
        if (document.figures().isEmpty()) {
            return List.of(row);
        }
        List<CsvRow> rows = new ArrayList<>();
        for (Written figure : document.figures()) {
            CsvRow one = row.copy();
            one.number(REPEAT, rows.size() + 1);
            one.figure(READING, figure);
            one.text(READING_UNIT, figure.unit().symbol());
            rows.add(one);
        }
        return rows;
    }

    private static String again(Taken<?> taken) {
        return taken.isReplaced() ? "yes" : "";
    }

    private static CsvRow entry(CsvRow row, Taken<?> taken) {
        taken.setting().ifPresent(setting -> setting(row, setting));
        taken.calibrated().ifPresent(by -> {
            row.text(GAUGE_CERTIFICATE, by.gauge().certificate());
            by.gauge().due().ifPresent(due -> row.text(GAUGE_DUE, due.toString()));
            row.text(SET_ON_CERTIFICATE, by.master().certificate());
            by.master().due().ifPresent(due -> row.text(SET_ON_DUE, due.toString()));
            row.text(PAST_DUE, by.isPast() ? "yes" : "");
        });
        return entry(row, taken.entry(), taken.struck());
    }

    static CsvRow entry(CsvRow row, Entry entry, Optional<Pass.Struck> struck) {
        row.number(ENTRY, entry.seq());
        row.text(PERSON, entry.by());
        row.time(TIME, entry.at());
        struck.ifPresent(out -> {
            row.text(STRUCK_OUT, out.reason());
            row.text(STRUCK_OUT_BY, out.entry().by());
            row.time(STRUCK_OUT_AT, out.entry().at());
        });
        return row;
    }

    private static void setting(CsvRow row, Setting setting) {
        row.text(GAUGE, setting.gauge().id());
        row.text(GAUGE_KIND, setting.gauge().kind().key());
        setting.reference().ifPresent(reference -> row.text(SET_ON, reference));
        setting.certified().ifPresent(certified -> {
            row.figure(CERTIFIED, certified);
            row.text(CERTIFIED_UNIT, certified.unit().symbol());
        });
        setting.zero().ifPresent(zero -> {
            row.figure(ZERO, zero);
            row.text(ZERO_UNIT, zero.unit().symbol());
        });
        setting.gauge().sense().ifPresent(sense -> row.text(SENSE, Word.of(sense)));
    }
}
