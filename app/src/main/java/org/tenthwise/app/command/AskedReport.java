package org.tenthwise.app.command;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.tenthwise.app.firstarticle.Proposed;
import org.tenthwise.app.store.KeptEntries;
import org.tenthwise.checklists.catalogue.FileText;
import org.tenthwise.checklists.format.RawList;
import org.tenthwise.checklists.format.RawTable;
import org.tenthwise.checklists.format.RawValue;
import org.tenthwise.checklists.format.TomlReading;
import org.tenthwise.checklists.format.TomlText;
import org.tenthwise.model.run.ReportAsked;
import org.tenthwise.model.words.Message;
import org.tenthwise.model.words.Word;

/** What is asked for a report: what the options say, else what a file says, else what the runs say of themselves. */
final class AskedReport {

    private static final List<String> SEVERAL = List.of("affected", "changes");
    private static final String ASSEMBLY = "assembly";
    private static final List<String> ONE = List.of(
            "edition", "extent", "reason", "baseline", "order", "organization", "supplier_code", "route", "comments");

    private final ReportOptions options;
    private final Map<String, RawValue> file;
    private final List<String> runs;
    private final ReportAsked asked;

    AskedReport(ReportOptions options, KeptEntries kept) throws CouldNotRun {
        this.options = options;
        this.file = options.file().isPresent() ? values(options.file().get()) : Map.of();
        Proposed proposed = Proposed.of(kept, options.part().orElseThrow(), options.runs());
        this.runs = proposed.runs();
        ReportAsked ready = proposed.asked();
        ReportAsked.Extent extent = word("extent", ReportAsked.Extent.class).orElse(ready.extent());
        this.asked = new ReportAsked(
                options.identifier(),
                ready.part(),
                word("edition", ReportAsked.Edition.class).orElse(ready.edition()),
                extent,
                text("reason").orElse(ready.reason()),
                text("baseline").orElse(ready.baseline()),
                extent == ReportAsked.Extent.FULL
                        ? several("affected").orElse(List.of())
                        : several("affected").orElse(ready.affected()),
                text("order").orElse(ready.order()),
                text("organization").orElse(""),
                text("supplier_code").orElse(""),
                text("route").orElse(""),
                several("changes").orElse(ready.changes()),
                isAssembly(),
                text("comments").orElse(""));
    }

    ReportAsked asked() {
        return asked;
    }

    /** The runs it joins, in the order of their columns. */
    List<String> runs() {
        return runs;
    }

    private static Map<String, RawValue> values(Path file) throws CouldNotRun {
        FileText text = FileText.of(file);
        if (text instanceof FileText.Unreadable unreadable) {
            throw new CouldNotRun(Message.ofValue("command.file", unreadable.why(), file));
        }
        TomlReading reading = new TomlText().read(((FileText.Readable) text).text());
        if (reading instanceof TomlReading.Unreadable flawed) {
            TomlReading.Flaw first = flawed.flaws().get(0);
            throw new CouldNotRun(Message.of("command.first-article.file", file, first.spot(), first.what()));
        }
        RawTable top = ((TomlReading.Readable) reading).top();
        Map<String, RawValue> values = new LinkedHashMap<>();
        for (Map.Entry<String, RawValue> value : top.values().entrySet()) {
            String key = value.getKey();
            if (!ONE.contains(key) && !SEVERAL.contains(key) && !key.equals(ASSEMBLY)) {
                throw new CouldNotRun(Message.of("command.first-article.key", file, key, ONE, SEVERAL));
            }
            values.put(key, value.getValue());
        }
        return values;
    }

    private Optional<String> text(String key) throws CouldNotRun {
        Optional<String> said = options.said(key);
        if (said.isPresent() || !file.containsKey(key)) {
            return said;
        }
        return Optional.of(text(key, file.get(key)));
    }

    private String text(String key, RawValue value) throws CouldNotRun {
        if (value instanceof RawValue.Text text) {
            return text.text();
        }
        throw new CouldNotRun(
                Message.of("command.first-article.text", options.file().orElseThrow(), key));
    }

    private Optional<List<String>> several(String key) throws CouldNotRun {
        List<String> said = options.several(key);
        if (!said.isEmpty() || !file.containsKey(key)) {
            return said.isEmpty() ? Optional.empty() : Optional.of(said);
        }
        if (!(file.get(key) instanceof RawList list)) {
            throw new CouldNotRun(
                    Message.of("command.first-article.list", options.file().orElseThrow(), key));
        }
        List<String> texts = new ArrayList<>();
        for (RawValue item : list.items()) {
            texts.add(text(key, item));
        }
        return Optional.of(texts);
    }

    private boolean isAssembly() throws CouldNotRun {
        if (options.assembly() || !file.containsKey(ASSEMBLY)) {
            return options.assembly();
        }
        if (file.get(ASSEMBLY) instanceof RawValue.Truth said) {
            return said.truth();
        }
        throw new CouldNotRun(
                Message.of("command.first-article.truth", options.file().orElseThrow(), ASSEMBLY));
    }

    private <E extends Enum<E>> Optional<E> word(String key, Class<E> choices) throws CouldNotRun {
        Optional<String> said = text(key);
        Optional<E> choice = said.flatMap(word -> Word.find(choices, word.toLowerCase(Locale.ROOT)));
        if (said.isPresent() && choice.isEmpty()) {
            throw new CouldNotRun(Message.of(
                    "command.first-article.word",
                    key,
                    said.get(),
                    List.of(choices.getEnumConstants()).stream()
                            .map(one -> key.equals("edition") ? one.name() : Word.of(one))
                            .toList()));
        }
        return choice;
    }
}
