package org.tenthwise.app.bench;

import static org.tenthwise.app.sums.taper.TaperSum.HALF;
import static org.tenthwise.app.sums.taper.TaperSum.HALF_FOUND;
import static org.tenthwise.app.sums.taper.TaperSum.HEIGHT;
import static org.tenthwise.app.sums.taper.TaperSum.INCLUDED;
import static org.tenthwise.app.sums.taper.TaperSum.INCLUDED_FOUND;
import static org.tenthwise.app.sums.taper.TaperSum.LARGE;
import static org.tenthwise.app.sums.taper.TaperSum.LARGE_FOUND;
import static org.tenthwise.app.sums.taper.TaperSum.LENGTH;
import static org.tenthwise.app.sums.taper.TaperSum.ONE_IN;
import static org.tenthwise.app.sums.taper.TaperSum.OVER_HIGH;
import static org.tenthwise.app.sums.taper.TaperSum.OVER_LOW;
import static org.tenthwise.app.sums.taper.TaperSum.PER_FOOT;
import static org.tenthwise.app.sums.taper.TaperSum.PER_FOOT_FOUND;
import static org.tenthwise.app.sums.taper.TaperSum.PER_UNIT;
import static org.tenthwise.app.sums.taper.TaperSum.PER_UNIT_FOUND;
import static org.tenthwise.app.sums.taper.TaperSum.RATIO;
import static org.tenthwise.app.sums.taper.TaperSum.ROLLER;
import static org.tenthwise.app.sums.taper.TaperSum.SMALL;
import static org.tenthwise.app.sums.taper.TaperSum.SMALL_FOUND;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.tenthwise.app.picture.Picture;
import org.tenthwise.app.picture.Role;
import org.tenthwise.app.picture.SketchPicture;
import org.tenthwise.app.sums.Output;
import org.tenthwise.app.sums.SumResult;
import org.tenthwise.app.sums.taper.TaperSum;
import org.tenthwise.model.quantity.Unit;

/** A taper in every way it is written, from any of them, from two diameters, or over rollers. */
final class TaperForm implements BenchForm {

    private static final String BY = "taper_by";
    private static final String DIAMETERS = "diameters";
    private static final String ROLLERS = "rollers";
    private static final Set<String> IN_THE_SUM_ALONE = Set.of(SMALL_FOUND.key(), LARGE_FOUND.key());

    @Override
    public BenchKind kind() {
        return BenchKind.TAPER;
    }

    @Override
    public String sum() {
        return TaperSum.NAME;
    }

    /** A taper on its axis. */
    @Override
    public void sign(SignSketch sketch) {
        sketch.thick(Role.LINE, 14, 6, 78, 16, 78, 40, 14, 50, 14, 6);
        sketch.thin(Role.LINE, 4, 28, 92, 28);
        sketch.thin(Role.ACCENT, 14, 4, 92, 16);
    }

    @Override
    public List<FormField> fields(FormValues filled) {
        FormField by = FormField.ofTheForm(
                BY, DIAMETERS, ROLLERS, INCLUDED.key(), HALF.key(), RATIO.key(), PER_FOOT.key(), PER_UNIT.key());
        return switch (filled.text(BY)) {
            case ROLLERS ->
                List.of(
                        by,
                        FormField.of(OVER_LOW),
                        FormField.of(OVER_HIGH).must(),
                        FormField.of(HEIGHT).must().called("block-height"),
                        FormField.of(ROLLER));
            case "included" -> List.of(by, FormField.of(INCLUDED));
            case "half" -> List.of(by, FormField.of(HALF));
            case "ratio" -> List.of(by, FormField.of(RATIO));
            case "per_foot" -> List.of(by, FormField.of(PER_FOOT));
            case "per_unit" -> List.of(by, FormField.of(PER_UNIT));
            default ->
                List.of(
                        by,
                        FormField.of(LARGE),
                        FormField.of(SMALL).must(),
                        FormField.of(LENGTH).must().called("taper-length"));
        };
    }

    @Override
    public List<Output<?>> first(FormValues filled) {
        return List.of(INCLUDED_FOUND, HALF_FOUND, ONE_IN, PER_UNIT_FOUND, PER_FOOT_FOUND, SMALL_FOUND, LARGE_FOUND);
    }

    @Override
    public String formula(FormValues filled) {
        return filled.is(BY, ROLLERS) ? "rollers" : "all";
    }

    @Override
    public String called(Output<?> output, FormValues filled) {
        return IN_THE_SUM_ALONE.contains(output.key()) ? "taper-" + output.key() : output.key();
    }

    /** A foot is twelve inches, so what a foot loses is in inches whatever the lengths are in. */
    @Override
    public String symbol(Output<?> figure, FormValues filled) {
        return figure.key().equals(PER_FOOT_FOUND.key()) ? Unit.INCH.symbol() : "";
    }

    @Override
    public Optional<Picture> picture(FormValues filled, SumResult result, AnswerFormat format) {
        String spoken = result.find(INCLUDED_FOUND)
                .map(angle -> format.spoken(kind(), format.figure(BigDecimal.valueOf(angle), false) + "°"))
                .orElse("");
        return switch (filled.text(BY)) {
            case ROLLERS ->
                Optional.of(SketchPicture.rollers(
                        result.find(LARGE_FOUND).isEmpty()
                                && filled.length(OVER_LOW)
                                        .flatMap(low -> filled.length(OVER_HIGH).map(low::isBelow))
                                        .orElse(true),
                        filled.shown(OVER_LOW),
                        filled.shown(OVER_HIGH),
                        spoken));
            case DIAMETERS -> Optional.of(SketchPicture.taper(filled.shown(LARGE), filled.shown(SMALL), spoken));
            default -> result.find(PER_UNIT_FOUND).map(perUnit -> SketchPicture.taper(perUnit, spoken));
        };
    }
}
