package org.tenthwise.app.picture.chart;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Function;
import org.tenthwise.app.history.PartSize;
import org.tenthwise.app.series.CapabilityShown;
import org.tenthwise.app.series.ControlLimits;
import org.tenthwise.app.series.Drift;
import org.tenthwise.app.series.MeasureAgain;
import org.tenthwise.app.series.PartPoint;
import org.tenthwise.app.series.SegmentSums;
import org.tenthwise.app.series.Series;
import org.tenthwise.app.series.SizeOf;
import org.tenthwise.app.series.TolerancePlace;
import org.tenthwise.app.series.Track;
import org.tenthwise.app.text.Figures;
import org.tenthwise.app.text.MeasureAgainWords;
import org.tenthwise.app.text.PlaceWords;
import org.tenthwise.app.text.PointSentences;
import org.tenthwise.app.text.SeriesSentences;
import org.tenthwise.model.compute.statistics.Individuals.LimitsStanding;
import org.tenthwise.model.compute.statistics.Trend;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.words.Words;

/** Pictures of series of parts: the figures are those of the series and of its sums. */
public final class SeriesCharts {

    /** As many parts as can be told apart in one picture. */
    public static final int WINDOW = 50;

    private static final double CONFIDENCE = 0.95;

    private final Words words;
    private final SeriesSentences sentences;

    public SeriesCharts(Words words) {
        this.words = words;
        this.sentences = new SeriesSentences(words);
    }

    /**
     * What is drawn of a series.
     *
     * @param from place of the first part drawn
     * @param to place behind the last
     * @param inHand place in the series of the part that is looked at
     * @param band guard band the plan of a part names; zero where it names none
     * @param again what is said of the parts to come; absent where nothing may be
     * @param sums of the segment the last part drawn is in; absent where none are shown
     */
    public record Part(
            Series series,
            SizeOf of,
            int from,
            int to,
            OptionalInt inHand,
            Function<PartPoint, Length> band,
            Optional<MeasureAgain> again,
            Optional<SegmentSums> sums) {

        List<PartPoint> points() {
            return series.points().subList(from, to);
        }

        /** The unit of the last part drawn. */
        Unit unit() {
            return points().get(points().size() - 1).unit();
        }

        int places() {
            return points().get(points().size() - 1).places();
        }
    }

    /** One characteristic over the parts. */
    public CoursePicture course(Part part) {
        String title = words.say(
                "history.course.spoken", part.series().characteristic().name(), part.to() - part.from());
        if (part.from() == part.to()) {
            return new CoursePicture(
                    List.of(),
                    List.of(),
                    List.of(),
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty(),
                    OptionalInt.empty(),
                    0,
                    courseWords(words.say("history.part")),
                    title);
        }
        Unit unit = part.unit();
        return new CoursePicture(
                spots(part),
                allowed(part, unit),
                breaks(part),
                aim(part.points()),
                process(part),
                drift(part),
                part.inHand().isPresent()
                        ? OptionalInt.of(part.inHand().getAsInt() - part.from())
                        : OptionalInt.empty(),
                unit.hasMarksInside() ? -1 : part.places(),
                courseWords(words.say("history.part")),
                title);
    }

    /** @param part what stands before the numbers */
    CourseWords courseWords(String part) {
        return new CourseWords(
                part,
                words.say("history.first"),
                words.say("history.unread"),
                words.say("history.band"),
                words.say("history.none"));
    }

    private static List<MadePart> spots(Part part) {
        List<MadePart> spots = new ArrayList<>();
        for (int i = part.from(); i < part.to(); i++) {
            PartPoint point = part.series().points().get(i);
            PartSize size = point.size(part.of());
            boolean cutOnly = part.of() == SizeOf.AS_CUT;
            spots.add(new MadePart(
                    String.valueOf(i + 1),
                    cutOnly || point.asCut().judged().equals(point.finish().judged())
                            ? Optional.empty()
                            : Optional.of(figure(point, point.asCut().judged(), part.unit())),
                    Optional.of(figure(point, size.judged(), part.unit())),
                    size.isOne()
                            ? Optional.empty()
                            : Optional.of(new MadePart.Extent(
                                    size.least().in(part.unit()),
                                    size.greatest().in(part.unit()))),
                    point.verdict()));
        }
        return spots;
    }

