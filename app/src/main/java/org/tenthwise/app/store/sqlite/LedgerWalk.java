package org.tenthwise.app.store.sqlite;

import java.sql.Connection;
import java.sql.SQLException;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import org.tenthwise.app.store.ChainCheck;
import org.tenthwise.app.store.StoredEntry;

/**
 * Walks the entries of a ledger in order, a page at a time. The next pages are read while one is looked at, so that two
 * processors share the work; whoever writes meanwhile waits for one page at most.
 */
final class LedgerWalk {

    private static final int PAGE = 1_000;

    /** How many pages are read ahead of the one that is looked at. */
    private static final int AHEAD = 4;

    private final Connection connection;

    LedgerWalk(Connection connection) {
        this.connection = connection;
    }

    /** An entry, and its text as stored, which need not be text any more. */
    record StoredRow(StoredEntry entry, byte[] body) {

        ChainCheck.Looked looked() {
            return ChainCheck.look(entry, body);
        }
    }

    /** @param failure why no more rows could be read than these */
    private record Page(long from, List<StoredRow> rows, Optional<SQLException> failure) {

        long next() {
            return rows.stream().mapToLong(row -> row.entry().seq()).max().orElse(from) + 1;
        }

        boolean isTheLast() {
            return failure.isPresent() || rows.size() < PAGE || next() <= from;
        }
    }

    /** Something done with each entry. */
    interface Each {
        void take(ChainCheck.Looked entry) throws SQLException;
    }

    /**
     * @param from place in the ledger to begin at; {@link Long#MIN_VALUE} for all there is, also where nothing should
     *     be
     * @return why the file could not be read to its end; absent if it could
     * @throws SQLException if what is done with an entry does
     */
    Optional<SQLException> from(long from, Each each) throws SQLException {
        Deque<CompletableFuture<Seen>> ahead = new ArrayDeque<>();
        CompletableFuture<Page> read = CompletableFuture.supplyAsync(() -> page(from));
        while (true) {
            while (ahead.size() < AHEAD) {
                ahead.add(read.thenApplyAsync(Seen::of));
                read = read.thenApplyAsync(page -> page.isTheLast() ? page : page(page.next()));
            }
            Seen seen = ahead.remove().join();
            for (ChainCheck.Looked entry : seen.entries()) {
                each.take(entry);
            }
            if (seen.page().isTheLast()) {
                return seen.page().failure();
            }
        }
    }

    /** A page whose entries were looked at one by one. */
    private record Seen(Page page, List<ChainCheck.Looked> entries) {

        static Seen of(Page page) {
            return new Seen(page, page.rows().stream().map(StoredRow::looked).toList());
        }
    }

    private Page page(long from) {
        List<StoredRow> rows = new ArrayList<>(PAGE);
        try {
            new LedgerTable(connection).page(from, PAGE, rows::add);
            return new Page(from, rows, Optional.empty());
        } catch (SQLException e) {
            return new Page(from, rows, Optional.of(e));
        }
    }
}
