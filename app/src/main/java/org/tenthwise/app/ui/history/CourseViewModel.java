package org.tenthwise.app.ui.history;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import org.tenthwise.app.export.SeriesView;
import org.tenthwise.app.export.SeriesViewFormat;
import org.tenthwise.app.handout.ViewHandout;
import org.tenthwise.app.history.Sought;
import org.tenthwise.app.picture.Frame;
import org.tenthwise.app.picture.Picture;
import org.tenthwise.app.picture.Pictures;
import org.tenthwise.app.picture.Point;
import org.tenthwise.app.picture.chart.CourseSheet;
import org.tenthwise.app.picture.chart.CourseSheets;
import org.tenthwise.app.picture.chart.DeviationSheets;
import org.tenthwise.app.series.Break;
import org.tenthwise.app.series.Characteristic;
import org.tenthwise.app.series.Followed;
import org.tenthwise.app.series.PartPoint;
import org.tenthwise.app.series.SeriesSums;
import org.tenthwise.app.series.SizeOf;
import org.tenthwise.app.session.Runs;
import org.tenthwise.app.text.PointSentences;
import org.tenthwise.app.text.SeriesSentences;
import org.tenthwise.app.ui.shell.LedgerTasks;
import org.tenthwise.app.ui.shell.Navigator;
import org.tenthwise.model.record.Sheet;
import org.tenthwise.model.words.Words;

/**
 * One characteristic over the parts, or several by their deviation: a window of the series, what the parts between two
 * breaks show, and the part that is looked at.
 */
public final class CourseViewModel {

    private final Sought sought;
    private final Optional<Characteristic> characteristic;
    private final Runs shop;
    private final CourseSheets sheets;
    private final DeviationSheets deviations;
    private final ViewHandout handout;
    private final LedgerTasks tasks;
    private final Words words;
    private final Navigator navigator;
    private final ReadOnlyObjectWrapper<Optional<CourseSheet>> state = new ReadOnlyObjectWrapper<>(Optional.empty());
    private final ReadOnlyObjectWrapper<Optional<PartCard>> card = new ReadOnlyObjectWrapper<>(Optional.empty());
    private SizeOf of = SizeOf.AS_CUT;
    private Set<Break.Reason> across = Set.of();
    private OptionalInt inHand = OptionalInt.empty();
    private int asked;

    public CourseViewModel(
            Sought sought,
            Optional<Characteristic> characteristic,
            Runs shop,
            SeriesSums sums,
            ViewHandout handout,
            LedgerTasks tasks,
            Words words,
            Navigator navigator) {
        this.sought = sought;
        this.characteristic = characteristic;
        this.shop = shop;
        this.sheets = new CourseSheets(sums, words, () -> Optional.of(shop.now()));
        this.deviations = new DeviationSheets(sums, words);
        this.handout = handout;
        this.tasks = tasks;
        this.words = words;
        this.navigator = navigator;
    }

    /** Number of the characteristic; empty for several by their deviation. */
    String number() {
        return characteristic.map(Characteristic::number).orElse("");
    }

    String name() {
        return words.readable(
                characteristic.map(Characteristic::name).orElseGet(() -> words.say("history.deviations")));
    }

    /** How many there are, and which sizes of them. */
    String count() {
        int count = state.get().map(now -> now.series().points().size()).orElse(0);
        return words.say(
                "history.state",
                words.say(characteristic.isPresent() ? "history.parts" : "history.sizes.count", count),
                words.say("history.size", of));
    }

    /** What the parts are found by. */
    String sought() {
        return new SeriesSentences(words).sought(sought);
    }

    private CourseSheet look(SizeOf which, Set<Break.Reason> over, OptionalInt at) {
        return characteristic
                .map(one -> sheets.of(
                        shop.history(), sought, CourseSheets.series(shop.history(), sought, one), which, over, at))
                .orElseGet(() -> deviations.of(new Followed(shop.history()).of(sought), sought, which, over, at));
    }

    ReadOnlyObjectProperty<Optional<CourseSheet>> stateProperty() {
        return state.getReadOnlyProperty();
    }

    /** The part that was touched; absent while what all of them show is read. */
    ReadOnlyObjectProperty<Optional<PartCard>> cardProperty() {
        return card.getReadOnlyProperty();
    }

    SizeOf of() {
        return of;
    }

    boolean isAcross() {
        return !across.isEmpty();
    }