    /** As it reads beside the limits it was judged by. */
    private static ChartFigure figure(PartPoint point, Length size, Unit unit) {
        List<Length> limits = new ArrayList<>();
        point.limits().lower().map(Written::length).ifPresent(limits::add);
        point.limits().upper().map(Written::length).ifPresent(limits::add);
        return new ChartFigure(size.in(unit), Figures.beside(limits, size, unit, point.places()));
    }

    /** An entry wherever the limits are others than those of the part before. */
    private static List<AllowedSizes> allowed(Part part, Unit unit) {
        List<PartPoint> points = part.points();
        List<AllowedSizes> all = new ArrayList<>();
        for (int i = 0; i < points.size(); i++) {
            PartPoint point = points.get(i);
            AllowedSizes now = new AllowedSizes(
                    i,
                    point.limits().lower().map(limit -> limit(limit, unit)),
                    point.limits().upper().map(limit -> limit(limit, unit)),
                    part.band().apply(point).in(unit));
            if (all.isEmpty() || !all.get(all.size() - 1).allowsTheSame(now)) {
                all.add(now);
            }
        }
        return all;
    }

    /** As the plan writes it, where it is in that unit. */
    private static ChartFigure limit(Written limit, Unit unit) {
        BigDecimal at = limit.length().in(unit);
        return new ChartFigure(at, limit.unit().equals(unit) ? Figures.written(limit) : Figures.number(at, unit));
    }

    private List<BreakMark> breaks(Part part) {
        return part.series().breaks().stream()
                .filter(mark -> mark.before() > part.from() && mark.before() < part.to())
                .map(mark -> new BreakMark(mark.before() - part.from(), sentences.broken(mark, part.series())))
                .toList();
    }

    /** Zero, where it is best and nothing lies below. */
    private static Optional<ChartFigure> aim(List<PartPoint> points) {
        boolean fromZero = points.stream().allMatch(point -> point.place(SizeOf.FINAL)
                .filter(place -> place.scale() == TolerancePlace.Scale.OF_ONE_LIMIT)
                .isPresent());
        return fromZero ? Optional.of(new ChartFigure(BigDecimal.ZERO, "0")) : Optional.empty();
    }

    /** Drawn where the parts have one size each: of two lines of three nobody could tell which is which. */
    private static Optional<Track> only(Part part) {
        return part.sums().filter(sums -> sums.tracks().size() == 1).map(sums -> sums.tracks()
                .get(0));
    }

    private Optional<ProcessLimits> process(Part part) {
        return only(part).flatMap(track -> track.limits()
                .map(limits -> limits(part, part.sums().orElseThrow(), limits)));
    }

    private ProcessLimits limits(Part part, SegmentSums sums, ControlLimits limits) {
        int first = Math.max(0, sums.segment().from() - part.from());
        int last = sums.segment().from() + sums.segment().points().size() - 1 - part.from();
        return new ProcessLimits(
                first,
                Math.min(last, part.to() - part.from() - 1),
                limits.lower(),
                limits.centre(),
                limits.upper(),
                limits.standing() == LimitsStanding.TRIAL,
                sentences.limits(limits, sums.unit(), part.places()));
    }

    /** The line of a drift that was shown, and as far ahead as parts may be passed over. */
    private Optional<DrawnDrift> drift(Part part) {
        return only(part)
                .filter(track -> track.drift().shown() == Drift.Shown.SHOWN)
                .map(track -> drift(part, part.sums().orElseThrow(), track))
                .filter(line -> line.at().size() > 1);
    }

