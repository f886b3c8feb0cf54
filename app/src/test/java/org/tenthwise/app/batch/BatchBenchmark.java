package org.tenthwise.app.batch;

import static java.nio.charset.StandardCharsets.UTF_8;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.PrintStream;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.tenthwise.app.reference.PublishedCase;
import org.tenthwise.app.reference.PublishedCases;
import org.tenthwise.app.reference.Topic;
import org.tenthwise.app.sums.Sum;
import org.tenthwise.app.sums.SumDescription;
import org.tenthwise.app.sums.SumInput;
import org.tenthwise.app.sums.SumReply;
import org.tenthwise.app.sums.SumResult;
import org.tenthwise.app.sums.SumValue;
import org.tenthwise.app.sums.Sums;
import org.tenthwise.app.sums.handbook.Handbook;

/**
 * How much longer a batch takes than reading and writing its JSON alone, and whether memory stays level. The lines are
 * the published cases, shuffled, one after the other again and again, with one garbled line in fifty; the same lines
 * are answered with an answer that lies ready for each sum, turn and turn about. Heap is what is in use after the
 * collector was asked to run.
 *
 * <p>After {@code mvn -q package -DskipTests}, from the top of the repository:
 *
 * <pre>java -Xmx96m -cp app/target/tenthwise.jar:app/target/test-classes org.tenthwise.app.batch.BatchBenchmark 1000000
 * </pre>
 *
 * <p>With {@code lines} behind the number, the lines are written to standard output instead, to pipe them into
 * {@code compute}.
 */
final class BatchBenchmark {

    private static final int GARBLED_ONE_IN = 50;
    private static final int WARM_UP = 30_000;
    private static final int TURNS = 10;
    private static final int SLOWEST = 5;
    private static final JsonFactory JSON = new JsonFactory();

    private BatchBenchmark() {}

    public static void main(String[] arguments) throws IOException {
        int lines = arguments.length == 0 ? 1_000_000 : Integer.parseInt(arguments[0]);
        List<PublishedCase> cases = new ArrayList<>();
        Arrays.stream(Topic.values()).forEach(topic -> cases.addAll(PublishedCases.of(topic)));
        Collections.shuffle(cases, new Random(1));
        List<String> tails = cases.stream().map(BatchBenchmark::tail).toList();
        if (arguments.length > 1) {
            new Lines(tails, lines).transferTo(System.out);
            return;
        }
        PrintStream to = System.out;
        Batch computing = new Batch(Handbook.sums());
        Batch ready = new Batch(ready(cases));
        computing.run(new Lines(tails, WARM_UP), OutputStream.nullOutputStream());
        ready.run(new Lines(tails, WARM_UP), OutputStream.nullOutputStream());
        Counted output = new Counted();
        Counted same = new Counted();
        List<Long> heap = new ArrayList<>();
        double compute = 0;
        double parse = 0;
        long bytes = 0;
        for (int turn = 0; turn < TURNS; turn++) {
            Lines input = new Lines(tails, lines / TURNS);
            compute += seconds(() -> computing.run(input, output));
            parse += seconds(() -> ready.run(new Lines(tails, lines / TURNS), same));
            bytes += input.bytes;
            heap.addAll(input.heap);
        }
        to.printf(
                "%,d lines of %,d cases and %d sums, %,d bytes in%n",
                output.lines, cases.size(), calcs(cases).size(), bytes);
        to.printf(
                "computed:             %.1f s, %,.0f lines/s, %,d bytes out%n", compute, lines / compute, output.bytes);
        to.printf("read and written only: %.1f s, %,.0f lines/s, %,d bytes out%n", parse, lines / parse, same.bytes);
        to.printf("ratio: %.2f%n", compute / parse);
        to.printf("heap in use at start, middle and end of each turn: %s kB%n", heap);
        slowest(cases).forEach(to::println);
    }

    private interface Work {
        void run() throws IOException;
    }

    /** Of the processor, so that whatever else runs counts for nothing. */
    private static double seconds(Work work) throws IOException {
        ThreadMXBean clock = ManagementFactory.getThreadMXBean();
        long start = clock.getCurrentThreadCpuTime();
        work.run();
        return (clock.getCurrentThreadCpuTime() - start) / 1e9;
    }

    private static Set<String> calcs(List<PublishedCase> cases) {
        Set<String> calcs = new LinkedHashSet<>();
        cases.forEach(one -> calcs.add(one.calc()));
        return calcs;
    }

