package org.tenthwise.app.export.pdf;

import org.tenthwise.app.picture.Point;
import org.tenthwise.app.picture.Role;
import org.tenthwise.app.picture.VerdictShape;
import org.tenthwise.model.record.Line;
import org.tenthwise.model.run.Disposing;
import org.tenthwise.model.run.Event;

/** What was signed for characteristics that did not pass, in force or lapsed, and who signed the whole. */
final class DispositionSection {

    private static final double TEXT = 80;

    private final Matter matter;
    private final Flow flow;

    DispositionSection(Matter matter, Flow flow) {
        this.matter = matter;
        this.flow = flow;
    }

    void add() {
        flow.down(10);
        matter.sheet().lines().forEach(line -> line.dispositions().forEach(signed -> add(line, signed)));
        signatures();
    }

    private void add(Line line, Disposing signed) {
        Event.Disposed disposed = signed.disposed();
        flow.need(3 * Style.TEXT.leading());
        double middle = flow.y() + Style.BOLD.leading() / 2;
        if (signed.inForce()) {
            flow.leaf().add(drawing -> VerdictShape.draw(drawing, line.finding().verdict().standing(),
                    new Point(Flow.LEFT + 8, middle), 6.5));
        }
        String what = matter.words().say("disposition", disposed.disposition());
        flow.text(signed.lapsed()
                .map(with -> matter.say("record.disposed-lapsed", line.step().number(), line.step().name(), what, with.seq()))
                .orElseGet(() -> matter.say("record.disposed", line.step().number(), line.step().name(), what)),
                Style.BOLD, TEXT, Flow.RIGHT - TEXT);
        flow.text(disposed.reason(), Style.TEXT, TEXT, Flow.RIGHT - TEXT);
        flow.text(matter.signed(disposed.signedBy(), signed.entry()), Style.SMALL, TEXT, Flow.RIGHT - TEXT);
        flow.down(6);
    }

    private void signatures() {
        flow.need(60);
        flow.down(4);
        flow.rule(Strokes.THICK, Role.INK);
        CellGrid grid = new CellGrid(flow, 180, 180, 338)
                .cell(matter.say("record.begun-by"), matter.sheet().run().entries().get(0).by())
                .cell(matter.say("record.in-hand"), matter.sheet().run().by());
        matter.last(Event.Closed.class::isInstance).ifPresentOrElse(entry -> {
            Event.Closed closed = (Event.Closed) entry.event();
            grid.cell(matter.say("record.closed-by"),
                    matter.say("record.closed", closed.signedBy(), closed.meaning(), Matter.time(entry.at()), entry.seq()));
        }, () -> grid.cell(matter.say("record.closed-by"), matter.say("record.not-closed")));
        grid.end();
    }
}
