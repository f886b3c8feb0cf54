package org.tenthwise.app.text;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.tenthwise.app.history.Sought;
import org.tenthwise.app.history.SoughtBy;
import org.tenthwise.app.series.Break;
import org.tenthwise.app.series.CapabilityShown;
import org.tenthwise.app.series.ControlLimits;
import org.tenthwise.app.series.Drift;
import org.tenthwise.app.series.Mean;
import org.tenthwise.app.series.NotInSeries;
import org.tenthwise.app.series.PartPoint;
import org.tenthwise.app.series.Rejects;
import org.tenthwise.app.series.SegmentSums;
import org.tenthwise.app.series.Series;
import org.tenthwise.app.series.Track;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.run.Purpose;
import org.tenthwise.model.verdict.VerdictKind;
import org.tenthwise.model.words.Word;
import org.tenthwise.model.words.Words;

/**
 * What parts show together, in sentences: each with the number of parts it rests on, and that they are too few said as
 * plainly as anything else.
 */
public final class SeriesSentences {

    /** Behind the places of a size: a drift a part is finer than any reading. */
    private static final int FINER = 1;

    private static final int INDEX_PLACES = 2;
    private static final int MOST_FINER = 4;

    private final Words words;

    public SeriesSentences(Words words) {
        this.words = words;
    }

    /**
     * What is said under one head.
     *
     * @param weighty whether somebody should do something about it
     */
    public record Told(String head, String sentence, boolean weighty) {}

    /**
     * What the parts of a segment show.
     *
     * @param ahead whether anything may be said of parts to come: none was made since, and none is left out of sight
     */
    public List<Told> of(SegmentSums sums, int places, boolean ahead) {
        List<Told> all = new ArrayList<>();
        for (Track track : sums.tracks()) {
            String which = sums.tracks().size() > 1 ? words.say("history.side", track.side()) + " " : "";
            Drift drift = track.drift();
            int first = sums.segment().from() + 1;
            boolean shown = drift.shown() == Drift.Shown.SHOWN;
            all.add(new Told(
                    words.say("history.drift"), which + drift(drift, first, sums.unit(), places, ahead), shown));
            all.add(new Told(words.say("history.capability"), which + capability(track.capability()), false));
            all.add(new Told(words.say("history.process"), which + process(track, sums.unit(), places), false));
        }
        all.add(new Told(
                words.say("history.rejects"),
                rejects(sums.rejects()),
                sums.rejects().rejects() > 0));
        return all;
    }

    /**
     * Which parts something is said of.
     *
     * @param first number of the first; so {@code last}
     * @param count how many there are
     */
    public String since(int first, int last, int count) {
        return first == 1 && last == count
                ? words.say("history.since.all", count)
                : first == last ? words.say("history.since.one", first) : words.say("history.since", first, last);
    }

    /** The same where a part has several sizes among them. */
    public String sinceOfSizes(int first, int last, int count) {
        return first == 1 && last == count
                ? words.say("history.sizes.all", count)
                : words.say("history.sizes", first, last);
    }

    private String drift(Drift drift, int first, Unit unit, int places, boolean ahead) {
        String n = String.valueOf(drift.n());
        String said = drift.line()
                .map(line -> words.say(
                        words.key("history.drift", drift.shown()),
                        n,
                        fine(line.slope(), unit, places),
                        fine(BigDecimal.valueOf(line.low()), unit, places),
                        fine(BigDecimal.valueOf(line.high()), unit, places)))
                .orElseGet(() -> words.say(words.key("history.drift", drift.shown()), n));
        List<String> all = new ArrayList<>(List.of(said));
        drift.missed()
                .map(missed -> words.say("history.drift.missed", percent(missed, RoundingMode.CEILING)))
                .ifPresent(all::add);
        drift.measureBefore()
                .filter(part -> ahead)
                .map(part -> again(first + part - 1))
                .ifPresent(all::add);
        if (drift.uncertain()) {
            all.add(words.say("history.drift.uncertain"));
        }
        return String.join(" ", all);
    }

    /** @param part by its number in the order made */
    public String again(int part) {
        return words.say("history.drift.again", part);
    }

    /** The same at a line of a picture. */
    public String againAtTheLine(int part) {
        return words.say("history.drift.flag", part);
    }

    /** What the line of a drift is. */
    public String line(Drift drift, Unit unit, int places) {
        Drift.SlopeLine line = drift.line().orElseThrow();
        return words.say(
                "history.drift.line",
                String.valueOf(drift.n()),
                fine(line.slope(), unit, places),
                fine(BigDecimal.valueOf(line.low()), unit, places),
                fine(BigDecimal.valueOf(line.high()), unit, places));
    }

    /** What an index of capability says of so many parts. */
    public String capability(CapabilityShown shown) {
        String n = String.valueOf(shown.n());
        String said = shown.interval()
                .map(interval -> words.say(
                        words.key("history.capability", shown.standing()),
                        n,
                        index(BigDecimal.valueOf(shown.index().orElseThrow())),
                        index(BigDecimal.valueOf(interval.low())),
                        index(BigDecimal.valueOf(interval.high())),
                        Figures.number(shown.required())))
                .orElseGet(() -> words.say(words.key("history.capability", shown.standing()), n));
        return shown.used()
                .map(used -> said + " " + words.say("history.used", percent(used.doubleValue(), RoundingMode.CEILING)))
                .orElse(said);
    }

