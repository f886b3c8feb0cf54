package org.tenthwise.app.ui;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.tenthwise.app.history.MatterKind;
import org.tenthwise.app.matters.OpenMatter;
import org.tenthwise.app.session.RunSession;
import org.tenthwise.app.ui.home.MattersKeyModel;
import org.tenthwise.app.ui.matters.MattersView;
import org.tenthwise.app.ui.matters.MattersViewModel;
import org.tenthwise.app.ui.matters.SettleMatterView;
import org.tenthwise.app.ui.matters.SettleMatterViewModel;
import org.tenthwise.app.ui.shell.Screen;
import org.tenthwise.checklists.catalogue.DemoPart;
import org.tenthwise.model.gauge.Calibration;
import org.tenthwise.model.run.SignedAs;

class MattersScreenTest extends ScreenTest {

    @RegisterExtension
    private final Workshop workshop = new Workshop(words);

    private Screen matters(Window window) {
        return new MattersView(
                new MattersViewModel(workshop.matterBook(), workshop.tasks, words, workshop), words, workshop);
    }

    /** Closed with nothing measured: it is not complete, and nobody accepted it. */
    private void closed(String serial) {
        RunSession session = workshop.begin(DemoPart.SCREW_CARRIER, serial);
        Workshop.must(() -> session.close("Setter 1", SignedAs.MACHINED_AND_MEASURED));
    }

    @Test
    void whatIsOpenHoldsEverywhere() {
        seen("matters", "none", this::matters);
        workshop.begin(DemoPart.SCREW_CARRIER, "014");
        closed("015");
        seen("matters", "few", this::matters);
        seen("matters", "settle", window -> {
            SettleMatterViewModel model = new SettleMatterViewModel(
                    ofKind(MatterKind.SIGNATURE_MISSING),
                    List.of("Inspector 1", "Quality lead"),
                    workshop.matterBook(),
                    workshop.tasks,
                    words,
                    workshop);
            return new SettleMatterView(model, words, workshop);
        });
        IntStream.range(100, 124).forEach(serial -> closed(String.valueOf(serial)));
        seen("matters", "fifty", this::matters);
    }

    @Test
    void aGaugePastItsDueDayHoldsEverywhere() throws Exception {
        RunSession session = workshop.atTheBore("013");
        session.gauge()
                .calibrated(
                        session.state().calibrated().get(0).what(),
                        new Calibration("K-2211", Optional.of(LocalDate.parse("2025-03-31"))),
                        false);
        session.enter("0.012");
        session.close("Inspector 1", SignedAs.NOT_ACCEPTED);
        seen("matters", "past-due", this::matters);
        seen("matters", "settle-past-due", window -> {
            SettleMatterViewModel model = new SettleMatterViewModel(
                    ofKind(MatterKind.GAUGE_PAST_DUE),
                    List.of("Inspector 1", "Quality lead"),
                    workshop.matterBook(),
                    workshop.tasks,
                    words,
                    workshop);
            return new SettleMatterView(model, words, workshop);
        });
    }

    private OpenMatter ofKind(MatterKind kind) {
        return workshop.matterBook().open().stream()
                .filter(matter -> matter.matter().kind() == kind)
                .findFirst()
                .orElseThrow();
    }

    @Test
    void aTouchLeadsToTheRunOrToTheSignatureAndWhatIsSignedForIsGone() {
        workshop.begin(DemoPart.SCREW_CARRIER, "014");
        closed("015");
        MattersViewModel model = new MattersViewModel(workshop.matterBook(), workshop.tasks, words, workshop);
        model.load();
        List<OpenMatter> all = model.openProperty().get().orElseThrow();
        assertEquals(
                List.of(MatterKind.RUN_NOT_COMPLETE, MatterKind.RUN_NOT_COMPLETE, MatterKind.SIGNATURE_MISSING),
                all.stream().map(matter -> matter.matter().kind()).toList());
        MattersKeyModel key = new MattersKeyModel(workshop.matterBook(), workshop.tasks, words, workshop);
        assertEquals(words.say("matters.title"), key.textProperty().get());
        key.load();
        assertEquals(words.say("matters.key", 3), key.textProperty().get());
        model.take(all.get(0));
        assertTrue(workshop.asked.get(workshop.asked.size() - 1).startsWith("record"), workshop.asked::toString);
        model.take(all.get(2));
        assertEquals("settle SIGNATURE_MISSING", workshop.asked.get(workshop.asked.size() - 1));
        SettleMatterViewModel form = new SettleMatterViewModel(
                all.get(2), List.of("Quality lead"), workshop.matterBook(), workshop.tasks, words, workshop);
        form.load();
        form.look();
        assertEquals("record LG-2207-C-015", workshop.asked.get(workshop.asked.size() - 1));
        form.form().character("held");
        form.form().goTo(form.form().fields().get(2));
        form.form().character("Quality lead");
        form.form().goOn();
        form.form().goOn();
        model.load();
        assertEquals(2, model.openProperty().get().orElseThrow().size());
        key.load();
        assertEquals(words.say("matters.key", 2), key.textProperty().get());
    }
}
