package org.tenthwise.app.export.pdf;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.tenthwise.app.export.RecordFormat;

/** The pages to decide on. The outline gives way where that saves a page. */
final class DecidingPages {

    /** Of the outline. */
    private static final double[] HEIGHTS = {290, 240, 200, 160, 140, 120, 100};

    private final RecordContext matter;
    private final Wrapping wrapping;
    private final Margins margins;
    private final List<RecordFormat> enclosed;
    private final SummaryTable table;

    DecidingPages(RecordContext matter, Wrapping wrapping, Margins margins, List<RecordFormat> enclosed) {
        this.matter = matter;
        this.wrapping = wrapping;
        this.margins = margins;
        this.enclosed = enclosed;
        this.table = new SummaryTable(matter, wrapping);
    }

    /** Laid out on as few leaves as it can be, with more to come. */
    PageFlow flow() {
        List<PageFlow> tried = new ArrayList<>();
        for (double outline : matter.plan().outline().isPresent() ? HEIGHTS : new double[] {0}) {
            tried.add(laidOut(outline));
        }
        return tried.stream()
                .min(Comparator.comparing(flow -> flow.leaves().size()))
                .orElseThrow();
    }

    private PageFlow laidOut(double outline) {
        PageFlow flow = new PageFlow(wrapping, margins.first(), margins.top(), margins.bottom());
        new TitleSection(matter, flow).add();
        new OutcomeSection(matter, flow).add();
        new OutlineSection(matter, flow, outline).add();
        table.addTo(flow);
        new OnTheWaySection(matter, flow).add();
        new DispositionSection(matter, flow).add();
        new WhereSection(matter, flow, enclosed).add();
        return flow;
    }
}
