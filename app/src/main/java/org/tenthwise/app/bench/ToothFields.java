package org.tenthwise.app.bench;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.tenthwise.app.sums.gear.ToothInputs;
import org.tenthwise.model.quantity.Unit;

/** What names involute teeth, asked alike wherever they are asked for. */
final class ToothFields {

    private static final String BY = "module_by";

    private ToothFields() {}

    /** Teeth, module or diametral pitch as is usual in the unit, pressure angle. */
    static List<FormField> of(FormValues filled) {
        String module = ToothInputs.MODULE.key();
        String pitch = ToothInputs.DIAMETRAL_PITCH.key();
        boolean inch = filled.unit() == Unit.INCH;
        boolean byPitch = filled.text(BY).isEmpty() ? inch : filled.is(BY, pitch);
        return new ArrayList<>(List.of(
                FormField.of(ToothInputs.TEETH),
                inch ? FormField.ofTheForm(BY, pitch, module) : FormField.ofTheForm(BY, module, pitch),
                FormField.of(byPitch ? ToothInputs.DIAMETRAL_PITCH : ToothInputs.MODULE)
                        .ofADesignation(),
                FormField.of(ToothInputs.PRESSURE_ANGLE)));
    }

    /** As typed; absent where it is no whole number that can be drawn. */
    static Optional<Integer> whole(FormValues filled, String id) {
        return filled.number(id).map(BigDecimal::intValue).filter(number -> number > 0);
    }
}
