package org.tenthwise.app.command;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.tenthwise.app.bundle.BundleCheck;
import org.tenthwise.app.bundle.BundleFile;
import org.tenthwise.app.bundle.Making;
import org.tenthwise.app.bundle.Manifest;
import org.tenthwise.app.bundle.NotABundle;
import org.tenthwise.app.key.Trusted;
import org.tenthwise.model.words.Message;
import org.tenthwise.model.words.Words;

/** What is said of a bundle in lines, and whether it is well. */
record BundleLines(List<String> lines, boolean well) {

    private static final int MOST_NAMED = 10;

    /** @throws NotABundle if the file is of another kind altogether */
    static BundleLines of(Path path, Making making, Trusted trusted, Words words) throws IOException, NotABundle {
        try (BundleFile bundle = BundleFile.open(path)) {
            return of(bundle, path, new BundleCheck(making).check(bundle), trusted, words);
        } catch (NotABundle e) {
            if (e.isSomethingElse()) {
                throw e;
            }
            return new BundleLines(List.of(words.say("command.verify.not-whole", path, e.why())), false);
        }
    }

    private static BundleLines of(BundleFile bundle, Path path, BundleCheck.Found found, Trusted trusted, Words words) {
        if (found.fault().isPresent()) {
            return new BundleLines(
                    List.of(words.say(
                            "command.verify.not-whole", path, found.fault().get())),
                    false);
        }
        Manifest manifest = bundle.manifest();
        List<String> lines = new ArrayList<>();
        lines.add(words.say(Message.of("command.verify.bundle")
                .with("path", path)
                .with("n", manifest.runs().size())
                .with("files", manifest.files().size())
                .with("tool", manifest.tool())));
        if (!found.notMade().isEmpty()) {
            int named = Math.min(MOST_NAMED, found.notMade().size());
            lines.add(words.say(Message.of("command.verify.not-made")
                    .with("files", found.notMade().subList(0, named))
                    .with("more", found.notMade().size() - named)));
        }
        String key = bundle.signer().fingerprint();
        lines.add(words.say("command.verify.bundle-signed", bundle.signer().shortFingerprint(), key));
        boolean known = trusted.isNobody() || trusted.holds(key);
        lines.add(words.say(
                trusted.isNobody()
                        ? Message.of("command.verify.bundle-unknown")
                        : known
                                ? Message.of("command.verify.bundle-trusted")
                                : Message.of("command.verify.bundle-not-trusted", key)));
        SealLines seals = SealLines.within(found.seals(), trusted, words);
        lines.addAll(seals.lines());
        return new BundleLines(lines, known && seals.enough());
    }
}
