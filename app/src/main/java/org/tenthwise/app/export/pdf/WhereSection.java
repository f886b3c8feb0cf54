package org.tenthwise.app.export.pdf;

import java.util.List;
import java.util.stream.Stream;
import org.tenthwise.app.export.RecordFormat;

/** What stands where: the pages to decide on, those behind them, and the files inside. */
final class WhereSection {

    private final RecordContext matter;
    private final PageFlow flow;
    private final List<RecordFormat> enclosed;

    WhereSection(RecordContext matter, PageFlow flow, List<RecordFormat> enclosed) {
        this.matter = matter;
        this.flow = flow;
        this.enclosed = enclosed;
    }

    void add() {
        flow.down(6);
        int pages = flow.leaves().size();
        RunIn said = new RunIn(flow.wrapping()).add(matter.say("record.where", pages, pages + 1), Style.SMALL);
        if (!enclosed.isEmpty()) {
            said.add(matter.say("record.enclosed", names()), Style.SMALL);
        }
        said.into(flow, PageFlow.LEFT, PageFlow.WIDTH, Style.SMALL.leading());
    }

    /** The first in full; of the others, which are called the same, what stands behind the point. */
    private List<String> names() {
        Stream<String> first = enclosed.stream().limit(1).map(format -> Enclosures.name(format, matter.evidence()));
        return Stream.concat(first, enclosed.stream().skip(1).map(format -> "." + format.extension()))
                .toList();
    }
}
