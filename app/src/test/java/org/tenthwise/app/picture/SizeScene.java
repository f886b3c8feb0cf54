package org.tenthwise.app.picture;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.tenthwise.app.text.Figures;
import org.tenthwise.model.plan.Feature;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.tolerance.Limit;

/** Puts a size to draw together, reading by reading. */
final class SizeScene {

    private final Feature feature;
    private final Unit unit;
    private final int places;
    private final List<SizePicture.ReadingColumn> columns = new ArrayList<>();
    private Optional<SizePicture.Sized> lower = Optional.empty();
    private Optional<SizePicture.Sized> upper = Optional.empty();
    private Length guardBand = Length.ZERO;
    private Optional<SizePicture.Sized> judged = Optional.empty();
    private Optional<SizePicture.Cut> cut = Optional.empty();

    SizeScene(Feature feature, Unit unit, int places) {
        this.feature = feature;
        this.unit = unit;
        this.places = places;
    }

    private SizePicture.Sized written(String figure) {
        return new SizePicture.Sized(new Written(figure, unit).length(), figure);
    }

    SizeScene limits(String least, String greatest) {
        lower = least.isEmpty() ? Optional.empty() : Optional.of(written(least));
        upper = greatest.isEmpty() ? Optional.empty() : Optional.of(written(greatest));
        return this;
    }

    SizeScene guard(String band) {
        guardBand = new Written(band, unit).length();
        return this;
    }

    SizeScene earlier(String size) {
        columns.add(new SizePicture.ReadingColumn(
                SizePicture.Kind.EARLIER,
                columns.isEmpty() ? "before" : "cut " + columns.size(),
                "",
                Optional.of(written(size)),
                false,
                Optional.empty(),
                Optional.empty()));
        return this;
    }

    SizeScene taken(String label, String depth, String size, boolean decides) {
        columns.add(column(SizePicture.Kind.TAKEN, label, depth, Optional.of(written(size)), decides));
        judged = decides ? Optional.of(written(size)) : judged;
        return this;
    }

    SizeScene spread(String size) {
        columns.add(column(SizePicture.Kind.SPREAD, "", "", Optional.of(written(size)), true));
        return mean(size);
    }

    SizeScene mean(String size) {
        judged = Optional.of(written(size));
        return this;
    }

    SizeScene missing(String label, String depth) {
        columns.add(column(SizePicture.Kind.MISSING, label, depth, Optional.empty(), false));
        return this;
    }

    SizeScene struck(String depth, String size) {
        columns.add(column(SizePicture.Kind.STRUCK_OUT, "", depth, Optional.of(written(size)), false));
        return this;
    }

    private SizePicture.ReadingColumn column(
            SizePicture.Kind kind, String label, String depth, Optional<SizePicture.Sized> size, boolean decides) {
        Optional<BigDecimal> angle = label.endsWith("°")
                ? Optional.of(new BigDecimal(label.substring(0, label.length() - 1)))
                : Optional.empty();
        return new SizePicture.ReadingColumn(
                kind,
                label,
                depth.isEmpty() ? "" : "at " + depth,
                size,
                decides,
                depth.isEmpty() ? Optional.empty() : Optional.of(written(depth)),
                angle);
    }

    SizeScene cut(String aim, String off) {
        String figures = !feature.isTurned() ? off : feature.isOutside() ? "X \u2212" + off : "X +" + off;
        cut = Optional.of(new SizePicture.Cut(written(aim), new Written(off, unit).length(), figures));
        return this;
    }

    private Optional<SizePicture.Distance> distance() {
        return judged.map(size -> {
            Optional<Length> toLower = lower.map(limit -> size.size().minus(limit.size()));
            Optional<Length> toUpper = upper.map(limit -> limit.size().minus(size.size()));
            boolean low =
                    toUpper.isEmpty() || toLower.isPresent() && toLower.get().compareTo(toUpper.get()) < 0;
            Length room = (low ? toLower : toUpper).orElseThrow().abs();
            return new SizePicture.Distance(room, low ? Limit.LOWER : Limit.UPPER, Figures.plain(room, unit, places));
        });
    }

    SizePicture picture() {
        boolean bore = !feature.isOutside();
        return new SizePicture(
                feature,
                unit,
                lower,
                upper,
                guardBand,
                columns,
                judged,
                distance(),
                cut,
                Optional.empty(),
                new SizePicture.Said(
                        feature.side().isEmpty() ? "" : bore ? "past size" : "still to cut",
                        feature.side().isEmpty() ? "" : bore ? "still to cut" : "past size",
                        "next cut",
                        step -> "1 line " + step),
                "Size");
    }
}
