package org.tenthwise.app.store;

import org.tenthwise.model.plan.Answer;
import org.tenthwise.model.plan.MeasuredBody;
import org.tenthwise.model.plan.Question;
import org.tenthwise.model.run.Disposition;
import org.tenthwise.model.run.StepEvent;
import org.tenthwise.model.words.Word;

/** The kinds of events that happen at a step: what is measured, answered and said there. */
final class StepEventKinds {

    static final EventKind<StepEvent.CutOnThese> CUT_ON_THESE = new EventKind<>(
            "cut-on-these",
            3,
            StepEvent.CutOnThese.class,
            (signed, to) -> to.put("step", signed.step()).put("reason", signed.reason()),
            from -> new StepEvent.CutOnThese(from.step("step"), from.text("reason")));

    static final EventKind<StepEvent.GaugeChosen> GAUGE_CHOSEN = new EventKind<>(
            "gauge-chosen",
            1,
            StepEvent.GaugeChosen.class,
            (chosen, to) -> {
                to.put("step", chosen.step()).put("mark", chosen.mark());
                chosen.reference().ifPresent(reference -> to.put("reference", reference));
            },
            from -> new StepEvent.GaugeChosen(from.step("step"), from.text("mark"), from.textIfAny("reference")));

    static final EventKind<StepEvent.GaugeSet> GAUGE_SET = new EventKind<>(
            "gauge-set",
            1,
            set -> EventJson.format(set.setting().gauge()),
            StepEvent.GaugeSet.class,
            (set, to) -> {
                to.put("step", set.step());
                EventJson.write(set.setting(), to.putObject("setting"));
            },
            from -> new StepEvent.GaugeSet(from.step("step"), EventJson.setting(from.object("setting"))));

    static final EventKind<StepEvent.ReadingTaken> READING_TAKEN = new EventKind<>(
            "reading-taken",
            1,
            taken -> EventJson.format(taken.typed()),
            StepEvent.ReadingTaken.class,
            (taken, to) -> {
                to.put("step", taken.step());
                to.put("slot", taken.slot());
                EventJson.write(taken.typed(), to.putObject("typed"));
            },
            from -> new StepEvent.ReadingTaken(
                    from.step("step"), from.text("slot"), EventJson.written(from.object("typed"))));

    static final EventKind<StepEvent.TemperatureTaken> TEMPERATURE_TAKEN = new EventKind<>(
            "temperature-taken",
            1,
            StepEvent.TemperatureTaken.class,
            (taken, to) ->
                    EventJson.write(taken.read(), to.put("step", taken.step()).put("of", Word.of(taken.of()))),
            from -> new StepEvent.TemperatureTaken(
                    from.step("step"), from.word("of", MeasuredBody.class), EventJson.degrees(from)));

    static final EventKind<StepEvent.Answered> ANSWERED = new EventKind<>(
            "answered",
            1,
            StepEvent.Answered.class,
            (answered, to) -> to.put("step", answered.step())
                    .put("question", Word.of(answered.question()))
                    .put("answer", Word.of(answered.answer())),
            from -> new StepEvent.Answered(
                    from.step("step"), from.word("question", Question.class), from.word("answer", Answer.class)));

    static final EventKind<StepEvent.DocumentGiven> DOCUMENT_GIVEN = new EventKind<>(
            "document-given",
            8,
            given -> given.document().figures().stream()
                    .mapToInt(EventJson::format)
                    .max()
                    .orElse(1),
            StepEvent.DocumentGiven.class,
            (given, to) -> EventJson.write(given.document(), to.put("step", given.step())),
            from -> new StepEvent.DocumentGiven(from.step("step"), EventJson.document(from)));

    static final EventKind<StepEvent.PassBegun> PASS_BEGUN = new EventKind<>(
            "pass-begun",
            1,
            StepEvent.PassBegun.class,
            (pass, to) -> to.put("step", pass.step()).put("why", Word.of(pass.why())),
            from -> new StepEvent.PassBegun(from.step("step"), from.word("why", StepEvent.PassBegun.Why.class)));

    static final EventKind<StepEvent.DoubtFlagged> DOUBT_FLAGGED = new EventKind<>(
            "doubt-flagged",
            1,
            StepEvent.DoubtFlagged.class,
            (doubt, to) -> to.put("step", doubt.step()).put("words", doubt.words()),
            from -> new StepEvent.DoubtFlagged(from.step("step"), from.text("words")));

    static final EventKind<StepEvent.NoteMade> NOTE_MADE = new EventKind<>(
            "note-made",
            1,
            StepEvent.NoteMade.class,
            (note, to) -> to.put("step", note.step()).put("words", note.words()),
            from -> new StepEvent.NoteMade(from.step("step"), from.text("words")));

    static final EventKind<StepEvent.DispositionSigned> DISPOSITION_SIGNED = new EventKind<>(
            "disposed",
            1,
            StepEvent.DispositionSigned.class,
            (disposed, to) -> {
                to.put("step", disposed.step())
                        .put("disposition", Word.of(disposed.disposition()))
                        .put("reason", disposed.reason())
                        .put("signed-by", disposed.signedBy());
                disposed.document().ifPresent(number -> to.put("number", number));
            },
            from -> new StepEvent.DispositionSigned(
                    from.step("step"),
                    from.word("disposition", Disposition.class),
                    from.text("reason"),
                    from.text("signed-by"),
                    from.textIfAny("number")));

    private StepEventKinds() {}
}
