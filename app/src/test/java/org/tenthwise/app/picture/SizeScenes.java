package org.tenthwise.app.picture;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.tenthwise.app.text.Figures;
import org.tenthwise.model.plan.Feature;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.tolerance.Limit;

/** Sizes to draw, with invented readings. */
final class SizeScenes {

    private final Feature feature;
    private final Unit unit;
    private final int places;
    private final List<SizePicture.ReadingColumn> columns = new ArrayList<>();
    private Optional<SizePicture.Sized> lower = Optional.empty();
    private Optional<SizePicture.Sized> upper = Optional.empty();
    private Length guardBand = Length.ZERO;
    private Optional<SizePicture.Sized> judged = Optional.empty();
    private Optional<SizePicture.Cut> cut = Optional.empty();

    private SizeScenes(Feature feature, Unit unit, int places) {
        this.feature = feature;
        this.unit = unit;
        this.places = places;
    }

    static Map<String, SizePicture> all() {
        Map<String, SizePicture> scenes = new LinkedHashMap<>();
        scenes.put(
                "bore-pass",
                bore().taken("0°", "8", "30.015", true)
                        .taken("90°", "8", "30.014", false)
                        .taken("0°", "38", "30.011", false)
                        .taken("90°", "38", "30.013", false)
                        .picture());
        scenes.put(
                "bore-open",
                bore().taken("0°", "8", "30.012", true)
                        .missing("90°", "8")
                        .missing("0°", "38")
                        .missing("90°", "38")
                        .picture());
        scenes.put("bore-empty", bore().missing("0°", "8").missing("90°", "8").picture());
        scenes.put(
                "bore-past-size",
                bore().taken("0°", "8", "30.024", true)
                        .taken("90°", "8", "30.019", false)
                        .taken("0°", "38", "30.020", false)
                        .taken("90°", "38", "30.021", false)
                        .picture());
        scenes.put(
                "bore-cut-again",
                bore().earlier("29.780")
                        .taken("0°", "8", "29.982", true)
                        .taken("90°", "8", "29.985", false)
                        .cut("30.0105", "0.027")
                        .picture());
        scenes.put(
                "bore-struck",
                bore().taken("0°", "8", "30.015", true)
                        .struck("8", "30.055")
                        .taken("90°", "8", "30.014", false)
                        .taken("0°", "38", "30.011", false)
                        .missing("90°", "38")
                        .picture());
        scenes.put(
                "bore-guarded",
                bore().guard("0.003")
                        .taken("0°", "8", "30.0195", true)
                        .taken("90°", "8", "30.012", false)
                        .taken("0°", "38", "30.0095", false)
                        .taken("90°", "38", "30.011", false)
                        .picture());
        scenes.put(
                "outside-cut-again",
                new SizeScenes(Feature.DIAMETER, Unit.MILLIMETRE, 3)
                        .limits("47.980", "48.000")
                        .earlier("48.312")
                        .earlier("48.098")
                        .taken("1", "", "48.032", true)
                        .cut("47.990", "0.042")
                        .picture());
        scenes.put(
                "bore-third-cut",
                bore().earlier("29.620")
                        .earlier("29.811")
                        .earlier("29.903")
                        .taken("0°", "8", "29.962", true)
                        .taken("90°", "8", "29.965", false)
                        .taken("0°", "38", "29.968", false)
                        .taken("90°", "38", "29.966", false)
                        .cut("30.007", "0.042")
                        .picture());
        scenes.put(
                "aim-on-a-limit",
                new SizeScenes(Feature.DIAMETER, Unit.MILLIMETRE, 3)
                        .limits("", "48.000")
                        .taken("1", "", "48.032", true)
                        .cut("48.000", "0.032")
                        .picture());
        scenes.put(
                "outside-two-places",
                new SizeScenes(Feature.DIAMETER, Unit.MILLIMETRE, 3)
                        .limits("47.980", "48.000")
                        .guard("0.003")
                        .taken("1", "10", "47.991", false)
                        .taken("2", "10", "47.990", false)
                        .taken("3", "31", "47.982", true)
                        .missing("4", "31")
                        .picture());
        scenes.put(
                "inch-outside",
                new SizeScenes(Feature.DIAMETER, Unit.INCH, 4)
                        .limits("2.5984", "2.6000")
                        .taken("1", "", "2.6016", true)
                        .cut("2.5992", "0.0024")
                        .picture());
        scenes.put(
                "pocket",
                new SizeScenes(Feature.WIDTH, Unit.MILLIMETRE, 3)
                        .limits("12.000", "12.043")
                        .taken("1", "2", "12.046", true)
                        .taken("2", "2", "12.022", false)
                        .taken("3", "2", "12.030", false)
                        .taken("4", "7", "12.012", false)
                        .taken("5", "7", "12.008", false)
                        .taken("6", "7", "12.018", false)
                        .picture());
        scenes.put(
                "pocket-places",
                new SizeScenes(Feature.WIDTH, Unit.MILLIMETRE, 2)
                        .limits("12.00", "12.04")
                        .taken("1", "", "12.01", false)
                        .taken("2", "", "12.02", false)
                        .taken("3", "", "12.04", true)
                        .picture());
        scenes.put(
                "depth",
                new SizeScenes(Feature.DEPTH, Unit.MILLIMETRE, 2)
                        .limits("46.00", "46.10")
                        .taken("1", "", "46.04", true)
                        .picture());
        scenes.put(
                "depth-cut-again",
                new SizeScenes(Feature.DEPTH, Unit.MILLIMETRE, 2)
                        .limits("46.00", "46.10")
                        .taken("1", "", "45.90", true)
                        .cut("46.05", "0.15")
                        .picture());
        scenes.put(
                "one-sided",
                new SizeScenes(Feature.DEPTH, Unit.MILLIMETRE, 2)
                        .limits("15.00", "")
                        .taken("1", "", "15.30", false)
                        .taken("2", "", "15.12", true)
                        .picture());
        scenes.put(
                "one-sided-empty",
                new SizeScenes(Feature.DIAMETER, Unit.MILLIMETRE, 2)
                        .limits("", "15.00")
                        .missing("1", "")
                        .picture());
        scenes.put(
                "far-out",
                bore().taken("0°", "8", "30.400", true)
                        .taken("90°", "8", "29.2", false)
                        .picture());
        scenes.put(
                "on-the-limit",
                bore().taken("0°", "8", "30.021", true)
                        .taken("90°", "8", "30.020", false)
                        .picture());
        scenes.put(
                "depth-spread",
                new SizeScenes(Feature.DEPTH, Unit.INCH, 4)
                        .limits("", "0.0020")
                        .spread("0.0007")
                        .picture());
        scenes.put(
                "bore-spread",
                new SizeScenes(Feature.BORE, Unit.MILLIMETRE, 3)
                        .limits("", "0.010")
                        .spread("0.014")
                        .picture());
        scenes.put(
                "outside-spread",
                new SizeScenes(Feature.DIAMETER, Unit.MILLIMETRE, 3)
                        .limits("", "0.010")
                        .spread("0.004")
                        .picture());
        scenes.put(
                "thickness",
                of("thickness", 2)
                        .limits("7.98", "8.00")
                        .taken("1", "", "8.04", true)
                        .taken("2", "", "8.03", false)
                        .cut("7.99", "0.05")
                        .picture());
        scenes.put(
                "flats-open",
                of("flats", 2)
                        .limits("16.95", "17.00")
                        .missing("1", "")
                        .missing("2", "")
                        .picture());
        scenes.put(
                "slot",
                of("slot", 3)
                        .limits("12.000", "12.043")
                        .taken("1", "", "12.046", true)
                        .picture());
        scenes.put(
                "hole",
                of("hole", 3)
                        .limits("6.000", "6.012")
                        .taken("0°", "", "6.004", true)
                        .taken("90°", "", "6.009", false)
                        .picture());
        scenes.put(
                "pin",
                of("pin", 3)
                        .limits("5.991", "6.000")
                        .taken("1", "", "5.996", true)
                        .picture());
        scenes.put(
                "chamfer-open",
                of("chamfer", 2).limits("0.80", "1.20").missing("1", "").picture());
        scenes.put(
                "chamfer",
                of("chamfer", 2)
                        .limits("0.80", "1.20")
                        .taken("1", "", "1.24", true)
                        .taken("2", "", "1.05", false)
                        .picture());
        scenes.put(
                "radius",
                of("radius", 1).limits("5.5", "6.5").taken("1", "", "6.2", true).picture());
        scenes.put(
                "radius-open",
                of("radius", 1).limits("", "0.4").missing("1", "").picture());
        scenes.put(
                "mean",
                bore().taken("0°", "8", "30.011", false)
                        .taken("90°", "8", "30.017", false)
                        .mean("30.014")
                        .picture());
        return scenes;
    }

