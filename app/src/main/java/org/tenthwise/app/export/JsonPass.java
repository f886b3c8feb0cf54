package org.tenthwise.app.export;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.format.DateTimeFormatter;
import java.util.Optional;
import org.tenthwise.app.text.StepFigures;
import org.tenthwise.model.compute.cutting.EvenCut;
import org.tenthwise.model.gauge.Calibration;
import org.tenthwise.model.gauge.Setting;
import org.tenthwise.model.plan.MeasuredBody;
import org.tenthwise.model.plan.Register;
import org.tenthwise.model.plan.TemperatureAsked;
import org.tenthwise.model.plan.ThermalData;
import org.tenthwise.model.quantity.Degrees;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.TemperatureScale;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.record.AskedFinding;
import org.tenthwise.model.record.CalculatedFinding;
import org.tenthwise.model.record.CutSoFar;
import org.tenthwise.model.record.DocumentFinding;
import org.tenthwise.model.record.Finding;
import org.tenthwise.model.record.OverWiresFinding;
import org.tenthwise.model.record.PassStory;
import org.tenthwise.model.record.PlugFitFinding;
import org.tenthwise.model.record.PositionFinding;
import org.tenthwise.model.record.Proposal;
import org.tenthwise.model.record.RunOutFinding;
import org.tenthwise.model.record.SizeFinding;
import org.tenthwise.model.record.Taken;
import org.tenthwise.model.record.TemperatureEffect;
import org.tenthwise.model.record.WorkedFinding;
import org.tenthwise.model.run.Document;
import org.tenthwise.model.run.Entry;
import org.tenthwise.model.run.Pass;
import org.tenthwise.model.words.Word;

/** One pass of a characteristic as JSON. Sizes worked out are in the unit of the limits, see {@link WorkedOut}. */
final class JsonPass {

    private final PassStory story;
    private final Unit unit;

    JsonPass(PassStory story, Unit unit) {
        this.story = story;
        this.unit = unit;
    }

    void write(ObjectNode to) {
        to.put("pass", story.pass().number());
        story.pass().why().ifPresent(why -> to.put("begun-for", Word.of(why)));
        story.cut().ifPresent(cut -> write(cut, to.putObject("cut")));
        story.finding().ifPresent(finding -> write(finding, to));
        ArrayNode readings = to.putArray("readings");
        story.readings().forEach(taken -> reading(taken, readings.addObject()));
        temperatures(to);
        ArrayNode answers = to.putArray("answers");
        story.answers().forEach(taken -> {
            ObjectNode answer = answers.addObject();
            write(taken.entry(), answer);
            answer.put("question", Word.of(taken.what().question()));
            answer.put("answer", Word.of(taken.what().answer()));
            answer.put("counts", taken.counts());
            taken.setting().ifPresent(setting -> gauge(setting, taken, answer));
            struck(taken.struck(), answer);
        });
        documents(to);
    }

    /** Nothing where no document was entered. */
    private void documents(ObjectNode to) {
        if (story.documents().isEmpty()) {
            return;
        }
        ArrayNode documents = to.putArray("documents");
        story.documents().forEach(taken -> {
            Document document = taken.what().document();
            ObjectNode written = documents.addObject();
            write(taken.entry(), written);
            written.put("number", document.number())
                    .put("dated", document.dated().toString())
                    .put("says", Word.of(document.says()))
                    .put("said-by", document.by());
            if (!document.figures().isEmpty()) {
                ArrayNode figures = written.putArray("figures");
                document.figures().forEach(figure -> figures.addObject()
                        .put("figure", figure.text())
                        .put("unit", figure.unit().symbol()));
            }
            written.put("counts", taken.counts());
            struck(taken.struck(), written);
        });
    }

    /**
     * What the cut before the pass was to take off, or might at the most, and took off, as the register counts it, or
     * of the size itself.
     */
    private void write(CutSoFar cut, ObjectNode to) {
        Optional<Register> counting = story.register();
        to.put("number", cut.number());
        cut.asked().ifPresent(asked -> put("asked", Register.counted(asked, counting), to));
        cut.atMost().ifPresent(most -> put("asked_at_most", Register.counted(most, counting), to));
        put("came_off", Register.counted(cut.cameOff(), counting), to);
        to.put("register", counting.map(Word::of).orElse("size"));
    }

