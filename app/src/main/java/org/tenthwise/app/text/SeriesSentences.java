package org.tenthwise.app.text;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.tenthwise.app.history.Sought;
import org.tenthwise.app.history.SoughtBy;
import org.tenthwise.app.series.Break;
import org.tenthwise.app.series.CapabilityShown;
import org.tenthwise.app.series.ControlLimits;
import org.tenthwise.app.series.Drift;
import org.tenthwise.app.series.Mean;
import org.tenthwise.app.series.MeasureAgain;
import org.tenthwise.app.series.NotInSeries;
import org.tenthwise.app.series.PartPoint;
import org.tenthwise.app.series.Rejects;
import org.tenthwise.app.series.SegmentSums;
import org.tenthwise.app.series.Series;
import org.tenthwise.app.series.SizeOf;
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

    /** Of fewer parts most of those to come could be out, and that says nothing. */
    private static final int FEWEST_FOR_A_RATE = 10;

    private final Words words;

    public SeriesSentences(Words words) {
        this.words = words;
    }

    /** What is told of. */
    public enum About {
        DRIFT,
        CAPABILITY,
        LIMITS,
        PARTS_OUT
    }

    /** How much somebody has to see it. */
    public enum Weight {
        PLAIN,
        /** Somebody should do something about it. */
        STRONG,
        /** It speaks against the parts. */
        AGAINST
    }

    /** What is said under one head. */
    public record Told(About about, String head, String sentence, Weight weight) {}

    /**
     * What the parts of a segment show.
     *
     * @param again what is said of the parts to come; absent where nothing may be
     */
    public List<Told> of(SegmentSums sums, int places, Optional<MeasureAgain> again) {
        List<Told> all = new ArrayList<>();
        for (Track track : sums.tracks()) {
            all.add(told(
                    About.DRIFT,
                    sums.of(),
                    which(sums, track) + drift(track.drift(), sums, places),
                    track.drift().shown() == Drift.Shown.SHOWN ? Weight.STRONG : Weight.PLAIN));
        }
        again.map(said -> told(About.DRIFT, sums.of(), new MeasureAgainWords(words).say(said), Weight.STRONG))
                .ifPresent(all::add);
        for (Track track : sums.tracks()) {
            CapabilityShown shown = track.capability();
            all.add(told(
                    About.CAPABILITY,
                    sums.of(),
                    which(sums, track) + capability(shown, sums.unit(), places),
                    shown.standing() == CapabilityShown.Standing.CONTRADICTS ? Weight.AGAINST : Weight.PLAIN));
        }
        for (Track track : sums.tracks()) {
            String limits = which(sums, track) + process(track, sums.unit(), places);
            all.add(told(
                    About.LIMITS,
                    sums.of(),
                    track.limits().isPresent() && track.drifts()
                            ? limits + " " + words.say("history.process.drifting")
                            : limits,
                    Weight.PLAIN));
        }
        all.add(told(
                About.PARTS_OUT,
                sums.of(),
                rejects(sums),
                sums.rejects().rejects() > 0 ? Weight.AGAINST : Weight.PLAIN));
        return all;
    }

    private String which(SegmentSums sums, Track track) {
        return sums.tracks().size() > 1 ? words.say("history.side", track.side()) + " " : "";
    }

    /** @param of the sizes it is told of */
    public Told told(About about, SizeOf of, String sentence, Weight weight) {
        return new Told(
                about, words.say(words.key("history.told", about), words.say("history.size", of)), sentence, weight);
    }

    /**
     * Which parts something is said of.
     *
     * @param from place of the first; so {@code to}, behind the last
     */
    public String since(Series series, int from, int to) {
        int count = series.points().size();
        int parts = to - from;
        if (parts == count) {
            return words.say("history.since.all", count);
        }
        String first = series.points().get(from).run().serial();
        String last = series.points().get(to - 1).run().serial();
        return words.say(to == count ? "history.since" : "history.since.between", parts, first, last);
    }

    /** The same where a part has several sizes among them. */
    public String sinceOfSizes(int first, int last, int count) {
        return first == 1 && last == count
                ? words.say("history.sizes.all", count)
                : words.say("history.sizes", first, last);
    }

    private String drift(Drift drift, SegmentSums sums, int places) {
        Unit unit = sums.unit();
        List<String> all = new ArrayList<>();
        all.add(drift.line()
                .map(line -> words.say(
                        words.key("history.drift", drift.shown()),
                        drift.n(),
                        fine(line.slope(), unit, places),
                        fine(BigDecimal.valueOf(line.low()), unit, places),
                        fine(BigDecimal.valueOf(line.high()), unit, places)))
                .orElseGet(() -> words.say(words.key("history.drift", drift.shown()), drift.n())));
        drift.missed()
                .map(missed -> words.say("history.drift.missed", percent(missed, RoundingMode.CEILING)))
                .ifPresent(all::add);
        if (drift.uncertain()) {
            all.add(words.say("history.drift.uncertain"));
        }
        if (drift.line().isPresent() && sums.of() == SizeOf.FINAL) {
            all.add(words.say("history.drift.of-final"));
        }
        return String.join(" ", all);
    }

    /** What the line of a drift is. */
    public String line(Drift drift, Unit unit, int places) {
        Drift.SlopeLine line = drift.line().orElseThrow();
        return words.say(
                "history.drift.line",
                drift.n(),
                fine(line.slope(), unit, places),
                fine(BigDecimal.valueOf(line.low()), unit, places),
                fine(BigDecimal.valueOf(line.high()), unit, places));
    }

    /** What an index of capability says of so many parts. */
    public String capability(CapabilityShown shown, Unit unit, int places) {
        String said = shown.interval()
                .map(interval -> words.say(
                        words.key("history.capability", shown.standing()),
                        shown.n(),
                        index(BigDecimal.valueOf(shown.index().orElseThrow())),
                        index(BigDecimal.valueOf(interval.low())),
                        index(BigDecimal.valueOf(interval.high())),
                        Figures.number(shown.required())))
                .orElseGet(() -> words.say(words.key("history.capability", shown.standing()), shown.n()));
        return shown.furthest()
                .map(furthest ->
                        said + " " + words.say("history.furthest", new PlaceWords(words).of(furthest, unit, places)))
                .orElse(said);
    }

    /** An index as it is shown. */
    public String index(BigDecimal index) {
        return Figures.number(index.setScale(INDEX_PLACES, RoundingMode.HALF_EVEN));
    }

    private String process(Track track, Unit unit, int places) {
        return track.limits()
                .map(found -> track.mean()
                        .flatMap(Mean::sd)
                        .map(sd -> limits(found, unit, places)
                                + " "
                                + words.say("history.sd", track.n(), withUnit(sd, unit, places)))
                        .orElseGet(() -> limits(found, unit, places)))
                .orElseGet(() -> noLimits(track.n(), track.coarse() || track.level())
                        + track.mean()
                                .map(mean -> " " + mean(mean, unit, places))
                                .orElse(""));
    }

    private String noLimits(int n, boolean coarse) {
        return words.say(coarse ? "history.process.coarse" : "history.process.none", n);
    }

    /** The limits of the process, with the parts they rest on. */
    public String limits(ControlLimits found, Unit unit, int places) {
        return words.say(
                words.key("history.process", found.standing()),
                found.n(),
                size(found.lower(), unit, places),
                withUnit(found.upper(), unit, places),
                withUnit(found.centre(), unit, places));
    }

    private String mean(Mean mean, Unit unit, int places) {
        String size = withUnit(mean.mean(), unit, places);
        return mean.sd()
                .map(sd -> words.say("history.mean.sd", mean.n(), size, withUnit(sd, unit, places)))
                .orElseGet(() -> words.say("history.mean", mean.n(), size));
    }

    private String rejects(SegmentSums sums) {
        Rejects rejects = sums.rejects();
        List<String> all = new ArrayList<>();
        rejects.rate().ifPresent(rate -> {
            all.add(words.say("history.rejects.of", rejects.n(), rejects.rejects()));
            if (rejects.n() < FEWEST_FOR_A_RATE) {
                all.add(words.say("history.rejects.too-few"));
            } else if (sums.tracks().stream().anyMatch(Track::drifts)) {
                all.add(words.say("history.rejects.drifting"));
            } else {
                all.add(words.say("history.rejects.rate", percent(rate.upper(), RoundingMode.CEILING)));
            }
        });
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

    private static String withUnit(BigDecimal figure, Unit unit, int places) {
        return Figures.withUnit(size(figure, unit, places), unit);
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