    /** An index as it is shown. */
    public String index(BigDecimal index) {
        return Figures.number(index.setScale(INDEX_PLACES, RoundingMode.HALF_EVEN));
    }

    private String process(Track track, Unit unit, int places) {
        String limits = track.limits()
                .map(found -> limits(found, unit, places))
                .orElseGet(() -> words.say("history.process.none", String.valueOf(track.n())));
        return track.mean().map(mean -> limits + " " + mean(mean, unit, places)).orElse(limits);
    }

    /** The limits of the process, with the parts they rest on. */
    public String limits(ControlLimits found, Unit unit, int places) {
        return words.say(
                words.key("history.process", found.standing()),
                String.valueOf(found.n()),
                size(found.lower(), unit, places),
                size(found.upper(), unit, places),
                size(found.centre(), unit, places));
    }

    private String mean(Mean mean, Unit unit, int places) {
        String n = String.valueOf(mean.n());
        String size = size(mean.mean(), unit, places);
        return mean.sd()
                .map(sd -> words.say("history.mean.sd", n, size, size(sd, unit, places)))
                .orElseGet(() -> words.say("history.mean", n, size));
    }

    private String rejects(Rejects rejects) {
        List<String> all = new ArrayList<>();
        rejects.rate()
                .map(rate -> words.say(
                        "history.rejects.of",
                        String.valueOf(rejects.n()),
                        String.valueOf(rejects.rejects()),
                        percent(rate.upper(), RoundingMode.CEILING)))
                .ifPresent(all::add);
        if (rejects.unproven() > 0) {
            all.add(words.say("history.rejects.unproven", rejects.unproven()));
        }
        if (rejects.stillToCut() > 0) {
            all.add(words.say("history.rejects.still-to-cut", rejects.stillToCut()));
        }
        return all.isEmpty() ? words.say("history.rejects.none") : String.join(" ", all);
    }

    /** Why a series is broken, as it is behind the break. */
    public String broken(Break mark, Series series) {
        PartPoint after = series.points().get(mark.before());
        return words.list(mark.reasons().stream()
                .map(reason -> words.say(words.key("history.break", reason), of(reason, after)))
                .toList());
    }

    private String of(Break.Reason reason, PartPoint after) {
        return switch (reason) {
            case REVISION -> after.run().revision();
            case PLAN_ISSUE -> after.run().stand().map(stand -> stand.issue()).orElse("");
            case MACHINE -> after.run().machine();
            case LOT -> after.run().lot();
            case GAUGE ->
                words.list(after.gauges().stream().map(gauge -> gauge.mark()).toList());
            case PERSON -> words.list(after.people());
            case LIMITS, KIND, REQUIREMENT, TOOL, OFFSET, ORDER -> "";
        };
    }

    /** What is looked for, in one line; that it is everything, where nothing is named. */
    public String sought(Sought sought) {
        List<String> all = sought.by().entrySet().stream()
                .map(by -> sought(by.getKey(), by.getValue()))
                .toList();
        return all.isEmpty() ? words.say("history.all") : words.list(all);
    }

    /** One thing that is looked for, with its name. */
    public String sought(SoughtBy by, String text) {
        return words.say("history.chip", words.say("history.by", by), said(by, text));
    }

    private String said(SoughtBy by, String text) {
        return switch (by) {
            case VERDICT ->
                words.say("verdict", Word.find(VerdictKind.class, text).orElseThrow());
            case KIND ->
                words.say("occasion.purpose", Word.find(Purpose.class, text).orElseThrow());
            case FROM, TO -> new Dates(words).day(LocalDate.parse(text));
            default -> text;
        };
    }

    /** What was found and is no point, a line each. */
    public List<String> leftOut(Series series) {
        return series.leftOut().stream().map(this::leftOut).toList();
    }

    private String leftOut(NotInSeries out) {
        return words.say(words.key("history.left-out", out.why()), out.run().serial());
    }

    /** A figure that was worked out of sizes, one place finer than they are. */
    private static String size(BigDecimal figure, Unit unit, int places) {
        return Figures.number(figure.setScale(places + FINER, RoundingMode.HALF_EVEN), unit);
    }

    /** Two figures of it at least, with its sign and its unit. */
    private static String fine(BigDecimal slope, Unit unit, int places) {
        int scale = places + FINER;
        while (scale < places + MOST_FINER
                && slope.signum() != 0
                && slope.setScale(scale, RoundingMode.HALF_EVEN).precision() < 2) {
            scale++;
        }
        String figure = Figures.number(slope.setScale(scale, RoundingMode.HALF_EVEN), unit);
        return Figures.withUnit((slope.signum() > 0 ? "+" : "") + figure, unit);
    }

    private static String percent(double share, RoundingMode towards) {
        return Figures.number(BigDecimal.valueOf(share).movePointRight(2).setScale(0, towards));
    }
}
