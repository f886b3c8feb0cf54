package org.tenthwise.app.picture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.tenthwise.app.text.RunOutAtHand;
import org.tenthwise.model.plan.Answer;
import org.tenthwise.model.plan.Holding;
import org.tenthwise.model.words.Words;

/**
 * Run-outs, plugs and threads with readings as they come, in rooms as they come: nothing lies on anything, and what
 * counts less is never there where what counts more was left out.
 */
class RandomKindsTest {

    private static final long HOW_MANY = 40;
    private static final int ROOMS_EACH = 6;
    private static final List<Map.Entry<String, Frame>> ROOMS =
            List.copyOf(Frames.rooms().entrySet());

    private final List<String> faults = new ArrayList<>();

    @Test
    void roundARingAndOverItWhatCountsMoreComesFirst() {
        LongStream.range(0, HOW_MANY).forEach(seed -> {
            RunOutAtHand read = runOut(new Random(seed));
            Picture picture = new Pictures(Words.of(Locale.ENGLISH))
                    .of(read.sheet(), read.line())
                    .orElseThrow();
            inSomeRooms(seed, (room, frame) -> {
                RecordingPen pen = RecordingPen.of(picture, frame);
                report(seed, room, pen, pen.faults(frame));
                report(seed, room, pen, Ranks.faultsOf(picture, pen));
            });
        });
        assertNoFaults();
    }

    /** Of four jaws, in every room; where a word finds no place at its own jaw, it is left to the advice. */
    @Test
    void aWordOfAMoveStandsNearestToItsOwnJaw() {
        List<String> worded = new ArrayList<>();
        LongStream.range(0, HOW_MANY / 5).forEach(seed -> {
            Random random = new Random(seed);
            RunOutAtHand read = seed % 3 == 0
                    ? RunOutAtHand.one(Holding.FOUR_JAW).near(turn(random, 4, 0.06))
                    : RunOutAtHand.two(Holding.FOUR_JAW)
                            .near(turn(random, 8, 0.06))
                            .far(turn(random, 8, 0.06));
            Picture picture = new Pictures(Words.of(Locale.ENGLISH))
                    .of(read.sheet(), read.line())
                    .orElseThrow();
            ROOMS.forEach(room -> {
                RecordingPen pen = RecordingPen.of(picture, room.getValue());
                report(seed, room.getKey(), pen, OwnJaw.strayed(picture, pen));
                pen.texts().stream().filter("loosen"::equals).forEach(worded::add);
            });
        });
        assertNoFaults();
        assertTrue(worded.size() > HOW_MANY, () -> worded.size() + " words looked at");
    }

    @Test
    void besideAPlugWhatTheHandFoundComesBeforeTheSizes() {
        LongStream.range(0, HOW_MANY).forEach(seed -> {
            PlugPicture picture = plug(new Random(seed));
            inSomeRooms(seed, (room, frame) -> {
                RecordingPen pen = RecordingPen.of(picture, frame);
                report(seed, room, pen, new StripOracle(picture.strip(), pen, frame).faults());
                report(seed, room, pen, Ranks.faultsOf(picture, pen));
            });
        });
        assertNoFaults();
    }

    @Test
    void besideAThreadItsFiguresComeBeforeTheWiresThatWouldDo() {
        LongStream.range(0, HOW_MANY).forEach(seed -> {
            WirePicture picture = thread(new Random(seed));
            inSomeRooms(seed, (room, frame) -> {
                RecordingPen pen = RecordingPen.of(picture, frame);
                report(
                        seed,
                        room,
                        pen,
                        picture.strip()
                                .map(strip -> new StripOracle(strip, pen, frame).faults())
                                .orElseGet(() -> pen.faults(frame)));
                report(seed, room, pen, Ranks.faultsOf(picture, pen));
            });
        });
        assertNoFaults();
    }

    private interface InRoom {
        void look(String room, Frame frame);
    }

    private static void inSomeRooms(long seed, InRoom look) {
        Random random = new Random(-seed - 1);
        IntStream.range(0, ROOMS_EACH).forEach(i -> {
            Map.Entry<String, Frame> room = ROOMS.get(random.nextInt(ROOMS.size()));
            look.look(room.getKey(), room.getValue());
        });
    }

    private void report(long seed, String room, RecordingPen pen, List<String> found) {
        if (!found.isEmpty()) {
            faults.add("seed %d, %s: %s in %s".formatted(seed, room, found, pen.texts()));
        }
    }

    private void assertNoFaults() {
        assertEquals(List.of(), faults.stream().limit(10).toList(), () -> faults.size() + " layouts with faults");
    }

    /** Anything from true to far out, swept, by angle, half read, in one section or two. */
    private static RunOutAtHand runOut(Random random) {
        Holding holding = Holding.values()[random.nextInt(Holding.values().length)];
        double most = List.of(0.004, 0.02, 0.06, 0.4).get(random.nextInt(4));
        if (random.nextInt(3) == 0) {
            RunOutAtHand one = RunOutAtHand.one(holding);
            return random.nextBoolean() ? one.nearSwept(figure(most), figure(-most)) : one.near(turn(random, 4, most));
        }
        RunOutAtHand two = RunOutAtHand.two(holding);
        boolean swept = random.nextBoolean();
        if (swept) {
            two.nearSwept(figure(most), figure(-most)).farSwept(figure(most / 3), figure(-most));
        }
        if (!swept || random.nextBoolean()) {
            two.near(turn(random, random.nextInt(4) == 0 ? 3 : 8, most));
            two.far(turn(random, random.nextInt(4) == 0 ? 0 : 8, most / 2));
        }
        return two;
    }

    /** Off centre to some side, with some form. */
    private static String[] turn(Random random, int places, double most) {
        double off = random.nextDouble() * most;
        double side = random.nextDouble() * 2 * Math.PI;
        double form = random.nextDouble() * (most - off) / 2;
        return IntStream.range(0, places)
                .mapToObj(i -> figure(off * Math.cos(2 * Math.PI * i / Math.max(4, places) - side)
                        + form * (random.nextDouble() - 0.5)))
                .toArray(String[]::new);
    }

    private static String figure(double value) {
        return figure(value, 3);
    }

    private static String figure(double value, int places) {
        return BigDecimal.valueOf(value).setScale(places, RoundingMode.HALF_UP).toPlainString();
    }

    private static PlugPicture plug(Random random) {
        Staged staged = Staged.carrier()
                .master(13, "30.000")
                .atTwenty(13)
                .reads(13, some(random, random.nextBoolean() ? 4 : random.nextInt(5), 0.0, 0.03));
        double plug = List.of(29.99, 30.0, 30.02, 29.8).get(random.nextInt(4));
        staged.micrometer(14).reads(14, some(random, random.nextInt(3), plug, 0.01));
        List<Answer> answers = List.of(Answer.FREELY, Answer.WITH_DRAG, Answer.NOT_AT_ALL);
        return (PlugPicture)
                (random.nextInt(4) == 0 ? staged : staged.feels(14, answers.get(random.nextInt(3)))).picture(14);
    }

    private static WirePicture thread(Random random) {
        double over = List.of(40.75, 40.6, 41.4, 41.0).get(random.nextInt(4));
        Staged staged = Staged.carrier()
                .wires(21, "3.620")
                .reads(21, some(random, random.nextInt(4), over, random.nextBoolean() ? 0.01 : 0.3));
        return (WirePicture) staged.picture(21);
    }

    private static String[] some(Random random, int count, double from, double width) {
        return Stream.generate(() -> figure(from + random.nextDouble() * width))
                .limit(count)
                .toArray(String[]::new);
    }
}
