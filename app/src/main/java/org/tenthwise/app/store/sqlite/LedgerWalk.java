package org.tenthwise.app.store.sqlite;

import java.sql.Connection;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ForkJoinPool;
import org.tenthwise.app.store.StoredEntry;

/**
 * Walks the entries of a ledger in order, a page at a time. The next page is read while the one before is looked at, so
 * that two processors share the work; whoever writes meanwhile waits for one page at most.
 */
final class LedgerWalk {

    private static final int PAGE = 1_000;

    private final Connection connection;

    LedgerWalk(Connection connection) {
        this.connection = connection;
    }

    /** An entry, and its text as stored, which need not be text any more. */
    record Row(StoredEntry entry, byte[] body) {}

    /** @param failure why no more rows could be read than these */
    private record Page(long behind, List<Row> rows, Optional<SQLException> failure) {

        long last() {
            return rows.stream().mapToLong(row -> row.entry().seq()).max().orElse(behind);
        }

        boolean isTheLast() {
            return rows.size() < PAGE || last() <= behind;
        }
    }

    /** Something done with each entry. */
    interface Each {
        void take(Row row) throws SQLException;
    }

    /**
     * @param behind seq of an entry; what stands behind it is walked
     * @return why the file could not be read to its end; absent if it could
     * @throws SQLException if what is done with an entry does
     */
    Optional<SQLException> behind(long behind, Each each) throws SQLException {
        CompletableFuture<Page> next = read(behind);
        while (true) {
            Page page = next.join();
            boolean last = page.failure().isPresent() || page.isTheLast();
            if (!last) {
                next = read(page.last());
            }
            for (Row row : page.rows()) {
                each.take(row);
            }
            if (last) {
                return page.failure();
            }
        }
    }

    private CompletableFuture<Page> read(long behind) {
        return CompletableFuture.supplyAsync(() -> page(behind), ForkJoinPool.commonPool());
    }

    private Page page(long behind) {
        List<Row> rows = new ArrayList<>(PAGE);
        try {
            new LedgerTable(connection).page(behind, PAGE, rows::add);
            return new Page(behind, rows, Optional.empty());
        } catch (SQLException e) {
            return new Page(behind, rows, Optional.of(e));
        }
    }
}
