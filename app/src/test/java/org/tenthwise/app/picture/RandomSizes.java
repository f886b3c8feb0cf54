package org.tenthwise.app.picture;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Stream;
import org.tenthwise.app.text.Figures;
import org.tenthwise.model.plan.Feature;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.tolerance.Limit;

/**
 * Sizes as no plan would put them together: readings in the middle, on a limit, next to one, far off and all alike, one
 * place or many, with and without guard band, cuts before and readings struck out, one limit or two.
 */
final class RandomSizes {

    private static final List<String> TOLERANCES = List.of("0.005", "0.021", "0.1", "0.5");

    /** Those that are drawn without an outline: all but lengths that may be to either side. */
    private static final List<Feature> CUT_OPEN = Feature.KNOWN.stream()
            .filter(feature -> feature.side().isPresent() || feature.form().isOfAnEdge())
            .toList();

    private final Random random;
    private final Unit unit;
    private final int places;
    private final BigDecimal nominal;
    private final BigDecimal tolerance;
    private final boolean lower;
    private final boolean upper;
    private final boolean twoWays;

    private RandomSizes(long seed) {
        this.random = new Random(seed);
        this.unit = random.nextInt(4) == 0 ? Unit.INCH : Unit.MILLIMETRE;
        this.places = unit == Unit.INCH ? 4 : 3;
        this.nominal = new BigDecimal(pick(List.of("1.375", "12", "30", "48", "166")));
        this.tolerance = new BigDecimal(pick(TOLERANCES));
        int limits = random.nextInt(6);
        this.lower = limits != 0;
        this.upper = limits != 1;
        this.twoWays = random.nextBoolean();
    }

    static SizePicture of(long seed) {
        RandomSizes sizes = new RandomSizes(seed);
        return sizes.picture(sizes.pick(CUT_OPEN), SizePicture.Beside.CUT_OPEN);
    }

    static SizePicture of(long seed, Feature feature, SizePicture.Beside beside) {
        return new RandomSizes(seed).picture(feature, beside);
    }

    private <T> T pick(List<T> of) {
        return of.get(random.nextInt(of.size()));
    }

    private SizePicture.Sized sized(BigDecimal figure) {
        String written = figure.setScale(places, RoundingMode.HALF_UP).toPlainString();
        return new SizePicture.Sized(new Written(written, unit).length(), written.replace('-', '\u2212'));
    }

    /** By how many tolerances a reading is off the lower limit. */
    private BigDecimal reading() {
        double share =
                switch (random.nextInt(7)) {
                    case 0 -> 0;
                    case 1 -> 1;
                    case 2 -> random.nextDouble() * 0.1;
                    case 3 -> 0.9 + random.nextDouble() * 0.2;
                    case 4 -> random.nextDouble() * 6 - 3;
                    case 5 -> random.nextBoolean() ? 40 : -40;
                    default -> random.nextDouble();
                };
        return nominal.add(tolerance.multiply(BigDecimal.valueOf(share)));
    }

    private SizePicture picture(Feature feature, SizePicture.Beside beside) {
        List<SizePicture.ReadingColumn> columns = new ArrayList<>();
        for (int i = random.nextInt(4); i > 0; i--) {
            columns.add(SizePicture.ReadingColumn.of(
                    SizePicture.Kind.EARLIER, "cut " + (columns.size() + 1), "", Optional.of(sized(reading())), false));
        }
        int count = pick(List.of(1, 1, 2, 4, 6));
        int taken = random.nextInt(count + 1);
        boolean alike = random.nextInt(5) == 0;
        BigDecimal all = reading();
        int decides = taken == 0 ? -1 : random.nextInt(taken);
        Optional<SizePicture.Sized> judged = Optional.empty();
        for (int i = 0; i < count; i++) {
            if (random.nextInt(8) == 0) {
                columns.add(column(SizePicture.Kind.STRUCK_OUT, i, Optional.of(sized(reading())), false));
            }
            Optional<SizePicture.Sized> size =
                    i < taken ? Optional.of(sized(alike ? all : reading())) : Optional.empty();
            judged = i == decides ? size : judged;
            columns.add(column(
                    size.isPresent() ? SizePicture.Kind.TAKEN : SizePicture.Kind.MISSING, i, size, i == decides));
        }
        return picture(feature, beside, columns, judged);
    }

