package org.tenthwise.app.picture;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.tenthwise.model.plan.Feature;
import org.tenthwise.model.plan.Mark;
import org.tenthwise.model.plan.Outline;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.tolerance.Limit;
import org.tenthwise.model.words.Words;

/**
 * A size in two magnifications: the feature as a section, and beside it the strip, which is its wall magnified with one
 * column for every reading or earlier cut, limits written as sizes, and the distance as a dimension.
 *
 * @param feature absent for what has no section and is not cut
 * @param lower least size allowed; one of the two limits may be absent
 * @param guardBand zero for none
 * @param columns earlier cuts first, then the readings in the order they are taken
 * @param judged the size that is judged; absent before there is one
 * @param distance from the judged size to the limit that counts
 * @param cut the cut that is proposed; absent where none is
 * @param mate surface of what goes in, its metal below it; absent where nothing does
 * @param isHeld whether it is read in the jaws; an outside diameter that was let go is drawn without them
 * @param beside what stands beside the strip
 */
public record SizePicture(
        Optional<Feature> feature,
        Unit unit,
        Optional<Sized> lower,
        Optional<Sized> upper,
        Length guardBand,
        List<ReadingColumn> columns,
        Optional<Sized> judged,
        Optional<Distance> distance,
        Optional<Cut> cut,
        Optional<Length> mate,
        boolean isHeld,
        Beside beside,
        Said said,
        String spoken)
        implements Picture {

    /** A size with the figures that write it. */
    public record Sized(Length size, String figures) {}

    /** What a column of the strip stands for. */
    public enum Kind {
        /** The size after an earlier cut. */
        EARLIER,
        TAKEN,
        /** How far all readings lie apart: a figure of the strip, no size that the part has anywhere. */
        SPREAD,
        STRUCK_OUT,
        /** Still to be taken. */
        MISSING
    }

    /**
     * One column.
     *
     * @param label short, under the column; {@code group} under all columns that share it
     * @param size absent while it is missing
     * @param decides whether this is the reading that is judged
     */
    public record ReadingColumn(
            Kind kind,
            String label,
            String group,
            Optional<Sized> size,
            boolean decides,
            Optional<Sized> depth,
            Optional<BigDecimal> angle) {

        /** One at no depth and no angle. */
        public static ReadingColumn of(Kind kind, String label, String group, Optional<Sized> size, boolean decides) {
            return new ReadingColumn(kind, label, group, size, decides, Optional.empty(), Optional.empty());
        }
    }

    public record Distance(Length length, Limit from, String figures) {}

    /**
     * A cut that is proposed: the same comes off everywhere.
     *
     * @param aim where the middle of the sizes is wanted
     * @param off what comes off the size; more than zero
     * @param figures the one figure it is known by, as the register counts it
     */
    public record Cut(Sized aim, Length off, String figures) {}

    /**
     * Words on the picture.
     *
     * @param above what a size above the upper limit is: past size, or still to cut
     * @param below what a size below the lower limit is
     * @param scale from the step of the ticks as figures to "1 line 0.001"
     */
    public record Said(String above, String below, String nextCut, UnaryOperator<String> scale) {

        /** Of a size that is no size of the work, and not cut. */
        public static Said of(Words words, String above, String below) {
            return new Said(above, below, words.say("picture.next-cut"), step -> words.say("picture.scale", step));
        }

        /** Of a feature; what it means to lie beyond a limit is only said where it may be cut again. */
        public static Said of(Words words, Feature feature, boolean cutAgain) {
            String still = cutAgain ? words.say("picture.still-to-cut") : "";
            String past = cutAgain ? words.say("picture.past-size") : "";
            return feature.isOutside() ? of(words, still, past) : of(words, past, still);
        }
    }

    /** What stands beside the strip. */
    public sealed interface Beside {

        /** The feature cut open. */
        Beside CUT_OPEN = new CutOpen();

        /** Nothing: the plan does not say what it looks like. */
        Beside NOTHING = new Nothing();

        record CutOpen() implements Beside {}

        /** A drilled hole cut open, with the point the drill left beyond the depth. */
        record Drilled(BigDecimal pointAngle) implements Beside {}

        /** A bore or an outside with what lies before and behind it. */
        record Turned(TurnedStretch stretch) implements Beside {}

        /**
         * A length along the axis, where it is on the part.
         *
         * @param floor whether it goes down to a floor
         * @param pointAngle of the drill that made the floor
         */
        record Along(Outline outline, Mark mark, OutlineSpan span, boolean floor, Optional<BigDecimal> pointAngle)
                implements Beside {}

        /** The depth of a thread. */
        record ThreadDepth(Outline.ThreadedLength thread) implements Beside {}

        /** The depth of a pocket. */
        record PocketFloor(Outline outline, Outline.Pocket pocket) implements Beside {}

        /** How wide a pocket is, or how long. */
        record InPocket(Outline outline, Outline.Pocket pocket, boolean across) implements Beside {}

        /** The part with the spot in hand. */
        record Part(OutlinePicture part, boolean floor) implements Beside {}

        /** How a size is worked out of what is read. */
        record Worked(WorkedSketch sketch) implements Beside {}

        record Nothing() implements Beside {}

        /** Whether it shows on which side of the size the metal lies. */
        default boolean showsMetal() {
            return !(this instanceof Nothing
                    || this instanceof Worked
                    || this instanceof Part part && !part.floor()
                    || this instanceof Along along && !along.floor());
        }
    }

    @Override
    public boolean isMoreThanOneSize() {
        return feature.isPresent()
                || mate.isPresent()
                || !(beside instanceof Beside.Nothing)
                || columns.stream()
                                .filter(column -> column.kind() != Kind.SPREAD)
                                .count()
                        > 1;
    }

    /** Marks the spot of the wall and the strip that magnifies it. */
    static final String DETAIL = "K";

    static final double DETAIL_TEXT = 22;

    public SizePicture {
        columns = List.copyOf(columns);
    }

    /** One that is read in the jaws, its feature cut open. */
    public SizePicture(
            Feature feature,
            Unit unit,
            Optional<Sized> lower,
            Optional<Sized> upper,
            Length guardBand,
            List<ReadingColumn> columns,
            Optional<Sized> judged,
            Optional<Distance> distance,
            Optional<Cut> cut,
            Optional<Length> mate,
            Said said,
            String spoken) {
        this(
                Optional.of(feature),
                unit,
                lower,
                upper,
                guardBand,
                columns,
                judged,
                distance,
                cut,
                mate,
                true,
                Beside.CUT_OPEN,
                said,
                spoken);
    }

    @Override
    public void draw(Drawing drawing) {
        if (beside instanceof Beside.Nothing) {
            SectionAndStrip.strip(this, drawing);
        } else {
            SectionAndStrip.draw(this, drawing, hasDetail(), lettersItsSection(), this::beside);
        }
    }

    private void beside(Drawing drawing, Box room, StripScale scale) {
        SizePicture shown = isSpread() ? unread() : this;
        if (beside instanceof Beside.Part onIt) {
            Frame whole = drawing.frame();
            onIt.part()
                    .draw(drawing.inset(new Point(room.left(), room.top()), whole.sized(room.width(), room.height())));
        } else if (beside instanceof Beside.Along along) {
            new LengthSection(shown, along, drawing, room).draw();
        } else if (beside instanceof Beside.ThreadDepth groove) {
            new GrooveSection(shown, groove.thread(), drawing, room).draw();
        } else if (beside instanceof Beside.PocketFloor pocket) {
            new PocketSection(shown, pocket, drawing, room).draw();
        } else if (beside instanceof Beside.Worked worked) {
            new WorkedSection(worked.sketch(), drawing, room).draw();
        } else if (beside instanceof Beside.InPocket pocket) {
            new PocketView(shown, pocket, drawing, room).draw();
        } else {
            cutOpen(shown, drawing, room, scale);
        }
    }

    private void cutOpen(SizePicture shown, Drawing drawing, Box room, StripScale scale) {
        Feature of = feature.orElseThrow();
        switch (of.form()) {
            case TURNED, HOLE, FACES -> {
                if (of.isInside()) {
                    new WallSection(shown, drawing, room, scale).draw();
                } else {
                    new ShaftSection(shown, drawing, room, scale).draw();
                }
            }
            case LENGTH -> new FloorSection(shown, drawing, room, scale).draw();
            case CHAMFER, RADIUS -> new EdgeSection(shown, drawing, room).draw();
        }
    }

    /** Whether several sizes are written into its section, which needs more width the larger the letters are. */
    private boolean lettersItsSection() {
        boolean several = columns.stream()
                        .filter(column -> column.kind() == Kind.TAKEN || column.kind() == Kind.MISSING)
                        .count()
                > 1;
        return several && (beside instanceof Beside.CutOpen || beside instanceof Beside.Turned);
    }

    /** The cylinder it is of; absent where the outline has none. */
    Optional<TurnedStretch> stretch() {
        return beside instanceof Beside.Turned turned ? Optional.of(turned.stretch()) : Optional.empty();
    }

    /** The lower one first. */
    List<Sized> limits() {
        return Stream.of(lower, upper).flatMap(Optional::stream).toList();
    }

    private boolean isSpread() {
        return columns.stream().anyMatch(column -> column.kind() == Kind.SPREAD);
    }

    /** The same before anything was read, so that a section shows no spread as a size. */
    private SizePicture unread() {
        ReadingColumn missing = ReadingColumn.of(Kind.MISSING, "", "", Optional.empty(), false);
        return new SizePicture(
                feature,
                unit,
                lower,
                upper,
                guardBand,
                List.of(missing),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                mate,
                isHeld,
                beside,
                said,
                spoken);
    }

    private boolean hasDetail() {
        boolean wall =
                feature.filter(of -> of.form().hasTwoSides() && of.isInside()).isPresent();
        return wall && !(beside instanceof Beside.InPocket) && deciding().isPresent();
    }

    /** Whether metal lies on the side of greater sizes: beyond the wall of a bore, a slot, a floor. */
    boolean metalAbove() {
        return feature.filter(Feature::isInside).isPresent();
    }

    /**
     * Whether it is known on which side of a size the metal lies: of a length with no floor only where the plan lets it
     * be cut, of a spread never.
     */
    boolean showsMetal(ReadingColumn column) {
        return column.kind() != Kind.SPREAD
                && feature.filter(of -> of.side().isEmpty()).isEmpty()
                && (beside.showsMetal() || !said.below().isEmpty());
    }

    /** What a size is after the cut that is proposed; itself where none is. */
    Length afterCut(Length size) {
        return cut.map(proposed -> metalAbove() ? size.plus(proposed.off()) : size.minus(proposed.off()))
                .orElse(size);
    }

    Stream<ReadingColumn> taken() {
        return columns.stream().filter(column -> column.kind() == Kind.TAKEN);
    }

    Optional<ReadingColumn> deciding() {
        return taken().filter(ReadingColumn::decides).findFirst();
    }
}
