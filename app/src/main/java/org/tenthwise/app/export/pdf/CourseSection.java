package org.tenthwise.app.export.pdf;

import java.util.List;
import org.tenthwise.app.text.Course;
import org.tenthwise.model.run.Entry;

/** The run from its beginning to its end, all but readings and answers, in the order it happened. */
final class CourseSection {

    private static final Column ENTRY = Column.words("record.column.entry", PageFlow.LEFT, 38);
    private static final Column WHAT = Column.words("record.column.what", 90, 394);
    private static final Column BY = Column.words("record.column.by", 494, 100);
    private static final Column WHEN = Column.words("record.column.when", 600, PageFlow.RIGHT - 600);

    private final RecordContext matter;
    private final PageFlow flow;

    CourseSection(RecordContext matter, PageFlow flow) {
        this.matter = matter;
        this.flow = flow;
    }

    void add() {
        flow.need(200);
        flow.heading(matter.say("record.course"));
        head();
        for (Course.Told told :
                new Course(matter.words()).of(matter.plan(), matter.sheet().run())) {
            Entry entry = told.entry();
            new Row(flow.wrapping())
                    .text(ENTRY, String.valueOf(entry.seq()), Style.SMALL)
                    .text(WHAT, told.sentence(), Style.TEXT)
                    .text(BY, entry.by(), Style.SMALL)
                    .text(WHEN, RecordContext.time(entry.at()), Style.SMALL)
                    .into(flow, this::head);
        }
    }

    private void head() {
        flow.head(List.of(ENTRY, WHAT, BY, WHEN), matter::say, 2, Strokes.THIN);
    }
}
