package org.tenthwise.app.picture;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
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

    private static final double SMALLER = 0.96;
    private static final int RINGED = 10;

    private final List<RunOutPicture> pictures;
    private final List<Drawing> rooms;

    /** @param rooms one for each of the pictures */
    RunOutLayout(List<RunOutPicture> pictures, List<Drawing> rooms) {
        this.pictures = pictures;
        this.rooms = rooms;
    }

    /**
     * @return how much could be shown: rings with words round them before rings under words, before words alone, and of
     *     words the more kinds
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
                .filter(ring -> ring.getKey().loosening)
                .map(Map.Entry::getValue)
                .max(Double::compare)
                .orElse(0.0);
        rings.values().removeIf(middle -> middle < WORTH * greatest);
        return rings;
    }

    /** The words first, and rings under them where there is room for every one. */
    private int underWords() {
        List<RunOutWords> words = IntStream.range(0, pictures.size())
                .mapToObj(i -> new RunOutWords(pictures.get(i), rooms.get(i)))
                .toList();
        int kinds = words.stream().mapToInt(RunOutWords::fitting).min().orElse(0);
        List<Drawing> rest = new ArrayList<>();
        List<Double> middles = new ArrayList<>();
        for (int i = 0; i < pictures.size(); i++) {
            Frame whole = rooms.get(i).frame();
            double below = words.get(i).draw(kinds);
            rest.add(rooms.get(i)
                    .inset(new Point(0, below), whole.sized(whole.width(), Math.max(0, whole.height() - below))));
            largest(i, rest.get(i), RunOutPicture.Around.NO_WORDS).ifPresent(middles::add);
        }
        boolean ringed = middles.size() == pictures.size();
        if (ringed) {
            draw(rest, RunOutPicture.Around.NO_WORDS, middles);
        }
        return ringed ? RINGED + kinds : kinds;
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
