package org.tenthwise.app.series;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.tenthwise.app.history.History;
import org.tenthwise.app.history.RunFacts;
import org.tenthwise.app.history.RunQuery;
import org.tenthwise.app.history.RunShelf;
import org.tenthwise.app.history.RunSummary;
import org.tenthwise.app.history.Sought;
import org.tenthwise.app.history.SoughtBy;

/** The runs that were begun behind the reading of a part, and that may have changed what is on its machine. */
public final class BegunSince {

    private static final int PAGE = 20;

    private BegunSince() {}

    /** Of the same part number on any machine, and of any part on the same one; one that names none may be there. */
    public static List<RunFacts> of(History history, PartPoint point) {
        Sought lately = Sought.ALL.with(
                SoughtBy.FROM, point.at().toLocalDate().minusDays(1).toString());
        return Stream.concat(history.runs(lately).stream(), open(history, point))
                .filter(run -> run.begun() > point.entry())
                .filter(run -> isAlike(run.part(), point.run().part())
                        || run.machine().isBlank()
                        || point.run().machine().isBlank()
                        || isAlike(run.machine(), point.run().machine()))
                .distinct()
                .toList();
    }

    /** The open runs something was entered in since, also where nothing is found yet: those last worked on first. */
    private static Stream<RunFacts> open(History history, PartPoint point) {
        List<RunFacts> open = new ArrayList<>();
        Optional<RunFacts> after = Optional.empty();
        while (true) {
            List<RunSummary> page = history.runs(new RunQuery(RunShelf.OPEN, Optional.empty(), "", after, PAGE));
            page.stream()
                    .map(RunSummary::run)
                    .filter(run -> run.last() > point.entry())
                    .forEach(open::add);
            after = page.stream().map(RunSummary::run).reduce((before, last) -> last);
            if (page.size() < PAGE
                    || after.filter(run -> run.last() > point.entry()).isEmpty()) {
                return open.stream();
            }
        }
    }

    private static boolean isAlike(String one, String other) {
        return one.strip().equalsIgnoreCase(other.strip());
    }
}
