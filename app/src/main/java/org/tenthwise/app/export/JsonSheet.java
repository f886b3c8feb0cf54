package org.tenthwise.app.export;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.tenthwise.model.plan.Check;
import org.tenthwise.model.plan.CheckOfDimension;
import org.tenthwise.model.plan.CheckOfSize;
import org.tenthwise.model.plan.DocumentCheck;
import org.tenthwise.model.plan.IssueOfPlan;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.plan.Specified;
import org.tenthwise.model.plan.StepClass;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.record.Line;
import org.tenthwise.model.record.PassStory;
import org.tenthwise.model.record.Sheet;
import org.tenthwise.model.run.Disposing;
import org.tenthwise.model.run.Event;
import org.tenthwise.model.run.Run;
import org.tenthwise.model.run.Signature;
import org.tenthwise.model.run.SignedAs;
import org.tenthwise.model.run.StepEvent;
import org.tenthwise.model.tolerance.Limits;
import org.tenthwise.model.verdict.VerdictKind;
import org.tenthwise.model.words.Word;

/** What a run comes to, as JSON: all of it follows from the plan and the entries. */
final class JsonSheet {

    private JsonSheet() {}

    static ObjectNode of(Sheet sheet) {
        Plan plan = sheet.plan();
        Event.Begun begun = sheet.run().begun();
        ObjectNode result = JsonNodeFactory.instance.objectNode();
        result.put("run", sheet.run().id());
        result.put("outcome", Word.of(sheet.outcome()));
        JsonOccasion.write(sheet, result);
        sheet.putAway()
                .ifPresent(away ->
                        result.putObject("put-away").put("by", away.putAwayBy()).put("reason", away.reason()));
        ObjectNode part = result.putObject("part");
        part.put("number", plan.part().number())
                .put("revision", plan.part().revision())
                .put("name", plan.name())
                .put("material", plan.material())
                .put("drawing", plan.drawing().title());
        JsonDrawing.head(plan, part);
        part.put("serial", begun.serial()).put("lot", begun.lot());
        if (begun.noLot()) {
            part.put("no-lot", true);
        }
        result.put("machine", begun.machine());
        result.put("plan-issue", plan.issue());
        plan.issued().ifPresent(issue -> write(issue, result.putObject("issued")));
        result.put("unit", plan.unit().symbol());
        if (!plan.remark().isEmpty()) {
            result.put("remark", plan.remark());
        }
        ObjectNode count = result.putObject("count");
        count.put("characteristics", sheet.characteristics().size());
        count.put("set-up", sheet.of(StepClass.SET_UP).size())
                .put("in-process", sheet.of(StepClass.IN_PROCESS).size());
        count.put("carried-on", sheet.carriedOn(StepClass.SET_UP) + sheet.carriedOn(StepClass.IN_PROCESS));
        Stream.of(VerdictKind.values()).forEach(standing -> count.put(Word.of(standing), sheet.count(standing)));
        if (!sheet.leftOut().isEmpty()) {
            count.put("not-in-this-run", sheet.leftOut().size());
        }
        count.put("concessions", sheet.concessions()).put("repaired", sheet.repaired());
        result.put("scrapped", sheet.scrapped());
        ArrayNode signatures = result.putArray("signatures");
        List<Signature> all = sheet.run().signatures();
        all.forEach(signature -> write(signature, signature.standsAgainst(all), signatures.addObject()));
        if (plan.isBallooned()) {
            JsonDrawing.account(sheet, result.putArray("account"));
        }
        ArrayNode characteristics = result.putArray("characteristics");
        sheet.lines().forEach(line -> write(sheet.run(), line, plan.unit(line.step()), characteristics.addObject()));
        notes(sheet.run(), result.putArray("notes"));
        return result;
    }

    /** Nobody said what a partial check takes in where {@code affected} is absent; it is empty where none is. */
    private static void write(IssueOfPlan issue, ObjectNode to) {
        to.put("number", issue.number()).put("reason", issue.reason()).put("by", issue.by());
        issue.approvedBy().ifPresent(second -> to.put("approved-by", second));
        issue.on().ifPresent(day -> to.put("on", day.toString()));
        issue.affected().ifPresent(affected -> affected.forEach(to.putArray("affected")::add));
    }

    private static void write(Signature signature, boolean against, ObjectNode to) {
        to.put("signed-by", signature.signedBy()).put("meaning", Word.of(signature.meaning()));
        if (signature.meaning() == SignedAs.OTHER) {
            to.put("words", signature.words());
        }
        to.put("entry", signature.entry().seq())
                .put("at", signature.entry().at().format(DateTimeFormatter.ISO_OFFSET_DATE_TIME))
                .put("closes", signature.closed())
                .put("against", against);
        signature.lapse().ifPresent(why -> to.put("lapsed", Word.of(why)));
    }

    /**
     * Doubts, notes, and why something was cut on half read, in the order they were entered; step 0 is the whole run.
     */
    private static void notes(Run run, ArrayNode to) {
        run.remarks().forEach(remark -> to.addObject()
                .put("entry", remark.entry().seq())
                .put("step", remark.step())
                .put(Word.of(remark.kind()), remark.words())
                .put("by", remark.entry().by())
                .put("at", remark.entry().at().format(DateTimeFormatter.ISO_OFFSET_DATE_TIME)));
    }

