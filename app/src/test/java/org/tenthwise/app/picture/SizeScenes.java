package org.tenthwise.app.picture;

import java.util.LinkedHashMap;
import java.util.Map;
import org.tenthwise.model.plan.Feature;
import org.tenthwise.model.quantity.Unit;

/** Sizes to draw, with invented readings. */
final class SizeScenes {

    private SizeScenes() {}

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
                new SizeScene(Feature.DIAMETER, Unit.MILLIMETRE, 3)
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
                new SizeScene(Feature.DIAMETER, Unit.MILLIMETRE, 3)
                        .limits("", "48.000")
                        .taken("1", "", "48.032", true)
                        .cut("48.000", "0.032")
                        .picture());
        scenes.put(
                "outside-two-places",
                new SizeScene(Feature.DIAMETER, Unit.MILLIMETRE, 3)
                        .limits("47.980", "48.000")
                        .guard("0.003")
                        .taken("1", "10", "47.991", false)
                        .taken("2", "10", "47.990", false)
                        .taken("3", "31", "47.982", true)
                        .missing("4", "31")
                        .picture());
        scenes.put(
                "inch-outside",
                new SizeScene(Feature.DIAMETER, Unit.INCH, 4)
                        .limits("2.5984", "2.6000")
                        .taken("1", "", "2.6016", true)
                        .cut("2.5992", "0.0024")
                        .picture());
        scenes.put(
                "pocket",
                new SizeScene(Feature.WIDTH, Unit.MILLIMETRE, 3)
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
                new SizeScene(Feature.WIDTH, Unit.MILLIMETRE, 2)
                        .limits("12.00", "12.04")
                        .taken("1", "", "12.01", false)
                        .taken("2", "", "12.02", false)
                        .taken("3", "", "12.04", true)
                        .picture());
        scenes.put(
                "depth",
                new SizeScene(Feature.DEPTH, Unit.MILLIMETRE, 2)
                        .limits("46.00", "46.10")
                        .taken("1", "", "46.04", true)
                        .picture());
        scenes.put(
                "depth-cut-again",
                new SizeScene(Feature.DEPTH, Unit.MILLIMETRE, 2)
                        .limits("46.00", "46.10")
                        .taken("1", "", "45.90", true)
                        .cut("46.05", "0.15")
                        .picture());
        scenes.put(
                "one-sided",
                new SizeScene(Feature.DEPTH, Unit.MILLIMETRE, 2)
                        .limits("15.00", "")
                        .taken("1", "", "15.30", false)
                        .taken("2", "", "15.12", true)
                        .picture());
        scenes.put(
                "one-sided-empty",
                new SizeScene(Feature.DIAMETER, Unit.MILLIMETRE, 2)
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
                new SizeScene(Feature.DEPTH, Unit.INCH, 4)
                        .limits("", "0.0020")
                        .spread("0.0007")
                        .picture());
        scenes.put(
                "bore-spread",
                new SizeScene(Feature.BORE, Unit.MILLIMETRE, 3)
                        .limits("", "0.010")
                        .spread("0.014")
                        .picture());
        scenes.put(
                "outside-spread",
                new SizeScene(Feature.DIAMETER, Unit.MILLIMETRE, 3)
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

    private static SizeScene of(String feature, int places) {
        return new SizeScene(Feature.known(feature).orElseThrow(), Unit.MILLIMETRE, places);
    }

    private static SizeScene bore() {
        return new SizeScene(Feature.BORE, Unit.MILLIMETRE, 3).limits("30.000", "30.021");
    }
}
