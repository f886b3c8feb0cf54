package org.tenthwise.app.device;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.tenthwise.app.session.Background;
import org.tenthwise.model.words.Message;

/**
 * Opens a file by the command the system has for that: of Windows and macOS their own, elsewhere that of the desktops
 * of freedesktop.org. It is there where a window can be shown and the command lies on the search path. The command says
 * by its exit that nothing opened the file; a program that stays open is not waited for.
 */
public final class SystemViewer implements Viewer {

    /** How long a command may take to say that it could not; common practice. */
    private static final Duration PATIENCE = Duration.ofSeconds(5);

    private static final List<String> WINDOWS = List.of("rundll32.exe", "url.dll,FileProtocolHandler");
    private static final List<String> MAC = List.of("open");
    private static final List<String> FREEDESKTOP = List.of("xdg-open");

    private final Optional<List<String>> command;
    private final Background background;
    private final Duration patience;

    /**
     * @param system name of the operating system
     * @param searchPath folders where commands lie, with the system's separator between
     * @param background a worker nobody else waits for
     */
    public SystemViewer(Windowing windowing, String system, String searchPath, Background background) {
        this(windowing, system, searchPath, background, PATIENCE);
    }

    SystemViewer(Windowing windowing, String system, String searchPath, Background background, Duration patience) {
        this.command = Optional.of(commandOf(system.toLowerCase(Locale.ROOT)))
                .filter(way -> windowing.hasDisplay())
                .flatMap(way -> found(way, searchPath));
        this.background = background;
        this.patience = patience;
    }

    private static List<String> commandOf(String system) {
        if (system.startsWith("windows")) {
            return WINDOWS;
        }
        return system.startsWith("mac") ? MAC : FREEDESKTOP;
    }

    /** The command by the whole place of its program. */
    private static Optional<List<String>> found(List<String> command, String searchPath) {
        return Stream.of(searchPath.split(File.pathSeparator))
                .filter(folder -> !folder.isBlank())
                .map(folder -> new File(folder, command.get(0)))
                .filter(program -> program.isFile() && program.canExecute())
                .findFirst()
                .map(program -> {
                    List<String> whole = new ArrayList<>(command);
                    whole.set(0, program.getPath());
                    return whole;
                });
    }

    @Override
    public boolean isThere() {
        return command.isPresent();
    }

    @Override
    public void open(Path file, Consumer<Optional<Message>> outcome) {
        background.run(() -> handed(file), outcome, failure -> outcome.accept(Optional.of(notOpened(file))));
    }

    private Optional<Message> handed(Path file) throws IOException, InterruptedException {
        if (!Files.isRegularFile(file)) {
            return Optional.of(Message.of("viewer.gone", file.getFileName()));
        }
        List<String> whole = new ArrayList<>(command.orElseThrow());
        whole.add(file.toAbsolutePath().toString());
        Process process = new ProcessBuilder(whole)
                .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .start();
        process.getOutputStream().close();
        boolean said = process.waitFor(patience.toMillis(), TimeUnit.MILLISECONDS);
        return said && process.exitValue() != 0 ? Optional.of(notOpened(file)) : Optional.empty();
    }

    private static Message notOpened(Path file) {
        return Message.of(
                "viewer.not-opened", file.getFileName(), file.toAbsolutePath().getParent());
    }
}
