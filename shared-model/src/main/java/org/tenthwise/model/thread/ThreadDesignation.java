package org.tenthwise.model.thread;

import java.util.Optional;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.words.Message;
import org.tenthwise.model.words.Refused;

/**
 * A screw thread as a drawing designates it, read: geometry, tolerance class, side, series.
 *
 * @param thread with the sizes its figures stand for
 * @param side the screw or the nut; absent only where the class is the same for both and nobody has said
 * @param series the series of ASME B1.1 written behind the pitch; absent for other forms and where it is left out
 * @param leftHand the limits are those of the right-hand thread
 */
public record ThreadDesignation(
        ScrewThread thread,
        ThreadClass threadClass,
        Optional<ThreadSide> side,
        Optional<String> series,
        boolean leftHand) {

    /**
     * @throws IllegalArgumentException if the class is for the other side or for another form, or there is no such
     *     series
     */
    public ThreadDesignation {
        thread = thread.nominal();
        if (threadClass.form() != thread.form()) {
            throw new Refused(
                    "model.thread-designation.class-class",
                    threadClass,
                    thread.form().key());
        }
        Optional<ThreadSide> given = side;
        threadClass
                .side()
                .filter(said -> given.isPresent() && given.get() != said)
                .ifPresent(said -> {
                    throw new Refused(
                            "model.thread-designation.class-class-threads",
                            threadClass,
                            said.key(),
                            given.get().key());
                });
        side = threadClass.side().or(() -> given);
        if (series.isPresent()) {
            requireSeries(thread, series.get());
        }
    }

    /**
     * Reads a designation as ISO 965-1, ISO 2904, ASME B1.1, B1.5 and B1.8 write them: {@code M10x1.5-6g},
     * {@code M20-6H} (coarse pitch), {@code 1/4-20 UNC-2A}, {@code #10-32 UNF-2B}, {@code Tr 40x14 P7-7e} (two starts),
     * {@code 3/8-12 ACME-2G}, {@code 1 1/2-8 STUB ACME-2G}; {@code LH} for a left-hand thread. A fraction may hang on a
     * hyphen: {@code 1-1/4-12 UNF-2A}, {@code 2-4-1/2 UNC-2A}.
     *
     * @throws IllegalArgumentException with a sentence that has the designation and what is wrong with it
     */
    public static ThreadDesignation read(String text) {
        return DesignationReader.read(text);
    }

    /** The same thread, known to be the screw or the nut. */
    public ThreadDesignation on(ThreadSide known) {
        return new ThreadDesignation(thread, threadClass, Optional.of(known), series, leftHand);
    }

    private static void requireSeries(ScrewThread thread, String series) {
        if (thread.form() != ThreadForm.UNIFIED) {
            throw new Refused("model.thread-designation.series-only", series);
        }
        if (!ThreadSeries.UNIFIED.contains(series)) {
            throw new Refused("model.thread-designation.series-one", series, ThreadSeries.UNIFIED);
        }
        Optional<String> listed = ThreadSeries.ofUnified(thread);
        boolean special = series.equals("UNS");
        if (!listed.map(series::equals).orElse(special)) {
            throw new Refused(
                    "model.thread-designation.series-thread",
                    series,
                    inches(thread.diameter()),
                    thread.threadsToTheInch().stripTrailingZeros().toPlainString(),
                    listed.map(name -> Message.of("model.thread-designation.listed", name))
                            .orElse(Message.of("model.thread-designation.special")));
        }
    }

    private static String inches(Length length) {
        return length.in(Unit.INCH).toPlainString() + " in";
    }
}
