package org.tenthwise.app.export.pdf;

import org.tenthwise.app.picture.Role;
import org.tenthwise.app.text.Course;
import org.tenthwise.model.run.Entry;

/** The run from its beginning to its end, all but readings and answers, in the order it happened. */
final class CourseSection {

    private static final Column ENTRY = Column.words(PageFlow.LEFT, 38);
    private static final Column WHAT = Column.words(90, 394);
    private static final Column BY = Column.words(494, 100);
    private static final Column WHEN = Column.words(600, PageFlow.RIGHT - 600);

    private final RecordContext matter;
    private final PageFlow flow;

    CourseSection(RecordContext matter, PageFlow flow) {
        this.matter = matter;
        this.flow = flow;
    }

    void add() {
        flow.need(200);
        flow.down(14);
        flow.rule(Strokes.THICK, Role.INK);
        flow.down(5);
        flow.text(matter.say("record.course"), Style.NAME, PageFlow.LEFT, PageFlow.WIDTH);
        flow.down(4);
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
        flow.head(ENTRY, matter.say("record.column.entry"));
        flow.head(WHAT, matter.say("record.column.what"));
        flow.head(BY, matter.say("record.column.by"));
        flow.head(WHEN, matter.say("record.column.when"));
        flow.down(Style.SMALL.leading() + 2);
        flow.rule(Strokes.THIN, Role.INK);
    }
}
