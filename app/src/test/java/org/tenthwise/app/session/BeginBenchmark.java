package org.tenthwise.app.session;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.tenthwise.app.InventedPlans;
import org.tenthwise.app.store.Ledger;
import org.tenthwise.app.store.sqlite.SqliteStores;
import org.tenthwise.model.plan.Answer;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.run.Purpose;
import org.tenthwise.model.run.SignedAs;

/**
 * What it takes to look up, before a run begins, what the store knows of the part number and what the run can stand on:
 * in a store of many closed runs none of which was accepted, beside one of a single such run. They take turns; medians
 * are given.
 *
 * <p>After {@code mvn -q package -DskipTests}, from the top of the repository:
 *
 * <pre>
 * java -cp app/target/tenthwise.jar:app/target/test-classes org.tenthwise.app.session.BeginBenchmark FOLDER 1000
 * </pre>
 */
final class BeginBenchmark {

    private static final int TIMES = 9;
    private static final int CHECKS = 12;
    private static final Plan PLAN = InventedPlans.inMillimetres(IntStream.rangeClosed(1, CHECKS)
            .mapToObj(
                    """
                    [[step]]
                    number = %1$d
                    operation = 10
                    kind = "look"
                    name = "Look %1$d"
                    what = "Right."
                    """
                            ::formatted)
            .collect(Collectors.joining()));

    private BeginBenchmark() {}

    /** Something that is looked up. */
    private interface LookUp {
        Object of(Runs shop);
    }

    public static void main(String[] arguments) throws Exception {
        Path folder = Files.createTempDirectory(Path.of(arguments[0]), "begin");
        int runs = Integer.parseInt(arguments[1]);
        try (Ledger many = new SqliteStores().open(folder.resolve("many.db"));
                Ledger one = new SqliteStores().open(folder.resolve("one.db"))) {
            Runs large = filled(many, runs);
            Runs small = filled(one, 1);
            compare("known of the part number", large, small, shop -> shop.beginnings()
                    .earlier(PLAN));
            for (Purpose purpose : List.of(Purpose.FIRST_ARTICLE_PARTIAL, Purpose.MEASURED_AGAIN)) {
                compare("to stand on, " + purpose, large, small, shop -> shop.beginnings()
                        .offered(PLAN, purpose));
            }
        }
    }

    private static Runs filled(Ledger ledger, int runs) throws Exception {
        Runs shop = new Runs(ledger, Clock.systemUTC());
        for (int serial = 1; serial <= runs; serial++) {
            RunSession session = shop.begin(new RunHeader(PLAN, String.valueOf(serial), "L-1", "Lathe 4", "Setter 1"));
            for (int check = 1; check <= CHECKS; check++) {
                session.goTo(check);
                session.answer(Answer.YES);
            }
            session.close("Setter 1", SignedAs.MACHINED_AND_MEASURED);
        }
        return shop;
    }

    private static void compare(String name, Runs large, Runs small, LookUp lookUp) {
        List<Long> many = new ArrayList<>();
        List<Long> one = new ArrayList<>();
        lookUp.of(large);
        lookUp.of(small);
        for (int i = 0; i < TIMES; i++) {
            many.add(time(large, lookUp));
            one.add(time(small, lookUp));
        }
        System.out.printf(
                "%s: %.1f ms, with one run %.1f ms, ratio %.1f%n",
                name, median(many), median(one), median(many) / median(one));
    }

    private static long time(Runs shop, LookUp lookUp) {
        long start = System.nanoTime();
        if (lookUp.of(shop) == null) {
            throw new IllegalStateException("nothing was looked up");
        }
        return System.nanoTime() - start;
    }

    private static double median(List<Long> nanoseconds) {
        List<Long> sorted = new ArrayList<>(nanoseconds);
        Collections.sort(sorted);
        return sorted.get(sorted.size() / 2) / 1e6;
    }
}
