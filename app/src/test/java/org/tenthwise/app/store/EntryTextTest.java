package org.tenthwise.app.store;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.OffsetDateTime;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.tenthwise.model.gauge.Gauge;
import org.tenthwise.model.gauge.GaugeKind;
import org.tenthwise.model.gauge.Setting;
import org.tenthwise.model.plan.PartId;
import org.tenthwise.model.plan.PlanSource;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.run.Entry;
import org.tenthwise.model.run.Event;
import org.tenthwise.model.run.Occasion;
import org.tenthwise.model.run.Purpose;
import org.tenthwise.model.run.ShopEvent;
import org.tenthwise.model.run.StepEvent;

class EntryTextTest {

    private static final OffsetDateTime AT = OffsetDateTime.parse("2026-03-02T07:15:00+01:00");

    private static final Before FIRST = Before.after(RunHead.OF_NOTHING);

    static Stream<Example> examples() {
        return Example.all().stream();
    }

    @ParameterizedTest
    @MethodSource("examples")
    void anEntryIsWrittenInTheWordsAndTheOrderThatStoresAlreadyHave(Example example) {
        String text = text("run-1", AT, "A. Turner", example.event());

        int format = EventKinds.of(example.event()).format(example.event());
        String said = format > EventKinds.FORMAT_UNSAID ? "\"format\":%d,".formatted(format) : "";

        assertEquals(
                ("{" + said + "\"run\":\"run-1\",\"before\":{\"place\":1,\"hash\":\"%s\"},\"kind\":\"%s\","
                                + "\"at\":\"2026-03-02T07:15:00+01:00\",\"by\":\"A. Turner\",\"event\":%s}")
                        .formatted(RunChain.START, example.kind(), example.json()),
                text);
    }

    @ParameterizedTest
    @MethodSource("examples")
    void whatIsWrittenIsReadBack(Example example) throws UnreadableEntry {
        byte[] text = text("run-1", AT, "A. Turner", example.event()).getBytes(UTF_8);

        assertEquals(new Entry(7, "run-1", AT, "A. Turner", example.event()), EntryText.read(7, text));
    }

    /** An older release keeps what says a format above its own, and does not take it for damage. */
    @Test
    void whatIsReadInDegreesSaysThatItTakesANewerFormat() throws UnreadableEntry {
        Gauge protractor = new Gauge("BP-1", GaugeKind.BEVEL_PROTRACTOR, Optional.empty());
        for (Event event : List.of(
                new StepEvent.ReadingTaken(3, "1.1", new Written("29°30′", Unit.MINUTE_OF_ARC)),
                new StepEvent.ReadingTaken(3, "1.1", new Written("29.5", Unit.DEGREE)),
                new StepEvent.GaugeSet(3, Setting.direct(protractor)),
                new ShopEvent.GaugeKnown(protractor))) {
            String text = text("run-1", AT, "A. Turner", event);
            assertTrue(text.startsWith("{\"format\":4,"), text);
            assertEquals(event, EntryText.read(7, text.getBytes(UTF_8)).event());
        }
        assertFalse(text(
                        "run-1",
                        AT,
                        "A. Turner",
                        new StepEvent.ReadingTaken(3, "1.1", new Written("29.5", Unit.MILLIMETRE)))
                .contains("format"));
    }

    /** An older release does not take such a run for one of which nothing was said. */
    @Test
    void aRunBegunForAPurposeSaysThatItTakesANewerFormat() throws UnreadableEntry {
        Event.Begun plain =
                new Event.Begun(new PartId("LG-2207", "C"), "1", "", "Lathe 3", new PlanSource("x", "ab".repeat(32)));
        for (Purpose purpose : List.of(Purpose.NOT_STATED, Purpose.FIRST_PIECE, Purpose.LAST_PIECE)) {
            Event.Begun begun = new Event.Begun(
                    plain.part(),
                    plain.serial(),
                    plain.lot(),
                    plain.machine(),
                    plain.plan(),
                    false,
                    Occasion.of(purpose));
            String text = text("run-1", AT, "A. Turner", begun);
            assertEquals(purpose != Purpose.NOT_STATED, text.startsWith("{\"format\":9,"), text);
            assertEquals(begun, EntryText.read(7, text.getBytes(UTF_8)).event());
        }
        assertFalse(text("run-1", AT, "A. Turner", plain).contains("occasion"));
    }

