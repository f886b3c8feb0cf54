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
    private static final int PEAKS = 30;
    private static final double ROUGH = 0.12;
    private static final int CUTOFFS = 5;

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

    /** Shaft and hub, each from the bottom of its keyway to its far side. */
    public static Picture keyway(String shaft, String hub, String spoken) {
        return new SketchPicture(with(shaft, hub).keywayAndHub(), spoken);
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

    /** Tapered work between centres as it is looked at from above, its small end set over towards the operator. */
    public static Picture tailstock(String offset, String spoken) {
        List<Point> metal = List.of(new Point(0, -2), new Point(8, -0.2), new Point(8, 2), new Point(0, 2));
        List<Point> live = List.of(new Point(-1.4, -0.7), new Point(0, 0), new Point(-1.4, 0.7));
        List<Point> dead = List.of(new Point(9.4, 0.2), new Point(8, 0.9), new Point(9.4, 1.6));
        return new SketchPicture(
                new WorkedSketch(
                        List.of(List.of(metal)),
                        List.of(live, dead),
                        List.of(),
                        List.of(List.of(new Point(-2, 0), new Point(11, 0))),
                        List.of(SketchedSize.upright(
                                10.6, new Point(10.2, 0), new Point(8, 0.9), Optional.of(offset)))),
                spoken);
    }

    /**
     * A tooth with the chord a caliper reads.
     *
     * @param height from its tip down to the chord; absent where it is not known
     */
    public static Picture tooth(String chord, Optional<String> height, String spoken) {
        List<Point> metal = List.of(
                new Point(-5, 4),
                new Point(-5, 2.4),
                new Point(-2.7, 2.4),
                new Point(-2.4, 1.2),
                new Point(-2, 0),
                new Point(-1.5, -1.1),
                new Point(-0.9, -2),
                new Point(0.9, -2),
                new Point(1.5, -1.1),
                new Point(2, 0),
                new Point(2.4, 1.2),
                new Point(2.7, 2.4),
                new Point(5, 2.4),
                new Point(5, 4));
        List<SketchedSize> sizes = new ArrayList<>(
                List.of(SketchedSize.level(-3.2, new Point(-2, 0), new Point(2, 0), Optional.of(chord))));
        height.ifPresent(
                tip -> sizes.add(SketchedSize.upright(4, new Point(0.9, -2), new Point(2, 0), Optional.of(tip))));
        return new SketchPicture(
                new WorkedSketch(List.of(List.of(metal)), List.of(), List.of(), List.of(), sizes), spoken);
    }

    /** A rough surface with the cut-off and the length that is evaluated, five of it. */
    public static Picture profile(String cutoff, String evaluated, String spoken) {
        List<Point> metal = new ArrayList<>(List.of(new Point(0, 3)));
        IntStream.rangeClosed(0, PEAKS)
                .mapToObj(i -> new Point(LONG * i / PEAKS, i % 2 == 0 ? 0.5 : ROUGH * ((i * 5) % 7 - 6)))
                .forEach(metal::add);
        metal.add(new Point(LONG, 3));
        return new SketchPicture(
                new WorkedSketch(
                        List.of(List.of(metal)),
                        List.of(),
                        List.of(),
                        List.of(),
                        List.of(
                                SketchedSize.level(
                                        -1.6, new Point(0, 0.5), new Point(LONG / CUTOFFS, 0.5), Optional.of(cutoff)),
                                SketchedSize.level(4, new Point(0, 3), new Point(LONG, 3), Optional.of(evaluated)))),
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
