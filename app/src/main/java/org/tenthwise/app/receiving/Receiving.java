package org.tenthwise.app.receiving;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.tenthwise.app.bundle.BundleCheck;
import org.tenthwise.app.bundle.BundleFile;
import org.tenthwise.app.bundle.Manifest;
import org.tenthwise.app.bundle.NotABundle;
import org.tenthwise.app.key.PublicKeyOfStation;
import org.tenthwise.app.key.Sha256;
import org.tenthwise.app.key.Trusted;
import org.tenthwise.app.store.Arrivals;
import org.tenthwise.app.store.CouldNotSave;
import org.tenthwise.app.store.ImportCheck;
import org.tenthwise.app.store.Incoming;
import org.tenthwise.app.store.Ledger;
import org.tenthwise.app.store.NotImported;
import org.tenthwise.model.words.Message;

/**
 * Takes bundles of other stations in. Every byte of one is looked at first: its layout, its signature, its files, the
 * entries of each run with their seals, and what they come to; then it is set beside what is here. Used from the thread
 * of the ledger.
 */
public final class Receiving {

    private final Ledger ledger;
    private final BundleCheck check;
    private final TrustedStations trusted;
    private final Clock clock;

    /** @param clock its zone gives the offset that times are kept with */
    public Receiving(Ledger ledger, BundleCheck check, TrustedStations trusted, Clock clock) {
        this.ledger = ledger;
        this.check = check;
        this.trusted = trusted;
        this.clock = clock;
    }

    /**
     * A bundle that was looked at and can come in.
     *
     * @param signer short fingerprint of the key that signs it
     * @param arrivals what it means to this store
     * @param tool that made it, with its version
     */
    public record Delivery(Path file, String signer, String tool, Incoming incoming, Arrivals arrivals) {}

    /**
     * Looks a bundle through; nothing of it counts yet.
     *
     * @throws NotImported with the first thing that is against it
     */
    public Delivery look(Path file) throws NotImported {
        Trusted known = trusted.read();
        if (!Files.isRegularFile(file)) {
            throw new NotImported(Message.of("import.no-file", file));
        }
        try (BundleFile bundle = BundleFile.open(file)) {
            String fingerprint = bundle.signer().fingerprint();
            String signer = bundle.signer().shortFingerprint();
            if (!known.isNobody() && !known.holds(fingerprint)) {
                throw new NotImported(Message.of("import.unknown-signer", signer, fingerprint));
            }
            BundleCheck.Found found = check.check(bundle);
            if (found.fault().isPresent()) {
                throw new NotImported(found.fault().get());
            }
            Optional<String> unknown = known.isNobody()
                    ? Optional.empty()
                    : found.seals().keys().stream()
                            .filter(key -> !known.holds(key))
                            .findFirst();
            if (unknown.isPresent()) {
                throw new NotImported(
                        Message.of("import.unknown-seal", PublicKeyOfStation.shortened(unknown.get()), unknown.get()));
            }
            Manifest manifest = bundle.manifest();
            List<Incoming.OfRun> runs = new ArrayList<>();
            for (Manifest.OfRun run : manifest.runs()) {
                runs.add(new Incoming.OfRun(run.run(), bundle.entries(run)));
            }
            Incoming incoming =
                    new Incoming(Sha256.of(file), fingerprint, manifest.origin(), known.holds(fingerprint), runs);
            return new Delivery(file, signer, manifest.tool(), incoming, ImportCheck.of(ledger, incoming));
        } catch (NotABundle e) {
            throw new NotImported(e.why(), e);
        } catch (IOException e) {
            throw new NotImported(Message.of("import.not-read", file), e);
        }
    }

    /**
     * Takes in what was looked at: all of it that is new, or nothing.
     *
     * @param by who does
     */
    public Arrivals take(Delivery delivery, String by) throws NotImported, CouldNotSave {
        return ledger.takeIn(delivery.incoming(), OffsetDateTime.now(clock), by);
    }
}
