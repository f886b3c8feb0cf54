package org.tenthwise.app.export.pdf;

import org.tenthwise.model.record.Line;
import java.util.List;
import org.tenthwise.app.export.Evidence;
import org.tenthwise.app.picture.TextMetrics;
import org.tenthwise.model.words.Words;

/** The record laid out page by page, before it is a file. */
final class RecordPages {

    private final Words words;
    private final Paper paper;
    private final TextMetrics lettering;

    RecordPages(Words words, Paper paper, TextMetrics lettering) {
        this.words = words;
        this.paper = paper;
        this.lettering = lettering;
    }

    List<Page> of(Evidence evidence) {
        RecordContext matter = new RecordContext(evidence, words);
        Wrapping wrapping = new Wrapping(lettering);
        Margins margins = new Margins(matter, wrapping, paper);
        PageFlow flow = new PageFlow(wrapping, margins.top(), margins.bottom());
        new TitleSection(matter, flow).add();
        new OutlineSection(matter, flow).add();
        new CharacteristicTable(matter, flow).add();
        new ProductTable(matter, flow).add();
        new AccountSection(matter, flow).add();
        new DispositionSection(matter, flow).add();
        DetailSection detail = new DetailSection(matter, flow);
        evidence.sheet().lines().stream().filter(Line::asked).forEach(detail::add);
        new CourseSection(matter, flow).add();
        new ProofSection(matter, flow).add();
        List<Page> leaves = flow.leaves();
        for (int i = 0; i < leaves.size(); i++) {
            int page = i + 1;
            leaves.get(i).add(drawing -> margins.draw(drawing, page, leaves.size()));
        }
        return leaves;
    }
}
