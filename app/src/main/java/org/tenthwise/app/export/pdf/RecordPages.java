package org.tenthwise.app.export.pdf;

import java.util.Comparator;
import java.util.List;
import org.tenthwise.app.export.Evidence;
import org.tenthwise.app.export.RecordFormat;
import org.tenthwise.app.picture.TextMetrics;
import org.tenthwise.model.record.Line;
import org.tenthwise.model.words.Words;

/** The record laid out page by page, before it is a file. */
final class RecordPages {

    private final Words words;
    private final Paper paper;
    private final TextMetrics lettering;
    private final List<RecordFormat> enclosed;

    /** @param enclosed the formats that are files inside the record */
    RecordPages(Words words, Paper paper, TextMetrics lettering, List<RecordFormat> enclosed) {
        this.words = words;
        this.paper = paper;
        this.lettering = lettering;
        this.enclosed = enclosed;
    }

    List<Page> of(Evidence evidence) {
        RecordContext matter = new RecordContext(evidence, words);
        Wrapping wrapping = new Wrapping(lettering);
        Margins margins = new Margins(matter, wrapping, paper);
        PageFlow flow = new DecidingPages(matter, wrapping, margins, enclosed).flow();
        flow.turn();
        List<Line> asked = evidence.sheet().lines().stream()
                .filter(Line::asked)
                .sorted(Comparator.comparing(line -> line.step().number()))
                .toList();
        AnsweredTable answered = new AnsweredTable(matter, flow);
        answered.add(asked.stream().filter(answered::holds).toList());
        DetailSection detail = new DetailSection(matter, flow);
        asked.stream().filter(line -> !answered.holds(line)).forEach(detail::add);
        new GaugeSection(matter, flow).add();
        new EventsSection(matter, flow).add();
        new ProofSection(matter, flow).add();
        List<Page> leaves = flow.leaves();
        for (int i = 0; i < leaves.size(); i++) {
            int page = i + 1;
            leaves.get(i).add(drawing -> margins.draw(drawing, page, leaves.size()));
        }
        return leaves;
    }
}
