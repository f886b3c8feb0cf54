package org.tenthwise.app.ui.history;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import org.tenthwise.app.export.SeriesView;
import org.tenthwise.app.export.SeriesViewFormat;
import org.tenthwise.app.handout.ViewHandout;
import org.tenthwise.app.history.History;
import org.tenthwise.app.history.Sought;
import org.tenthwise.app.history.SoughtBy;
import org.tenthwise.app.picture.chart.SeriesCharts;
import org.tenthwise.app.picture.chart.ShareHead;
import org.tenthwise.app.picture.chart.SharePicture;
import org.tenthwise.app.series.Followed;
import org.tenthwise.app.series.Series;
import org.tenthwise.app.series.SizeOf;
import org.tenthwise.app.session.Runs;
import org.tenthwise.app.text.SeriesSentences;
import org.tenthwise.app.ui.shell.LedgerTasks;
import org.tenthwise.app.ui.shell.Navigator;
import org.tenthwise.model.words.Words;

/** The characteristics of what is looked for; at first those of the part number last worked on. */
public final class CharacteristicsViewModel {

    /** Whether the series are those of the store. */
    enum Reading {
        NOT_YET,
        FAILED,
        DONE
    }

    /**
     * What is shown at one moment.
     *
     * @param parts part numbers there are, the one last worked on first
     */
    record Found(Reading reading, Sought sought, List<String> parts, List<Series> series) {}

    /** Something that is looked for, which goes when it is pressed. */
    record Chip(SoughtBy by, String text, String spoken) {}

    private final Runs shop;
    private final ViewHandout handout;
    private final LedgerTasks tasks;
    private final Words words;
    private final Navigator navigator;
    private final SeriesCharts charts;
    private final ReadOnlyObjectWrapper<Found> found =
            new ReadOnlyObjectWrapper<>(new Found(Reading.NOT_YET, Sought.ALL, List.of(), List.of()));
    private Optional<Sought> wanted;

    /** @param wanted what is looked for first; the part number last worked on where absent */
    public CharacteristicsViewModel(
            Optional<Sought> wanted,
            Runs shop,
            ViewHandout handout,
            LedgerTasks tasks,
            Words words,
            Navigator navigator) {
        this.wanted = wanted;
        this.handout = handout;
        this.shop = shop;
        this.tasks = tasks;
        this.words = words;
        this.navigator = navigator;
        this.charts = new SeriesCharts(words);
    }

    ReadOnlyObjectProperty<Found> foundProperty() {
        return found.getReadOnlyProperty();
    }

    /** Looks it up anew; what was seen before stays until then. */
    public void load() {
        Optional<Sought> asked = wanted;
        tasks.runOr(
                () -> look(shop.history(), asked),
                now -> {
                    if (asked.equals(wanted)) {
                        wanted = Optional.of(now.sought());
                        found.set(now);
                    }
                },
                () -> {
                    Found before = found.get();
                    if (before.reading() != Reading.DONE) {
                        found.set(new Found(Reading.FAILED, before.sought(), List.of(), List.of()));
                    }
                });
    }

    private static Found look(History history, Optional<Sought> asked) {
        Followed followed = new Followed(history);
        List<String> parts = followed.parts();
        Sought sought = asked.orElseGet(
                () -> parts.isEmpty() ? Sought.ALL : Sought.ALL.with(SoughtBy.PART_NUMBER, parts.get(0)));
        List<Series> series = parts.isEmpty() ? List.of() : followed.of(sought);
        return new Found(Reading.DONE, sought, parts, series);
    }

    /** Looks for something else. */
    public void seek(Sought other) {
        wanted = Optional.of(other);
        load();
    }

    /** Asks what to look for. */
    public void ask() {
        Found now = found.get();
        navigator.findParts(now.sought(), now.parts(), now.series(), this::seek);
    }

    /** What is looked for now. */
    List<Chip> chips() {
        return found.get().sought().by().entrySet().stream()
                .map(by -> {
                    String text = new SeriesSentences(words).sought(by.getKey(), by.getValue());
                    return new Chip(by.getKey(), text, words.say("history.chip.spoken", text));
                })
                .toList();
    }

    void drop(SoughtBy by) {
        seek(found.get().sought().without(by));
    }

    /** What is said where there is no row. */
    String none() {
        Found now = found.get();
        return switch (now.reading()) {
            case NOT_YET -> words.say("history.reading");
            case FAILED -> words.say("history.failed");
            case DONE -> words.say(now.sought().by().size() > 1 ? "history.nothing" : "history.none");
        };
    }

    /** Which sizes are shown: where the parts ended up. */
    SizeOf of() {
        return SizeOf.FINAL;
    }

    SharePicture.ShareRow row(int place) {
        return charts.row(found.get().series().get(place), of());
    }

    ShareHead head() {
        return charts.shareHead();
    }

    /** Where several part numbers are found, each row names its own. */
    String partOf(int place) {
        Found now = found.get();
        boolean one = now.series().stream()
                        .map(series -> series.characteristic().part())
                        .distinct()
                        .count()
                == 1;
        return one ? "" : now.series().get(place).characteristic().part();
    }

    /** All of what is looked for on one picture, by how far each lies from its target. */
    void deviations() {
        navigator.deviations(found.get().sought());
    }

    /** One characteristic over the parts. */
    public void open(int place) {
        Found now = found.get();
        navigator.course(now.sought(), now.series().get(place).characteristic());
    }

    List<SeriesViewFormat> formats() {
        return handout.formats();
    }

    /** Writes all that is found, and says where it lies. */
    void hand(SeriesViewFormat as) {
        SeriesView view =
                new SeriesView(SeriesView.Kind.SHARES, found.get().sought(), Optional.empty(), of(), Set.of());
        new Handing(handout, tasks, words, navigator).hand(view, as);
    }
}
