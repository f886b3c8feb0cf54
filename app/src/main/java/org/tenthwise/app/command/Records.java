package org.tenthwise.app.command;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.tenthwise.app.export.CouldNotExport;
import org.tenthwise.app.export.Evidence;
import org.tenthwise.app.export.Exporter;
import org.tenthwise.app.export.RecordFormat;
import org.tenthwise.app.store.KeptEntries;
import org.tenthwise.model.words.Message;

/** Writes the record of a run into a folder. */
public final class Records {

    private final List<RecordFormat> formats;
    private final String version;

    /**
     * @param formats kinds of record that can be asked for
     * @param version of the program, as records name it
     */
    public Records(List<RecordFormat> formats, String version) {
        this.formats = List.copyOf(formats);
        this.version = version;
    }

    Records(Tools with) {
        this(with.formats(), with.version());
    }

    /** Every kind that is a record by itself. */
    List<RecordFormat> all() {
        return formats.stream().filter(RecordFormat::isWhole).toList();
    }

    /** The formats named. */
    List<RecordFormat> named(List<String> names) throws CouldNotRun {
        List<RecordFormat> named = new ArrayList<>();
        for (String name : names) {
            named.add(formats.stream()
                    .filter(format -> format.extension().equals(name.strip()))
                    .findFirst()
                    .orElseThrow(() -> new CouldNotRun(Message.of(
                            "command.no-format",
                            name,
                            formats.stream().map(RecordFormat::extension).toList()))));
        }
        return named.stream().distinct().toList();
    }

    /** What the record of {@code run} is made from. */
    public Evidence evidence(KeptEntries kept, String run) {
        return Evidence.of(kept, run, version);
    }

    /** @return the files, in the order of {@code as} */
    public List<Path> write(KeptEntries kept, String run, List<RecordFormat> as, Path folder) throws CouldNotExport {
        return new Exporter().export(evidence(kept, run), as, folder);
    }
}
