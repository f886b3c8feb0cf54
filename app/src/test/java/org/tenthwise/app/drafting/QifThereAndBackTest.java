package org.tenthwise.app.drafting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.OutputStream;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.tenthwise.app.export.Evidence;
import org.tenthwise.app.export.Records;
import org.tenthwise.app.export.qif.QifRecord;
import org.tenthwise.checklists.catalogue.DemoPart;
import org.tenthwise.checklists.catalogue.ExamplePart;
import org.tenthwise.checklists.drafting.ListedRows;
import org.tenthwise.model.callout.CalloutPart;
import org.tenthwise.model.callout.CalloutReader;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.plan.Step;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.quantity.Written;

/** A plan, handed out as QIF and drawn up again, has the same limits. */
class QifThereAndBackTest {

    /** No callout is of a share: such a line is refused, with the reason. */
    private static final Unit SHARE = Unit.named("%");

    @TempDir
    private Path folder;

    static Stream<Evidence> runs() {
        return Stream.concat(
                Stream.of(ExamplePart.values()).map(part -> Records.whole(part.plan(), part.failingReadings())),
                Stream.of(DemoPart.values()).map(part -> Records.whole(part, Records.passing(part))));
    }

    @ParameterizedTest
    @MethodSource("runs")
    void everyDimensionHasTheLimitsItHad(Evidence evidence) throws IOException {
        Plan plan = evidence.sheet().plan();
        Map<String, List<String>> rows = rows(evidence).stream()
                .skip(1)
                .collect(Collectors.toMap(row -> row.get(0), row -> row, (one, other) -> one));
        List<String> compared = new ArrayList<>();
        for (Step step : plan.steps()) {
            Optional<String> number = plan.balloon(step).map(balloon -> balloon.text());
            boolean size = step.isOfDrawing()
                    && step.check().asDimension().isPresent()
                    && !step.limits().orElseThrow().unit().equals(SHARE);
            if (size && number.isPresent()) {
                List<String> row = rows.get(number.get());
                for (boolean upper : new boolean[] {false, true}) {
                    assertEquals(
                            planned(step, upper),
                            listed(row, plan.unit(), upper)
                                    .filter(figure -> upper
                                            || figure.signum() != 0
                                            || planned(step, false).isPresent()),
                            () -> step.name() + ": " + row);
                }
                compared.add(step.name());
            }
        }
        assertTrue(compared.size() > 10, compared::toString);
    }

    private List<List<String>> rows(Evidence evidence) throws IOException {
        Path file = folder.resolve("run.qif");
        try (OutputStream out = Files.newOutputStream(file)) {
            new QifRecord().write(evidence, out);
        }
        ListedRows listed = ListFile.read(file);
        assertTrue(listed.refused().isEmpty(), () -> listed.refused().toString());
        return listed.rows();
    }

    private static Optional<BigDecimal> planned(Step step, boolean upper) {
        return step.limits()
                .flatMap(limits -> upper ? limits.upper() : limits.lower())
                .map(QifThereAndBackTest::inDegrees);
    }

    private static BigDecimal inDegrees(Written limit) {
        return plain(limit.unit().isOfAngle() ? limit.length().in(Unit.DEGREE) : limit.figure());
    }

    /** Noughts at the end make no other limit. */
    private static BigDecimal plain(BigDecimal figure) {
        return figure.signum() == 0 ? BigDecimal.ZERO : figure.stripTrailingZeros();
    }

    /** Those in figures, or else those that the words of the list have. */
    private static Optional<BigDecimal> listed(List<String> row, Unit unit, boolean upper) {
        String figure = row.get(upper ? 7 : 6);
        if (!figure.isEmpty()) {
            return Optional.of(plain(new BigDecimal(figure)));
        }
        CalloutPart part = new CalloutReader(unit, Optional.empty())
                .read(row.get(1))
                .parts()
                .get(0);
        return part.limits()
                .flatMap(limits -> upper ? limits.upper() : limits.lower())
                .map(QifThereAndBackTest::inDegrees);
    }
}