    /** The sums that take longest, each over its own cases. */
    private static List<String> slowest(List<PublishedCase> cases) throws IOException {
        Sums sums = Handbook.sums();
        Map<String, Double> micros = new LinkedHashMap<>();
        for (String calc : calcs(cases)) {
            List<PublishedCase> own =
                    cases.stream().filter(one -> one.calc().equals(calc)).toList();
            int times = 1 + 200 / own.size();
            double seconds = seconds(() -> {
                for (int i = 0; i < times; i++) {
                    own.forEach(one -> sums.ask(calc, SumInput.written(one.given())));
                }
            });
            micros.put(calc, seconds * 1e6 / times / own.size());
        }
        return micros.entrySet().stream()
                .sorted(Map.Entry.comparingByValue(Comparator.reverseOrder()))
                .limit(SLOWEST)
                .map(one -> "%s: %.0f microseconds a line".formatted(one.getKey(), one.getValue()))
                .toList();
    }

    /** A sum of each name that answers what the first of its cases comes to, and works nothing out. */
    private static Sums ready(List<PublishedCase> cases) {
        Sums sums = Handbook.sums();
        Map<String, SumDescription> descriptions =
                sums.descriptions().stream().collect(Collectors.toMap(SumDescription::name, Function.identity()));
        Map<String, Sum> byName = new LinkedHashMap<>();
        for (PublishedCase one : cases) {
            SumReply reply = sums.ask(one.calc(), SumInput.written(one.given()));
            if (reply instanceof SumResult answer) {
                byName.computeIfAbsent(one.calc(), calc -> new Ready(descriptions.get(calc), answer));
            }
        }
        return new Sums(List.copyOf(byName.values()));
    }

    private record Ready(SumDescription description, SumResult result) implements Sum {

        @Override
        public SumResult of(SumInput given) {
            return result;
        }
    }

    /** A line without its beginning, which has its number for an id. */
    private static String tail(PublishedCase one) {
        StringWriter text = new StringWriter();
        try (JsonGenerator to = JSON.createGenerator(text)) {
            to.writeStartObject();
            to.writeStringField("calc", one.calc());
            for (Map.Entry<String, SumValue> given : one.given().entrySet()) {
                to.writeFieldName(given.getKey());
                write(given.getValue(), to);
            }
            to.writeEndObject();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return text.toString().substring(1);
    }

    private static void write(SumValue typed, JsonGenerator to) throws IOException {
        if (typed instanceof SumValue.Text text) {
            to.writeString(text.text());
        } else if (typed instanceof SumValue.Many many) {
            to.writeStartArray();
            for (SumValue value : many.values()) {
                write(value, to);
            }
            to.writeEndArray();
        } else if (typed instanceof SumValue.Fields table) {
            to.writeStartObject();
            for (Map.Entry<String, SumValue> value : table.values().entrySet()) {
                to.writeFieldName(value.getKey());
                write(value.getValue(), to);
            }
            to.writeEndObject();
        } else {
            throw new IllegalArgumentException("No case holds " + typed);
        }
    }

    /** Lines made as they are read; looks at the heap at the first, in the middle and at the last. */
    private static final class Lines extends InputStream {

        private final List<String> tails;
        private final int count;
        private final List<Long> heap = new ArrayList<>();
        private byte[] line = {};
        private int at;
        private int number;
        private long bytes;

        Lines(List<String> tails, int count) {
            this.tails = tails;
            this.count = count;
        }

        @Override
        public int read() {
            byte[] one = new byte[1];
            return read(one, 0, 1) < 0 ? -1 : one[0] & 0xFF;
        }

        @Override
        public int read(byte[] into, int from, int length) {
            int filled = 0;
            while (filled < length && more()) {
                int taken = Math.min(length - filled, line.length - at);
                System.arraycopy(line, at, into, from + filled, taken);
                at += taken;
                filled += taken;
            }
            bytes += filled;
            return filled == 0 ? -1 : filled;
        }

        private boolean more() {
            if (at < line.length) {
                return true;
            }
            if (number == 0 || number == count / 2 || number == count) {
                System.gc();
                heap.add((Runtime.getRuntime().totalMemory()
                                - Runtime.getRuntime().freeMemory())
                        / 1024);
            }
            if (number == count) {
                return false;
            }
            String whole = "{\"id\":\"" + number + "\"," + tails.get(number % tails.size());
            number++;
            line = ((number % GARBLED_ONE_IN == 0 ? whole.substring(0, whole.length() / 2) : whole) + "\n")
                    .getBytes(UTF_8);
            at = 0;
            return true;
        }
    }

    private static final class Counted extends OutputStream {

        private long bytes;
        private long lines;

        @Override
        public void write(int one) {
            bytes++;
            lines += one == '\n' ? 1 : 0;
        }

        @Override
        public void write(byte[] from, int start, int length) {
            for (int i = start; i < start + length; i++) {
                write(from[i]);
            }
        }
    }
}
