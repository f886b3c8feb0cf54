package org.tenthwise.model.callout;

import java.util.Map;
import java.util.regex.Pattern;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.words.Refused;

/**
 * A callout with one sign for each that looks alike: every diameter ⌀, every minus -, every decimal sign a point. What
 * stands in square brackets at its end is the size in the other unit, for information, and goes.
 */
final class TidyText {

    private static final int LONGEST = 300;
    private static final Map<String, String> ALIKE = Map.ofEntries(
            Map.entry("[\\uFEFF\\u200B]", ""),
            Map.entry("\\r\\n?|\\\\n", "\n"),
            Map.entry("[\\u00A0\\u2007\\u2009\\u202F\\t]", " "),
            Map.entry("[−–—‐‑‒﹣－]", "-"),
            Map.entry("[ØøΦφϕ∅]", "⌀"),
            Map.entry("[×✕╳⨯]", "X"),
            Map.entry("[º˚]", "°"),
            Map.entry("[’‘´`ʹ]", "'"),
            Map.entry("[”“ʺ]", "\""),
            Map.entry("⊥", "⟂"),
            Map.entry("[‖∥]", "∥"),
            Map.entry("[μ]", "µ"),
            Map.entry("[〈‹]", "⟨"),
            Map.entry("[〉›]", "⟩"),
            Map.entry("½", " 1/2"),
            Map.entry("¼", " 1/4"),
            Map.entry("¾", " 3/4"));
    private static final Pattern PLUS_MINUS = Pattern.compile("\\+ ?/? ?-(?=[ .,\\d])");
    private static final Pattern SECONDS = Pattern.compile("(?<=\\d)\\s?(?:''|\"|′′|″)");
    private static final Pattern MINUTES = Pattern.compile("(?<=\\d)\\s?'");
    private static final Pattern PARALLEL = Pattern.compile("^((?:\\d+X )?)//");
    private static final Pattern OTHER_UNIT = Pattern.compile("(?s)^(.*\\S.*)\\[[^\\[\\]]*\\d[^\\[\\]]*\\]\\s*$");
    private static final Pattern COMMA = Pattern.compile("(?<=\\d),(?=\\d)");
    private static final Pattern POINT = Pattern.compile("\\d\\.\\d|(?<![\\dA-Za-z])\\.\\d");

    private TidyText() {}

    /** @throws Refused if it is empty or too long, or its decimal signs are in doubt */
    static String of(String drawn, Unit unit) {
        if (drawn.length() > LONGEST) {
            throw new Refused("model.callout.too-long", LONGEST);
        }
        String tidy = drawn;
        for (Map.Entry<String, String> alike : ALIKE.entrySet()) {
            tidy = tidy.replaceAll(alike.getKey(), alike.getValue());
        }
        tidy = PLUS_MINUS.matcher(tidy.replaceAll(" +", " ").strip()).replaceAll("±");
        tidy = MINUTES.matcher(SECONDS.matcher(tidy).replaceAll("″")).replaceAll("′");
        tidy = PARALLEL.matcher(tidy).replaceFirst("$1∥ ");
        tidy = OTHER_UNIT.matcher(tidy).replaceFirst("$1").strip();
        if (tidy.isEmpty()) {
            throw new Refused("model.callout.empty");
        }
        return decimals(tidy, unit);
    }

    private static String decimals(String tidy, Unit unit) {
        if (!COMMA.matcher(tidy).find()) {
            return tidy;
        }
        if (unit == Unit.INCH) {
            throw new Refused("model.callout.comma-inch", COMMA.matcher(tidy).replaceAll("."));
        }
        if (POINT.matcher(tidy).find()) {
            throw new Refused("model.callout.comma-and-point");
        }
        return COMMA.matcher(tidy).replaceAll(".");
    }
}
