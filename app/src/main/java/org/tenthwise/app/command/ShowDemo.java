package org.tenthwise.app.command;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.tenthwise.app.session.RunHeader;
import org.tenthwise.app.session.RunSession;
import org.tenthwise.app.session.Runs;
import org.tenthwise.app.store.CouldNotOpen;
import org.tenthwise.app.store.CouldNotSave;
import org.tenthwise.app.store.Ledger;
import org.tenthwise.checklists.catalogue.DemoPart;
import org.tenthwise.checklists.catalogue.ExamplePart;
import org.tenthwise.checklists.rules.ReadingsFile;
import org.tenthwise.checklists.rules.SampleReader;
import org.tenthwise.checklists.rules.SampleReading;
import org.tenthwise.model.plan.Plan;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Shows the client with the demo parts, by itself where there is no display. */
@Command(name = "demo", customSynopsis = "tenthwise demo [--out DIR]")
final class ShowDemo implements Callable<Integer> {

    /** Where what a walk leaves goes, if no other folder is named. */
    static final String FOLDER = "tenthwise-demo";

    /** In that folder: the drawings made into plans. */
    private static final String EXAMPLES = "examples";

    private final Tools with;

    @Option(names = "--out", paramLabel = "DIR", defaultValue = ShowDemo.FOLDER)
    private Path out = Path.of("");

    @Spec
    private CommandSpec spec;

    ShowDemo(Tools with) {
        this.with = with;
    }

    @Override
    public Integer call() throws Exception {
        if (with.client().hasDisplay()) {
            show();
            return Exit.WELL;
        }
        Folders.make(out);
        PrintWriter to = spec.commandLine().getOut();
        Consumer<String> at = line -> {
            to.println(line);
            to.flush();
        };
        at.accept(with.words().say("command.demo.no-display"));
        with.client().walkDemo(out, at).forEach(at);
        leaveExamples();
        return Exit.WELL;
    }

    private void show() throws Exception {
        Path folder = Files.createTempDirectory("tenthwise-demo-");
        try {
            Path store = folder.resolve("demo.db");
            begin(store);
            with.client().openDemo(store, out);
        } finally {
            throwAway(folder);
        }
    }

    /** A run that is half done, so that there is something to see. */
    private void begin(Path store) throws CouldNotOpen, CouldNotSave, CouldNotRun {
        Plan plan = DemoPart.SCREW_CARRIER.plan();
        if (!(new SampleReader().read(DemoPart.SCREW_CARRIER.passingReadings(), plan)
                instanceof SampleReading.Good good)) {
            throw new IllegalStateException("The demo readings do not fit their plan");
        }
        ReadingsFile sample = good.sample();
        try (Ledger ledger = with.stores().open(store)) {
            RunSession session = new Runs(ledger, with.clock())
                    .begin(new RunHeader(
                            plan,
                            sample.begun().serial(),
                            sample.begun().lot(),
                            sample.begun().machine(),
                            sample.by(),
                            sample.begun().noLot()));
            new Replay(session, with.words())
                    .play(sample.begunWith(sample.events().size() / 2));
        }
    }

    /** The whole drawings that come along, with their lists, readings and issues before, to look at and try. */
    private void leaveExamples() throws IOException {
        Path examples = Files.createDirectories(out.resolve(EXAMPLES));
        for (ExamplePart part : ExamplePart.values()) {
            for (Map.Entry<String, String> file : part.files().entrySet()) {
                Path left = examples.resolve(file.getKey());
                Files.createDirectories(left.getParent());
                Files.writeString(left, file.getValue());
            }
        }
    }

    private static void throwAway(Path folder) throws IOException {
        try (Stream<Path> all = Files.walk(folder)) {
            List<Path> deepestFirst = all.sorted(Comparator.reverseOrder()).toList();
            for (Path path : deepestFirst) {
                Files.deleteIfExists(path);
            }
        }
    }
}
