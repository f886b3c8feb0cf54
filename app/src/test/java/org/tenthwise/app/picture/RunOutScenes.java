package org.tenthwise.app.picture;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.tenthwise.app.text.Figures;
import org.tenthwise.model.compute.roundness.CircleFit;
import org.tenthwise.model.compute.roundness.JawMove;
import org.tenthwise.model.compute.roundness.JawMoves;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Unit;

/** Run-out checks to draw, with invented readings. */
final class RunOutScenes {

    private static final List<String> EIGHT = List.of("0", "45", "90", "135", "180", "225", "270", "315");
    private static final List<String> OFF_CENTRE =
            List.of("0", "-0.002", "-0.011", "-0.026", "-0.037", "-0.034", "-0.025", "-0.009");
    private static final List<String> TRUE_ENOUGH =
            List.of("0", "0.001", "0.004", "0.008", "0.011", "0.009", "0.006", "0.002");

    private RunOutScenes() {}

    static Map<String, RunOutPicture> all() {
        Map<String, RunOutPicture> scenes = new LinkedHashMap<>();
        scenes.put("fail-4-jaws", read(EIGHT, OFF_CENTRE, 4, "0"));
        scenes.put("fail-4-jaws-at-45", read(EIGHT, OFF_CENTRE, 4, "45"));
        scenes.put("pass-4-jaws", stays(read(EIGHT, TRUE_ENOUGH, 4, "0")));
        scenes.put("fail-3-jaws", read(EIGHT, OFF_CENTRE, 3, "30"));
        scenes.put(
                "unequal-no-jaws",
                read(
                        List.of("10", "70", "200", "215", "340"),
                        List.of("0.010", "-0.004", "0.003", "0.006", "0.030"),
                        0,
                        "0"));
        scenes.put("refused", refused());
        scenes.put("open", open());
        scenes.put("sweep", sweep("0.021", "-0.002"));
        scenes.put("swept-and-read", sweptAndRead(OFF_CENTRE, "0.001", "-0.038", 4, way(90)));
        scenes.put("swept-anew", sweptAndRead(OFF_CENTRE, "0.039", "0", 3, way(120)));
        scenes.put("swept-no-jaws", sweptAndRead(OFF_CENTRE, "0.001", "-0.038", 0, way(45)));
        scenes.put("far-section", sections().sections().get(1).ring());
        scenes.put("many", many());
        scenes.put("far-out", read(EIGHT, List.of("0", "0.1", "0.25", "0.38", "0.5", "0.4", "0.25", "0.1"), 4, "0"));
        return scenes;
    }

    static Length mm(String figure) {
        return Length.of(figure, Unit.MILLIMETRE);
    }

    private static RunOutPicture.Sized sized(Length length, String before) {
        return new RunOutPicture.Sized(length, before + Figures.plain(length, Unit.MILLIMETRE, 3));
    }

    static RunOutPicture read(List<String> angles, List<String> figures, int jaws, String first) {
        List<BigDecimal> degrees = angles.stream().map(BigDecimal::new).toList();
        List<Length> lengths = figures.stream().map(RunOutScenes::mm).toList();
        CircleFit fit = CircleFit.of(degrees, lengths);
        List<BigDecimal> at = jaws == 0 ? List.of() : JawMoves.evenly(jaws, new BigDecimal(first));
        List<RunOutPicture.Jaw> drawn = jaws == 0
                ? List.of()
                : JawMoves.of(fit, at).stream()
                        .map(move -> new RunOutPicture.Jaw(
                                String.valueOf(move.jaw()),
                                at.get(move.jaw() - 1),
                                move.in(),
                                move(move, jaws),
                                move.in().signum() == 0 ? "" : "jaw " + move.jaw() + " " + move(move, jaws)))
                        .toList();
        return new RunOutPicture(
                sized(mm("0.02"), "limit "),
                Optional.of(sized(Length.greatest(lengths).minus(Length.least(lengths)), "run-out ")),
                readings(degrees, lengths),
                Optional.empty(),
                Optional.of(new RunOutPicture.Fit(
                        fit.mean(),
                        fit.eccentricity(),
                        fit.highAtDegrees(),
                        List.of("off centre", Figures.plain(fit.eccentricity(), Unit.MILLIMETRE, 3)))),
                drawn,
                RunOutPicture.Hints.NONE,
                List.of("out of round " + Figures.plain(fit.residual(), Unit.MILLIMETRE, 3), "stays after the move"),
                "Run-out");
    }

    private static String move(JawMove move, int jaws) {
        String figure = Figures.plain(move.in().abs(), Unit.MILLIMETRE, 3);
        return move.in().signum() == 0 ? "" : (jaws == 3 ? "shim " : move.in().signum() > 0 ? "in " : "out ") + figure;
    }

    private static List<RunOutPicture.Reading> readings(List<BigDecimal> degrees, List<Length> lengths) {
        List<RunOutPicture.Reading> readings = new ArrayList<>();
        for (int i = 0; i < degrees.size(); i++) {
            boolean extreme = i < lengths.size()
                    && (lengths.get(i).equals(Length.greatest(lengths))
                            || lengths.get(i).equals(Length.least(lengths)));
            readings.add(new RunOutPicture.Reading(
                    degrees.get(i),
                    degrees.get(i) + "°",
                    i < lengths.size() ? Optional.of(sized(lengths.get(i), "")) : Optional.empty(),
                    extreme));
        }
        return readings;
    }

