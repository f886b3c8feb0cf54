package org.tenthwise.app.bench;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.tenthwise.app.sums.SumResult;
import org.tenthwise.app.sums.SumResult.OutputValue;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.words.Words;

/** Reads the results of an answer out, each with its name of the trade and its unit. */
public final class ResultRows {

    /** A result as it reads. */
    public record ResultRow(String key, String name, String value) {}

    private static final Pattern KEY = Pattern.compile("\\b[a-z]+(?:_[a-z0-9]+)+\\b");
    private static final Set<String> SIGNED = Set.of(
            "offset_change",
            "correction",
            "upper_deviation",
            "lower_deviation",
            "clearance_greatest",
            "clearance_least",
            "clearance_now",
            "clearance_now_greatest",
            "clearance_now_least",
            "mean",
            "cos_part",
            "sin_part");
    private static final Set<String> ANGLES = Set.of("lead_angle", "high_at");
    private static final Set<String> WORDS = Set.of("state", "reason", "kind", "standing");
    private static final Set<String> COUNTS = Set.of("drills");
    private static final Set<String> LENGTHS = Set.of(
            "pitch_diameter",
            "over_wires",
            "simple",
            "corrected",
            "best_wire",
            "wire_least",
            "wire_greatest",
            "root_clearance",
            "safe_cut",
            "tir",
            "eccentricity",
            "residual",
            "eccentric_run_out",
            "size",
            "u",
            "greatest",
            "least",
            "major_max",
            "major_min",
            "pitch_max",
            "pitch_min",
            "minor_max",
            "minor_min",
            "allowance",
            "ovality",
            "opposites_differ",
            "pitch_tolerance",
            "major_tolerance",
            "minor_tolerance",
            "pitch_basic",
            "minor_basic");

    private final Words words;
    private final Unit unit;
    private final AnswerFormat said;

    public ResultRows(Words words, Unit unit) {
        this.words = words;
        this.unit = unit;
        this.said = new AnswerFormat(words, unit);
    }

    /** Every result there are words for: those of {@code first} in that order, then the others. */
    public List<ResultRow> of(SumResult answer, List<String> first) {
        return answer.results().stream()
                .sorted(Comparator.comparingInt(result -> rank(first, result.key())))
                .flatMap(result -> rows(result).stream())
                .toList();
    }

    /** The notes, with results called by their names. */
    public List<String> notes(SumResult answer) {
        return answer.notes().stream()
                .map(note -> KEY.matcher(note).replaceAll(found -> Matcher.quoteReplacement(named(found.group()))))
                .map(note -> note.endsWith(".") ? note : note + ".")
                .toList();
    }

    private String named(String key) {
        return SIGNED.contains(key) || LENGTHS.contains(key) ? name(key) : key.replace('_', ' ');
    }

    private static int rank(List<String> first, String key) {
        int at = first.indexOf(key);
        return at < 0 ? first.size() : at;
    }

    private List<ResultRow> rows(SumResult.Result result) {
        if (result.value() instanceof OutputValue.Many many) {
            return many(result.key(), many.values());
        }
        return result.value() instanceof OutputValue.Plain plain
                ? value(result.key(), plain.text())
                        .map(value -> new ResultRow(result.key(), name(result.key()), value))
                        .stream()
                        .toList()
                : List.of();
    }

    private Optional<String> value(String key, String text) {
        if (ANGLES.contains(key)) {
            return Optional.of(words.say("bench.degrees", said.angle(text)));
        }
        if (WORDS.contains(key)) {
            return Optional.of(words.say("bench.word." + text));
        }
        if (COUNTS.contains(key)) {
            return Optional.of(text);
        }
        Optional<OutputValue> worked = Optional.of(new OutputValue.Plain(text));
        if (SIGNED.contains(key)) {
            return worked.flatMap(said::length).map(length -> said.signed(length) + " " + unit.symbol());
        }
        return LENGTHS.contains(key) ? worked.flatMap(said::length).map(this::withUnit) : Optional.empty();
    }

    private List<ResultRow> many(String key, List<OutputValue> values) {
        List<ResultRow> rows = new ArrayList<>();
        for (int i = 0; i < values.size(); i++) {
            int number = i + 1;
            if (key.equals("jaw_moves")) {
                said.length(values.get(i))
                        .ifPresent(move -> rows.add(new ResultRow(
                                key,
                                words.say("bench.jaw", number),
                                words.say(
                                        move.signum() < 0
                                                ? "bench.jaw.out"
                                                : move.signum() > 0 ? "bench.jaw.in" : "bench.jaw.stays",
                                        withUnit(move.abs())))));
            } else if (key.equals("steps") && values.get(i) instanceof OutputValue.Table table) {
                rows.add(new ResultRow(
                        key,
                        words.say("bench.drill", number),
                        words.say("bench.drill.step", at(table, "from"), at(table, "to"), at(table, "least_reach"))));
            }
        }
        return rows;
    }

    private String at(OutputValue.Table table, String key) {
        return table.values().stream()
                .filter(result -> result.key().equals(key))
                .map(SumResult.Result::value)
                .flatMap(worked -> said.length(worked).stream())
                .map(said::depth)
                .findFirst()
                .orElse("");
    }

    private String withUnit(Length length) {
        return said.length(length) + " " + unit.symbol();
    }

    private String name(String key) {
        return words.say("bench.result." + key.replace('_', '-'));
    }
}
