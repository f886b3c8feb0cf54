package org.tenthwise.app.ui.history;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.stream.Stream;
import org.tenthwise.app.history.ReadingSummary.GaugeMark;
import org.tenthwise.app.history.Sought;
import org.tenthwise.app.history.SoughtBy;
import org.tenthwise.app.series.PartPoint;
import org.tenthwise.app.series.Series;
import org.tenthwise.app.text.Dates;
import org.tenthwise.app.ui.form.Field;
import org.tenthwise.app.ui.form.FormViewModel;
import org.tenthwise.app.ui.shell.Navigator;
import org.tenthwise.model.run.Purpose;
import org.tenthwise.model.verdict.VerdictKind;
import org.tenthwise.model.words.Word;
import org.tenthwise.model.words.Words;

/** Asks what parts are found by: chosen from what there is, or typed where it is a part's own. */
public final class PartFindViewModel {

    private static final int MOST = 40;

    private final Words words;
    private final Map<SoughtBy, Field<String>> fields = new EnumMap<>(SoughtBy.class);
    private final FormViewModel form;

    /**
     * @param before what was looked for
     * @param parts part numbers there are
     * @param known what was found, whose lots, people and the like are offered
     * @param found is handed what to look for, and the screen that asked is shown again
     */
    public PartFindViewModel(
            Sought before,
            List<String> parts,
            List<Series> known,
            Words words,
            Navigator navigator,
            Consumer<Sought> found) {
        this.words = words;
        for (SoughtBy by : SoughtBy.values()) {
            fields.put(by, field(by));
        }
        offer(SoughtBy.PART_NUMBER, parts.stream());
        offer(SoughtBy.SERIAL, of(known, point -> Stream.of(point.run().serial())));
        offer(SoughtBy.LOT, of(known, point -> Stream.of(point.run().lot())));
        offer(SoughtBy.PERSON, of(known, point -> point.people().stream()));
        offer(SoughtBy.MACHINE, of(known, point -> Stream.of(point.run().machine())));
        offer(SoughtBy.GAUGE, of(known, point -> point.gauges().stream().map(GaugeMark::mark)));
        offer(SoughtBy.VERDICT, Arrays.stream(VerdictKind.values()).map(Word::of));
        offer(
                SoughtBy.KIND,
                of(known, point -> Stream.of(Word.of(point.run().kind().purpose()))));
        offer(SoughtBy.DESIGNATOR, known.stream().flatMap(series -> series.characteristic().designator().stream()));
        offer(SoughtBy.BALLOON, known.stream().flatMap(series -> series.characteristic().balloon().stream()));
        offer(SoughtBy.CHARACTERISTIC, known.stream().map(series -> series.characteristic()
                .name()));
        offer(SoughtBy.FROM, days(known));
        offer(SoughtBy.TO, days(known));
        before.by().forEach((by, text) -> choose(fields.get(by), text));
        List<Field<String>> asked = new ArrayList<>(fields.values());
        form = new FormViewModel(asked, words, words.say("history.find.act"), () -> {
            navigator.back();
            found.accept(sought());
        });
    }

    public FormViewModel form() {
        return form;
    }

    private Field<String> field(SoughtBy by) {
        String id = Word.of(by);
        String name = words.say("history.by", by);
        String question = words.say("history.find.question");
        return switch (by) {
            case SERIAL -> Field.mark(id, name, question, false, MOST).onlyIfWanted();
            case VERDICT ->
                Field.choiceIfAny(
                        id,
                        name,
                        question,
                        word -> words.say(
                                "verdict", Word.find(VerdictKind.class, word).orElseThrow()));
            case KIND ->
                Field.choiceIfAny(
                        id,
                        name,
                        question,
                        word -> words.say(
                                "occasion.purpose",
                                Word.find(Purpose.class, word).orElseThrow()));
            case FROM, TO -> Field.choiceIfAny(id, name, question, day -> new Dates(words).day(LocalDate.parse(day)));
            default -> Field.choiceIfAny(id, name, question, Function.identity());
        };
    }

    private static Stream<String> of(List<Series> known, Function<PartPoint, Stream<String>> what) {
        return known.stream().flatMap(series -> series.points().stream()).flatMap(what);
    }

    /** The days on which parts were read, the last one first. */
    private static Stream<String> days(List<Series> known) {
        return of(known, point -> Stream.of(point.at().toLocalDate().toString()))
                .distinct()
                .sorted(Comparator.reverseOrder());
    }

    private void offer(SoughtBy by, Stream<String> there) {
        fields.get(by).offer(there.filter(text -> !text.isBlank()).distinct().toList());
    }

    /** What was looked for stands there, also where it is not offered any more. */
    private static void choose(Field<String> field, String text) {
        List<String> offered = field.choice().offeredProperty().get();
        if (!offered.contains(text)) {
            field.offer(Stream.concat(Stream.of(text), offered.stream()).toList());
        }
        field.choice().choose(text);
    }

    private Sought sought() {
        Sought all = Sought.ALL;
        for (Map.Entry<SoughtBy, Field<String>> field : fields.entrySet()) {
            all = all.with(
                    field.getKey(), field.getValue().valueProperty().get().orElse(""));
        }
        return all;
    }
}
