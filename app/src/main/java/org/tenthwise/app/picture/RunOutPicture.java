package org.tenthwise.app.picture;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.words.Words;

/**
 * Run-out drawn round: the limit as a ring, the readings on it by their angles, the circle fitted to them, where the
 * work has to go, and what to do at which jaw. Angles count clockwise from the top. Radially everything is drawn large.
 *
 * @param limit greatest movement allowed, with its words
 * @param movement movement found so far, with its words; absent before there is one
 * @param readings by angle, taken or still to take; empty for a sweep
 * @param sweep highest and lowest over a full turn, where it was read so
 * @param fit absent where no circle could be fitted
 * @param hints what else there is round the ring
 * @param notes lines to read beside the ring
 */
public record RunOutPicture(
        Sized limit,
        Optional<Sized> movement,
        List<Reading> readings,
        Optional<Sweep> sweep,
        Optional<Fit> fit,
        List<Jaw> jaws,
        Hints hints,
        List<String> notes,
        String spoken)
        implements Picture {

    /** A length and the words that say it. */
    public record Sized(Length length, String words) {}

    /**
     * A place at the circumference.
     *
     * @param value absent while it is still to be read
     * @param extreme whether it is the highest or the lowest
     */
    public record Reading(BigDecimal angle, String angleWords, Optional<Sized> value, boolean extreme) {}

    /** Highest and lowest over a full turn; one may still be missing. */
    public record Sweep(Optional<Sized> highest, Optional<Sized> lowest, String highestWords, String lowestWords) {}

    /**
     * The fitted circle.
     *
     * @param mean reading it would give if it ran true
     * @param highAt degrees where it stands furthest out
     * @param words what the eccentricity is, and how much: two short lines
     */
    public record Fit(Length mean, Length eccentricity, BigDecimal highAt, List<String> words) {
        public Fit {
            words = List.copyOf(words);
        }

        public static Fit of(Words words, Length mean, Length eccentricity, BigDecimal highAt, String figures) {
            return new Fit(mean, eccentricity, highAt, List.of(words.say("picture.off-centre"), figures));
        }
    }

    /**
     * A jaw.
     *
     * @param in more than zero where it goes in or gets a shim, less where it backs out, zero where it stays
     * @param words how far, to stand beside the jaw; empty where it stays
     * @param told the same with the jaw's number, to stand by itself
     */
    public record Jaw(String number, BigDecimal at, Length in, String words, String told) {

        /** One that stays, and says nothing. */
        public static Jaw still(int number, BigDecimal at) {
            return new Jaw(String.valueOf(number), at, Length.ZERO, "", "");
        }

        /** @param move how far, in words */
        public static Jaw moved(Words words, int number, BigDecimal at, Length in, String move) {
            return new Jaw(String.valueOf(number), at, in, move, words.say("picture.jaw.told", number, move));
        }
    }

    /**
     * The way from one place to the next.
     *
     * @param from degrees
     * @param to degrees, less than a turn on
     */
    public record Way(BigDecimal from, BigDecimal to, String words) {}

    /** Where a soft mallet taps the work, with how far. */
    public record Tap(BigDecimal at, String words) {}

    /**
     * What else there is round the ring.
     *
     * @param farOut where no jaw grips: their numbers only say which side is which
     */
    public record Hints(boolean farOut, Optional<Way> way, Optional<Tap> tap) {

        public static final Hints NONE = new Hints(false, Optional.empty(), Optional.empty());
    }

    /** What stands around the ring, from everything to what cannot be left out. */
    enum Around {
        ALL(true, true, true, true, true),
        NO_TABLE(false, true, true, true, true),
        NO_NOTES(false, false, true, true, true),
        LEAST(false, false, false, true, true),
        /** Nothing at the jaws that are only loosened: the advice beside the picture says which. */
        NO_LOOSENING(false, false, false, false, true),
        /** The words stand over the ring, and none round it. */
        NO_WORDS(false, false, false, false, false);

        final boolean table;
        final boolean notes;
        final boolean offCentre;
        final boolean loosening;
        final boolean figures;

        Around(boolean table, boolean notes, boolean offCentre, boolean loosening, boolean figures) {
            this.table = table;
            this.notes = notes;
            this.offCentre = offCentre;
            this.loosening = loosening;
            this.figures = figures;
        }
    }

    public RunOutPicture {
        readings = List.copyOf(readings);
        jaws = List.copyOf(jaws);
        notes = List.copyOf(notes);
    }

    @Override
    public void draw(Drawing drawing) {
        LetterSize.draw(drawing, own -> new RunOutLayout(List.of(this), List.of(own)).draw());
    }

    /** The same where its movement is told elsewhere. */
    RunOutPicture withoutMovement() {
        return new RunOutPicture(limit, Optional.empty(), readings, sweep, fit, jaws, hints, notes, spoken);
    }

    /** Everything read so far, as lengths. */
    List<Length> taken() {
        return Stream.concat(points().stream(), swept().stream()).toList();
    }

    private List<Length> points() {
        return readings.stream()
                .map(Reading::value)
                .flatMap(Optional::stream)
                .map(Sized::length)
                .toList();
    }

    /**
     * Highest and lowest over the turn, as far as they were read. Where the indicator was set anew in between, so that
     * the points do not lie within them, they are laid about the middle of the points: what counts of them is how far
     * they are apart.
     */
    List<Length> swept() {
        List<Length> read = sweep.stream()
                .flatMap(turn -> Stream.of(turn.highest(), turn.lowest()))
                .flatMap(Optional::stream)
                .map(Sized::length)
                .toList();
        List<Length> points = points();
        if (read.size() < 2
                || points.isEmpty()
                || !Length.greatest(points).isAbove(read.get(0))
                        && !Length.least(points).isBelow(read.get(1))) {
            return read;
        }
        Length anew = middle(points).minus(middle(read));
        return read.stream().map(anew::plus).toList();
    }

    private static Length middle(List<Length> lengths) {
        return Length.greatest(lengths).plus(Length.least(lengths)).half();
    }
}
