package org.tenthwise.app.ui.deed;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.tenthwise.app.session.RunSession;
import org.tenthwise.app.ui.Workshop;
import org.tenthwise.app.ui.form.Field;
import org.tenthwise.app.ui.form.FormViewModel;
import org.tenthwise.app.ui.form.StepForm;
import org.tenthwise.model.gauge.Calibration;
import org.tenthwise.model.gauge.GaugeKind;
import org.tenthwise.model.gauge.GaugeOrMaster;
import org.tenthwise.model.record.GaugesUsed;

/** Certificate and due day of a gauge, or of what it is set on, as they are typed. */
class CalibrationFormTest {

    private static final GaugeOrMaster GAUGE = GaugeOrMaster.gauge("BG-2", GaugeKind.BORE_GAUGE);
    private static final GaugeOrMaster RING = GaugeOrMaster.master("30.000");
    private static final int CERTIFICATE = 0;
    private static final int DUE = 1;
    private static final int COUNTS_FOR = 2;

    @RegisterExtension
    private final Workshop workshop = new Workshop();

    private StepForm form(RunSession session, GaugeOrMaster what) {
        StepForm model = new CalibrationForm(workshop.inHand(session), what, workshop.words, workshop);
        model.load();
        return model;
    }

    private static void type(FormViewModel form, int field, String text) {
        Field<?> in = form.fields().get(field);
        form.goTo(in);
        in.type();
        in.typing().orElseThrow().startAnew("");
        text.chars().mapToObj(Character::toString).forEach(form::character);
    }

    private static <T> void choose(Field<T> field, int row) {
        field.choice().choose(field.choice().offeredProperty().get().get(row));
    }

    private static Calibration calibration(String certificate, String due) {
        return new Calibration(certificate, Optional.of(LocalDate.parse(due)));
    }

    private static Calibration now(RunSession session, GaugeOrMaster what) {
        return session.state().sheet().run().calibrations().now(what);
    }

    private static List<Calibration> read(RunSession session, GaugeOrMaster what) {
        return GaugesUsed.in(session.state().sheet()).stream()
                .filter(used -> used.what().equals(what))
                .map(GaugesUsed.Used::calibration)
                .toList();
    }

    private static boolean asksWhatItCountsFor(StepForm model) {
        return model.form().fields().get(COUNTS_FOR).askedProperty().get();
    }

    private static void keep(StepForm model) {
        Field<?> last = model.form().fields().get(DUE);
        model.form().goTo(asksWhatItCountsFor(model) ? model.form().fields().get(COUNTS_FOR) : last);
        model.form().goOn();
    }

    @Test
    void neitherIsDemanded() {
        RunSession session = workshop.atTheBore("014");
        StepForm model = form(session, GAUGE);
        assertTrue(model.form().readyProperty().get());
        keep(model);
        assertEquals(Calibration.NOT_STATED, now(session, GAUGE));
        assertEquals(List.of("back"), workshop.asked);
    }

    @Test
    void whatIsTypedBeforeTheFirstReadingCountsWithoutAQuestion() throws Exception {
        RunSession session = workshop.atTheBore("014");
        StepForm model = form(session, GAUGE);
        type(model.form(), CERTIFICATE, "K-1");
        type(model.form(), DUE, "2027-03-31");
        assertFalse(asksWhatItCountsFor(model));
        keep(model);
        session.enter("0.012");
        assertEquals(List.of(calibration("K-1", "2027-03-31")), read(session, GAUGE));
    }

    /** It was set on already when its certificate is typed, and nothing was read. */
    @Test
    void aRingTheGaugeIsSetOnHasItsCertificateFromThatSettingOn() throws Exception {
        RunSession session = workshop.atTheBore("014");
        StepForm model = form(session, RING);
        type(model.form(), CERTIFICATE, "K-9");
        assertFalse(asksWhatItCountsFor(model));
        keep(model);
        session.enter("0.012");
        assertEquals(List.of(new Calibration("K-9", Optional.empty())), read(session, RING));
    }

    @Test
    void afterAReadingItIsAskedWhatAChangeCountsFor() {
        RunSession session = workshop.atTheBore("014", "0.012");
        StepForm right = form(session, GAUGE);
        assertFalse(asksWhatItCountsFor(right));
        type(right.form(), DUE, "2025-03-31");
        assertTrue(asksWhatItCountsFor(right));
        right.form().goTo(right.form().fields().get(COUNTS_FOR));
        assertFalse(right.form().readyProperty().get());
        choose(right.form().fields().get(COUNTS_FOR), 0);
        keep(right);
        Calibration before = new Calibration("", Optional.of(LocalDate.parse("2025-03-31")));
        assertEquals(List.of(before), read(session, GAUGE));

        StepForm anew = form(session, GAUGE);
        assertEquals("2025-03-31", anew.form().fields().get(DUE).reads());
        type(anew.form(), DUE, "2027-03-31");
        choose(anew.form().fields().get(COUNTS_FOR), 1);
        keep(anew);
        assertEquals(List.of(before), read(session, GAUGE));
        assertEquals(
                Optional.of(LocalDate.parse("2027-03-31")), now(session, GAUGE).due());
    }

    @Test
    void whatIsNoDayIsRefusedAndNothingIsKept() {
        RunSession session = workshop.atTheBore("014");
        for (String typed : List.of("31.03.2027", "2027-02-29", "2027")) {
            StepForm model = form(session, GAUGE);
            type(model.form(), DUE, typed);
            keep(model);
            assertEquals(Calibration.NOT_STATED, now(session, GAUGE), typed);
        }
        assertFalse(workshop.asked.contains("back"), workshop.asked::toString);
    }

    @Test
    void whatTheShopKnowsLiesReadyInTheNextRun() throws Exception {
        workshop.atTheBore("014").gauge().calibrated(GAUGE, calibration("K-1", "2027-03-31"), false);
        StepForm model = form(workshop.atTheBore("015"), GAUGE);
        assertEquals("K-1", model.form().fields().get(CERTIFICATE).reads());
        assertEquals("2027-03-31", model.form().fields().get(DUE).reads());
    }
}
