package org.tenthwise.app.export.pdf;

import java.util.List;
import org.tenthwise.app.picture.Point;
import org.tenthwise.app.picture.Role;
import org.tenthwise.app.picture.VerdictShape;
import org.tenthwise.app.text.DrawingWords;
import org.tenthwise.model.plan.DocumentCheck;
import org.tenthwise.model.record.AccountLine;
import org.tenthwise.model.record.DrawingAccount;
import org.tenthwise.model.record.Line;
import org.tenthwise.model.verdict.VerdictKind;

/** The drawing accounted for, in the order of its numbers; only of a plan that names them. */
final class AccountSection {

    private static final Column BALLOON = Column.words("record.account.balloon", PageFlow.LEFT, 64);
    private static final Column PLACE = Column.words("record.account.place", 116, 66);
    private static final Column DESIGNATOR = Column.words("record.account.designator", 186, 70);
    private static final Column REQUIREMENT = Column.words("record.account.requirement", 260, 220);
    private static final Column RESULT = Column.words("record.account.result", 486, 128);
    private static final double SHAPE = 625;
    private static final Column VERDICT = Column.words("record.column.verdict", 637, PageFlow.RIGHT - 637);

    private final RecordContext matter;
    private final PageFlow flow;
    private final DrawingWords drawing;

    AccountSection(RecordContext matter, PageFlow flow) {
        this.matter = matter;
        this.flow = flow;
        this.drawing = new DrawingWords(matter.words());
    }

    void add() {
        if (!matter.plan().isBallooned()) {
            return;
        }
        DrawingAccount account = DrawingAccount.of(matter.sheet());
        flow.need(110);
        flow.heading(matter.say("record.account"));
        head();
        account.lines().forEach(line -> row(line).into(flow, this::head));
        String missing = drawing.missing(account.gaps());
        if (!missing.isEmpty()) {
            flow.down(4);
            flow.text(matter.say("record.account.missing", missing), Style.TEXT, PageFlow.LEFT, PageFlow.WIDTH);
        }
    }

    private void head() {
        flow.down(4);
        flow.head(List.of(BALLOON, PLACE, DESIGNATOR, REQUIREMENT, RESULT, VERDICT), matter::say, 4, Strokes.MEDIUM);
    }

    private Row row(AccountLine line) {
        VerdictKind standing = line.standing();
        Row row = new Row(flow.wrapping())
                .text(
                        BALLOON,
                        line.balloon().map(Object::toString).orElse(matter.say("record.account.none")),
                        Style.BOLD)
                .text(PLACE, drawing.place(line.drawing()), Style.TEXT)
                .text(DESIGNATOR, line.drawing().designator().orElse(""), Style.BOLD)
                .text(REQUIREMENT, drawing.requirement(line), Style.TEXT);
        line.match(new AccountLine.Cases<Row>() {
            @Override
            public Row checked(AccountLine.Checked checked) {
                return AccountSection.this.checked(checked, row);
            }

            @Override
            public Row unanswered(AccountLine.Unanswered unanswered) {
                return row.text(RESULT, matter.say("record.account.unanswered"), Style.SMALL);
            }

            @Override
            public Row notInThisRun(AccountLine.NotInThisRun left) {
                row.text(REQUIREMENT, matter.named(left.line().step()), Style.SMALL.in(Role.INK2));
                return row.text(RESULT, matter.notInThisRun(), Style.SMALL);
            }
        });
        row.text(VERDICT, matter.words().say("verdict", standing), Style.BOLD.in(CharacteristicTable.role(standing)));
        return row.ornament((on, middle) -> VerdictShape.draw(on, standing, new Point(SHAPE, middle), 6));
    }

    private Row checked(AccountLine.Checked checked, Row row) {
        Line line = checked.line();
        String which = drawing.which(checked);
        if (!which.isEmpty()) {
            row.text(BALLOON, which, Style.SMALL);
        }
        row.text(REQUIREMENT, matter.named(line.step()), Style.SMALL.in(Role.INK2));
        row.text(RESULT, drawing.result(checked), Style.BOLD);
        line.step()
                .check()
                .asDocument()
                .map(DocumentCheck::where)
                .filter(where -> !where.isEmpty())
                .ifPresent(where -> row.text(RESULT, matter.say("document.where", where), Style.SMALL));
        if (checked.standing() != VerdictKind.PASS) {
            line.disposed().ifPresent(disposed -> {
                row.text(RESULT, matter.say("record.short-disposition", disposed.disposition()), Style.SMALL);
                row.text(RESULT, matter.sentences().document(disposed), Style.SMALL);
            });
        } else if (line.repaired()) {
            row.text(RESULT, matter.say("record.repaired"), Style.SMALL);
        }
        return row;
    }
}
