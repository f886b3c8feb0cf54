package org.tenthwise.app.export.pdf;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.tenthwise.app.picture.Role;
import org.tenthwise.app.text.OutcomeWords;
import org.tenthwise.model.record.Line;
import org.tenthwise.model.run.Disposing;
import org.tenthwise.model.run.Disposition;
import org.tenthwise.model.run.Event;
import org.tenthwise.model.run.Signature;
import org.tenthwise.model.run.StepEvent;
import org.tenthwise.model.verdict.VerdictKind;

/** What was signed for characteristics that did not pass, in force or lapsed, and who signed the whole. */
final class DispositionSection {

    private static final double TEXT = 80;
    private static final double HEAD = 60;
    /** Under a signature. */
    private static final double APART = 4;

    private final RecordContext matter;
    private final PageFlow flow;

    DispositionSection(RecordContext matter, PageFlow flow) {
        this.matter = matter;
        this.flow = flow;
    }

    void add() {
        flow.down(10);
        matter.sheet().lines().forEach(line -> line.dispositions().forEach(signed -> add(line, signed)));
        signatures();
    }

    private void add(Line line, Disposing signed) {
        StepEvent.DispositionSigned disposed = signed.disposed();
        flow.need(3 * Style.TEXT.leading());
        if (signed.inForce()) {
            flow.shape(line.finding().verdict().standing(), 8, Style.BOLD, 6.5);
        }
        String what = matter.words().say("disposition", disposed.disposition());
        String lapsed = disposed.disposition().changesTheWork() ? "record.disposed-done" : "record.disposed-lapsed";
        said(
                signed.lapsed()
                        .map(with -> matter.say(
                                lapsed, line.step().number(), line.step().name(), what, with.seq()))
                        .orElseGet(() -> matter.say(
                                "record.disposed",
                                line.step().number(),
                                line.step().name(),
                                what)),
                Style.BOLD);
        said(
                Stream.of(
                                matter.words().sentence(disposed.reason()),
                                matter.sentences().document(disposed),
                                disposed.disposition() == Disposition.REPAIR
                                        ? matter.sentences().repaired(line)
                                        : "")
                        .filter(said -> !said.isEmpty())
                        .collect(Collectors.joining(" ")),
                Style.TEXT);
        said(matter.signed(disposed.signedBy(), signed.entry()), Style.SMALL);
        flow.down(6);
    }

    /** Who had the run and who signed, on one page. */
    private void signatures() {
        List<Signature> all = matter.sheet().run().signatures();
        flow.need(HEAD + Math.max(1, all.size()) * (Style.BOLD.leading() + Style.SMALL.leading() + APART));
        flow.down(4);
        flow.rule(Strokes.THICK, Role.INK);
        new CellGrid(flow, 180, 180, 338)
                .cell(
                        matter.say("record.begun-by"),
                        matter.sheet().run().entries().get(0).by())
                .cell(matter.say("record.in-hand"), matter.sheet().run().last().by())
                .cell(
                        matter.say("record.closed-by"),
                        matter.last(Event.Closed.class::isInstance)
                                .map(entry -> matter.say("record.closed", RecordContext.time(entry.at())))
                                .orElse(matter.say("record.not-closed")))
                .end();
        flow.down(6);
        all.forEach(signature -> add(signature, signature.standsAgainst(all)));
        if (all.isEmpty()) {
            said(matter.say("signed.nobody"), Style.BOLD);
        }
    }

    /** What speaks against the part has the shape of what is out. */
    private void add(Signature signature, boolean against) {
        flow.need(2 * Style.TEXT.leading());
        if (against) {
            flow.shape(VerdictKind.FAIL, 8, Style.BOLD, 6.5);
        }
        said(new OutcomeWords(matter.words()).signature(signature, matter.sheet()), Style.BOLD);
        said(
                matter.say(
                        signature.closed() ? "record.signature-closed" : "record.signature-when",
                        RecordContext.time(signature.entry().at()),
                        signature.entry().seq()),
                Style.SMALL);
        flow.down(APART);
    }

    private void said(String words, Style style) {
        flow.text(words, style, TEXT, PageFlow.RIGHT - TEXT);
    }
}