    private SizePicture.ReadingColumn column(
            SizePicture.Kind kind, int place, Optional<SizePicture.Sized> size, boolean decides) {
        boolean struck = kind == SizePicture.Kind.STRUCK_OUT;
        String depth = place < 2 ? "8" : "38";
        String angle = place % 2 == 0 ? "0" : "90";
        return new SizePicture.ReadingColumn(
                kind,
                struck ? "" : twoWays ? angle + "°" : String.valueOf(place + 1),
                "at " + depth,
                size,
                decides,
                Optional.of(new SizePicture.Sized(new Written(depth, unit).length(), depth)),
                twoWays ? Optional.of(new BigDecimal(angle)) : Optional.empty());
    }

    private SizePicture picture(
            Feature feature,
            SizePicture.Beside beside,
            List<SizePicture.ReadingColumn> columns,
            Optional<SizePicture.Sized> judged) {
        Optional<SizePicture.Sized> least = lower ? Optional.of(sized(nominal)) : Optional.empty();
        Optional<SizePicture.Sized> most = upper ? Optional.of(sized(nominal.add(tolerance))) : Optional.empty();
        boolean bore = !feature.isOutside();
        return new SizePicture(
                Optional.of(feature),
                unit,
                least,
                most,
                random.nextInt(4) == 0
                        ? sized(tolerance.multiply(new BigDecimal("0.15"))).size()
                        : Length.ZERO,
                columns,
                judged,
                judged.map(size -> distance(size, least, most)),
                judged.flatMap(size -> cut(size, feature)),
                Optional.empty(),
                true,
                beside,
                new SizePicture.Said(
                        feature.side().isEmpty() ? "" : bore ? "past size" : "still to cut",
                        feature.side().isEmpty() ? "" : bore ? "still to cut" : "past size",
                        "next cut",
                        step -> "1 line = " + step),
                "Size");
    }

    private SizePicture.Distance distance(
            SizePicture.Sized judged, Optional<SizePicture.Sized> least, Optional<SizePicture.Sized> most) {
        Limit nearer = Stream.of(Limit.LOWER, Limit.UPPER)
                .filter(limit -> (limit == Limit.LOWER ? least : most).isPresent())
                .min((one, other) -> off(judged, one == Limit.LOWER ? least : most)
                        .compareTo(off(judged, other == Limit.LOWER ? least : most)))
                .orElseThrow();
        Length off = off(judged, nearer == Limit.LOWER ? least : most);
        return new SizePicture.Distance(off, nearer, Figures.plain(off, unit, places));
    }

    private static Length off(SizePicture.Sized judged, Optional<SizePicture.Sized> limit) {
        return limit.orElseThrow().size().minus(judged.size()).abs();
    }

    /** Where there is metal left beyond a limit, to the middle of the tolerance. */
    private Optional<SizePicture.Cut> cut(SizePicture.Sized judged, Feature feature) {
        SizePicture.Sized aim = sized(nominal.add(tolerance.divide(BigDecimal.valueOf(2))));
        boolean bore = !feature.isOutside();
        Length beyond = sized(bore ? nominal : nominal.add(tolerance)).size();
        boolean left = bore ? judged.size().isBelow(beyond) : judged.size().isAbove(beyond);
        Length off = aim.size().minus(judged.size()).abs();
        return left && feature.side().isPresent()
                ? Optional.of(new SizePicture.Cut(aim, off, "X \u2212" + Figures.plain(off, unit, places)))
                : Optional.empty();
    }
}