    /** Nothing where the plan says nothing of heat. */
    private void temperatures(ObjectNode to) {
        if (story.warmth().isEmpty() && story.temperatures().isEmpty()) {
            return;
        }
        ArrayNode temperatures = to.putArray("temperatures");
        story.temperatures().forEach(taken -> {
            ObjectNode written = temperatures.addObject();
            write(taken.entry(), written);
            written.put("of", Word.of(taken.what().of()))
                    .put(
                            Word.of(taken.what().read().scale()),
                            taken.what().read().text())
                    .put("counts", taken.counts());
            struck(taken.struck(), written);
        });
    }

    private void write(TemperatureEffect warmth, ObjectNode to) {
        to.put("matters", warmth.matters()).put("asked", warmth.asked() != TemperatureAsked.NEVER);
        put("greatest-correction", warmth.worst().worst(), to);
        warmth.correction().ifPresent(correction -> {
            ObjectNode corrected = to.putObject("corrected-by");
            for (MeasuredBody body : MeasuredBody.values()) {
                ThermalData.Growth growth = warmth.climate().of(body);
                Degrees read = warmth.of(body).orElseThrow();
                corrected
                        .putObject(Word.of(body))
                        .put(Word.of(read.scale()), read.text())
                        .put(
                                read.scale() == TemperatureScale.CELSIUS
                                        ? "expansion-1e-6"
                                        : "expansion-1e-6-per-fahrenheit",
                                read.scale().perDegree(growth.expansion()).toPlainString())
                        .put("expansion-from", growth.source().toString());
            }
        });
    }

    private void write(Finding finding, ObjectNode to) {
        to.put("verdict", Word.of(finding.verdict().standing()));
        finding.check().judgedBy().ifPresent(what -> to.put("judged-by", what));
        to.put("missing", finding.missing());
        finding.value().ifPresent(value -> put("value", value, to));
        finding.verdict().margin().ifPresent(margin -> {
            ObjectNode distance = to.putObject("distance");
            put("size", margin.distance(), distance);
            distance.put("from", Word.of(margin.limit())).put("inside", margin.inside());
        });
        finding.warmth().ifPresent(warmth -> write(warmth, to.putObject("temperature")));
        finding.proposal().ifPresent(proposal -> write(proposal, to.putObject("next_cut")));
        finding.match(new OfItsKind(to));
    }

    /** What is told of a finding of one kind and of no other. */
    private final class OfItsKind implements Finding.Cases<ObjectNode> {

        private final ObjectNode to;

        OfItsKind(ObjectNode to) {
            this.to = to;
        }

        @Override
        public ObjectNode asked(AskedFinding answers) {
            answers.check().certifiedEnds().ifPresent(ends -> {
                ObjectNode certified = to.putObject("certified-ends");
                certified.put("form", ends.form().key());
                JsonPass.write("go", ends.go(), certified);
                JsonPass.write("not-go", ends.notGo(), certified);
            });
            return to;
        }

        @Override
        public ObjectNode runOut(RunOutFinding runOut) {
            JsonRunOut.write(runOut, JsonPass.this::put, to);
            return to;
        }

        @Override
        public ObjectNode size(SizeFinding size) {
            return to;
        }

        @Override
        public ObjectNode worked(WorkedFinding worked) {
            JsonWorked.write(worked, JsonPass.this::put, to);
            return to;
        }

        @Override
        public ObjectNode position(PositionFinding position) {
            JsonPosition.write(position, JsonPass.this::put, to);
            return to;
        }

        @Override
        public ObjectNode plugFit(PlugFitFinding plug) {
            plug.clearance().ifPresent(clearance -> {
                put("least-clearance", clearance.least(), to);
                put("greatest-clearance", clearance.greatest(), to);
            });
            plug.contradiction().ifPresent(contradiction -> to.put("contradiction", Word.of(contradiction)));
            return to;
        }

        @Override
        public ObjectNode calculated(CalculatedFinding calculated) {
            JsonCalculated.write(calculated, JsonPass.this::put, to);
            return to;
        }

        @Override
        public ObjectNode overWires(OverWiresFinding wires) {
            wires.rootClearance().ifPresent(room -> put("root-clearance", room, to));
            wires.basicClearance().ifPresent(room -> put("basic-root-clearance", room, to));
            return to.put("wire-on-root", wires.bottoms());
        }

        @Override
        public ObjectNode document(DocumentFinding document) {
            return to;
        }
    }

