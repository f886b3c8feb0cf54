package org.tenthwise.app.picture.chart;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import org.tenthwise.app.picture.Frame;
import org.tenthwise.model.verdict.VerdictKind;

/** Courses of an invented bore 30 H7 and its like, and the rooms they are drawn in. */
final class Courses {

    static final CourseWords WORDS = new CourseWords(
            "part",
            "read first after the last cut",
            "no size",
            "guard band of the plan",
            "No part of this number has this characteristic read to its end yet.");
    private static final AllowedSizes H7 = allowed(0, "30.000", "30.021");

    private Courses() {}

    static ChartFigure figure(String text) {
        return new ChartFigure(new BigDecimal(text.replace('\u2212', '-')), text);
    }

    static AllowedSizes allowed(int from, String lower, String upper) {
        return new AllowedSizes(from, Optional.of(figure(lower)), Optional.of(figure(upper)), BigDecimal.ZERO);
    }

    static MadePart spot(int number, String last, VerdictKind verdict) {
        return new MadePart(
                String.valueOf(number), Optional.empty(), Optional.of(figure(last)), Optional.empty(), verdict);
    }

    static MadePart cut(int number, String first, String last) {
        return new MadePart(
                String.valueOf(number),
                Optional.of(figure(first)),
                Optional.of(figure(last)),
                Optional.empty(),
                VerdictKind.PASS);
    }

    static MadePart unread(int number) {
        return new MadePart(
                String.valueOf(number), Optional.empty(), Optional.empty(), Optional.empty(), VerdictKind.OPEN);
    }

    /** Passing spots of bore 30 H7, in thousandths over 30. */
    static List<MadePart> bores(int... thousandths) {
        List<MadePart> spots = new ArrayList<>();
        for (int over : thousandths) {
            String size = new BigDecimal(30)
                    .add(BigDecimal.valueOf(over, 3))
                    .setScale(3)
                    .toPlainString();
            VerdictKind verdict = over >= 0 && over <= 21 ? VerdictKind.PASS : VerdictKind.FAIL;
            spots.add(spot(spots.size() + 1, size, verdict));
        }
        return spots;
    }

    static CoursePicture course(List<MadePart> spots, List<AllowedSizes> allowed, List<BreakMark> breaks) {
        OptionalInt last = spots.isEmpty() ? OptionalInt.empty() : OptionalInt.of(spots.size() - 1);
        return new CoursePicture(
                spots,
                allowed,
                breaks,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                last,
                3,
                WORDS,
                "Bore ⌀30 H7, " + spots.size() + " parts");
    }

    private static CoursePicture with(
            CoursePicture course,
            Optional<ProcessLimits> process,
            Optional<DrawnDrift> drift,
            Optional<ChartFigure> aim) {
        return new CoursePicture(
                course.spots(),
                course.allowed(),
                course.breaks(),
                aim,
                process,
                drift,
                course.inHand(),
                course.places(),
                course.words(),
                course.spoken());
    }

    static Map<String, CoursePicture> all() {
        Map<String, CoursePicture> all = new LinkedHashMap<>();
        all.put("none", course(List.of(), List.of(H7), List.of()));
        all.put("one", course(bores(12), List.of(H7), List.of()));
        all.put("four", course(bores(12, 16, 21, 9), List.of(H7), List.of(new BreakMark(2, "edge 2"))));
        all.put("twelve", twelve());
        all.put("drift", drift());
        all.put("fifty", fifty());
        all.put("fifty-broken", fiftyBroken());
        all.put("changed", changed());
        all.put("one-sided", oneSided());
        all.put("run-out", runOut());
        all.put("unread", unread());
        all.put("far-out", course(bores(12, 16, 90, 9, -70), List.of(H7), List.of()));
        all.put("first-and-last", firstAndLast());
        all.put("band", band());
        all.put("deviation", deviation());
        all.put("level", course(bores(10, 10, 10, 10, 10), List.of(H7), List.of()));
        all.put("no-limits", course(bores(10, 11, 12), List.of(), List.of()));
        return all;
    }

