package org.tenthwise.app.bench;

import static org.tenthwise.app.sums.fit.FitSum.BORE_ALPHA;
import static org.tenthwise.app.sums.fit.FitSum.BORE_GREATEST;
import static org.tenthwise.app.sums.fit.FitSum.BORE_GREATEST_FOUND;
import static org.tenthwise.app.sums.fit.FitSum.BORE_LEAST;
import static org.tenthwise.app.sums.fit.FitSum.BORE_LEAST_FOUND;
import static org.tenthwise.app.sums.fit.FitSum.BORE_TEMP;
import static org.tenthwise.app.sums.fit.FitSum.CLEARANCE_GREATEST;
import static org.tenthwise.app.sums.fit.FitSum.CLEARANCE_LEAST;
import static org.tenthwise.app.sums.fit.FitSum.DIAMETER;
import static org.tenthwise.app.sums.fit.FitSum.HOLE_ZONE;
import static org.tenthwise.app.sums.fit.FitSum.KIND;
import static org.tenthwise.app.sums.fit.FitSum.PLUG_ALPHA;
import static org.tenthwise.app.sums.fit.FitSum.PLUG_GREATEST;
import static org.tenthwise.app.sums.fit.FitSum.PLUG_GREATEST_FOUND;
import static org.tenthwise.app.sums.fit.FitSum.PLUG_LEAST;
import static org.tenthwise.app.sums.fit.FitSum.PLUG_LEAST_FOUND;
import static org.tenthwise.app.sums.fit.FitSum.PLUG_TEMP;
import static org.tenthwise.app.sums.fit.FitSum.SHAFT_ZONE;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.tenthwise.app.picture.FitPicture;
import org.tenthwise.app.picture.Picture;
import org.tenthwise.app.picture.Role;
import org.tenthwise.app.picture.SizePicture;
import org.tenthwise.app.sums.Input;
import org.tenthwise.app.sums.Output;
import org.tenthwise.app.sums.SumResult;
import org.tenthwise.app.sums.SumValue;
import org.tenthwise.app.sums.fit.FitSum;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Unit;

/** The play of a plug in its bore, or of two zones on one diameter; warm where they are not at 20 °C. */
final class FitForm implements BenchForm {

    static final String BY = "fit_by";
    static final String SIZES = "sizes";
    private static final String ZONES = "zones";
    private static final String WARM = "warm";
    private static final String HOLE_LETTER = "hole_letter";
    private static final String HOLE_GRADE = "hole_grade";
    private static final String SHAFT_LETTER = "shaft_letter";
    private static final String SHAFT_GRADE = "shaft_grade";
    private static final List<Input<Length>> TYPED = List.of(BORE_GREATEST, BORE_LEAST, PLUG_GREATEST, PLUG_LEAST);
    private static final List<Output<Length>> DRAWN =
            List.of(BORE_GREATEST_FOUND, BORE_LEAST_FOUND, PLUG_GREATEST_FOUND, PLUG_LEAST_FOUND);

    @Override
    public BenchKind kind() {
        return BenchKind.FIT;
    }

    @Override
    public String sum() {
        return FitSum.NAME;
    }

    /** A plug half in its bore. */
    @Override
    public void sign(SignSketch sketch) {
        sketch.thick(Role.LINE, 4, 12, 56, 12, 56, 3);
        sketch.thick(Role.LINE, 4, 44, 56, 44, 56, 53);
        sketch.thick(Role.ACCENT, 92, 16, 30, 16, 30, 41, 92, 41);
        sketch.thin(Role.LINE, 2, 28, 94, 28);
    }

    @Override
    public List<FormField> fields(FormValues filled) {
        List<FormField> fields = new ArrayList<>(List.of(FormField.ofTheForm(BY, SIZES, ZONES)));
        if (filled.is(BY, ZONES)) {
            fields.addAll(List.of(
                    FormField.of(DIAMETER).must(),
                    ZoneFields.letter(HOLE_LETTER, true),
                    ZoneFields.grade(HOLE_GRADE, true),
                    ZoneFields.letter(SHAFT_LETTER, false),
                    ZoneFields.grade(SHAFT_GRADE, false)));
        } else {
            TYPED.stream().map(size -> FormField.of(size).must()).forEach(fields::add);
        }
        fields.add(FormField.ofTheForm(WARM, "no", "yes"));
        if (filled.is(WARM, "yes")) {
            fields.add(FormField.of(BORE_TEMP).must());
            fields.addAll(ExpansionFields.of(BORE_ALPHA));
            fields.add(FormField.of(PLUG_TEMP).must());
            fields.addAll(ExpansionFields.of(PLUG_ALPHA));
        }
        return fields;
    }

    @Override
    public FormValues follow(FormValues filled, String id) {
        return ExpansionFields.follow(filled, id);
    }

    @Override
    public Map<String, SumValue> made(FormValues filled) {
        return filled.is(BY, ZONES)
                ? Map.of(
                        HOLE_ZONE.key(), zone(filled, HOLE_LETTER, HOLE_GRADE),
                        SHAFT_ZONE.key(), zone(filled, SHAFT_LETTER, SHAFT_GRADE))
                : Map.of();
    }

    private static SumValue zone(FormValues filled, String letter, String grade) {
        return new SumValue.Text(filled.text(letter) + filled.text(grade));
    }

    /** The sizes of the zones are drawn. */
    @Override
    public boolean shows(Output<?> output) {
        return !DRAWN.contains(output);
    }

    /** The standard gives its zones in millimetres. */
    @Override
    public Optional<Unit> onlyUnit(FormValues filled) {
        return filled.is(BY, ZONES) ? Optional.of(Unit.MILLIMETRE) : Optional.empty();
    }

    @Override
    public List<Output<?>> first(FormValues filled) {
        return List.of(KIND, CLEARANCE_LEAST, CLEARANCE_GREATEST);
    }

    /** Where the answer says nothing of the sizes, zones are not drawn. */
    @Override
    public Optional<Picture> picture(FormValues filled, SumResult result, AnswerFormat format) {
        boolean zones = filled.is(BY, ZONES);
        List<Length> sizes = (zones
                        ? DRAWN.stream().map(result::find)
                        : TYPED.stream().map(size -> filled.length(size)))
                .flatMap(Optional::stream)
                .toList();
        Optional<Length> nominal = filled.length(DIAMETER).filter(any -> zones);
        return sizes.size() < TYPED.size()
                ? Optional.empty()
                : result.find(CLEARANCE_GREATEST).flatMap(most -> result.find(CLEARANCE_LEAST)
                        .map(least -> drawn(format, sizes, nominal, most, least)));
    }

    /** @param sizes of bore and plug, the greatest of each first */
    private static Picture drawn(
            AnswerFormat format, List<Length> sizes, Optional<Length> nominal, Length most, Length least) {
        return new FitPicture(
                new FitPicture.Side(
                        format.words().say("bench.play.least"),
                        format.least(sizes.get(1)),
                        format.greatest(sizes.get(2)),
                        format.signed(least, SafeSide.of(CLEARANCE_LEAST))),
                new FitPicture.Side(
                        format.words().say("bench.play.most"),
                        format.greatest(sizes.get(0)),
                        format.least(sizes.get(3)),
                        format.signed(most, SafeSide.of(CLEARANCE_GREATEST))),
                nominal.map(size ->
                        new SizePicture.Sized(size, "⌀" + format.sized(size).figures())),
                format.words().say("bench.picture.fit", format.signed(least), format.signed(most)));
    }
}
