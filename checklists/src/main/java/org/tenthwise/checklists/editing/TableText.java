package org.tenthwise.checklists.editing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.tenthwise.checklists.format.RawValue;
import org.tenthwise.checklists.format.TomlReading;
import org.tenthwise.checklists.format.TomlText;

/**
 * One table of a plan file as it is written, the head among them; a step with the tables inside it. Nothing of it
 * changes: what is put otherwise is another table.
 */
public final class TableText {

    private final String lead;
    private final String header;
    private final List<Pair> pairs;
    /** Comments after the last key, and the tables inside this one, as they are written. */
    private final String end;

    TableText(String lead, String header, List<Pair> pairs, String end) {
        this.lead = lead;
        this.header = header;
        this.pairs = List.copyOf(pairs);
        this.end = end;
    }

    /** An empty {@code [[name]]}, a blank line above it. */
    public static TableText ofList(String name) {
        return new TableText("\n", "[[" + name + "]]\n", List.of(), "");
    }

    /** An empty {@code [name]}, a blank line above it. */
    public static TableText named(String name) {
        return new TableText("\n", "[" + name + "]\n", List.of(), "");
    }

    /** The keys, in the order they are written; a dotted key as it is written. */
    public List<String> keys() {
        return pairs.stream().map(Pair::key).toList();
    }

    /** The value as it is written, in its quotes or brackets; absent where the key is not there. */
    public Optional<String> value(String key) {
        return pairs.stream()
                .filter(pair -> pair.key().equals(key))
                .map(Pair::value)
                .findFirst();
    }

    /** What the text under a key says; absent where the key is not there, or holds something else. */
    public Optional<String> says(String key) {
        return value(key)
                .map(written -> new TomlText().read("it = " + written))
                .filter(TomlReading.Readable.class::isInstance)
                .map(read -> ((TomlReading.Readable) read).top().values().get("it"))
                .filter(RawValue.Text.class::isInstance)
                .map(text -> ((RawValue.Text) text).text());
    }

    /**
     * With {@code written} as the value of the key: in its place, the comment behind it kept, or after the last key
     * where there was none.
     *
     * @param written TOML, as {@link TomlValue} writes it
     */
    public TableText with(String key, String written) {
        return value(key).isPresent()
                ? with(pairs.stream()
                        .map(pair -> pair.key().equals(key) ? pair.with(written) : pair)
                        .toList())
                : ended().after(pairs.size(), key, written);
    }

    /** As {@link #with(String, String)}; a new key stands after the last of {@code before} there is, or first. */
    public TableText withAfter(List<String> before, String key, String written) {
        if (value(key).isPresent()) {
            return with(key, written);
        }
        int place = 0;
        for (int i = 0; i < pairs.size(); i++) {
            if (before.contains(pairs.get(i).key())) {
                place = i + 1;
            }
        }
        return ended().after(place, key, written);
    }

    private TableText after(int place, String key, String written) {
        List<Pair> more = new ArrayList<>(pairs);
        more.add(place, Pair.of(key, written));
        return with(more);
    }

    /** Ending in a line break, so that another can follow: the last line of a file may have none. */
    TableText ended() {
        if (text().isEmpty() || text().endsWith("\n")) {
            return this;
        }
        if (!end.isEmpty() || pairs.isEmpty()) {
            return end.isEmpty()
                    ? new TableText(lead, header + "\n", pairs, end)
                    : new TableText(lead, header, pairs, end + "\n");
        }
        List<Pair> whole = new ArrayList<>(pairs);
        whole.set(whole.size() - 1, whole.get(whole.size() - 1).ended());
        return with(whole);
    }

    /** Without the key; what was written above it stays. */
    public TableText without(String key) {
        List<Pair> fewer = new ArrayList<>();
        String kept = "";
        for (Pair pair : pairs) {
            if (pair.key().equals(key)) {
                kept += pair.lead();
            } else {
                fewer.add(kept.isEmpty() ? pair : pair.ledBy(kept + pair.lead()));
                kept = "";
            }
        }
        return new TableText(lead, header, fewer, kept + end);
    }

    /** With a comment right above its header. */
    public TableText remarked(String remark) {
        return new TableText(
                lead + "# " + remark.replaceAll("\\R", " ").replaceAll("\\p{Cntrl}", " ") + "\n", header, pairs, end);
    }

    /** The same without the comments above its header: for a copy, of which they may not be true. */
    public TableText withoutLead() {
        return new TableText("\n", header, pairs, end);
    }

    /** Its keys and values alone, without any comment, nor the tables inside it. */
    TableText bare() {
        TableText bare = new TableText("\n", header.strip() + "\n", List.of(), "");
        for (Pair pair : pairs) {
            bare = bare.with(pair.key(), pair.value());
        }
        return bare;
    }

    private TableText with(List<Pair> others) {
        return new TableText(lead, header, others, end);
    }

    /** Whether it is one of a list of tables. */
    boolean isListed() {
        return header.startsWith("[[");
    }

    /** Whether it is one of {@code [[name]]}. */
    boolean isOf(String name) {
        return isListed() && name().equals(name);
    }

    boolean isNamed(String name) {
        return header.startsWith("[") && !isListed() && name().equals(name);
    }

    /** Whether it stands inside the table of that name. */
    boolean isInside(String outer) {
        return name().startsWith(outer + ".");
    }

    /** What stands in the brackets of the header; empty for the head of the file. */
    public String name() {
        int from = isListed() ? 2 : 1;
        return header.isEmpty()
                ? ""
                : header.substring(from, header.indexOf(']')).strip();
    }

    /** With a table inside it behind it. */
    TableText holding(TableText inner) {
        return new TableText(lead, header, pairs, end + inner.text());
    }

    /** As it stands in the file, with the comments above it. */
    public String text() {
        return lead + header + pairs.stream().map(Pair::text).collect(Collectors.joining()) + end;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof TableText table && table.text().equals(text());
    }

    @Override
    public int hashCode() {
        return text().hashCode();
    }

    @Override
    public String toString() {
        return text();
    }
}
