package org.tenthwise.app.export.pdf;

import java.util.List;
import java.util.Optional;
import org.tenthwise.app.picture.Box;
import org.tenthwise.app.picture.Point;
import org.tenthwise.app.picture.Role;
import org.tenthwise.app.picture.VerdictShape;
import org.tenthwise.app.store.RunHead;
import org.tenthwise.app.text.CalibrationWords;
import org.tenthwise.app.text.DrawingWords;
import org.tenthwise.app.text.OutcomeWords;
import org.tenthwise.model.record.DrawingAccount;
import org.tenthwise.model.run.Entry;
import org.tenthwise.model.run.Event;
import org.tenthwise.model.run.Signature;
import org.tenthwise.model.verdict.VerdictKind;

/** What the record says in one sentence, how its characteristics stand, who signed, and a code to find it by. */
final class OutcomeSection {

    private static final double CODE = 96;
    private static final double SHAPE_ROOM = 24;
    private static final double COUNT_ROOM = 17;
    private static final double COUNT_APART = 16;
    private static final double COUNT_LEADING = 18;
    private static final double SIGNED = 66;
    private static final double LEADING = 15;

    private final RecordContext matter;
    private final PageFlow flow;
    private final OutcomeWords outcome;

    OutcomeSection(RecordContext matter, PageFlow flow) {
        this.matter = matter;
        this.flow = flow;
        this.outcome = new OutcomeWords(matter.words());
    }

    void add() {
        flow.down(8);
        double top = flow.y();
        CodeMark code = new CodeMark(code());
        double width = PageFlow.WIDTH - CODE - 2 * code.quiet(CODE);
        flow.leaf()
                .add(drawing ->
                        code.draw(drawing, new Box(PageFlow.RIGHT - CODE, top + 2, PageFlow.RIGHT, top + 2 + CODE)));
        Page leaf = flow.leaf();
        if (isClosedAndNotSealed()) {
            flow.text(matter.say("record.caution.unsealed"), Style.BOLD, PageFlow.LEFT, width);
            flow.down(2);
        }
        Optional<VerdictKind> shape = OutcomeWords.shape(matter.sheet());
        double indent = shape.isPresent() ? SHAPE_ROOM : 0;
        shape.ifPresent(standing -> flow.shape(standing, 9, Style.HEADING, 8));
        flow.text(matter.sentences().outcome(matter.sheet()), Style.HEADING, PageFlow.LEFT + indent, width - indent);
        flow.down(2);
        flow.text(
                matter.say(
                        "record.accounted",
                        outcome.counts(matter.sheet()),
                        matter.sheet().leftOut().size()),
                Style.TEXT.in(Role.INK2),
                PageFlow.LEFT,
                width);
        flow.down(3);
        counts(width);
        against(width);
        double under = top + CODE + 2 + code.quiet(CODE);
        signatures(leaf, under, width);
        if (flow.leaf() == leaf) {
            flow.down(Math.max(0, under - flow.y()));
        }
        flow.down(4);
        flow.rule(Strokes.MEDIUM, Role.INK);
    }

    /** Gauges past their due day and numbers missing in the row: whoever decides reads them before any figure. */
    private void against(double width) {
        CalibrationWords.ofRecord(matter.words())
                .pastDue(matter.sheet())
                .forEach(past -> flow.text(past, Style.BOLD, PageFlow.LEFT, width));
        String missing = new DrawingWords(matter.words())
                .missing(DrawingAccount.of(matter.sheet()).gaps());
        if (!missing.isEmpty()) {
            flow.text(matter.say("record.account.missing", missing), Style.BOLD, PageFlow.LEFT, width);
        }
    }

    /** What nobody sealed is said before what it says. */
    private boolean isClosedAndNotSealed() {
        List<Entry> entries = matter.sheet().run().entries();
        return matter.sheet().run().closed().isPresent()
                && entries.get(entries.size() - 1)
                        .event()
                        .as(Event.Sealed.class)
                        .isEmpty();
    }

    /** Run and head in words, as far as a code holds them. */
    private String code() {
        RunHead head = matter.evidence().head();
        return matter.say("record.code", matter.sheet().run().id(), head.place(), head.hash());
    }

    private void counts(double width) {
        double left = PageFlow.LEFT;
        for (VerdictKind standing : VerdictKind.values()) {
            String counted = matter.say(
                    "record.count",
                    matter.sheet().count(standing),
                    matter.words().say("verdict", standing));
            double room = COUNT_ROOM + flow.wrapping().width(counted, Style.TEXT);
            if (left + room > PageFlow.LEFT + width) {
                left = PageFlow.LEFT;
                flow.down(COUNT_LEADING);
            }
            Point centre = new Point(left + 6, flow.y() + COUNT_LEADING / 2);
            flow.leaf().add(drawing -> VerdictShape.draw(drawing, standing, centre, 5.5));
            flow.write(counted, Style.TEXT, left + COUNT_ROOM, flow.y() + 1);
            left += room + COUNT_APART;
        }
        flow.down(COUNT_LEADING + 4);
    }

    /** @param under the lower edge of the code on its leaf: below it a line is as wide as the page */
    private void signatures(Page leaf, double under, double width) {
        List<Signature> all = matter.sheet().run().signatures();
        if (all.isEmpty()) {
            flow.text(matter.say("signed.nobody"), Style.BOLD, PageFlow.LEFT, width);
        }
        all.forEach(signature -> add(
                signature,
                signature.standsAgainst(all),
                flow.leaf() == leaf && flow.y() < under ? width : PageFlow.WIDTH));
    }

    /** What speaks against the part has the shape of what is out. */
    private void add(Signature signature, boolean against, double width) {
        if (against) {
            flow.shape(VerdictKind.FAIL, 6, Style.BOLD, 5.5);
        }
        double left = against ? SIGNED : PageFlow.LEFT;
        new RunIn(flow.wrapping())
                .add(outcome.signature(signature, matter.sheet()), Style.BOLD)
                .add(
                        matter.say(
                                signature.closed() ? "record.signature-closed" : "record.signature-when",
                                RecordContext.time(signature.entry().at()),
                                signature.entry().seq()),
                        Style.SMALL)
                .into(flow, left, PageFlow.LEFT + width - left, LEADING);
    }
}
