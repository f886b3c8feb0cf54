package org.tenthwise.app.command;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.tenthwise.app.backup.BackupWish;
import org.tenthwise.model.words.Message;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** No command at all: opens the client. */
@Command(
        name = CommandLines.PROGRAM,
        customSynopsis = {"tenthwise [--store DB] [--plans DIR] [--backup-to DIR] [--backups N]", "tenthwise COMMAND"},
        footerHeading = "%n")
final class OpenClient implements Callable<Integer> {

    private final Client client;

    @Option(names = "--store", paramLabel = "DB")
    private Optional<Path> store = Optional.empty();

    @Option(names = "--plans", paramLabel = "DIR")
    private Optional<Path> plans = Optional.empty();

    @Option(names = "--backup-to", paramLabel = "DIR")
    private Optional<Path> backupTo = Optional.empty();

    @Option(names = "--backups", paramLabel = "N")
    private Optional<Integer> backups = Optional.empty();

    OpenClient(Client client) {
        this.client = client;
    }

    @Override
    public Integer call() throws Exception {
        if (!client.hasDisplay()) {
            throw NoWindow.noDisplay();
        }
        if (plans.isPresent() && !Files.isDirectory(plans.get())) {
            throw new CouldNotRun(Message.of("command.open.no-folder", plans.get()));
        }
        if (backupTo.isPresent() && !Files.isDirectory(backupTo.get())) {
            throw new CouldNotRun(Message.of("command.open.no-backup-folder", backupTo.get()));
        }
        if (backups.filter(kept -> kept < 1).isPresent()) {
            throw new CouldNotRun(Message.of("command.open.no-backups"));
        }
        client.open(store, plans, new BackupWish(backupTo, backups));
        return Exit.WELL;
    }
}