    private static void write(Run run, Line line, Unit unit, ObjectNode to) {
        to.put("number", line.step().number());
        to.put("name", line.step().name());
        JsonDrawing.of(line.step().drawing(), to);
        if (line.step().check().isInOrder()) {
            to.put("operation", line.step().operation());
        }
        to.put("check", line.step().check().key());
        line.step()
                .check()
                .asSize()
                .map(CheckOfSize::feature)
                .filter(of -> !of.isPlain())
                .ifPresent(feature -> {
                    to.put("feature", feature.key());
                    feature.side().ifPresent(side -> to.put("side", side.key()));
                });
        line.step().check().asDimension().flatMap(CheckOfDimension::asIndicated).ifPresent(indicated -> {
            to.put("movement-of", indicated.of().key());
            indicated.datum().ifPresent(datum -> to.put("datum", datum));
            indicated.datumBy().ifPresent(by -> to.put("datum-by", by.key()));
        });
        to.put("class", Word.of(line.step().stepClass()));
        line.step().check().asDocument().ifPresent(document -> write(document, to));
        line.step().clamping().ifPresent(clamping -> to.put("clamping", clamping.key()));
        line.step().check().asTurn().ifPresent(turn -> JsonRunOut.write(turn, to));
        line.step().limits().ifPresent(limits -> write(limits, to));
        line.step().check().asDimension().ifPresent(size -> {
            Optional.of(size.guardBand())
                    .filter(band -> band.figure().signum() > 0)
                    .ifPresent(band -> to.put("guard-band", band.text()));
            size.drawingSays().ifPresent(modifier -> to.put("modifier", modifier.name()));
        });
        line.step().check().means().flatMap(Check.Means::uncertainty).ifPresent(uncertainty -> to.putObject(
                        "uncertainty")
                .put("of", uncertainty.name())
                .put("expanded", uncertainty.expanded().text())
                .put("unit", uncertainty.expanded().unit().symbol())
                .put("coverage-factor", uncertainty.coverageFactor().toPlainString()));
        if (!line.asked()) {
            to.put("verdict", JsonOccasion.NOT_IN_THIS_RUN);
            return;
        }
        to.put("verdict", Word.of(line.finding().verdict().standing()));
        if (line.repaired()) {
            to.put("repaired", true);
        }
        line.dispositions().stream()
                .filter(Disposing::inForce)
                .findFirst()
                .ifPresent(signed -> write(signed, to.putObject("disposition")));
        lapsed(line, to);
        if (line.held()) {
            ArrayNode waiting = to.putArray("held-until");
            line.waitingFor().forEach(waiting::add);
        }
        Unit own = line.step().limits().map(Limits::unit).orElse(unit);
        ArrayNode passes = to.putArray("passes");
        PassStory.of(run, line).forEach(story -> new JsonPass(story, own).write(passes.addObject()));
    }

    /** Where it is proven, and what the drawing or the order names of it. */
    private static void write(DocumentCheck document, ObjectNode to) {
        Specified specified = document.specified();
        put("asked", document.what(), to);
        put("where", document.where(), to);
        put("specification", specified.specification(), to);
        put("form", specified.form(), to);
        put("code", specified.code(), to);
        put("supplier", specified.supplier(), to);
    }

    private static void put(String key, String text, ObjectNode to) {
        if (!text.isEmpty()) {
            to.put(key, text);
        }
    }

    /** What was signed and does not hold any more; nothing where there is none. */
    private static void lapsed(Line line, ObjectNode to) {
        List<Disposing> lapsed =
                line.dispositions().stream().filter(signed -> !signed.inForce()).toList();
        if (!lapsed.isEmpty()) {
            ArrayNode all = to.putArray("lapsed-dispositions");
            lapsed.forEach(signed -> write(signed, all.addObject())
                    .put("lapsed-with", signed.lapsed().orElseThrow().seq()));
        }
    }

    private static ObjectNode write(Disposing signed, ObjectNode to) {
        StepEvent.DispositionSigned disposed = signed.disposed();
        to.put("entry", signed.entry().seq())
                .put("at", signed.entry().at().format(DateTimeFormatter.ISO_OFFSET_DATE_TIME))
                .put("what", Word.of(disposed.disposition()))
                .put("reason", disposed.reason())
                .put("signed-by", disposed.signedBy());
        disposed.document().ifPresent(number -> to.put("number", number));
        return to;
    }

    private static void write(Limits limits, ObjectNode to) {
        ObjectNode written = to.putObject("limits");
        limits.lower().ifPresent(lower -> written.put("lower", lower.text()));
        limits.upper().ifPresent(upper -> written.put("upper", upper.text()));
        written.put("unit", limits.unit().symbol());
        limits.origin().ifPresent(origin -> written.putObject("from")
                .put("designation", origin.designation())
                .put("standard", origin.standard().toString()));
    }
}
