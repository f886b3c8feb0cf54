package org.tenthwise.app.bench;

import static org.tenthwise.app.sums.gauge.RunOutByAngleSum.ANGLES;
import static org.tenthwise.app.sums.gauge.RunOutByAngleSum.COS_PART;
import static org.tenthwise.app.sums.gauge.RunOutByAngleSum.ECCENTRICITY;
import static org.tenthwise.app.sums.gauge.RunOutByAngleSum.HIGH_AT;
import static org.tenthwise.app.sums.gauge.RunOutByAngleSum.JAWS;
import static org.tenthwise.app.sums.gauge.RunOutByAngleSum.JAW_MOVES;
import static org.tenthwise.app.sums.gauge.RunOutByAngleSum.MEAN;
import static org.tenthwise.app.sums.gauge.RunOutByAngleSum.READINGS;
import static org.tenthwise.app.sums.gauge.RunOutByAngleSum.RESIDUAL;
import static org.tenthwise.app.sums.gauge.RunOutByAngleSum.SIN_PART;
import static org.tenthwise.app.sums.gauge.RunOutByAngleSum.TIR;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.tenthwise.app.picture.Picture;
import org.tenthwise.app.picture.Role;
import org.tenthwise.app.picture.RunOutPicture;
import org.tenthwise.app.sums.Output;
import org.tenthwise.app.sums.Quantity;
import org.tenthwise.app.sums.SumResult;
import org.tenthwise.app.sums.SumValue;
import org.tenthwise.app.sums.gauge.RunOutByAngleSum;
import org.tenthwise.app.text.Figures;
import org.tenthwise.model.compute.roundness.Angle;
import org.tenthwise.model.quantity.Length;

/** Where the work stands off centre by readings at angles, and how to move the jaws. */
final class RunOutForm implements BenchForm {

    static final String PLACES = "places";
    static final String OTHER = "other";
    static final String JAW_COUNT = "jaw_count";
    static final String FIRST_JAW = "first_jaw";
    static final String LIMIT = "limit";
    static final List<String> EVEN = List.of("8", "4", "6", "12", "3");
    private static final List<String> PLACED =
            Stream.concat(EVEN.stream(), Stream.of(OTHER)).toList();
    private static final int PLACES_OF_AN_ANGLE = 6;

    @Override
    public BenchKind kind() {
        return BenchKind.RUN_OUT;
    }

    @Override
    public String sum() {
        return RunOutByAngleSum.NAME;
    }

    /** Work off the centre of its turning. */
    @Override
    public void sign(SignSketch sketch) {
        sketch.thinRing(48, 28, 25);
        sketch.ring(52, 25, 19);
        sketch.thin(Role.LINE, 20, 28, 76, 28);
        sketch.thin(Role.LINE, 48, 1, 48, 55);
        sketch.dot(52, 25, 3);
    }

    @Override
    public List<FormField> fields(FormValues filled) {
        List<FormField> fields = new ArrayList<>(
                List.of(FormField.ofTheForm(PLACES, Quantity.WORD).choosing(PLACED)));
        if (filled.is(PLACES, OTHER)) {
            fields.add(FormField.of(ANGLES));
        }
        fields.add(FormField.of(READINGS));
        fields.add(FormField.ofTheForm(JAW_COUNT, "4", "3", "0"));
        if (!filled.is(JAW_COUNT, "0")) {
            fields.add(FormField.ofTheForm(FIRST_JAW, Quantity.ANGLE).optional());
        }
        fields.add(FormField.ofTheForm(LIMIT, Quantity.LENGTH).optional());
        return fields;
    }

    @Override
    public List<Output<?>> first(FormValues filled) {
        return List.of(TIR, JAW_MOVES, ECCENTRICITY, HIGH_AT, RESIDUAL);
    }

    /** The angles the readings belong to, in their order. */
    static List<BigDecimal> angles(FormValues filled) {
        if (filled.is(PLACES, OTHER)) {
            return filled.isFinished(ANGLES.key())
                    ? filled.several(ANGLES).stream().map(BigDecimal::new).toList()
                    : List.of();
        }
        return evenly(Integer.parseInt(filled.text(PLACES)), BigDecimal.ZERO);
    }

    private static List<BigDecimal> evenly(int number, BigDecimal first) {
        return IntStream.range(0, number)
                .mapToObj(i -> first.add(Angle.FULL_TURN
                                .multiply(BigDecimal.valueOf(i))
                                .divide(BigDecimal.valueOf(number), PLACES_OF_AN_ANGLE, RoundingMode.HALF_EVEN))
                        .stripTrailingZeros())
                .toList();
    }

    private static List<BigDecimal> jaws(FormValues filled) {
        return evenly(
                Integer.parseInt(filled.text(JAW_COUNT)),
                filled.number(FIRST_JAW).orElse(BigDecimal.ZERO));
    }