    private DrawnDrift drift(Part part, SegmentSums sums, Track track) {
        Trend trend = Trend.of(track.places().stream().map(BigDecimal::valueOf).toList(), track.figures());
        int first = sums.segment().from() - part.from();
        int last = track.places().get(track.n() - 1);
        Optional<MeasureAgain> leave = part.again().filter(again -> again.counsel() == MeasureAgain.Counsel.AFTER);
        Optional<Integer> before = leave.flatMap(again -> track.drift().measureBefore());
        int seen = Math.min(last, part.to() - sums.segment().from());
        int ahead = before.map(number -> Math.max(last, number + 1)).orElse(seen);
        List<DrawnDrift.At> at = new ArrayList<>();
        for (int x = track.places().get(0); x <= ahead; x++) {
            if (first + x - 1 >= 0) {
                BigDecimal place = BigDecimal.valueOf(x);
                BigDecimal line = trend.intercept().add(trend.slope().multiply(place));
                BigDecimal half = BigDecimal.valueOf(trend.singleReach(place, CONFIDENCE));
                at.add(new DrawnDrift.At(first + x - 1, line, line.subtract(half), line.add(half)));
            }
        }
        return new DrawnDrift(
                at,
                before.map(number -> OptionalInt.of(first + number - 1)).orElseGet(OptionalInt::empty),
                leave.map(new MeasureAgainWords(words)::atTheLine).orElse(""),
                sentences.line(track.drift(), sums.unit(), part.places()));
    }

    /**
     * An index as a bar; absent where there is none.
     *
     * @param any of the parts
     */
    public Optional<CapabilityPicture> capability(CapabilityShown shown, PartPoint any) {
        Optional<CapabilityPicture.Shown> says = says(shown.standing());
        return shown.interval()
                .flatMap(interval -> says.map(word -> new CapabilityPicture(
                        figure(BigDecimal.valueOf(interval.low()), sentences::index),
                        figure(
                                BigDecimal.valueOf(shown.index().orElseThrow()),
                                index -> words.say("history.index", sentences.index(index), shown.n())),
                        figure(BigDecimal.valueOf(interval.high()), sentences::index),
                        figure(shown.required(), asked -> words.say("history.asked", Figures.number(asked))),
                        word,
                        sentences.capability(shown, any.unit(), any.places()))));
    }

    private static ChartFigure figure(BigDecimal value, Function<BigDecimal, String> text) {
        return new ChartFigure(value, text.apply(value));
    }

    private static Optional<CapabilityPicture.Shown> says(CapabilityShown.Standing standing) {
        return switch (standing) {
            case SUPPORTS -> Optional.of(CapabilityPicture.Shown.SUPPORTS);
            case CONTRADICTS -> Optional.of(CapabilityPicture.Shown.CONTRADICTS);
            case TOO_FEW, DRIFTING -> Optional.of(CapabilityPicture.Shown.TOO_FEW);
            case NO_INDEX_YET, NOT_FOR_THIS, COARSE -> Optional.empty();
        };
    }

    /** Characteristics on one scale, a row each. */
    public SharePicture shares(List<Series> rows, SizeOf of) {
        return new SharePicture(
                rows.stream().map(series -> row(series, of)).toList(),
                words.say("history.lower"),
                words.say("history.middle"),
                words.say("history.upper"),
                words.say("history.none"),
                words.say("history.shares.spoken", rows.size()));
    }

    /** What stands over the scale of the rows. */
    public ShareHead shareHead() {
        return new ShareHead(words.say("history.lower"), words.say("history.middle"), words.say("history.upper"));
    }

    /** One characteristic on that scale. */
    public SharePicture.ShareRow row(Series series, SizeOf of) {
        List<PartPoint> all = series.points();
        List<PartPoint> last = all.subList(Math.max(0, all.size() - WINDOW), all.size());
        List<SharePicture.ShareMark> marks = new ArrayList<>();
        boolean both = true;
        for (PartPoint point : last) {
            Optional<TolerancePlace> place = point.place(of);
            if (place.isPresent()) {
                both = place.get().scale() == TolerancePlace.Scale.BETWEEN_LIMITS;
                marks.add(new SharePicture.ShareMark(place.get().percent().doubleValue(), point.verdict()));
            }
        }
        return new SharePicture.ShareRow(
                series.characteristic().number(), series.characteristic().name(), note(series, of), both, marks);
    }

    /** How many parts, and where the last one lies; by its size where there is no scale for it. */
    private String note(Series series, SizeOf of) {
        if (series.points().isEmpty()) {
            return words.say("history.unread");
        }
        int parts = series.points().size();
        PartPoint last = series.points().get(parts - 1);
        PointSentences said = new PointSentences(words);
        return last.place(of)
                .map(place -> words.say("history.last-at", parts, new PlaceWords(words).of(last, of, place)))
                .orElseGet(() -> words.say("history.no-place", parts, said.size(last, of), said.limits(last.limits())));
    }
}
