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
        description = "Walks a part through its set-up and first-part checks and keeps the record. Without a command, "
                + "opens the "
                + "client.",
        footer = {
            "",
            "A PLAN is a plan file, or the name of a demo plan that comes along: LG-2207, WB-118.",
            "Exit codes: 0 all is well; 1 something did not pass; 2 it could not be done."
        })
final class OpenClient implements Callable<Integer> {

    private final Client client;

    @Option(
            names = "--store",
            paramLabel = "DB",
            description = "Store to open; made where there is none. Otherwise the one in the device's private storage.")
    private Optional<Path> store = Optional.empty();

    @Option(
            names = "--plans",
            paramLabel = "DIR",
            description = "Folder with plan files. Otherwise the folder \"plans\" in the device's private storage.")
    private Optional<Path> plans = Optional.empty();

    @Option(
            names = "--backup-to",
            paramLabel = "DIR",
            description = "Folder for a second copy of each backup, a stick or a share; kept for later openings.")
    private Optional<Path> backupTo = Optional.empty();

    @Option(
            names = "--backups",
            paramLabel = "N",
            description = "How many backups stay in each place, 10 at first; kept for later openings.")
    private Optional<Integer> backups = Optional.empty();

    OpenClient(Client client) {
        this.client = client;
    }

    @Override
    public Integer call() throws Exception {
        if (!client.hasDisplay()) {
            throw new NoDisplay();
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
