package org.tenthwise.app.export;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.tenthwise.app.history.History;
import org.tenthwise.app.history.Sought;
import org.tenthwise.app.history.SoughtBy;
import org.tenthwise.app.series.Characteristic;
import org.tenthwise.app.series.Followed;
import org.tenthwise.app.series.SeriesSums;
import org.tenthwise.app.series.SizeOf;
import org.tenthwise.app.sums.handbook.Handbook;
import org.tenthwise.app.ui.Workshop;
import org.tenthwise.app.ui.history.PartsMade;

/** What the tablet hands out as tables. */
class SeriesViewCsvTest {

    private static final Sought OF_PART = Sought.ALL.with(SoughtBy.PART_NUMBER, PartsMade.PART);

    @RegisterExtension
    private final Workshop workshop = new Workshop();

    @BeforeEach
    void make() {
        new PartsMade(workshop).bores(PartsMade.plan(), "Setter 2", 12, 16, 9);
    }

    private List<String> lines(SeriesView.Kind kind, Optional<Characteristic> one) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        new SeriesViewCsv(new SeriesSums(Handbook.sums()))
                .write(history(), new SeriesView(kind, OF_PART, one, SizeOf.FINAL, Set.of()), out);
        return out.toString(StandardCharsets.UTF_8).lines().toList();
    }

    private History history() {
        return workshop.shop.history();
    }

    @Test
    void oneCharacteristicHasALineForEachPartAndNoOther() throws IOException {
        Characteristic journal = new Followed(history()).of(OF_PART).get(0).characteristic();
        List<String> lines = lines(SeriesView.Kind.COURSE, Optional.of(journal));
        assertEquals(4, lines.size(), lines::toString);
        assertTrue(lines.stream().skip(1).allMatch(line -> line.contains("Journal")), lines::toString);
        assertTrue(lines.get(2).contains("30.016"), lines::toString);
    }

    @Test
    void allCharacteristicsAndTheirDeviationsAreTablesOfTheirOwn() throws IOException {
        for (SeriesView.Kind kind : List.of(SeriesView.Kind.SHARES, SeriesView.Kind.DEVIATIONS)) {
            String table = String.join("\n", lines(kind, Optional.empty()));
            assertTrue(table.contains("Journal") && table.contains("Width of the rim"), table);
        }
    }

    @Test
    void aFileIsCalledByWhatIsOnIt() {
        assertEquals(
                "history-course-T-1-13",
                new SeriesView(
                                SeriesView.Kind.COURSE,
                                OF_PART,
                                Optional.of(
                                        new Characteristic("T/1", Optional.of("13"), 1, "Journal", Optional.empty())),
                                SizeOf.FINAL,
                                Set.of())
                        .name());
        assertEquals(
                "history-shares",
                new SeriesView(SeriesView.Kind.SHARES, Sought.ALL, Optional.empty(), SizeOf.FINAL, Set.of()).name());
    }
}
