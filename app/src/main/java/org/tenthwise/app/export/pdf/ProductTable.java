package org.tenthwise.app.export.pdf;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.tenthwise.app.picture.Point;
import org.tenthwise.app.picture.VerdictShape;
import org.tenthwise.app.text.DocumentWords;
import org.tenthwise.model.plan.DocumentCheck;
import org.tenthwise.model.plan.ProofOf;
import org.tenthwise.model.plan.Specified;
import org.tenthwise.model.record.Line;
import org.tenthwise.model.run.Pass;
import org.tenthwise.model.verdict.VerdictKind;

/** What the part is made of and was put through: materials, processes and tests, each with the paper that proves it. */
final class ProductTable {

    private static final Column NUMBER = Column.words("record.column.number", PageFlow.LEFT, 30);
    private static final Column NAME = Column.words("record.column.product", 80, 166);
    private static final Column SPECIFICATION = Column.words("record.column.specification", 252, 122);
    private static final Column SUPPLIER = Column.words("record.column.supplier", 380, 102);
    private static final Column DOCUMENT = Column.words("record.column.document", 488, 152);
    private static final double SHAPE = 649;
    private static final Column VERDICT = Column.words("record.column.verdict", 661, PageFlow.RIGHT - 661);
    private static final double LEAST = 90;

    private final RecordContext matter;
    private final PageFlow flow;

    ProductTable(RecordContext matter, PageFlow flow) {
        this.matter = matter;
        this.flow = flow;
    }

    /** Whether a line stands here and not among the characteristics. */
    static boolean holds(Line line) {
        return line.step()
                .check()
                .asDocument()
                .map(DocumentCheck::proof)
                .filter(ProofOf::isOfProduct)
                .isPresent();
    }

    /** Nothing where the plan names none of them. */
    void add() {
        List<Line> lines =
                matter.sheet().lines().stream().filter(ProductTable::holds).toList();
        if (lines.isEmpty()) {
            return;
        }
        flow.need(LEAST);
        flow.down(8);
        head();
        lines.forEach(line -> row(line).into(flow, this::head));
    }

    private void head() {
        flow.down(4);
        flow.head(List.of(NUMBER, NAME, SPECIFICATION, SUPPLIER, DOCUMENT, VERDICT), matter::say, 4, Strokes.MEDIUM);
    }

    private Row row(Line line) {
        DocumentCheck check = line.step().check().asDocument().orElseThrow();
        Specified specified = check.specified();
        VerdictKind standing = line.finding().verdict().standing();
        Row row = new Row(flow.wrapping())
                .text(NUMBER, String.valueOf(line.step().number()), Style.BOLD)
                .text(NAME, line.step().name(), Style.BOLD)
                .text(NAME, matter.words().say("record.product", check.proof()), Style.SMALL);
        Stream.of(specified.specification(), specified.form(), specified.code())
                .filter(said -> !said.isEmpty())
                .forEach(said -> row.text(SPECIFICATION, said, Style.TEXT));
        if (!specified.supplier().isEmpty()) {
            row.text(SUPPLIER, specified.supplier(), Style.TEXT);
        }
        Optional<Pass.Giving> giving = line.pass().giving();
        giving.ifPresent(
                given -> row.text(DOCUMENT, new DocumentWords(matter.words()).whole(given.document()), Style.TEXT));
        row.text(
                VERDICT,
                matter.sentences().standing(line.finding()),
                Style.BOLD.in(CharacteristicTable.role(standing)));
        new FigureText(matter.words()).beside(line).forEach(said -> row.text(VERDICT, said, Style.SMALL));
        return row.ornament((drawing, middle) -> VerdictShape.draw(drawing, standing, new Point(SHAPE, middle), 6));
    }
}
