package org.tenthwise.app.series;

import java.util.List;
import java.util.stream.Stream;
import org.tenthwise.app.history.History;
import org.tenthwise.app.history.RunFacts;
import org.tenthwise.app.history.Sought;
import org.tenthwise.app.history.SoughtBy;

/** The runs that were begun behind the reading of a part, and that may have changed what is on its machine. */
public final class BegunSince {

    private BegunSince() {}

    /** Of the same part number on any machine, and of any part on the same one; one that names none may be there. */
    public static List<RunFacts> of(History history, PartPoint point) {
        Sought lately = Sought.ALL.with(
                SoughtBy.FROM, point.at().toLocalDate().minusDays(1).toString());
        return Stream.concat(
                        history.runs(lately).stream(),
                        history.openOn(point.run().machine()).stream())
                .filter(run -> run.begun() > point.entry())
                .filter(run -> isAlike(run.part(), point.run().part())
                        || run.machine().isBlank()
                        || point.run().machine().isBlank()
                        || isAlike(run.machine(), point.run().machine()))
                .distinct()
                .toList();
    }

    private static boolean isAlike(String one, String other) {
        return one.strip().equalsIgnoreCase(other.strip());
    }
}
