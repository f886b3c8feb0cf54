package org.tenthwise.checklists.format;

import java.util.List;
import org.tenthwise.model.words.Message;
import org.tomlj.Toml;
import org.tomlj.TomlParseResult;

/** Reads TOML 1.0: every key with its line and column, every decimal exactly as it is written. */
public final class TomlText {

    /** A plan is some tens of kilobytes; anything beyond this is some other file. */
    public static final int MOST_CHARACTERS = 1_000_000;

    /** Without anything of its own: one reads as many texts as there are. */
    public TomlText() {}

    /** Whatever the text is, it is read or said to be no TOML: a parser that gives up on it brings nobody down. */
    public TomlReading read(String written) {
        if (written.length() > MOST_CHARACTERS) {
            return unreadable("toml.too-long", MOST_CHARACTERS);
        }
        String text = written.startsWith("\uFEFF") ? written.substring(1) : written;
        try {
            if (Depth.isTooDeep(text)) {
                return unreadable("toml.too-deep", Depth.DEEPEST);
            }
            TomlParseResult parsed = Toml.parse(text);
            List<TomlReading.Flaw> flaws = new Flaws(text).of(parsed);
            return flaws.isEmpty()
                    ? new TomlReading.Readable(new RawTables(new WrittenNumbers(text)).table(parsed, Spot.START))
                    : new TomlReading.Unreadable(flaws);
        } catch (StackOverflowError e) {
            return unreadable("toml.too-deep", Depth.DEEPEST);
        } catch (RuntimeException | AssertionError e) {
            return unreadable("toml.unreadable", Flaws.plain(e.getMessage()));
        }
    }

    private static TomlReading unreadable(String what, Object why) {
        return new TomlReading.Unreadable(List.of(new TomlReading.Flaw(Spot.START, Message.of(what, why))));
    }
}
