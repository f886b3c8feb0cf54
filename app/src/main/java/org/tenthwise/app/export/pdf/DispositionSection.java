package org.tenthwise.app.export.pdf;

import java.util.Comparator;
import java.util.List;
import org.tenthwise.model.record.Line;
import org.tenthwise.model.run.Disposing;
import org.tenthwise.model.run.Disposition;
import org.tenthwise.model.run.StepEvent;

/** What was signed for characteristics that did not pass, in force or lapsed. */
final class DispositionSection {

    private static final double TEXT = 66;
    private static final double LEADING = 14;
    /** Under one. */
    private static final double APART = 4;

    private final RecordContext matter;
    private final PageFlow flow;

    DispositionSection(RecordContext matter, PageFlow flow) {
        this.matter = matter;
        this.flow = flow;
    }

    void add() {
        List<Line> signed = matter.sheet().lines().stream()
                .filter(line -> !line.dispositions().isEmpty())
                .sorted(Comparator.comparing(line -> line.step().number()))
                .toList();
        flow.down(signed.isEmpty() ? 0 : 10);
        signed.forEach(line -> line.dispositions().forEach(disposing -> add(line, disposing)));
    }

    private void add(Line line, Disposing signed) {
        StepEvent.DispositionSigned disposed = signed.disposed();
        RunIn said = new RunIn(flow.wrapping())
                .add(what(line, signed), Style.SMALL_BOLD)
                .add(matter.words().sentence(disposed.reason()), Style.CELL)
                .add(matter.sentences().document(disposed), Style.CELL)
                .add(
                        disposed.disposition() == Disposition.REPAIR
                                ? matter.sentences().repaired(line)
                                : "",
                        Style.CELL)
                .add(matter.signed(disposed.signedBy(), signed.entry()), Style.SMALL);
        double width = PageFlow.RIGHT - TEXT;
        flow.need(Math.min(said.lines(width).size() * LEADING, flow.wholeRoom()));
        if (signed.inForce()) {
            flow.shape(line.finding().verdict().standing(), 6, Style.CELL, 5.5);
        }
        said.into(flow, TEXT, width, LEADING);
        flow.down(APART);
    }

    private String what(Line line, Disposing signed) {
        Disposition disposition = signed.disposed().disposition();
        String what = matter.words().say("disposition", disposition);
        int number = line.step().number();
        String name = line.step().name();
        String lapsed = disposition.changesTheWork() ? "record.disposed-done" : "record.disposed-lapsed";
        return signed.lapsed()
                .map(with -> matter.say(lapsed, number, name, what, with.seq()))
                .orElseGet(() -> matter.say("record.disposed", number, name, what));
    }
}