    private static List<RunOutPicture.Jaw> still(int jaws) {
        List<RunOutPicture.Jaw> drawn = new ArrayList<>();
        for (int i = 0; i < jaws; i++) {
            drawn.add(new RunOutPicture.Jaw(
                    String.valueOf(i + 1), BigDecimal.valueOf(360L / jaws * i), Length.ZERO, "", ""));
        }
        return drawn;
    }

    /** Nothing is moved on what passes. */
    private static RunOutPicture stays(RunOutPicture passed) {
        return new RunOutPicture(
                passed.limit(),
                passed.movement(),
                passed.readings(),
                passed.sweep(),
                passed.fit(),
                still(4),
                passed.hints(),
                passed.notes().subList(0, 1),
                passed.spoken());
    }

    private static RunOutPicture refused() {
        return new RunOutPicture(
                sized(mm("0.02"), "limit "),
                Optional.of(sized(mm("0.013"), "run-out ")),
                readings(List.of(BigDecimal.ZERO, BigDecimal.valueOf(90)), List.of(mm("0"), mm("0.013"))),
                Optional.empty(),
                Optional.empty(),
                still(4),
                RunOutPicture.Hints.NONE,
                List.of("no circle: fewer than three angles"),
                "Run-out");
    }

    private static RunOutPicture open() {
        return new RunOutPicture(
                sized(mm("0.02"), "limit "),
                Optional.of(sized(mm("0.011"), "run-out ")),
                readings(EIGHT.stream().map(BigDecimal::new).toList(), List.of(mm("0"), mm("-0.002"), mm("-0.011"))),
                Optional.empty(),
                Optional.empty(),
                still(3),
                RunOutPicture.Hints.NONE,
                List.of(),
                "Run-out");
    }

    static RunOutPicture sweep(String highest, String lowest) {
        Length high = mm(highest);
        Length low = mm(lowest);
        return new RunOutPicture(
                sized(mm("0.02"), "limit "),
                Optional.of(sized(high.minus(low), "run-out ")),
                List.of(),
                Optional.of(new RunOutPicture.Sweep(
                        Optional.of(sized(high, "")), Optional.of(sized(low, "")), "highest", "lowest")),
                Optional.empty(),
                still(4),
                RunOutPicture.Hints.NONE,
                List.of(),
                "Run-out");
    }

    /** Points by jaws and a sweep together, the way round drawn. */
    static RunOutPicture sweptAndRead(
            List<String> figures, String highest, String lowest, int jaws, RunOutPicture.Hints hints) {
        RunOutPicture read = read(EIGHT, figures, jaws, "0");
        Length high = mm(highest);
        Length low = mm(lowest);
        List<String> names =
                List.of("jaw 1", "1\u20132", "jaw 2", "2\u20133", "jaw 3", "3\u20134", "jaw 4", "4\u20131");
        List<RunOutPicture.Reading> named = new ArrayList<>();
        for (int i = 0; i < names.size(); i++) {
            RunOutPicture.Reading reading = read.readings().get(i);
            named.add(new RunOutPicture.Reading(
                    reading.angle(),
                    jaws == 0 ? reading.angleWords() : names.get(i),
                    reading.value(),
                    reading.extreme()));
        }
        List<RunOutPicture.Jaw> drawn = hints.farOut()
                ? still(jaws)
                : read.jaws().stream()
                        .map(jaw -> new RunOutPicture.Jaw(
                                jaw.number(),
                                jaw.at(),
                                jaw.in(),
                                jaw.in().signum() < 0 ? "loosen" : jaw.words(),
                                jaw.told()))
                        .toList();
        return new RunOutPicture(
                read.limit(),
                Optional.of(sized(high.minus(low), "run-out ")),
                named,
                Optional.of(new RunOutPicture.Sweep(
                        Optional.of(sized(high, "")), Optional.of(sized(low, "")), "highest", "lowest")),
                read.fit(),
                drawn,
                hints,
                read.notes(),
                "Run-out");
    }

    static RunOutPicture.Hints way(int to) {
        return new RunOutPicture.Hints(
                false,
                Optional.of(new RunOutPicture.Way(BigDecimal.ZERO, BigDecimal.valueOf(to), "read this way")),
                Optional.empty());
    }

    /** Two sections of one part: shifted near the jaws, and leaning. */
    static RunOutSections sections() {
        return new RunOutSections(
                List.of(
                        new RunOutSections.SectionRing(
                                "near the jaws, 20", sweptAndRead(OFF_CENTRE, "0.001", "-0.038", 4, way(90))),
                        new RunOutSections.SectionRing(
                                "far out, 150",
                                sweptAndRead(
                                        List.of(
                                                "0.030", "0.061", "0.058", "0.021", "-0.034", "-0.066", "-0.060",
                                                "-0.022"),
                                        "0.064",
                                        "-0.067",
                                        4,
                                        new RunOutPicture.Hints(
                                                true,
                                                way(90).way(),
                                                Optional.of(new RunOutPicture.Tap(
                                                        new BigDecimal("63"), "mallet 0.062")))))),
                "Run-out");
    }

    private static RunOutPicture many() {
        List<String> angles = new ArrayList<>();
        List<String> figures = new ArrayList<>();
        for (int i = 0; i < 36; i++) {
            angles.add(String.valueOf(i * 10));
            figures.add(BigDecimal.valueOf(Math.round(9 * Math.cos(Math.toRadians(i * 10 - 100)) + i % 3), 3)
                    .toPlainString());
        }
        return read(angles, figures, 4, "0");
    }
}
