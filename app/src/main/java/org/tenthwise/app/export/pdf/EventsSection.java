package org.tenthwise.app.export.pdf;

import java.util.List;
import java.util.stream.Stream;
import org.tenthwise.app.text.EventsTold;
import org.tenthwise.model.run.Entry;
import org.tenthwise.model.run.StepEvent;

/** What happened in the run besides what stands with its checks, in the order it happened. */
final class EventsSection {

    private static final Column ENTRY = Column.words("record.column.entry", PageFlow.LEFT, 38);
    private static final Column WHAT = Column.words("record.column.what", 90, 394);
    private static final Column BY = Column.words("record.column.by", 494, 100);
    private static final Column WHEN = Column.words("record.column.when", 600, PageFlow.RIGHT - 600);

    private final RecordContext matter;
    private final PageFlow flow;

    EventsSection(RecordContext matter, PageFlow flow) {
        this.matter = matter;
        this.flow = flow;
    }

    void add() {
        flow.need(110);
        flow.heading(matter.say("record.course"));
        head();
        for (EventsTold.Told told :
                new EventsTold(matter.words()).of(matter.plan(), matter.sheet().run())) {
            Entry entry = told.entry();
            if (isOfACheck(entry)) {
                continue;
            }
            new Row(flow.wrapping())
                    .text(ENTRY, String.valueOf(entry.seq()), Style.SMALL)
                    .text(WHAT, told.sentence(), Style.CELL)
                    .text(BY, entry.by(), Style.SMALL)
                    .text(WHEN, RecordContext.time(entry.at()), Style.SMALL)
                    .into(flow, this::head);
        }
    }

    /** Whether it stands with its check already, or among what was signed. */
    private static boolean isOfACheck(Entry entry) {
        return entry.event()
                .as(StepEvent.class)
                .filter(event -> event.step() != 0)
                .filter(event -> Stream.of(
                                StepEvent.DoubtFlagged.class,
                                StepEvent.NoteMade.class,
                                StepEvent.DispositionSigned.class)
                        .anyMatch(kind -> entry.event().as(kind).isPresent()))
                .isPresent();
    }

    private void head() {
        flow.head(List.of(ENTRY, WHAT, BY, WHEN), matter::say, 2, Strokes.THIN);
    }
}
