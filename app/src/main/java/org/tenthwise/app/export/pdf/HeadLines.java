package org.tenthwise.app.export.pdf;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.tenthwise.app.text.EarlierWords;
import org.tenthwise.app.text.IssueWords;
import org.tenthwise.app.text.OccasionWords;
import org.tenthwise.model.run.Occasion;

/** What stands under the particulars of the part, what the run is for, what the plan was issued for. */
final class HeadLines {

    private HeadLines() {}

    static List<String> of(RecordContext matter) {
        return Stream.of(occasion(matter), issue(matter), new EarlierWords(matter.words()).lines(matter.sheet()))
                .flatMap(List::stream)
                .toList();
    }

    /** All of it in one go: why and by whom, and what its first article takes in. */
    private static List<String> issue(RecordContext matter) {
        List<String> lines = new IssueWords(matter.words()).lines(matter.plan());
        return lines.isEmpty()
                ? lines
                : List.of(Stream.concat(
                                Stream.of(matter.words().list(lines.subList(0, 2))),
                                lines.stream().skip(2))
                        .map(matter.words()::sentence)
                        .collect(Collectors.joining(" ")));
    }

    private static List<String> occasion(RecordContext matter) {
        Occasion occasion = matter.sheet().run().begun().occasion();
        return occasion.saysNothing()
                ? List.of()
                : List.of(String.join(" ", new OccasionWords(matter.words()).lines(occasion)));
    }
}