    static CoursePicture twelve() {
        return course(
                bores(16, 15, 12, 17, 16, 13, 12, 14, 12, 12, 9, 8),
                List.of(H7),
                List.of(
                        new BreakMark(3, "edge 2, holder CR-16"),
                        new BreakMark(7, "edge 3"),
                        new BreakMark(8, "Setter 2"),
                        new BreakMark(10, "lot 2207-4")));
    }

    /** The line of y = 30.0156 − 0.0016 x with a band that widens. */
    static CoursePicture drift() {
        List<DrawnDrift.At> at = new ArrayList<>();
        for (int place = 7; place < 17; place++) {
            double line = 30.014 - 0.0016 * (place - 7);
            double half = 0.0028 + 0.0006 * Math.abs(place - 9);
            at.add(new DrawnDrift.At(
                    place, BigDecimal.valueOf(line), BigDecimal.valueOf(line - half), BigDecimal.valueOf(line + half)));
        }
        DrawnDrift line = new DrawnDrift(
                at,
                OptionalInt.of(13),
                "measure again after 2 more parts",
                "drift −0.0016 mm a part over 5 parts, −0.0022 mm to −0.0008 mm (95 % confidence);"
                        + " band: where a single part may lie");
        CoursePicture course = course(
                bores(16, 15, 12, 17, 16, 13, 12, 14, 12, 12, 9, 8),
                List.of(H7),
                List.of(new BreakMark(3, "edge 2"), new BreakMark(7, "edge 3")));
        return with(course, Optional.empty(), Optional.of(line), Optional.empty());
    }

    private static int[] scattered(int count) {
        int[] values = new int[count];
        for (int i = 0; i < count; i++) {
            values[i] = 10 + (i * 7919 % 13 - 6) * 2 / 3;
        }
        return values;
    }

    static CoursePicture fifty() {
        ProcessLimits limits = new ProcessLimits(
                20,
                49,
                new BigDecimal("30.0041"),
                new BigDecimal("30.0101"),
                new BigDecimal("30.0161"),
                false,
                "Control limits of 30 parts: 30.0041 to 30.0161 mm, mean 30.0101 mm.");
        CoursePicture course = course(
                bores(scattered(50)), List.of(H7), List.of(new BreakMark(20, "tool T4"), new BreakMark(2, "offset X")));
        return with(course, Optional.of(limits), Optional.empty(), Optional.empty());
    }

    static CoursePicture fiftyBroken() {
        List<BreakMark> breaks = new ArrayList<>();
        for (int i = 2; i < 50; i += 2) {
            breaks.add(
                    new BreakMark(i, i % 4 == 0 ? "edge " + i / 2 + " and offset" : "gauge BG-" + i + ", Setter " + i));
        }
        return course(bores(scattered(50)), List.of(H7), breaks);
    }

    static CoursePicture changed() {
        ProcessLimits limits = new ProcessLimits(
                4,
                15,
                new BigDecimal("30.0061"),
                new BigDecimal("30.0101"),
                new BigDecimal("30.0141"),
                true,
                "Trial limits of 12 parts: 30.0061 to 30.0141 mm, mean 30.0101 mm.");
        CoursePicture course = course(
                bores(scattered(16)),
                List.of(H7, allowed(4, "30.002", "30.018"), allowed(12, "30.005", "30.026")),
                List.of(new BreakMark(4, "plan issue 2: limits"), new BreakMark(12, "plan issue 3: limits")));
        return with(course, Optional.of(limits), Optional.empty(), Optional.empty());
    }

    static CoursePicture oneSided() {
        List<MadePart> spots = new ArrayList<>();
        String[] sizes = {"0.004", "0.006", "0.003", "0.011", "0.008"};
        for (String size : sizes) {
            spots.add(spot(spots.size() + 1, size, size.equals("0.011") ? VerdictKind.FAIL : VerdictKind.PASS));
        }
        return with(
                course(
                        spots,
                        List.of(new AllowedSizes(0, Optional.empty(), Optional.of(figure("0.010")), BigDecimal.ZERO)),
                        List.of()),
                Optional.empty(),
                Optional.empty(),
                Optional.of(new ChartFigure(BigDecimal.ZERO, "0")));
    }

