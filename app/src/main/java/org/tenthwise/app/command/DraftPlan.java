package org.tenthwise.app.command;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.tenthwise.app.drafting.ListFile;
import org.tenthwise.checklists.drafting.Drafted;
import org.tenthwise.checklists.drafting.Drafter;
import org.tenthwise.checklists.editing.PlanInHand;
import org.tenthwise.checklists.editing.PlanText;
import org.tenthwise.checklists.editing.TableText;
import org.tenthwise.checklists.editing.TomlValue;
import org.tenthwise.model.callout.CalloutReader;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.tolerance.GeneralTolerance;
import org.tenthwise.model.words.Message;
import org.tenthwise.model.words.Refused;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Makes the draft of a plan of a list of characteristics. */
@Command(
        name = "draft",
        customSynopsis = "tenthwise draft LIST --out PLAN --unit mm|in [--general TEXT] [--part P] [--revision R]",
        footerHeading = "%n")
final class DraftPlan implements Callable<Integer> {

    private final Tools with;

    @Parameters(paramLabel = "LIST", descriptionKey = "list")
    private Path list = Path.of("");

    @Option(names = "--out", paramLabel = "PLAN", required = true)
    private Path out = Path.of("");

    @Option(names = "--unit", paramLabel = "mm|in", required = true)
    private String unit = "";

    @Option(names = "--general", paramLabel = "TEXT")
    private Optional<String> general = Optional.empty();

    @Option(names = "--part", paramLabel = "P")
    private Optional<String> part = Optional.empty();

    @Option(names = "--revision", paramLabel = "R")
    private Optional<String> revision = Optional.empty();

    @Spec
    private CommandSpec spec;

    DraftPlan(Tools with) {
        this.with = with;
    }

    @Override
    public Integer call() throws CouldNotRun {
        Unit ofDrawing = Unit.ofSymbol(unit)
                .filter(known -> !known.isOfAngle())
                .orElseThrow(() -> new CouldNotRun(Message.of("command.callout.unit", unit)));
        try {
            CalloutReader reader =
                    new CalloutReader(ofDrawing, general.map(text -> GeneralTolerance.ofText(text, ofDrawing)));
            Drafted drafted = new Drafter(reader, with.words()).of(head(), ListFile.read(list));
            Files.writeString(out, drafted.plan().text(), StandardOpenOption.CREATE_NEW);
            tell(drafted);
            return drafted.refused().isEmpty() ? Exit.WELL : Exit.NOT_WELL;
        } catch (FileAlreadyExistsException e) {
            throw new CouldNotRun(Message.of("command.draft.there", out), e);
        } catch (IOException e) {
            throw new CouldNotRun(Message.of("command.draft.not-written", out), e);
        } catch (Refused e) {
            throw new CouldNotRun(e.why(), e);
        }
    }

    /** What a list does not say of the part stays open. */
    private PlanText head() {
        PlanText empty = PlanText.of("format = 1\n").orElseThrow();
        return empty.withHead(head -> {
            TableText said = with(head, "part", part);
            said = with(said, "revision", revision).with("issue", TomlValue.text("1"));
            return with(said.with("unit", TomlValue.text(unit)), "tolerance", general);
        });
    }

    private static TableText with(TableText head, String key, Optional<String> value) {
        return value.map(text -> head.with(key, TomlValue.text(text))).orElse(head);
    }

    private void tell(Drafted drafted) {
        PrintWriter to = spec.commandLine().getOut();
        for (Drafted.CameOf line : drafted.lines()) {
            to.println(with.words()
                    .say(line.refused()
                            .map(why -> Message.of(
                                    "command.draft.refused", line.place(), line.number(), line.requirement(), why))
                            .orElseGet(() -> Message.of(
                                    "command.draft.taken",
                                    line.place(),
                                    line.number(),
                                    line.requirement(),
                                    line.tables()))));
        }
        to.println(with.words()
                .say(Message.of(
                        "command.draft.done",
                        drafted.lines().size(),
                        drafted.refused().size(),
                        new PlanInHand(drafted.plan()).open().size(),
                        out)));
        to.flush();
    }
}
