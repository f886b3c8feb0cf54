package org.tenthwise.app.command;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.Console;
import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.OffsetDateTime;
import java.util.Arrays;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.tenthwise.app.certificate.NoCertificate;
import org.tenthwise.app.certificate.PdfSigning;
import org.tenthwise.app.certificate.Signer;
import org.tenthwise.model.words.Message;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Signs a PDF with the certificate of a person or a shop. */
@Command(name = "sign", customSynopsis = "tenthwise sign PDF --with P12 --out FILE [--passphrase FILE]")
final class SignPdf implements Callable<Integer> {

    /** A hundred times a passphrase anybody types. */
    private static final long MOST_OF_A_PASSPHRASE = 8L << 10;

    private final Tools with;

    @Parameters(paramLabel = "PDF", descriptionKey = "pdf")
    private Path pdf = Path.of("");

    @Option(names = "--with", paramLabel = "P12", required = true)
    private Path certificate = Path.of("");

    @Option(names = "--out", paramLabel = "FILE", required = true)
    private Path out = Path.of("");

    @Option(names = "--passphrase", paramLabel = "FILE")
    private Optional<Path> passphraseFile = Optional.empty();

    @Spec
    private CommandSpec spec;

    SignPdf(Tools with) {
        this.with = with;
    }

    @Override
    public Integer call() throws CouldNotRun, NoCertificate, IOException {
        byte[] read = read();
        if (Files.exists(out)) {
            throw inTheWay();
        }
        char[] passphrase = passphrase();
        try {
            OffsetDateTime now = OffsetDateTime.now(with.clock());
            Signer signer = Signer.open(certificate, passphrase, now.toInstant());
            write(signed(read, signer, now));
            spec.commandLine().getOut().println(with.words().say("command.sign.done", out, signer.name()));
            return Exit.WELL;
        } finally {
            Arrays.fill(passphrase, ' ');
        }
    }

    private byte[] read() throws CouldNotRun {
        try {
            return Files.readAllBytes(pdf);
        } catch (IOException e) {
            throw new CouldNotRun(Message.of("command.sign.no-pdf", pdf), e);
        }
    }

    private byte[] signed(byte[] read, Signer signer, OffsetDateTime at) throws CouldNotRun {
        try {
            return new PdfSigning(signer).sign(read, at);
        } catch (IOException e) {
            throw new CouldNotRun(Message.of("command.sign.no-pdf", pdf), e);
        }
    }

    private void write(byte[] signed) throws CouldNotRun, IOException {
        try {
            Files.write(out, signed, StandardOpenOption.CREATE_NEW);
        } catch (FileAlreadyExistsException e) {
            throw inTheWay();
        }
    }

    private CouldNotRun inTheWay() {
        return new CouldNotRun(Message.of("command.sign.in-the-way", out));
    }

    private char[] passphrase() throws CouldNotRun {
        return passphraseFile.isPresent() ? firstLine(passphraseFile.get()) : asked();
    }

    private static char[] firstLine(Path file) throws CouldNotRun {
        try {
            if (Files.size(file) <= MOST_OF_A_PASSPHRASE) {
                return Files.readString(file, UTF_8)
                        .lines()
                        .findFirst()
                        .orElse("")
                        .toCharArray();
            }
        } catch (IOException e) {
            // said below
        }
        throw new CouldNotRun(Message.of("command.sign.passphrase-file", file));
    }

    private char[] asked() throws CouldNotRun {
        Console terminal = System.console();
        char[] typed = terminal == null
                ? null
                : terminal.readPassword("%s ", with.words().say("command.sign.passphrase", certificate));
        return Optional.ofNullable(typed).orElseThrow(() -> new CouldNotRun(Message.of("command.sign.no-terminal")));
    }
}
