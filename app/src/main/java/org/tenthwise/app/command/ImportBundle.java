package org.tenthwise.app.command;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import org.tenthwise.app.bundle.BundleCheck;
import org.tenthwise.app.receiving.Receiving;
import org.tenthwise.app.receiving.TrustedStations;
import org.tenthwise.app.store.Arrivals;
import org.tenthwise.app.store.CouldNotOpen;
import org.tenthwise.app.store.CouldNotSave;
import org.tenthwise.app.store.Ledger;
import org.tenthwise.app.store.NotImported;
import org.tenthwise.app.text.ArrivalWords;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Takes runs of another station in, out of a bundle. */
@Command(name = "import", customSynopsis = "tenthwise import BUNDLE --store DB [--trust KEY] [--by NAME]")
final class ImportBundle implements Callable<Integer> {

    private final Tools with;

    @Parameters(paramLabel = "BUNDLE", descriptionKey = "bundle")
    private Path bundle = Path.of("");

    @Option(names = "--store", paramLabel = "DB", required = true)
    private Path store = Path.of("");

    @Option(names = "--trust", paramLabel = "KEY")
    private List<String> trust = List.of();

    @Option(names = "--by", paramLabel = "NAME")
    private String by = System.getProperty("user.name");

    @Spec
    private CommandSpec spec;

    ImportBundle(Tools with) {
        this.with = with;
    }

    @Override
    public Integer call() throws CouldNotOpen, CouldNotSave {
        PrintWriter to = spec.commandLine().getOut();
        ArrivalWords said = new ArrivalWords(with.words());
        try (Ledger ledger = with.stores().open(store)) {
            Receiving receiving = new Receiving(
                    ledger, new BundleCheck(with.making()), TrustedStations.of(store, trust), with.clock());
            Receiving.Delivery delivery = receiving.look(bundle);
            Arrivals arrivals = receiving.take(delivery, by.strip());
            to.println(said.signer(delivery.signer(), delivery.incoming().signerKnown()));
            said.runs(arrivals).forEach(to::println);
            to.println(said.inShort(arrivals));
            return Exit.WELL;
        } catch (NotImported e) {
            to.println(with.words().say("arrival.refused", bundle.getFileName(), e.why()));
            return Exit.NOT_WELL;
        }
    }
}
