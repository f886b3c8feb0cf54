package org.tenthwise.app.ui.deed;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.tenthwise.app.session.State;
import org.tenthwise.app.text.CalibrationWords;
import org.tenthwise.app.text.Dates;
import org.tenthwise.app.ui.form.CurrentRun;
import org.tenthwise.app.ui.form.Field;
import org.tenthwise.app.ui.form.StepForm;
import org.tenthwise.app.ui.form.Suggestions;
import org.tenthwise.app.ui.shell.Navigator;
import org.tenthwise.app.ui.shell.Notice;
import org.tenthwise.model.gauge.Calibration;
import org.tenthwise.model.gauge.GaugeOrMaster;
import org.tenthwise.model.record.GaugesUsed;
import org.tenthwise.model.run.StepEvent;
import org.tenthwise.model.words.Words;

/**
 * By what certificate a gauge, or what it is set on, was calibrated and until when. What is known lies ready, and both
 * may be left empty. Where something was read under what is known, it is asked whether that was wrong or is over.
 */
public final class CalibrationForm extends StepForm {

    private static final int MOST = 40;
    private static final int MOST_DATE = 10;

    private final GaugeOrMaster what;
    private final Field<String> certificate;
    private final Field<String> due;
    private final Field<Boolean> putsRight;
    private Calibration before = Calibration.NOT_STATED;
    private boolean used;
    private boolean setOn;

    public CalibrationForm(CurrentRun inHand, GaugeOrMaster what, Words words, Navigator navigator) {
        super(words.say("calibration.title"), inHand, words, navigator);
        this.what = what;
        certificate = Field.mark(
                "certificate", words.say("calibration.number"), words.say("calibration.number.question"), false, MOST);
        due = Field.words(
                "due", words.say("calibration.due-day"), words.say("calibration.due-day.question"), false, MOST_DATE);
        putsRight = Field.choice(
                "from",
                words.say("calibration.from"),
                words.say("calibration.from.question"),
                right -> words.say(right ? "calibration.from.put-right" : "calibration.from.now-on"));
        putsRight.offer(List.of(true, false));
        asks(words.say("calibration.act"), certificate, due, putsRight);
        Stream.of(certificate, due).forEach(field -> field.valueProperty().subscribe(this::weigh));
        weigh();
        form().aboutProperty().set(what.mark());
    }

    private void weigh() {
        putsRight.askedProperty().set(used && !typed().equals(Optional.of(before)));
    }

    @Override
    protected void offer(State state, Suggestions known) {
        before = state.sheet().run().calibrations().now(what);
        used = GaugesUsed.in(state.sheet()).stream()
                .anyMatch(one -> one.what().equals(what) && one.calibration().equals(before));
        setOn = state.sheet().run().gauges().settings().stream()
                .map(entry -> StepEvent.GaugeSet.in(entry).setting())
                .anyMatch(setting -> GaugeOrMaster.under(setting).equals(Optional.of(what)));
        Calibration ready = state.calibrated().stream()
                .filter(here -> here.what().equals(what))
                .map(here -> here.calibration())
                .findFirst()
                .orElse(before);
        Stream.of(ready.certificate()).filter(number -> !number.isEmpty()).forEach(number -> {
            certificate.offer(List.of(number));
            certificate.choice().choose(number);
        });
        Dates dates = new Dates(words);
        ready.due().map(LocalDate::toString).ifPresent(day -> {
            due.offer(List.of(day), typed -> dates.day(LocalDate.parse(typed)));
            due.choice().choose(day);
        });
        weigh();
    }

    @Override
    protected List<String> notes(State state) {
        CalibrationWords said = new CalibrationWords(words);
        return Stream.concat(
                        state.calibrated().stream()
                                .filter(here -> here.what().equals(what))
                                .map(here ->
                                        words.say("calibration.of", said.named(what), said.of(here.calibration()))),
                        Stream.of(words.say("calibration.remembered")))
                .toList();
    }

    /** Absent where what is typed as a day is none. */
    private Optional<Calibration> typed() {
        try {
            return Optional.of(new Calibration(
                    certificate.reads(),
                    Optional.of(due.reads().strip())
                            .filter(day -> !day.isEmpty())
                            .map(LocalDate::parse)));
        } catch (DateTimeParseException e) {
            return Optional.empty();
        }
    }

    @Override
    protected void act() {
        Optional<Calibration> typed = typed();
        if (typed.isEmpty()) {
            navigator.tell(Notice.plain(
                    words.say("errand.refused"), words.say("calibration.refused.due"), words.say("shell.understood")));
            form().goTo(due);
            return;
        }
        boolean right = putsRight.askedProperty().get()
                ? putsRight.valueProperty().get().orElseThrow()
                : setOn && !used;
        ask(session -> session.gauge().calibrated(what, typed.get(), right));
    }
}