    /**
     * The amount as the register counts it, or of the size itself; where there is none, why, and the most that may come
     * off the size.
     */
    private void write(Proposal proposal, ObjectNode to) {
        if (proposal.cut() instanceof EvenCut.NoCut refused) {
            refused.safe().ifPresent(safe -> put("safe_cut", safe, to));
            to.put("reason", Word.of(refused.reason()));
        } else {
            put("offset_change", proposal.offset().or(proposal::change).orElseThrow(), to);
            to.put("register", proposal.register().map(Word::of).orElse("size"));
        }
        if (!proposal.unread().isEmpty()) {
            ArrayNode unread = to.putArray("unread");
            proposal.unread()
                    .forEach(slot ->
                            unread.addObject().put("place", slot.place().name()).put("repeat", slot.repeat()));
        }
    }

    private void reading(Taken<Pass.Reading> taken, ObjectNode to) {
        Pass.Reading reading = taken.what();
        write(reading.entry(), to);
        to.put("place", story.slot(reading).place().name());
        to.put("repeat", story.slot(reading).repeat());
        write("reading", reading.typed(), to);
        taken.setting().ifPresent(setting -> {
            gauge(setting, taken, to);
            setting.reference().ifPresent(mark -> {
                ObjectNode on = to.putObject("set-on");
                setOn(mark, setting, on);
                taken.calibrated().ifPresent(by -> write(by.master(), by.masterPast(), on));
            });
        });
        story.measured(reading).ifPresent(measured -> {
            int known = WorkedOut.known(measured, unit);
            story.overWires(reading).ifPresent(bigger -> put("over-wires", bigger, known, to));
            put("correction", measured.correction(), known, to);
            measured.forContact().ifPresent(correction -> put("correction-for-contact", correction, known, to));
            measured.forTemperature().ifPresent(correction -> put("correction-for-temperature", correction, known, to));
            to.put("size", WorkedOut.size(measured, unit));
        });
        to.put("counts", taken.counts());
        story.standing(reading).ifPresent(standing -> to.put("verdict", Word.of(standing)));
        struck(taken.struck(), to);
    }

    private static void gauge(Setting setting, Taken<?> taken, ObjectNode to) {
        ObjectNode gauge = to.putObject("gauge");
        write(setting, gauge);
        taken.calibrated().ifPresent(by -> write(by.gauge(), by.gaugePast(), gauge));
    }

    /** Nothing where nothing is stated. */
    private static void write(Calibration calibration, boolean past, ObjectNode to) {
        if (!calibration.certificate().isEmpty()) {
            to.put("certificate", calibration.certificate());
        }
        calibration.due().ifPresent(due -> to.put("due", due.toString()).put("past-due", past));
    }

    private static void write(Setting setting, ObjectNode to) {
        to.put("id", setting.gauge().id());
        to.put("kind", setting.gauge().kind().key());
        setting.gauge().sense().ifPresent(sense -> to.put("sense", Word.of(sense)));
    }

    /** The master or the wires, the size on their certificate, and what the gauge read on the master. */
    private static void setOn(String mark, Setting setting, ObjectNode to) {
        to.put("mark", mark);
        setting.certified().ifPresent(certified -> write("certified", certified, to));
        setting.zero().ifPresent(zero -> write("zero", zero, to));
    }

    private static void write(Entry entry, ObjectNode to) {
        to.put("entry", entry.seq());
        to.put("by", entry.by());
        to.put("at", entry.at().format(DateTimeFormatter.ISO_OFFSET_DATE_TIME));
    }

    private static void struck(Optional<Pass.Struck> struck, ObjectNode to) {
        struck.ifPresent(out -> {
            ObjectNode written = to.putObject("struck-out");
            written.put("reason", out.reason());
            write(out.entry(), written);
        });
    }

    private static void write(String key, Written written, ObjectNode to) {
        to.putObject(key)
                .put("figure", written.text())
                .put("unit", written.unit().symbol());
    }

    private void put(String key, Length length, ObjectNode to) {
        put(
                key,
                length,
                story.finding()
                        .filter(finding -> finding.step().limits().isPresent())
                        .map(finding -> StepFigures.of(finding).places())
                        .orElse(0),
                to);
    }

    private void put(String key, Length length, int known, ObjectNode to) {
        to.put(key, WorkedOut.figure(length, unit, known));
    }
}
