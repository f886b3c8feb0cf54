package org.tenthwise.app.ui.deed;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.tenthwise.app.session.Prompt;
import org.tenthwise.app.session.RunSession;
import org.tenthwise.app.ui.Workshop;
import org.tenthwise.app.ui.form.StepForm;
import org.tenthwise.model.gauge.GaugeKind;

class OtherGaugeFormTest {

    @RegisterExtension
    private final Workshop workshop = new Workshop();

    @Test
    void theMarkTypedIsAskedForItsSenseBeforeItIsRead() {
        RunSession session = workshop.atTheBore("014", "0.013");
        StepForm model = new OtherGaugeForm(workshop.inHand(session), workshop.words, workshop);
        model.load();
        "BG-9".chars().mapToObj(Character::toString).forEach(model.form()::character);
        model.form().goOn();
        assertEquals(
                new Prompt.WhichSense("BG-9", GaugeKind.BORE_GAUGE),
                session.state().asked());
        assertEquals(List.of("back"), workshop.asked);
        assertEquals(
                "BG-2",
                session.state()
                        .pass()
                        .readings()
                        .get(0)
                        .setting()
                        .orElseThrow()
                        .gauge()
                        .id());
    }
}