    /** Releases that did not tie the entries of a run together wrote no "before". */
    @ParameterizedTest
    @MethodSource("examples")
    void anEntryThatDoesNotSayWhatCameBeforeItIsStillRead(Example example) throws UnreadableEntry {
        String text = ("{\"run\":\"run-1\",\"kind\":\"%s\",\"at\":\"2026-03-02T07:15:00+01:00\",\"by\":\"A. "
                        + "Turner\",\"event\":%s}")
                .formatted(example.kind(), example.json());

        assertEquals(new Entry(7, "run-1", AT, "A. Turner", example.event()), EntryText.read(7, text.getBytes(UTF_8)));
        assertEquals(Optional.empty(), Before.in(text));
    }

    @Test
    void whatCameBeforeIsReadWhereverItStandsAndWhateverTheKind() {
        String before = "\"before\":{\"place\":12,\"hash\":\"ab\"}";

        assertEquals(Optional.of(new Before(12, "ab")), Before.in("{" + before + "}"));
        assertEquals(
                Optional.of(new Before(12, "ab")),
                Before.in("{\"kind\":\"weighed\",\"event\":{\"before\":{\"place\":1}}," + before + "}"));
        for (String text : new String[] {
            "",
            "[]",
            "5",
            "{\"before\":5}",
            "{\"before\":{\"place\":12}}",
            "{\"before\":{\"place\":\"x\"}}",
            "{\"event\":{"
        }) {
            assertEquals(Optional.empty(), Before.in(text), text);
        }
    }

    @Test
    void everyKindOfEventHasAWordAndAnExample() {
        Set<Class<?>> events = kinds(Event.class).collect(Collectors.toSet());
        events.remove(Event.Unknown.class); // read only

        assertEquals(events, EventKinds.ALL.stream().map(EventKind::type).collect(Collectors.toSet()));
        assertEquals(
                events, examples().map(example -> example.event().getClass()).collect(Collectors.toSet()));
        assertEquals(
                events.size(),
                EventKinds.ALL.stream().map(EventKind::name).distinct().count());
    }

    private static Stream<Class<?>> kinds(Class<?> of) {
        return of.isSealed() ? Stream.of(of.getPermittedSubclasses()).flatMap(EntryTextTest::kinds) : Stream.of(of);
    }

