package org.tenthwise.app.export.pdf;

import java.util.List;
import java.util.stream.Stream;
import org.tenthwise.app.picture.Role;

/** What there is to decide on: one line a characteristic. */
final class SummaryTable {

    /** A heading with its head and a row. */
    private static final double LEAST = 64;

    private final RecordContext matter;
    private final List<TableLine> characteristics;
    private final List<TableLine> products;
    private final List<TableLine> onTheWay;
    private final SummaryColumns columns;

    SummaryTable(RecordContext matter, Wrapping wrapping) {
        this.matter = matter;
        TableLines lines = new TableLines(matter, wrapping);
        this.characteristics = lines.characteristics();
        this.products = lines.products();
        this.onTheWay = lines.onTheWay();
        this.columns = SummaryColumns.lowest(
                matter.words(),
                wrapping,
                Stream.of(characteristics, products).flatMap(List::stream).toList(),
                onTheWay);
    }

    void addTo(PageFlow flow) {
        flow.need(LEAST);
        head(flow);
        rows(flow, characteristics);
        group(flow, "record.products", products);
        group(flow, "record.on-the-way", onTheWay);
    }

    private void group(PageFlow flow, String heading, List<TableLine> lines) {
        if (!lines.isEmpty()) {
            flow.need(LEAST);
            flow.down(6);
            flow.text(matter.say(heading), Style.STRONG, PageFlow.LEFT, PageFlow.WIDTH);
            flow.down(2);
            flow.rule(Strokes.MEDIUM, Role.INK);
            rows(flow, lines);
        }
    }

    private void rows(PageFlow flow, List<TableLine> lines) {
        lines.forEach(line -> columns.row(line).into(flow, () -> head(flow)));
    }

    private void head(PageFlow flow) {
        flow.down(4);
        flow.head(columns.heads(), matter::say, 2, Strokes.MEDIUM);
    }
}
