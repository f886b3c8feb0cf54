package org.tenthwise.app.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.tenthwise.app.picture.WorkedSketch.SketchedSize;
import org.tenthwise.model.compute.dovetail.DovetailSide;
import org.tenthwise.model.compute.gear.ToothSide;
import org.tenthwise.model.worked.BetweenCentres;

/** How something is measured or made, drawn alone and not to its sizes, with its figures at their lines. */
public final class SketchPicture implements Picture {

    private static final int FLATS_LEVEL = 14;
    private static final int FLATS_ASLANT = 12;
    private static final int TWO_PAIRS = 4;
    private static final double CORNER = 4;
    private static final double LONG = 8;
    private static final double WIDE = 3;

    private final WorkedSketch sketch;
    private final String spoken;

    private SketchPicture(WorkedSketch sketch, String spoken) {
        this.sketch = sketch;
        this.spoken = spoken;
    }

    private static WorkedSketches with(String... figures) {
        return new WorkedSketches(Stream.of(figures).map(Optional::of).toList());
    }

    /** Work on a sine bar over its stack. */
    public static Picture sineBar(String stack, String spoken) {
        return new SketchPicture(with(stack).sineBar(), spoken);
    }

    /** An outside taper with a diameter at either of its places. */
    public static Picture taper(String large, String small, String spoken) {
        return new SketchPicture(with(large, small).twoDiameters(), spoken);
    }

    /**
     * An outside taper, true to its angle.
     *
     * @param perUnit what the diameter loses over a length of one
     */
    public static Picture taper(double perUnit, String spoken) {
        double slope = perUnit / 2;
        double length = Math.min(LONG, WIDE / slope);
        double small = Math.max(WIDE - length * slope, 0);
        List<Point> metal =
                List.of(new Point(0, -WIDE), new Point(length, -small), new Point(length, small), new Point(0, WIDE));
        return new SketchPicture(
                new WorkedSketch(
                        List.of(List.of(metal)),
                        List.of(),
                        List.of(),
                        List.of(List.of(new Point(-0.5, 0), new Point(length + 0.5, 0))),
                        List.of()),
                spoken);
    }

    /** An outside taper between rollers on the plate and on blocks. */
    public static Picture rollers(boolean smallEndDown, String low, String high, String spoken) {
        return new SketchPicture(with(low, high).rollersOnTaper(smallEndDown), spoken);
    }

    /** Two balls in an inside taper. */
    public static Picture balls(String smallDepth, String largeDepth, String spoken) {
        return new SketchPicture(with(smallDepth, largeDepth).ballsInTaper(), spoken);
    }

    /** An arc over its chord. */
    public static Picture chord(String height, String spoken) {
        return new SketchPicture(with(height).chord(), spoken);
    }

    /** An outside arc between two rolls on a plate. */
    public static Picture rolls(String over, String spoken) {
        return new SketchPicture(with(over).rollsAtArc(false), spoken);
    }

    /** Two rolls in an inside arc. */
    public static Picture rolls(String over, String height, String spoken) {
        return new SketchPicture(with(over, height).rollsAtArc(true), spoken);
    }

    public static Picture dovetail(DovetailSide side, String measured, String spoken) {
        return new SketchPicture(with(measured).dovetail(side), spoken);
    }

    /** A shaft from the bottom of its keyway to its far side. */
    public static Picture keyway(String farSide, String spoken) {
        return new SketchPicture(with(farSide).keyway(false), spoken);
    }

    public static Picture overPins(int teeth, ToothSide side, String measured, String spoken) {
        return new SketchPicture(ToothSketches.overPins(teeth, side, Optional.of(measured)), spoken);
    }

    public static Picture span(int teeth, int over, String span, String spoken) {
        return new SketchPicture(ToothSketches.span(teeth, over, Optional.of(span)), spoken);
    }

    /** A hole drilled for a tap, with the thread there will be in it. */
    public static Picture tapHole(String drill, String major, String spoken) {
        List<Point> left = new Box(-5, 0, -2, 6).corners();
        List<Point> right = new Box(2, 0, 5, 6).corners();
        return new SketchPicture(
                new WorkedSketch(
                        List.of(List.of(left), List.of(right)),
                        List.of(),
                        List.of(),
                        List.of(
                                List.of(new Point(0, -0.6), new Point(0, 6.6)),
                                List.of(new Point(-2.6, 0), new Point(-2.6, 6)),
                                List.of(new Point(2.6, 0), new Point(2.6, 6))),
                        List.of(
                                SketchedSize.level(-1.2, new Point(-2, 0), new Point(2, 0), Optional.of(drill)),
                                SketchedSize.level(7.4, new Point(-2.6, 6), new Point(2.6, 6), Optional.of(major)))),
                spoken);
    }

    /** Two bores, with what was read of them. */
    public static Picture centres(BetweenCentres.Read read, String figure, String spoken) {
        return new SketchPicture(with(figure).centres(read), spoken);
    }

    /** A polygon of an even number of sides; across the flats where two of them lie level. */
    public static Picture polygon(int sides, String corners, String flats, String spoken) {
        boolean level = sides % TWO_PAIRS == 2;
        int drawn = level ? Math.min(sides, FLATS_LEVEL) : Math.min(sides, FLATS_ASLANT);
        List<Point> metal = IntStream.range(0, drawn)
                .mapToObj(i -> new Point(
                        CORNER * Math.cos(2 * Math.PI * i / drawn), CORNER * Math.sin(2 * Math.PI * i / drawn)))
                .toList();
        List<SketchedSize> sizes = new ArrayList<>(List.of(
                SketchedSize.level(CORNER + 1, new Point(-CORNER, 0), new Point(CORNER, 0), Optional.of(corners))));
        if (level) {
            double half = CORNER * Math.cos(Math.PI / drawn);
            double edge = CORNER * Math.sin(Math.PI / drawn);
            sizes.add(SketchedSize.upright(
                    CORNER + 2, new Point(edge, -half), new Point(edge, half), Optional.of(flats)));
        }
        return new SketchPicture(
                new WorkedSketch(List.of(List.of(metal)), List.of(), List.of(), List.of(), sizes), spoken);
    }

    @Override
    public void draw(Drawing drawing) {
        new WorkedSection(sketch, drawing, drawing.frame().box()).draw();
    }

    @Override
    public String spoken() {
        return spoken;
    }
}