    /** Whether anything changed between the parts that somebody may look across. */
    boolean hasBreaks() {
        return state.get()
                .filter(now -> now.series().breaks().stream()
                        .anyMatch(broken -> broken.reasons().stream().noneMatch(Break.Reason::isStop)))
                .isPresent();
    }

    /** Looks it up anew; what was seen before stays until then. */
    public void load() {
        int now = ++asked;
        SizeOf which = of;
        Set<Break.Reason> over = across;
        OptionalInt at = inHand;
        tasks.run(() -> look(which, over, at), found -> {
            if (now == asked) {
                inHand = found.inHand();
                state.set(Optional.of(found));
                if (card.get().isPresent()) {
                    showCard();
                }
            }
        });
    }

    /** A spot of the picture was touched: the part nearest to it is looked at. */
    void touch(Frame frame, Point spot) {
        state.get().ifPresent(now -> now.picture().nearest(frame, spot).ifPresent(place -> look(now.from() + place)));
    }

    boolean hasEarlier() {
        return inHand.isPresent() && inHand.getAsInt() > 0;
    }

    boolean hasLater() {
        return inHand.isPresent()
                && state.get()
                        .filter(now ->
                                inHand.getAsInt() + 1 < now.series().points().size())
                        .isPresent();
    }

    void earlier() {
        look(inHand.orElse(1) - 1);
    }

    void later() {
        look(inHand.orElse(-1) + 1);
    }

    private void look(int place) {
        inHand = OptionalInt.of(place);
        state.get().filter(now -> now.shows(place)).ifPresent(now -> state.set(Optional.of(now.lookingAt(place))));
        showCard();
        load();
    }

    private void showCard() {
        state.get().filter(now -> inHand.isPresent()).ifPresent(now -> {
            PartPoint point = now.series().points().get(inHand.getAsInt());
            PointSentences said = new PointSentences(words);
            PartCard shown = new PartCard(
                    words.say(
                            characteristic.isPresent() ? "history.point" : "history.deviations.point",
                            inHand.getAsInt() + 1,
                            point.run().serial(),
                            now.series().points().size()),
                    said.size(point, of),
                    point.verdict(),
                    words.say("verdict", point.verdict()),
                    about(point, said),
                    point.run().id(),
                    card.get()
                            .filter(before -> before.run().equals(point.run().id()))
                            .flatMap(PartCard::picture));
            card.set(Optional.of(shown));
            if (shown.picture().isEmpty()) {
                picture(point, shown);
            }
        });
    }

    /** Among several it says which characteristic it is. */
    private List<String> about(PartPoint point, PointSentences said) {
        List<String> lines = new ArrayList<>();
        if (characteristic.isEmpty()) {
            lines.add(words.readable(words.say(
                    "history.deviations.of",
                    point.step()
                            .balloon()
                            .orElseGet(() -> String.valueOf(point.step().number())),
                    point.step().name())));
        }
        lines.addAll(said.about(point, of));
        return lines;
    }

    private void picture(PartPoint point, PartCard shown) {
        tasks.run(() -> drawn(shop.sheet(point.run().id()), point.step().number()), drawn -> {
            if (card.get().equals(Optional.of(shown))) {
                card.set(Optional.of(shown.with(drawn)));
            }
        });
    }

    private Optional<Picture> drawn(Sheet sheet, int step) {
        return sheet.lines().stream()
                .filter(line -> line.step().number() == step)
                .findFirst()
                .flatMap(line -> new Pictures(words).of(sheet, line));
    }

    /** Reads what all parts show again. */
    void showAll() {
        card.set(Optional.empty());
    }

    /** The size as cut, or as it was left. */
    void changeSize() {
        of = of == SizeOf.FINAL ? SizeOf.AS_CUT : SizeOf.FINAL;
        load();
    }

    /** The sums of the parts since something changed, or of all that have the same limits. */
    void changeAcross() {
        across = isAcross() ? Set.of() : Break.Reason.loose();
        load();
    }

    /** Opens the record of the part that is looked at. */
    void record() {
        card.get().ifPresent(shown -> navigator.record(shown.run()));
    }

    List<SeriesViewFormat> formats() {
        return handout.formats();
    }

    /** Writes what is shown, all its parts, and says where it lies. */
    void hand(SeriesViewFormat as) {
        SeriesView view = new SeriesView(
                characteristic.isPresent() ? SeriesView.Kind.COURSE : SeriesView.Kind.DEVIATIONS,
                sought,
                characteristic,
                of,
                across);
        new Handing(handout, tasks, words, navigator).hand(view, as);
    }
}
