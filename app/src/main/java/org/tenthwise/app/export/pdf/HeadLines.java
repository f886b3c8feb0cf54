package org.tenthwise.app.export.pdf;

import java.util.List;
import java.util.stream.Stream;
import org.tenthwise.app.text.EarlierWords;
import org.tenthwise.app.text.IssueWords;
import org.tenthwise.app.text.OccasionWords;
import org.tenthwise.model.run.Occasion;

/** What stands under the particulars of the part, a line each: what the run is for, what the plan was issued for. */
final class HeadLines {

    private HeadLines() {}

    static List<String> of(RecordContext matter) {
        return Stream.of(
                        occasion(matter),
                        new IssueWords(matter.words()).lines(matter.plan()),
                        new EarlierWords(matter.words()).lines(matter.sheet()))
                .flatMap(List::stream)
                .toList();
    }

    private static List<String> occasion(RecordContext matter) {
        Occasion occasion = matter.sheet().run().begun().occasion();
        return occasion.saysNothing() ? List.of() : new OccasionWords(matter.words()).lines(occasion);
    }
}