    @Override
    public Map<String, SumValue> made(FormValues filled) {
        Map<String, SumValue> made = new LinkedHashMap<>();
        if (!filled.is(PLACES, OTHER)) {
            made.put(ANGLES.key(), texts(angles(filled)));
        }
        if (!filled.is(JAW_COUNT, "0")) {
            made.put(JAWS.key(), texts(jaws(filled)));
        }
        return made;
    }

    @Override
    public List<String> places(FormField field, FormValues filled) {
        return field.id().equals(READINGS.key())
                ? angles(filled).stream()
                        .map(angle -> Figures.number(angle) + "°")
                        .toList()
                : List.of();
    }

    private static SumValue texts(List<BigDecimal> angles) {
        return SumValue.Many.of(angles.stream().map(BigDecimal::toPlainString).toList());
    }

    /** Where the centre stands is told by how far and where to, not by its parts. */
    @Override
    public boolean shows(Output<?> output) {
        return !List.of(COS_PART, SIN_PART).contains(output);
    }

    /** A high spot is found by hand. */
    @Override
    public Optional<Integer> places(Output<?> angle) {
        return angle.key().equals(HIGH_AT.key()) ? Optional.of(0) : Optional.empty();
    }

    @Override
    public List<ResultRow> rows(Output<?> output, SumResult result, AnswerFormat format) {
        List<Length> moves = result.find(JAW_MOVES).orElse(List.of());
        return IntStream.range(0, moves.size())
                .mapToObj(i -> new ResultRow(
                        JAW_MOVES.key(),
                        format.words().say("bench.jaw", i + 1),
                        format.words()
                                .say(
                                        moves.get(i).signum() < 0
                                                ? "bench.jaw.out"
                                                : moves.get(i).signum() > 0 ? "bench.jaw.in" : "bench.jaw.stays",
                                        format.withUnit(
                                                format.length(moves.get(i).abs())))))
                .toList();
    }

    @Override
    public Optional<Picture> picture(FormValues filled, SumResult result, AnswerFormat format) {
        List<BigDecimal> angles = angles(filled);
        List<String> read = filled.read(READINGS.key());
        Optional<Length> movement = result.find(TIR);
        Optional<Length> limit = filled.length(LIMIT).filter(length -> length.signum() > 0);
        if (angles.size() != read.size()
                || limit.or(() -> movement)
                        .filter(length -> length.signum() > 0)
                        .isEmpty()) {
            return Optional.empty();
        }
        List<Length> lengths = filled.lengths(READINGS);
        List<RunOutPicture.Reading> readings = IntStream.range(0, read.size())
                .mapToObj(i -> new RunOutPicture.Reading(
                        angles.get(i),
                        Figures.number(angles.get(i)) + "°",
                        Optional.of(new RunOutPicture.Sized(
                                lengths.get(i), read.get(i).replace('-', '\u2212'))),
                        lengths.get(i).equals(Length.greatest(lengths))
                                || lengths.get(i).equals(Length.least(lengths))))
                .toList();
        Optional<RunOutPicture.Sized> moved = movement.map(length ->
                new RunOutPicture.Sized(length, format.words().say("picture.movement", format.length(length))));
        return Optional.of(new RunOutPicture(
                limit.map(length -> new RunOutPicture.Sized(
                                length, format.words().say("picture.limit", filled.shown(LIMIT))))
                        .or(() -> moved)
                        .orElseThrow(),
                limit.flatMap(length -> moved),
                readings,
                Optional.empty(),
                fit(result, format),
                drawnJaws(filled, result, format),
                RunOutPicture.Hints.NONE,
                List.of(),
                format.words()
                        .say(
                                "bench.picture.run-out",
                                movement.map(format::length).orElse(""))));
    }

    private static Optional<RunOutPicture.Fit> fit(SumResult result, AnswerFormat format) {
        return result.find(MEAN).flatMap(mean -> result.find(ECCENTRICITY)
                .filter(off -> off.signum() > 0)
                .map(off -> RunOutPicture.Fit.of(
                        format.words(), mean, off, result.find(HIGH_AT).orElseThrow(), format.length(off))));
    }

    private static List<RunOutPicture.Jaw> drawnJaws(FormValues filled, SumResult result, AnswerFormat format) {
        List<BigDecimal> at = filled.is(JAW_COUNT, "0") ? List.of() : jaws(filled);
        List<Length> moves = result.find(JAW_MOVES).orElse(List.of());
        return IntStream.range(0, Math.min(at.size(), moves.size()))
                .mapToObj(i -> {
                    Length in = moves.get(i);
                    String key = in.signum() < 0
                            ? "picture.jaw.out"
                            : at.size() == 3 ? "picture.jaw.shim" : "picture.jaw.in";
                    return in.signum() == 0
                            ? RunOutPicture.Jaw.still(i + 1, at.get(i))
                            : RunOutPicture.Jaw.moved(
                                    format.words(),
                                    i + 1,
                                    at.get(i),
                                    in,
                                    format.words().say(key, format.length(in.abs())));
                })
                .toList();
    }
}
