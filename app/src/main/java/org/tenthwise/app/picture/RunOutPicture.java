package org.tenthwise.app.picture;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.tenthwise.model.quantity.Length;

/**
 * Run-out drawn round: the limit as a ring, the readings on it by their angles, the circle fitted to them, where the work
 * has to go, and what to do at which jaw. Angles count clockwise from the top. Radially everything is drawn large.
 *
 * @param limit    greatest movement allowed, with its words
 * @param movement movement found so far, with its words; absent before there is one
 * @param readings by angle, taken or still to take; empty for a sweep
 * @param sweep    highest and lowest over a full turn, where it was read so
 * @param fit      absent where no circle could be fitted
 * @param notes    lines to read beside the ring
 */
public record RunOutPicture(Sized limit, Optional<Sized> movement, List<Reading> readings, Optional<Sweep> sweep,
                            Optional<Fit> fit, List<Jaw> jaws, List<String> notes, String spoken) implements Picture {

    /** A length and the words that say it. */
    public record Sized(Length length, String words) {
    }

    /**
     * A place at the circumference.
     *
     * @param value    absent while it is still to be read
     * @param extreme  whether it is the highest or the lowest
     */
    public record Reading(BigDecimal angle, String angleWords, Optional<Sized> value, boolean extreme) {
    }

    /** Highest and lowest over a full turn; one may still be missing. */
    public record Sweep(Optional<Sized> highest, Optional<Sized> lowest, String highestWords, String lowestWords) {
    }

    /**
     * The fitted circle.
     *
     * @param mean   reading it would give if it ran true
     * @param highAt degrees where it stands furthest out
     * @param words  what the eccentricity is, and how much: two short lines
     */
    public record Fit(Length mean, Length eccentricity, BigDecimal highAt, List<String> words) {
        public Fit {
            words = List.copyOf(words);
        }
    }

    /** A jaw; {@code in} is more than nought where it goes in, less where it backs out, nought where it stays. */
    public record Jaw(String number, BigDecimal at, Length in, String words) {
    }

    /** The ring gives way to words and figures down to this share of the room. */
    private static final double LEAST_SHARE = 0.5;
    /** Under this share the notes give way instead. */
    private static final double WORTH_ITS_NOTES = 0.75;

    public RunOutPicture {
        readings = List.copyOf(readings);
        jaws = List.copyOf(jaws);
        notes = List.copyOf(notes);
    }

    @Override
    public void draw(Drawing drawing) {
        RunOutTable table = new RunOutTable(this, drawing);
        Box frame = drawing.frame().box();
        Box above = new Box(frame.left(), frame.top(), frame.right(), frame.bottom() - table.height());
        table.draw(frame.bottom() - table.height());
        RunOutPicture shown = shareFor(drawing, above, WORTH_ITS_NOTES).isPresent() ? this : withoutNotes();
        double share = shown.shareFor(drawing, above, LEAST_SHARE).orElse(LEAST_SHARE);
        new RunOutRing(shown, drawing, above, share).draw();
    }

    /** The greatest share of the room the ring can take so that everything else still fits; absent under {@code least}. */
    private Optional<Double> shareFor(Drawing drawing, Box room, double least) {
        return Stream.iterate(1.0, share -> share >= least, share -> share - 0.06)
                .filter(share -> new RunOutRing(this, drawing.rehearsal(), room, share).draw()).findFirst();
    }

    private RunOutPicture withoutNotes() {
        return new RunOutPicture(limit, movement, readings, sweep, fit, jaws, List.of(), spoken);
    }

    /** Everything read so far, as lengths. */
    List<Length> taken() {
        return Stream.concat(readings.stream().map(Reading::value),
                        sweep.stream().flatMap(turn -> Stream.of(turn.highest(), turn.lowest())))
                .flatMap(Optional::stream).map(Sized::length).toList();
    }
}
