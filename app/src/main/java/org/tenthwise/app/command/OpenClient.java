package org.tenthwise.app.command;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** No command at all: opens the client. */
@Command(
        name = CommandLines.PROGRAM,
        customSynopsis = {"tenthwise [--store DB] [--plans DIR]", "tenthwise COMMAND"},
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

    OpenClient(Client client) {
        this.client = client;
    }

    @Override
    public Integer call() throws Exception {
        if (!client.hasDisplay()) {
            throw new NoDisplay();
        }
        if (plans.isPresent() && !Files.isDirectory(plans.get())) {
            throw new CouldNotRun("%s is no folder. Give a folder with plan files in it.".formatted(plans.get()));
        }
        client.open(store, plans);
        return Exit.WELL;
    }
}