    static CoursePicture unread() {
        List<MadePart> spots = new ArrayList<>(bores(12, 14, 11));
        spots.add(unread(4));
        spots.add(spot(5, "30.013", VerdictKind.UNPROVEN));
        spots.add(unread(6));
        spots.add(spot(7, "29.990", VerdictKind.CUT_AGAIN));
        return course(spots, List.of(H7), List.of());
    }

    static CoursePicture firstAndLast() {
        List<MadePart> spots = new ArrayList<>();
        spots.add(cut(1, "30.012", "30.013"));
        spots.add(cut(2, "30.016", "30.011"));
        spots.add(new MadePart(
                "3",
                Optional.of(figure("30.018")),
                Optional.of(figure("30.010")),
                Optional.of(new MadePart.Extent(new BigDecimal("30.007"), new BigDecimal("30.013"))),
                VerdictKind.PASS));
        spots.add(spot(4, "30.009", VerdictKind.PASS));
        return course(spots, List.of(H7), List.of());
    }

    static CoursePicture band() {
        AllowedSizes allowed = new AllowedSizes(
                0, Optional.of(figure("30.000")), Optional.of(figure("30.021")), new BigDecimal("0.003"));
        List<MadePart> spots = new ArrayList<>(bores(12, 14, 11));
        spots.add(spot(4, "30.019", VerdictKind.UNPROVEN));
        return course(spots, List.of(allowed), List.of());
    }

    /** Zero is best and nothing lies below: one limit, and what is aimed at. */
    static CoursePicture runOut() {
        List<MadePart> spots = List.of(
                spot(1, "0.004", VerdictKind.PASS),
                spot(2, "0.000", VerdictKind.PASS),
                spot(3, "0.011", VerdictKind.PASS),
                spot(4, "0.022", VerdictKind.FAIL));
        AllowedSizes allowed = new AllowedSizes(0, Optional.empty(), Optional.of(figure("0.020")), BigDecimal.ZERO);
        return with(
                course(spots, List.of(allowed), List.of()),
                Optional.empty(),
                Optional.empty(),
                Optional.of(new ChartFigure(BigDecimal.ZERO, "0")));
    }

    /** Of three bores, each with limits of its own about what it is aimed at. */
    static CoursePicture deviation() {
        String[] off = {"0.002", "−0.003", "0.001", "0.006", "−0.007", "0.004", "0.000", "0.008", "−0.002"};
        String[] half = {"0.0105", "0.0125", "0.0125", "0.0105", "0.009", "0.009", "0.0125", "0.0105", "0.0105"};
        List<MadePart> spots = new ArrayList<>();
        List<AllowedSizes> allowed = new ArrayList<>();
        for (int i = 0; i < off.length; i++) {
            spots.add(spot(i + 1, off[i], VerdictKind.PASS));
            allowed.add(allowed(i, "−" + half[i], "+" + half[i]));
        }
        ProcessLimits limits = new ProcessLimits(
                0,
                8,
                new BigDecimal("-0.0114"),
                new BigDecimal("-0.00025"),
                new BigDecimal("0.0114"),
                true,
                "Trial limits of 9 parts: −0.0114 to +0.0114 mm, mean −0.0003 mm.");
        return with(
                course(spots, allowed, List.of()),
                Optional.of(limits),
                Optional.empty(),
                Optional.of(new ChartFigure(BigDecimal.ZERO, "0")));
    }

    /** The room on the history screen, on a small display, upright, beside other things, and in print. */
    static Map<String, Frame> frames() {
        Map<String, Frame> frames = new LinkedHashMap<>();
        frames.put("100", Frame.screen(890, 480, 1));
        frames.put("150", Frame.screen(890, 480, 1.5));
        frames.put("small", Frame.screen(460, 300, 1));
        frames.put("low-150", Frame.screen(800, 280, 1.5));
        frames.put("upright", Frame.screen(784, 520, 1));
        frames.put("upright-150", Frame.screen(784, 520, 1.5));
        frames.put("print", Frame.print(660, 330));
        frames.put("print-narrow", Frame.print(420, 250));
        return frames;
    }
}
