package org.tenthwise.app.export.pdf;

import java.util.List;
import java.util.stream.Stream;
import org.tenthwise.app.text.IssueWords;

/** What stands under the particulars of the part, a line each: what the plan was issued for. */
final class HeadLines {

    private HeadLines() {}

    static List<String> of(RecordContext matter) {
        return Stream.of(new IssueWords(matter.words()).lines(matter.plan()))
                .flatMap(List::stream)
                .toList();
    }
}