    @Test
    void aNanosecondAndAnyLetterAreKept() throws UnreadableEntry {
        OffsetDateTime at = OffsetDateTime.parse("2026-03-02T07:15:00.000000001-03:30");
        Event event = new StepEvent.NoteMade(0, "Späne \"µ\" \\ \u0000 \u2028 🔧\n");

        assertEquals(
                new Entry(1, "ü", at, "Ö", event),
                EntryText.read(1, text("ü", at, "Ö", event).getBytes(UTF_8)));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            textBlock =
                    """
        # text                                                                                          | what is said
        {"run":"r","kind":"weighed","at":"2026-03-02T07:15:00Z","by":"A","event":{},"x":1}               | "x" is not known here
        {"run":"r","before":{"place":1},"kind":"handed-over","at":"2026-03-02T07:15:00Z","by":"A","event":{"to":"B"}}    | "hash" is missing
        {"run":"r","before":{"place":1,"hash":"","x":1},"kind":"handed-over","at":"2026-03-02T07:15:00Z","by":"A","event":{"to":"B"}} | "x" is not known here
        {"run":"r","kind":"weighed","at":"2026-03-02T07:15:00Z","by":"A","event":5}                      | "event" is not an object
        {"run":"r","kind":"handed-over","at":"2026-03-02T07:15:00Z","by":"A","event":{}}                 | "to" is missing
        {"run":"r","kind":"handed-over","at":"2026-03-02T07:15:00Z","by":"A","event":{"to":"B","x":1}}   | "x" is not known here
        {"run":"r","kind":"handed-over","at":"2026-03-02T07:15:00Z","by":"A","event":{"to":5}}           | "to" is not text
        {"run":"r","kind":"handed-over","at":"2026-03-02T07:15:00Z","by":"A","event":"B"}                | "event" is not an object
        {"run":"r","kind":"handed-over","at":"2026-03-02T07:15:00Z","by":"A","event":{"to":"B"},"x":1}   | "x" is not known here
        {"run":"r","kind":"handed-over","at":"yesterday","by":"A","event":{"to":"B"}}                    | "yesterday" is not a date and time
        {"run":"r","kind":"handed-over","at":"2026-03-02T07:15:00Z","by":"A","event":{"to":"B"}} x       | it is not JSON
        {"run":"r","run":"s"}                                                                            | it is not JSON
        ["run"]                                                                                          | it is not a JSON object
        ``                                                                                               | it is not a JSON object
        {"run":"r","kind":"note-made","at":"2026-03-02T07:15:00Z","by":"A","event":{"step":1.5,"words":""}}          | "step" is not a whole number
        {"run":"r","kind":"note-made","at":"2026-03-02T07:15:00Z","by":"A","event":{"step":3000000000,"words":""}}   | "step" is not a check number
        {"run":"r","kind":"pass-begun","at":"2026-03-02T07:15:00Z","by":"A","event":{"step":1,"why":"bored"}}        | "bored" is not known as "why"
        {"run":"r","kind":"reading-taken","at":"2026-03-02T07:15:00Z","by":"A","event":{"step":1,"slot":"1.1","typed":{"figure":"1e3","unit":"mm"}}} | "1e3" is not a plain decimal number
        {"run":"r","kind":"reading-taken","at":"2026-03-02T07:15:00Z","by":"A","event":{"step":1,"slot":"1.1","typed":{"figure":"1","unit":"cm"}}}   | "cm" is not a known unit
        {"run":"r","kind":"temperature-taken","at":"2026-03-02T07:15:00Z","by":"A","event":{"step":1,"of":"shop","celsius":"21"}}    | "shop" is not known as "of"
        {"run":"r","kind":"temperature-taken","at":"2026-03-02T07:15:00Z","by":"A","event":{"step":1,"of":"part","celsius":"2e1"}}   | "2e1" is not a temperature
        {"run":"r","kind":"temperature-taken","at":"2026-03-02T07:15:00Z","by":"A","event":{"step":1,"of":"part","celsius":"-300"}}  | -300 °C is not a temperature at which a size is measured
        {"run":"r","kind":"temperature-taken","at":"2026-03-02T07:15:00Z","by":"A","event":{"step":1,"of":"part","fahrenheit":"-460"}}               | -460 °F is not a temperature at which a size is measured
        {"run":"r","kind":"temperature-taken","at":"2026-03-02T07:15:00Z","by":"A","event":{"step":1,"of":"part","celsius":"20","fahrenheit":"68"}}  | "celsius" is not known here
        {"run":"r","kind":"temperature-taken","at":"2026-03-02T07:15:00Z","by":"A","event":{"step":1,"of":"part"}}                   | "celsius" is missing
        {"run":"r","kind":"begun","at":"2026-03-02T07:15:00Z","by":"A","event":{"part":{"number":"1","revision":"A"},"serial":"1","lot":"","machine":"","plan":{"text":"x","sha256":"y"},"occasion":{"purpose":"whim"}}} | "whim" is not known as "purpose"
        {"run":"r","kind":"begun","at":"2026-03-02T07:15:00Z","by":"A","event":{"part":{"number":"1","revision":"A"},"serial":"1","lot":"","machine":"","plan":{"text":"x","sha256":"y"},"occasion":{"purpose":"first-article-full"}}} | A first article needs a reason
        {"run":"r","kind":"begun","at":"2026-03-02T07:15:00Z","by":"A","event":{"part":{"number":"1","revision":"A"},"serial":"1","lot":"","machine":"","plan":{"text":"x","sha256":"y"},"occasion":{"purpose":"in-process","piece":0}}} | Pieces are counted from 1
        {"run":"r","kind":"begun","at":"2026-03-02T07:15:00Z","by":"A","event":{"part":{"number":"1","revision":"A"},"serial":"1","lot":"","machine":"","plan":{"text":"x","sha256":"y"},"occasion":{"purpose":"first-piece","affected":["1"]}}} | "affected" is not a whole number
        """)
    void whatCannotBeUnderstoodIsSaidAndNotReadByHalf(String text, String said) {
        byte[] body = text.getBytes(UTF_8);

        assertEquals(
                said,
                assertThrows(UnreadableEntry.class, () -> EntryText.read(1, body))
                        .getMessage());
    }

