package org.tenthwise.app.command;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.tenthwise.model.firstarticle.Lack;
import picocli.CommandLine.Option;

/** What can be said of a first-article report on the command line; all but the identifier in a file too. */
final class ReportOptions {

    @Option(names = "--identifier", paramLabel = "F", required = true)
    private String identifier = "";

    @Option(names = "--part", paramLabel = "P")
    private Optional<String> part = Optional.empty();

    @Option(names = "--run", paramLabel = "ID")
    private List<String> runs = List.of();

    @Option(names = "--asked", paramLabel = "FILE")
    private Optional<Path> file = Optional.empty();

    @Option(names = "--edition", paramLabel = "B|C")
    private Optional<String> edition = Optional.empty();

    @Option(names = "--extent", paramLabel = "full|partial")
    private Optional<String> extent = Optional.empty();

    @Option(names = "--reason", paramLabel = "TEXT")
    private Optional<String> reason = Optional.empty();

    @Option(names = "--baseline", paramLabel = "TEXT")
    private Optional<String> baseline = Optional.empty();

    @Option(names = "--affected", paramLabel = "BALLOON", split = ",")
    private List<String> affected = List.of();

    @Option(names = "--order", paramLabel = "NO")
    private Optional<String> order = Optional.empty();

    @Option(names = "--organization", paramLabel = "NAME")
    private Optional<String> organization = Optional.empty();

    @Option(names = "--supplier-code", paramLabel = "CODE")
    private Optional<String> supplierCode = Optional.empty();

    @Option(names = "--route", paramLabel = "NO")
    private Optional<String> route = Optional.empty();

    @Option(names = "--change", paramLabel = "NO")
    private List<String> changes = List.of();

    @Option(names = "--assembly")
    private boolean assembly;

    @Option(names = "--comments", paramLabel = "TEXT")
    private Optional<String> comments = Optional.empty();

    String identifier() {
        return identifier;
    }

    Optional<String> part() {
        return part;
    }

    List<String> runs() {
        return runs;
    }

    Optional<Path> file() {
        return file;
    }

    boolean assembly() {
        return assembly;
    }

    /** What was said under a key as files have it; absent where nothing was. */
    Optional<String> said(String key) {
        return switch (key) {
            case "edition" -> edition;
            case "extent" -> extent;
            case "reason" -> reason;
            case "baseline" -> baseline;
            case "order" -> order;
            case "organization" -> organization;
            case "supplier_code" -> supplierCode;
            case "route" -> route;
            case "comments" -> comments;
            default -> Optional.empty();
        };
    }

    /** The option that says what a report lacks; absent where none does. */
    static Optional<String> saying(Lack.Why why) {
        return switch (why) {
            case NO_ORGANIZATION -> Optional.of("--organization");
            case NO_REASON -> Optional.of("--reason");
            case NO_ROUTE -> Optional.of("--route");
            case AFFECTED_LEFT_OUT -> Optional.of("--affected");
            default -> Optional.empty();
        };
    }

    /** The same where several can be said; empty where nothing was. */
    List<String> several(String key) {
        return switch (key) {
            case "affected" -> affected;
            case "changes" -> changes;
            default -> List.of();
        };
    }
}
