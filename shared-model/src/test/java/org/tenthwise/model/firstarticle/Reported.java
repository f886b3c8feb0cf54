package org.tenthwise.model.firstarticle;

import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.record.Measured;
import org.tenthwise.model.run.ReportAsked;
import org.tenthwise.model.words.Refused;

/** Reports on invented runs, and what they say. */
final class Reported {

    private Reported() {}

    static FirstArticle report(ReportAsked asked, Joined... runs) {
        return report(asked, PartBefore.NOTHING, runs);
    }

    /** One whose baseline was made to {@code plan}. */
    static FirstArticle report(ReportAsked asked, Plan plan, Joined... runs) {
        return report(asked, new PartBefore(Optional.empty(), Optional.of(plan)), runs);
    }

    static FirstArticle report(ReportAsked asked, PartBefore before, Joined... runs) {
        return FirstArticle.of(asked, Stream.of(runs).map(Joined::sheet).toList(), before);
    }

    static FirstArticle full(Joined... runs) {
        return report(Joined.full(), runs);
    }

    /** Each line as its number, then for each result its column, its instances and its readings as typed. */
    static List<String> lines(FirstArticle article) {
        return article.characteristics().stream()
                .map(one -> one.number().orElseThrow()
                        + one.results().stream()
                                .map(result -> " | %d %s %s"
                                        .formatted(
                                                result.column(),
                                                result.instances(),
                                                result.checked().orElseThrow().measured().stream()
                                                        .map(Reported::typed)
                                                        .toList()))
                                .collect(Collectors.joining()))
                .toList();
    }

    private static String typed(Measured measured) {
        return measured.reading().typed().text();
    }

    static Map<Lack.Why, List<String>> open(FirstArticle article) {
        return article.open().stream().collect(Collectors.toMap(Lack::why, Lack::what));
    }

    static String refusal(ReportAsked asked, Joined... runs) {
        return assertThrows(Refused.class, () -> report(asked, runs)).why().key();
    }
}