    @Test
    void aKindOfANewerReleaseIsKeptUnderItsWordAndNotUnderstood() throws UnreadableEntry {
        String fields = "{\"step\":3,\"of\":{\"unit\":\"g\",\"figure\":\"1.10\"}}";
        String text = "{\"run\":\"r\",\"kind\":\"weighed\",\"at\":\"2026-03-02T07:15:00+01:00\",\"by\":\"A\",\"event\":"
                + fields + "}";
        Event unknown = new Event.Unknown("weighed", fields);

        assertEquals(new Entry(4, "r", AT, "A", unknown), EntryText.read(4, text.getBytes(UTF_8)));
        assertEquals("weighed", EntryText.kind(unknown));
        assertThrows(IllegalArgumentException.class, () -> text("r", AT, "A", unknown));
    }

    @Test
    void bytesThatAreNoUtf8AreNotReadAsSomethingElse() {
        byte[] body = text("r", AT, "A", new Event.HandedOver("B")).getBytes(UTF_8);
        body[8] = (byte) 0xFF;

        assertEquals(
                "it is not UTF-8",
                assertThrows(UnreadableEntry.class, () -> EntryText.read(1, body))
                        .getMessage());
    }

    @Test
    void aKindIsStoredUnderTheWordThatStandsInTheText() {
        Event event = new Event.HandedOver("B");

        assertEquals(
                1,
                Arrays.stream(text("r", AT, "A", event).split(",", -1))
                        .filter(("\"kind\":\"" + EntryText.kind(event) + "\"")::equals)
                        .count());
    }

    private static String text(String run, OffsetDateTime at, String by, Event event) {
        return EntryText.write(new NewEntry(run, at, by, event), FIRST);
    }

    @Test
    void anEntryOfAKindThatIsNewSaysTheFormatItTakesAndOneOfBeforeSaysNone() throws UnreadableEntry {
        EventKind<StepEvent.NoteMade> newer = new EventKind<>(
                "photo-taken",
                EventKinds.NEWEST_FORMAT + 1,
                StepEvent.NoteMade.class,
                (note, to) -> to.put("of", note.words()),
                from -> new StepEvent.NoteMade(1, from.text("of")));
        NewEntry photo = new NewEntry(
                "run-1",
                OffsetDateTime.parse("2026-03-02T07:15:00+01:00"),
                "A. Turner",
                new StepEvent.NoteMade(1, "jaws"));

        String text = EntryText.write(photo, new Before(2, "ab"), newer);

        assertEquals(
                "{\"format\":" + (EventKinds.NEWEST_FORMAT + 1)
                        + ",\"run\":\"run-1\",\"before\":{\"place\":2,\"hash\":\"ab\"},\"kind\":\"photo-taken\","
                        + "\"at\":\"2026-03-02T07:15:00+01:00\",\"by\":\"A. Turner\",\"event\":{\"of\":\"jaws\"}}",
                text);
        assertEquals(
                new Event.Unknown("photo-taken", "{\"of\":\"jaws\"}"),
                EntryText.read(3, text.getBytes(UTF_8)).event());
        assertFalse(EntryText.write(photo, new Before(2, "ab")).contains("format"));
    }

    @Test
    void aKindThatIsNewHasAFormatOfItsOwn() {
        assertEquals(
                "answered begun closed cut-on-these disposed doubt-flagged gauge-chosen gauge-known gauge-set "
                        + "handed-over machine-known note-made pass-begun reading-taken signed struck-out taken-over "
                        + "temperature-taken",
                EventKinds.ALL.stream()
                        .filter(kind -> kind.format() <= EventKinds.FORMAT_UNSAID)
                        .map(EventKind::name)
                        .sorted()
                        .collect(Collectors.joining(" ")));
        assertEquals(
                IntStream.rangeClosed(EventKinds.FORMAT_UNSAID + 1, EventKinds.NEWEST_FORMAT)
                        .boxed()
                        .toList(),
                Stream.concat(
                                EventKinds.ALL.stream().map(EventKind::format),
                                Stream.of(EventJson.FORMAT_OF_ANGLES, EventJson.FORMAT_OF_SCALES, OccasionJson.FORMAT))
                        .filter(format -> format > EventKinds.FORMAT_UNSAID)
                        .sorted()
                        .toList());
    }
}
