package org.tenthwise.app.command;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import org.tenthwise.app.export.CouldNotExport;
import org.tenthwise.app.history.RunFacts;
import org.tenthwise.app.session.GaugeRack;
import org.tenthwise.app.session.MachineRack;
import org.tenthwise.app.session.RunHeader;
import org.tenthwise.app.session.RunSession;
import org.tenthwise.app.session.Runs;
import org.tenthwise.app.store.CouldNotOpen;
import org.tenthwise.app.store.CouldNotSave;
import org.tenthwise.app.store.Ledger;
import org.tenthwise.app.text.Sentences;
import org.tenthwise.checklists.rules.PlanReading;
import org.tenthwise.checklists.rules.ReadingsFile;
import org.tenthwise.checklists.rules.SampleReader;
import org.tenthwise.checklists.rules.SampleReading;
import org.tenthwise.model.gauge.Gauge;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.record.Sheet;
import org.tenthwise.model.run.Event;
import org.tenthwise.model.run.ShopEvent;
import org.tenthwise.model.words.Message;
import org.tenthwise.model.words.Refused;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Walks a part through its checks with the readings of a file. */
@Command(
        name = "walk",
        customSynopsis = "tenthwise walk PLAN --readings FILE --store DB --out DIR",
        footerHeading = "%n")
final class WalkPlan implements Callable<Integer> {

    private final Tools with;
    private final Records records;

    @Parameters(paramLabel = "PLAN", descriptionKey = "plan")
    private String plan = "";

    @Option(names = "--readings", paramLabel = "FILE", required = true)
    private String readings = "";

    @Option(names = "--store", paramLabel = "DB", required = true)
    private Path store = Path.of("");

    @Option(names = "--out", paramLabel = "DIR", required = true)
    private Path out = Path.of("");

    @Spec
    private CommandSpec spec;

    WalkPlan(Tools with) {
        this.with = with;
        this.records = new Records(with);
    }

    @Override
    public Integer call() throws CouldNotRun, CouldNotOpen, CouldNotSave, CouldNotExport {
        Plan sound = sound(Named.plan(plan));
        ReadingsFile sample = sample(Named.readings(readings), sound);
        Folders.make(out);
        try (Ledger ledger = with.stores().open(store)) {
            with.stores().unsealed(store).ifPresent(why -> spec.commandLine()
                    .getErr()
                    .println(with.words().say(why)));
            agree(ledger, sample);
            Runs shop = new Runs(ledger, with.clock());
            List<String> before = shop
                    .history()
                    .runsOf(sound.part(), sample.begun().serial())
                    .stream()
                    .map(RunFacts::id)
                    .toList();
            Optional<RunFacts> otherwise = shop.history().withOtherText(sound);
            if (otherwise.isPresent()) {
                throw new CouldNotRun(Message.of(
                        "command.walk.other-text",
                        otherwise.get().id(),
                        sound.part().number(),
                        sound.part().revision(),
                        sound.issue()));
            }
            RunHeader header = new RunHeader(
                    sound,
                    sample.begun().serial(),
                    sample.begun().lot(),
                    sample.begun().machine(),
                    sample.by(),
                    sample.begun().noLot());
            RunSession session = shop.begin(begunFor(shop, header, sample));
            Replay replay = new Replay(session, with.words());
            replay.play(sample);
            Sheet sheet = session.state().sheet();
            say(sheet, records.write(ledger, session.id(), records.all(), out));
            if (!before.isEmpty()) {
                spec.commandLine()
                        .getOut()
                        .println(with.words()
                                .say("command.walk.earlier-runs", sample.begun().serial(), before));
            }
            replay.notTaken().forEach(spec.commandLine().getOut()::println);
            List<ReadingsFile.Unlike> unlike = sample.unlike(sheet);
            unlike.forEach(this::say);
            return sheet.conformsUncontested() && replay.notTaken().isEmpty() && unlike.isEmpty()
                    ? Exit.WELL
                    : Exit.NOT_WELL;
        }
    }

    private static RunHeader begunFor(Runs shop, RunHeader header, ReadingsFile sample) throws CouldNotRun {
        try {
            return shop.beginnings().begunFor(header, sample.occasion());
        } catch (Refused e) {
            throw new CouldNotRun(e.why());
        }
    }

    private Plan sound(Named named) throws CouldNotRun {
        PlanReading reading = with.plans().read(named.text());
        if (reading instanceof PlanReading.Good good) {
            return good.plan();
        }
        throw new CouldNotRun(CheckPlans.lines(named, ((PlanReading.Bad) reading).problems()));
    }

    private static ReadingsFile sample(Named named, Plan plan) throws CouldNotRun {
        SampleReading reading = new SampleReader().read(named.text(), plan);
        if (reading instanceof SampleReading.Good good) {
            return good.sample();
        }
        throw new CouldNotRun(CheckPlans.lines(named, ((SampleReading.Bad) reading).problems()));
    }

    /**
     * Refuses a gauge that the store knows with the other sense: one of the two would turn every size round its master.
     * Refuses a machine whose register the store has the other way: one of the two would cut twice what was meant, or
     * half.
     */
    private static void agree(Ledger ledger, ReadingsFile sample) throws CouldNotRun {
        GaugeRack rack = new GaugeRack(ledger);
        MachineRack machines = new MachineRack(ledger);
        Optional<ShopEvent.MachineKnown> machine = said(sample, ShopEvent.MachineKnown.class)
                .filter(told -> machines.find(told.machine())
                        .filter(kept -> kept.register() != told.register())
                        .isPresent())
                .findFirst();
        if (machine.isPresent()) {
            throw new CouldNotRun(
                    Message.of("command.walk.register-disagrees", machine.get().machine()));
        }
        Optional<Gauge> gauge = said(sample, ShopEvent.GaugeKnown.class)
                .map(ShopEvent.GaugeKnown::gauge)
                .filter(told -> rack.find(told.id(), told.kind())
                        .filter(kept -> !kept.sense().equals(told.sense()))
                        .isPresent())
                .findFirst();
        if (gauge.isPresent()) {
            throw new CouldNotRun(
                    Message.of("command.walk.sense-disagrees", gauge.get().id()));
        }
    }

    private static <E extends Event> Stream<E> said(ReadingsFile sample, Class<E> kind) {
        return sample.events().stream().flatMap(event -> event.as(kind).stream());
    }

    private void say(ReadingsFile.Unlike unlike) {
        spec.commandLine()
                .getOut()
                .println(with.words()
                        .say(
                                "command.walk.unlike",
                                unlike.step()
                                        .map(step -> Message.of("command.walk.unlike.check", step))
                                        .orElse(Message.of("command.walk.unlike.outcome")),
                                unlike.expected(),
                                unlike.found()));
    }

    private void say(Sheet sheet, List<Path> files) {
        PrintWriter to = spec.commandLine().getOut();
        new Verdicts(with.words()).of(sheet).forEach(to::println);
        to.println(new Sentences(with.words()).outcome(sheet));
        to.println(with.words().say("command.walk.done", sheet.run().id(), files));
    }
}
