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

    /**
     * A jaw.
     *
     * @param in    more than nought where it goes in or gets a shim, less where it backs out, nought where it stays
     * @param words how far, to stand beside the jaw; empty where it stays
     * @param told  the same with the jaw's number, to stand by itself
     */
    public record Jaw(String number, BigDecimal at, Length in, String words, String told) {
    }

    /** What stands around the ring, from everything to what cannot be left out. */
    enum Around {
        ALL(true, true, true), NO_TABLE(false, true, true), NO_NOTES(false, false, true), LEAST(false, false, false);

        final boolean table;
        final boolean notes;
        final boolean offCentre;

        Around(boolean table, boolean notes, boolean offCentre) {
            this.table = table;
            this.notes = notes;
            this.offCentre = offCentre;
        }
    }

    /** A ring that finds room, with what stands around it. */
    private record Fitting(Around around, double middle) {
    }

    /** Radius in the middle of the ring, at the line weights of the screen, under which nobody could read it. */
    private static final double LEGIBLE = 40;
    /** What stands around the ring may make it smaller down to this share; beyond, it gives way. */
    private static final double WORTH = 0.8;
    private static final double SMALLER = 0.96;

    public RunOutPicture {
        readings = List.copyOf(readings);
        jaws = List.copyOf(jaws);
        notes = List.copyOf(notes);
    }

    @Override
    public void draw(Drawing drawing) {
        List<Fitting> fitting = Stream.of(Around.values()).flatMap(around -> largest(drawing, around).stream()).toList();
        double greatest = fitting.stream().mapToDouble(Fitting::middle).max().orElse(0);
        fitting.stream().filter(ring -> ring.middle() >= WORTH * greatest).findFirst().ifPresentOrElse(
                ring -> new RunOutRing(this, drawing, ring.around(), ring.middle()).draw(), () -> new RunOutWords(this, drawing).draw());
    }

    private Optional<Fitting> largest(Drawing drawing, Around around) {
        double legible = LEGIBLE * drawing.frame().lineScale();
        return Stream.iterate(RunOutRing.largest(this, drawing, around), middle -> middle >= legible, middle -> middle * SMALLER)
                .filter(middle -> new RunOutRing(this, drawing.rehearsal(), around, middle).draw()).findFirst()
                .map(middle -> new Fitting(around, middle));
    }

    /** Everything read so far, as lengths. */
    List<Length> taken() {
        return Stream.concat(readings.stream().map(Reading::value),
                        sweep.stream().flatMap(turn -> Stream.of(turn.highest(), turn.lowest())))
                .flatMap(Optional::stream).map(Sized::length).toList();
    }
}
