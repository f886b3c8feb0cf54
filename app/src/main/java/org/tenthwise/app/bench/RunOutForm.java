package org.tenthwise.app.bench;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.tenthwise.app.picture.Picture;
import org.tenthwise.app.picture.RunOutPicture;
import org.tenthwise.app.sums.SumResult;
import org.tenthwise.app.sums.SumValue;
import org.tenthwise.app.text.Figures;
import org.tenthwise.model.compute.roundness.Angle;
import org.tenthwise.model.quantity.Length;

/** Where the work stands off centre by readings at angles, and how to move the jaws. */
final class RunOutForm implements BenchForm {

    static final String PLACES = "places";
    static final String OTHER = "other";
    static final String ANGLES = "angles";
    static final String READINGS = "readings";
    static final String JAWS = "jaw_count";
    static final String FIRST_JAW = "first_jaw";
    static final String LIMIT = "limit";
    static final List<String> EVEN = List.of("8", "4", "6", "12", "3");
    private static final int PLACES_OF_AN_ANGLE = 6;

    @Override
    public BenchKind kind() {
        return BenchKind.RUN_OUT;
    }

    @Override
    public String sum() {
        return "run-out";
    }

    @Override
    public List<FormField> asks(FormValues filled) {
        List<String> places = new ArrayList<>(EVEN);
        places.add(OTHER);
        List<FormField> asks =
                new ArrayList<>(List.of(FormField.choice(PLACES, places).aside()));
        if (filled.is(PLACES, OTHER)) {
            asks.add(FormField.of(FormField.FieldKind.ANGLES, ANGLES));
        }
        asks.add(FormField.of(FormField.FieldKind.LENGTHS, READINGS));
        asks.add(FormField.choice(JAWS, "4", "3", "0").aside());
        if (!filled.is(JAWS, "0")) {
            asks.add(FormField.of(FormField.FieldKind.ANGLE, FIRST_JAW)
                    .optional()
                    .aside());
        }
        asks.add(FormField.length(LIMIT).optional().aside());
        return asks;
    }

    @Override
    public List<String> first(FormValues filled) {
        return List.of("tir", "jaw_moves", "eccentricity", "high_at", "residual");
    }

    /** The angles the readings belong to, in their order. */
    static List<BigDecimal> angles(FormValues filled) {
        if (filled.is(PLACES, OTHER)) {
            return filled.isFinished(ANGLES)
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
                Integer.parseInt(filled.text(JAWS)), filled.number(FIRST_JAW).orElse(BigDecimal.ZERO));
    }

    @Override
    public Map<String, SumValue> made(FormValues filled) {
        Map<String, SumValue> made = new LinkedHashMap<>();
        if (!filled.is(PLACES, OTHER)) {
            made.put(ANGLES, BenchForm.many(texts(angles(filled))));
        }
        if (!filled.is(JAWS, "0")) {
            made.put("jaws", BenchForm.many(texts(jaws(filled))));
        }
        return made;
    }

    @Override
    public List<String> places(FormField ask, FormValues filled) {
        return ask.id().equals(READINGS)
                ? angles(filled).stream()
                        .map(angle -> Figures.number(angle) + "°")
                        .toList()
                : List.of();
    }

    private static List<String> texts(List<BigDecimal> angles) {
        return angles.stream().map(BigDecimal::toPlainString).toList();
    }

    @Override
    public Optional<Picture> picture(FormValues filled, SumResult answer, AnswerFormat said) {
        List<BigDecimal> angles = angles(filled);
        List<String> read = filled.several(READINGS);
        Optional<Length> movement = said.length(answer, "tir");
        Optional<Length> limit = filled.length(LIMIT).filter(length -> length.signum() > 0);
        if (angles.size() != read.size()
                || limit.or(() -> movement)
                        .filter(length -> length.signum() > 0)
                        .isEmpty()) {
            return Optional.empty();
        }
        List<Length> lengths =
                read.stream().map(text -> Length.of(text, filled.unit())).toList();
        List<RunOutPicture.Reading> readings = IntStream.range(0, read.size())
                .mapToObj(i -> new RunOutPicture.Reading(
                        angles.get(i),
                        Figures.number(angles.get(i)) + "°",
                        Optional.of(
                                new RunOutPicture.Sized(lengths.get(i), Figures.number(new BigDecimal(read.get(i))))),
                        lengths.get(i).equals(Length.greatest(lengths))
                                || lengths.get(i).equals(Length.least(lengths))))
                .toList();
        Optional<RunOutPicture.Sized> moved = movement.map(
                length -> new RunOutPicture.Sized(length, said.words().say("picture.movement", said.length(length))));
        return Optional.of(new RunOutPicture(
                limit.map(length ->
                                new RunOutPicture.Sized(length, said.words().say("picture.limit", filled.text(LIMIT))))
                        .or(() -> moved)
                        .orElseThrow(),
                limit.flatMap(length -> moved),
                readings,
                Optional.empty(),
                fit(answer, said),
                drawnJaws(filled, answer, said),
                RunOutPicture.Hints.NONE,
                List.of(),
                said.words()
                        .say("bench.picture.run-out", movement.map(said::length).orElse(""))));
    }

    private static Optional<RunOutPicture.Fit> fit(SumResult answer, AnswerFormat said) {
        return said.length(answer, "mean").flatMap(mean -> said.length(answer, "eccentricity")
                .filter(off -> off.signum() > 0)
                .map(off -> new RunOutPicture.Fit(
                        mean,
                        off,
                        new BigDecimal(AnswerFormat.plain(answer, "high_at")),
                        List.of(said.words().say("picture.off-centre"), said.length(off)))));
    }

    private static List<RunOutPicture.Jaw> drawnJaws(FormValues filled, SumResult answer, AnswerFormat said) {
        List<BigDecimal> at = filled.is(JAWS, "0") ? List.of() : jaws(filled);
        List<Optional<Length>> moves = answer.at("jaw_moves")
                .filter(SumResult.OutputValue.Many.class::isInstance)
                .map(worked -> ((SumResult.OutputValue.Many) worked)
                        .values().stream().map(said::length).toList())
                .orElse(List.of());
        return IntStream.range(0, Math.min(at.size(), moves.size()))
                .mapToObj(i -> {
                    Length in = moves.get(i).orElse(Length.ZERO);
                    String key = in.signum() < 0
                            ? "picture.jaw.out"
                            : at.size() == 3 ? "picture.jaw.shim" : "picture.jaw.in";
                    String move = in.signum() == 0 ? "" : said.words().say(key, said.length(in.abs()));
                    return new RunOutPicture.Jaw(
                            String.valueOf(i + 1),
                            at.get(i),
                            in,
                            move,
                            move.isEmpty() ? "" : said.words().say("picture.jaw.told", i + 1, move));
                })
                .toList();
    }
}
