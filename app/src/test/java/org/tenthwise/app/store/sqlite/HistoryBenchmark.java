package org.tenthwise.app.store.sqlite;

import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.IntStream;
import org.tenthwise.app.history.History;
import org.tenthwise.app.history.Plans;
import org.tenthwise.app.history.Sought;
import org.tenthwise.app.history.SoughtBy;
import org.tenthwise.app.picture.chart.CourseSheets;
import org.tenthwise.app.series.Characteristic;
import org.tenthwise.app.series.ControlLimits;
import org.tenthwise.app.series.DeviationChart;
import org.tenthwise.app.series.Followed;
import org.tenthwise.app.series.Segment;
import org.tenthwise.app.series.Series;
import org.tenthwise.app.series.SeriesSums;
import org.tenthwise.app.series.SizeOf;
import org.tenthwise.app.sums.handbook.Handbook;
import org.tenthwise.model.words.Words;

/**
 * What the views of a history cost beside the plain SQL that fetches their rows, every column read as text. Views and
 * SQL take turns on one connection; medians are given. The tables are filled by themselves, with invented sizes.
 *
 * <p>After {@code mvn -q package -DskipTests}, from the top of the repository:
 *
 * <pre>
 * java -cp app/target/tenthwise.jar:app/target/test-classes
 *     org.tenthwise.app.store.sqlite.HistoryBenchmark FOLDER 1000 200
 * </pre>
 */
final class HistoryBenchmark {

    private static final String PART = "HB-1";
    private static final String ONE = "77";
    private static final Sought SOUGHT = Sought.ALL.with(SoughtBy.PART_NUMBER, PART);
    private static final int TIMES = 9;

    /** Something that takes time. */
    private interface Work {
        long done() throws Exception;
    }

    private HistoryBenchmark() {}

    public static void main(String[] arguments) throws Exception {
        Path store = Files.createTempDirectory(Path.of(arguments[0]), "history").resolve("history.db");
        int parts = Integer.parseInt(arguments[1]);
        int characteristics = Integer.parseInt(arguments[2]);
        try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + store)) {
            fill(connection, parts, characteristics);
            Plans plans = new Plans();
            plans.of(DrawnRowsMadeUp.PLAN, () -> "");
            History sqlite = new SqliteHistory(on(connection), plans);
            Followed followed = new Followed(sqlite);
            SeriesSums sums = new SeriesSums(Handbook.sums());
            Sought all = Sought.ofPart(PART);
            System.out.printf("%d parts, %d characteristics, %d MB%n", parts, characteristics, Files.size(store) >> 20);
            String everything = plain("");
            String one = plain("AND c.balloon = '" + ONE + "' COLLATE NOCASE ");
            compare("series of one", () -> points(followed.of(all.with(SoughtBy.BALLOON, ONE))), connection, one);
            compare("sums of one", () -> sums(followed.of(all.with(SoughtBy.BALLOON, ONE)), sums), connection, one);
            compare("screen of one", () -> screen(sqlite, sums), connection, one);
            compare("all in per cent of tolerance", () -> percents(followed.of(all)), connection, everything);
            compare("all by deviation from target", () -> deviations(followed.of(all), sums), connection, everything);
            compare("sums of all", () -> sums(followed.of(all), sums), connection, everything);
        }
    }

    private static Query.Answering on(Connection connection) {
        return new Query.Answering() {
            @Override
            public <T> T answer(Query<T> question) {
                try {
                    return question.of(connection);
                } catch (SQLException e) {
                    throw new IllegalStateException(e);
                }
            }
        };
    }

    private static String plain(String narrowed) {
        return "SELECT r.begun, " + PointReader.COLUMNS
                + "FROM drawn_run r JOIN drawn_characteristic c ON c.run = r.begun "
                + "JOIN drawn_size s ON s.run = c.run AND s.step = c.step WHERE r.part = '" + PART + "' " + narrowed
                + "ORDER BY r.begun, c.place";
    }

    private static long points(List<Series> all) {
        return all.stream()
                .mapToLong(series -> series.points().size() + series.segments().size())
                .sum();
    }

    /** As it is laid out of everything that is looked for, with its picture and sentences. */
    private static long screen(History history, SeriesSums sums) {
        Characteristic one =
                new Characteristic(PART, Optional.of(ONE), Integer.parseInt(ONE), "Diameter " + ONE, Optional.empty());
        Series series = CourseSheets.series(history, SOUGHT, one);
        return new CourseSheets(sums, Words.of(Locale.ENGLISH), () -> Optional.of(OffsetDateTime.now()))
                .of(history, SOUGHT, series, SizeOf.AS_CUT, Set.of(), OptionalInt.empty())
                .series()
                .points()
                .size();
    }

    private static long percents(List<Series> all) {
        return all.stream()
                .flatMap(series -> series.points().stream())
                .mapToLong(point ->
                        point.place(SizeOf.FINAL).orElseThrow().percent().signum())
                .sum();
    }

    private static long deviations(List<Series> all, SeriesSums sums) {
        DeviationChart chart = DeviationChart.of(all, SizeOf.AS_CUT);
        return sums.of(chart.sinceTheLastBreak(Set.of()), true)
                        .map(ControlLimits::n)
                        .orElse(0)
                + chart.entries().size();
    }

    private static long sums(List<Series> all, SeriesSums sums) {
        long n = 0;
        for (Series series : all) {
            List<Segment> segments = series.segments();
            n += sums.of(segments.get(segments.size() - 1), SizeOf.AS_CUT, SeriesSums.USUAL_INDEX)
                    .n();
        }
        return n;
    }

    private static void compare(String name, Work view, Connection connection, String sql) throws Exception {
        List<Long> views = new ArrayList<>();
        List<Long> fetches = new ArrayList<>();
        view.done();
        fetch(connection, sql);
        for (int i = 0; i < TIMES; i++) {
            views.add(time(view));
            fetches.add(time(() -> fetch(connection, sql)));
        }
        System.out.printf(
                "%s %.1f ms, its rows by plain SQL %.1f ms, ratio %.2f%n",
                name, median(views), median(fetches), median(views) / median(fetches));
    }

    private static long fetch(Connection connection, String sql) throws SQLException {
        try (Statement statement = connection.createStatement();
                ResultSet rows = statement.executeQuery(sql)) {
            long letters = 0;
            int columns = rows.getMetaData().getColumnCount();
            while (rows.next()) {
                for (int column = 1; column <= columns; column++) {
                    letters += Optional.ofNullable(rows.getString(column))
                            .orElse("")
                            .length();
                }
            }
            return letters;
        }
    }

    /** A tool lasts forty parts; sizes grow meanwhile, and scatter. */
    private static void fill(Connection connection, int parts, int characteristics) throws SQLException {
        try (Statement statement = connection.createStatement()) {
            statement.executeUpdate(DrawnSchema.text());
        }
        connection.setAutoCommit(false);
        try (Statements statements = new Statements(connection)) {
            for (int part = 1; part <= parts; part++) {
                DrawnRowsMadeUp.part(statements, PART, part, IntStream.rangeClosed(1, characteristics));
            }
        }
        connection.commit();
        connection.setAutoCommit(true);
    }

    private static long time(Work work) throws Exception {
        long start = System.nanoTime();
        if (work.done() < 0) {
            throw new IllegalStateException("nothing was done");
        }
        return System.nanoTime() - start;
    }

    private static double median(List<Long> nanoseconds) {
        List<Long> sorted = new ArrayList<>(nanoseconds);
        Collections.sort(sorted);
        return sorted.get(sorted.size() / 2) / 1e6;
    }
}
