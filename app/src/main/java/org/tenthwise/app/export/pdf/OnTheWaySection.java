package org.tenthwise.app.export.pdf;

import java.util.Comparator;
import java.util.List;
import org.tenthwise.model.record.Line;

/** What stands under the table: which sizes were corrected, what else passed. */
final class OnTheWaySection {

    private final RecordContext matter;
    private final PageFlow flow;

    OnTheWaySection(RecordContext matter, PageFlow flow) {
        this.matter = matter;
        this.flow = flow;
    }

    void add() {
        flow.down(5);
        said(new AtTwentyWords(matter).sentence(), Style.CELL);
        List<String> passed = matter.sheet().lines().stream()
                .filter(line -> line.asked() && !line.isOfDrawing())
                .filter(line -> line.finding().verdict().passed())
                .sorted(Comparator.comparing((Line line) -> line.step().number()))
                .map(line -> matter.named(line.step()))
                .toList();
        if (!passed.isEmpty()) {
            said(matter.say("record.on-the-way-passed", passed), Style.SMALL);
        }
    }

    private void said(String words, Style style) {
        flow.text(words, style, PageFlow.LEFT, PageFlow.WIDTH);
        flow.down(2);
    }
}
