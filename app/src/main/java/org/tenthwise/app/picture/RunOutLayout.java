package org.tenthwise.app.picture;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Lays out the ring of each section as large as it can be read, with as much around it as is worth its room. Around
 * each stands the same, so that what is said at one section is not looked for in vain at the other.
 */
final class RunOutLayout {

    /** Radius in the middle of the ring, at the line weights of the screen, under which nobody could read it. */
    private static final double LEGIBLE = 40;
    /** The same where the words stand over the ring, and it only has to show which way and which jaw. */
    private static final double LEGIBLE_UNDER_WORDS = 31;
    /** What stands around the ring may make it smaller down to this share; beyond, it gives way. */
    private static final double WORTH = 0.8;
    /** The same of two rings, which have half the room each. */
    private static final double WORTH_OF_TWO = 0.94;

    private static final double SMALLER = 0.96;
    private static final int RINGED = 10;
    /** Of the radius of a ring: what it tells is told the better the larger it is. */
    private static final int LARGEST_COUNTED = 1000;

    private static final double BESIDE_WORDS = 6;

    private final List<RunOutPicture> pictures;
    private final List<Drawing> rooms;

    /** @param rooms one for each of the pictures */
    RunOutLayout(List<RunOutPicture> pictures, List<Drawing> rooms) {
        this.pictures = pictures;
        this.rooms = rooms;
    }

    /**
     * @return how much could be shown: rings with words round them before rings under words, before words alone; of
     *     words the more kinds, and of rings under as many the larger
     */
    int draw() {
        List<Map<RunOutPicture.Around, Double>> rings = IntStream.range(0, pictures.size())
                .mapToObj(this::worthTheirRoom)
                .toList();
        Optional<RunOutPicture.Around> widest = Stream.of(RunOutPicture.Around.values())
                .filter(around -> rings.stream().allMatch(ring -> ring.containsKey(around)))
                .findFirst();
        widest.ifPresent(around ->
                draw(rooms, around, rings.stream().map(ring -> ring.get(around)).toList()));
        return widest.isPresent() ? LetterSize.ALL : underWords();
    }

    /** How large the smallest ring can be where nothing stands round it, from what there is room for: a radius. */
    double smallestRing() {
        return IntStream.range(0, pictures.size())
                .mapToDouble(i -> RunOutRing.largest(pictures.get(i), rooms.get(i), RunOutPicture.Around.NO_WORDS))
                .min()
                .orElse(0);
    }

    private void draw(List<Drawing> where, RunOutPicture.Around around, List<Double> middles) {
        for (int i = 0; i < pictures.size(); i++) {
            new RunOutRing(pictures.get(i), where.get(i), around, middles.get(i)).draw();
        }
    }

    /** With each choice of what stands around it, the middle radius of the ring. */
    private Map<RunOutPicture.Around, Double> worthTheirRoom(int which) {
        Map<RunOutPicture.Around, Double> rings = new EnumMap<>(RunOutPicture.Around.class);
        Stream.of(RunOutPicture.Around.values())
                .filter(around -> around.figures)
                .forEach(around ->
                        largest(which, rooms.get(which), around).ifPresent(middle -> rings.put(around, middle)));
        double greatest = rings.entrySet().stream()
                .filter(ring -> ring.getKey().loosening || pictures.size() > 1)
                .map(Map.Entry::getValue)
                .max(Double::compare)
                .orElse(0.0);
        double worth = pictures.size() > 1 ? WORTH_OF_TWO : WORTH;
        rings.values().removeIf(middle -> middle < worth * greatest);
        return rings;
    }

    /** As many kinds of words by the rings as leave them their room; words alone where one kind does not. */
    private int underWords() {
        int fitting = IntStream.range(0, pictures.size())
                .map(i -> new RunOutWords(pictures.get(i), rooms.get(i)).fitting())
                .min()
                .orElse(0);
        OptionalInt ringed = IntStream.iterate(fitting, kinds -> kinds > 0, kinds -> kinds - 1)
                .filter(kinds -> rings(byWords(kinds)).size() == pictures.size())
                .findFirst();
        int told = ringed.orElse(fitting);
        List<ByWords> where = byWords(told);
        where.forEach(one -> one.words().draw(told));
        ringed.ifPresent(
                kinds -> draw(where.stream().map(ByWords::ring).toList(), RunOutPicture.Around.NO_WORDS, rings(where)));
        return ringed.isPresent() ? (RINGED + told) * LARGEST_COUNTED + (int) smallest(rings(where)) : told;
    }

    /** Words of a section, and the room they leave its ring. */
    private record ByWords(RunOutWords words, Drawing ring) {}

    private static double smallest(List<Double> rings) {
        return rings.stream().min(Double::compare).orElse(0.0);
    }

    private List<Double> rings(List<ByWords> where) {
        return IntStream.range(0, pictures.size())
                .mapToObj(i -> largest(i, where.get(i).ring(), RunOutPicture.Around.NO_WORDS))
                .flatMap(Optional::stream)
                .toList();
    }

    private List<ByWords> byWords(int kinds) {
        return IntStream.range(0, pictures.size())
                .mapToObj(i -> byWords(pictures.get(i), rooms.get(i), kinds))
                .toList();
    }

    /** The words over the ring, or in a column beside it, whichever leaves it more. */
    private static ByWords byWords(RunOutPicture picture, Drawing room, int kinds) {
        Frame whole = room.frame();
        RunOutWords over = new RunOutWords(picture, room);
        double below = over.height(kinds);
        Drawing under =
                room.inset(new Point(0, below), whole.sized(whole.width(), Math.max(0, whole.height() - below)));
        double column = over.column(kinds);
        RunOutWords aside = new RunOutWords(picture, room.inset(new Point(0, 0), whole.sized(column, whole.height())));
        double clear = column + room.lettered(BESIDE_WORDS);
        Drawing beside =
                room.inset(new Point(clear, 0), whole.sized(Math.max(0, whole.width() - clear), whole.height()));
        boolean fits = aside.height(kinds) <= whole.height();
        return fits && ring(picture, beside) > ring(picture, under)
                ? new ByWords(aside, beside)
                : new ByWords(over, under);
    }

    private static double ring(RunOutPicture picture, Drawing room) {
        return RunOutRing.largest(picture, room, RunOutPicture.Around.NO_WORDS);
    }

    private Optional<Double> largest(int which, Drawing room, RunOutPicture.Around around) {
        RunOutPicture picture = pictures.get(which);
        double legible = (around == RunOutPicture.Around.NO_WORDS ? LEGIBLE_UNDER_WORDS : LEGIBLE)
                * room.frame().lineScale();
        return Stream.iterate(
                        RunOutRing.largest(picture, room, around),
                        middle -> middle >= legible,
                        middle -> middle * SMALLER)
                .filter(middle -> new RunOutRing(picture, room.rehearsal(), around, middle).draw())
                .findFirst();
    }
}