    private static SizeScenes of(String feature, int places) {
        return new SizeScenes(Feature.known(feature).orElseThrow(), Unit.MILLIMETRE, places);
    }

    private static SizeScenes bore() {
        return new SizeScenes(Feature.BORE, Unit.MILLIMETRE, 3).limits("30.000", "30.021");
    }

    private SizePicture.Sized written(String figure) {
        return new SizePicture.Sized(new Written(figure, unit).length(), figure);
    }

    private SizeScenes limits(String least, String greatest) {
        lower = least.isEmpty() ? Optional.empty() : Optional.of(written(least));
        upper = greatest.isEmpty() ? Optional.empty() : Optional.of(written(greatest));
        return this;
    }

    private SizeScenes guard(String band) {
        guardBand = new Written(band, unit).length();
        return this;
    }

    private SizeScenes earlier(String size) {
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

    private SizeScenes taken(String label, String depth, String size, boolean decides) {
        columns.add(column(SizePicture.Kind.TAKEN, label, depth, Optional.of(written(size)), decides));
        judged = decides ? Optional.of(written(size)) : judged;
        return this;
    }

    private SizeScenes spread(String size) {
        columns.add(column(SizePicture.Kind.SPREAD, "", "", Optional.of(written(size)), true));
        return mean(size);
    }

    private SizeScenes mean(String size) {
        judged = Optional.of(written(size));
        return this;
    }

    private SizeScenes missing(String label, String depth) {
        columns.add(column(SizePicture.Kind.MISSING, label, depth, Optional.empty(), false));
        return this;
    }

    private SizeScenes struck(String depth, String size) {
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

    private SizeScenes cut(String aim, String off) {
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

    private SizePicture picture() {
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
