package org.tenthwise.app.export.pdf;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.tenthwise.app.text.Advice;
import org.tenthwise.app.text.Figures;
import org.tenthwise.app.text.Heat;
import org.tenthwise.app.text.Remarks;
import org.tenthwise.model.gauge.Setting;
import org.tenthwise.model.plan.Holding;
import org.tenthwise.model.plan.Operation;
import org.tenthwise.model.plan.RunOutCheck;
import org.tenthwise.model.plan.Step;
import org.tenthwise.model.record.Line;
import org.tenthwise.model.record.PassStory;
import org.tenthwise.model.record.ReadOtherwise;
import org.tenthwise.model.record.Taken;
import org.tenthwise.model.run.Entry;
import org.tenthwise.model.run.Remark;
import org.tenthwise.model.tolerance.Limits;

/** What there is to know about a characteristic besides its readings, as named lines. */
final class Facts {

    /** A named line; {@code words} are not blank. */
    record Fact(String name, String words) {}

    private final RecordContext matter;

    Facts(RecordContext matter) {
        this.matter = matter;
    }

    List<Fact> of(Line line) {
        Step step = line.step();
        List<Fact> facts = new ArrayList<>();
        add(
                facts,
                "record.fact.drawing",
                step.isOfDrawing() ? "" : step.drawing().requirement());
        add(facts, "record.fact.asked", matter.sentences().asked(line.finding()));
        add(facts, "record.fact.limits", matter.sentences().limits(step));
        step.limits()
                .flatMap(Limits::origin)
                .ifPresent(origin ->
                        add(facts, "record.fact.limits-from", matter.sentences().limitsFrom(step)));
        add(facts, "record.fact.method", step.method());
        step.clamping()
                .ifPresent(clamping ->
                        add(facts, "record.fact.clamping", matter.words().say("record.clamping", clamping)));
        step.check()
                .asTurn()
                .map(RunOutCheck::holding)
                .filter(holding -> holding != Holding.UNSAID)
                .ifPresent(holding ->
                        add(facts, "record.fact.holding", matter.words().say("holding", holding)));
        line.finding().asTurn().ifPresent(turn -> new TurnFacts(matter)
                .of(turn)
                .forEach(said -> add(facts, "record.fact.movement", said)));
        Operation operation = matter.plan().operation(step.operation());
        add(
                facts,
                "record.fact.operation",
                step.check().isInOrder()
                        ? matter.say("record.operation", operation.number(), operation.name())
                        : matter.say("run.elsewhere"));
        settings(line).forEach(setting -> add(facts, "record.fact.gauge", gauge(setting)));
        if (settings(line).isEmpty()) {
            step.check()
                    .means()
                    .ifPresent(means -> add(
                            facts, "record.fact.gauge", matter.say("record.gauge-wanted", matter.kind(means.kind()))));
        }
        add(facts, "record.fact.uncertainty", matter.sentences().uncertainty(step));
        add(
                facts,
                "record.fact.found",
                matter.sentences().readOtherwise(matter.sheet().run(), line));
        new Remarks(matter.words()).of(line.finding()).forEach(remark -> add(facts, "record.fact.found", remark));
        new Heat(matter.words())
                .figures(line.finding())
                .forEach(figures -> add(facts, "record.fact.expansion", figures));
        add(facts, "record.fact.next", next(line));
        if (!step.hold().isEmpty() && !line.settled()) {
            add(
                    facts,
                    "record.fact.hold",
                    matter.say("record.hold", step.hold(), step.hold().size()));
        }
        if (line.held()) {
            add(
                    facts,
                    "record.fact.held",
                    matter.say(
                            "record.held-until",
                            line.waitingFor(),
                            line.waitingFor().size()));
        }
        said(line).forEach(fact -> add(facts, fact.name(), fact.words()));
        return facts;
    }

    /**
     * What is to be done about a finding; nothing where it is held or signed for, nor once the run is closed, nor a cut
     * where an earlier round has the size otherwise.
     */
    private String next(Line line) {
        boolean over = line.held()
                || line.disposed().isPresent()
                || matter.sheet().run().closed().isPresent()
                || line.finding().proposal().isPresent()
                        && ReadOtherwise.of(line, matter.sheet().run()).isPresent();
        return over ? "" : new Advice(matter.words()).next(line);
    }

    private void add(List<Fact> facts, String key, String words) {
        if (!words.isBlank()) {
            String name = matter.say(key);
            boolean again = !facts.isEmpty() && facts.stream().map(Fact::name).anyMatch(name::equals);
            facts.add(new Fact(again ? "" : name, words));
        }
    }

    /** Every setting the characteristic was read or answered with, in the order they were used. */
    private List<Setting> settings(Line line) {
        return PassStory.of(matter.sheet().run(), line).stream()
                .flatMap(story -> Stream.concat(story.readings().stream(), story.answers().stream()))
                .map(Taken::setting)
                .flatMap(Optional::stream)
                .distinct()
                .toList();
    }

    private String gauge(Setting setting) {
        return matter.words()
                .list(Stream.of(
                                Optional.of(matter.say(
                                        "record.gauge",
                                        setting.gauge().id(),
                                        matter.kind(setting.gauge().kind()))),
                                setting.reference()
                                        .map(reference -> matter.say(
                                                setting.zero().isPresent() ? "record.master" : "record.wires",
                                                reference,
                                                Figures.withUnit(
                                                        setting.certified().orElseThrow()))),
                                setting.zero().map(zero -> matter.say("record.zero", Figures.withUnit(zero))),
                                setting.gauge().sense().map(sense -> matter.words()
                                        .say("record.sense", sense)))
                        .flatMap(Optional::stream)
                        .toList());
    }

    /** Doubts and notes, in the order they were entered. */
    private List<Fact> said(Line line) {
        Map<Long, Fact> said = new TreeMap<>();
        for (Remark remark : matter.sheet().run().doubtsAndNotes(line.step())) {
            Entry entry = remark.entry();
            said.put(
                    entry.seq(),
                    new Fact(
                            remark.kind() == Remark.Kind.DOUBT ? "record.fact.doubt" : "record.fact.note",
                            matter.say("record.noted", remark.words(), matter.signed(entry.by(), entry))));
        }
        return List.copyOf(said.values());
    }
}
