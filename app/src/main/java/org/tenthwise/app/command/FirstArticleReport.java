package org.tenthwise.app.command;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.tenthwise.app.export.CouldNotExport;
import org.tenthwise.app.export.Exporter;
import org.tenthwise.app.firstarticle.ArticleReport;
import org.tenthwise.app.firstarticle.KeptReport;
import org.tenthwise.app.firstarticle.ReportBook;
import org.tenthwise.app.firstarticle.ReportFiles;
import org.tenthwise.app.firstarticle.ReportWords;
import org.tenthwise.app.store.CouldNotOpen;
import org.tenthwise.app.store.CouldNotSave;
import org.tenthwise.app.store.KeptEntries;
import org.tenthwise.app.store.Ledger;
import org.tenthwise.model.firstarticle.Lack;
import org.tenthwise.model.run.ReportRole;
import org.tenthwise.model.words.Message;
import org.tenthwise.model.words.Refused;
import org.tenthwise.model.words.Word;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/**
 * Draws a first-article report up, signs it, or writes the forms of one again. Where nothing but its identifier is
 * given it reads the store alone.
 */
@Command(
        name = "first-article",
        customSynopsis = {
            "tenthwise first-article --store DB --identifier F --out DIR [--as pdf,xlsx,...]",
            "  [--part P --by NAME [--run ID...] [--asked FILE] [--edition B|C]",
            "  [--extent full|partial] [--reason TEXT] [--baseline TEXT]",
            "  [--affected BALLOON,...] [--order NO] [--organization NAME]",
            "  [--supplier-code CODE] [--route NO] [--change NO...] [--assembly]",
            "  [--comments TEXT]] [--sign ROLE --by NAME]"
        },
        sortOptions = false)
final class FirstArticleReport implements Callable<Integer> {

    private final Tools with;
    private final ReportBook book;

    @Option(names = "--store", paramLabel = "DB", required = true)
    private Path store = Path.of("");

    @Option(names = "--out", paramLabel = "DIR", required = true)
    private Path out = Path.of("");

    @Option(names = "--as", paramLabel = "FORMAT", split = ",")
    private List<String> as = List.of();

    @Option(names = "--by", paramLabel = "NAME")
    private Optional<String> by = Optional.empty();

    @Option(names = "--sign", paramLabel = "ROLE")
    private Optional<String> sign = Optional.empty();

    @Mixin
    private final ReportOptions asked = new ReportOptions();

    @Spec
    private CommandSpec spec;

    FirstArticleReport(Tools with) {
        this.with = with;
        this.book = new ReportBook(with.version());
    }

    @Override
    public Integer call() throws CouldNotRun, CouldNotOpen, CouldNotSave, CouldNotExport {
        ReportFiles files = new ReportFiles(with.reports());
        files.unknown(as).ifPresent(name -> {
            throw new Refused("command.no-format", name, files.names());
        });
        Optional<ReportRole> role = role();
        if (asked.part().isEmpty() && role.isEmpty()) {
            try (KeptEntries kept = with.stores().openToRead(store)) {
                Intact.forRecords(kept, store);
                return write(files, book.again(kept, named(kept)));
            } catch (Refused e) {
                throw new CouldNotRun(e.why(), e);
            }
        }
        String who = by.orElseThrow(() -> new CouldNotRun(Message.of("command.first-article.who")));
        try (Ledger ledger = with.stores().open(store)) {
            Optional<ArticleReport> drawn = Optional.empty();
            if (asked.part().isPresent()) {
                AskedReport of = new AskedReport(asked, ledger);
                drawn = Optional.of(book.drawUp(ledger, of.asked(), of.runs(), who, with.clock()));
            }
            ArticleReport stands = role.isPresent()
                    ? book.sign(ledger, named(ledger), role.get(), who, with.clock())
                    : drawn.orElseThrow();
            return write(files, stands);
        } catch (Refused e) {
            throw new CouldNotRun(e.why(), e);
        }
    }

    private Optional<ReportRole> role() throws CouldNotRun {
        Optional<ReportRole> role = sign.flatMap(word -> Word.find(ReportRole.class, word));
        if (sign.isPresent() && role.isEmpty()) {
            throw new CouldNotRun(Message.of("command.first-article.role", sign.get()));
        }
        return role;
    }

    private KeptReport named(KeptEntries kept) throws CouldNotRun {
        String identifier = asked.identifier();
        List<String> known = KeptReport.in(kept).stream()
                .map(report -> report.asked().identifier())
                .toList();
        return KeptReport.named(identifier, kept)
                .orElseThrow(() -> new CouldNotRun(
                        known.isEmpty()
                                ? Message.of("command.first-article.none", identifier, store)
                                : Message.of("command.first-article.unknown", identifier, store, known)));
    }

    private int write(ReportFiles files, ArticleReport report) throws CouldNotRun, CouldNotExport {
        Folders.make(out);
        List<Path> written = new Exporter().export(files.name(report), files.of(report, as), out);
        ReportWords said = new ReportWords(with.words());
        say(with.words()
                .say(
                        "command.first-article.state",
                        report.article().asked().identifier(),
                        said.state(report.article())));
        report.article().open().forEach(lack -> say(withOption(said.open(lack), lack.why())));
        said.notes(report.article()).forEach(this::say);
        if (!report.movedOn().isEmpty()) {
            say(with.words().say("report.moved-on", report.movedOn()));
        }
        say(said.noRelease());
        written.forEach(file -> say(file.toString()));
        return report.article().isComplete() && report.movedOn().isEmpty() ? Exit.WELL : Exit.NOT_WELL;
    }

    /** A sentence about what nobody said, with the option that says it. */
    private String withOption(String sentence, Lack.Why why) {
        return ReportOptions.saying(why)
                .map(option -> with.words().say("command.first-article.say", sentence, option))
                .orElse(sentence);
    }

    private void say(String line) {
        spec.commandLine().getOut().println(line);
    }
}
