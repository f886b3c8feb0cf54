package org.tenthwise.app.ui.deed;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.tenthwise.app.session.SettingFault;
import org.tenthwise.app.session.State;
import org.tenthwise.app.text.CalibrationWords;
import org.tenthwise.app.text.Figures;
import org.tenthwise.app.text.GaugeWords;
import org.tenthwise.model.gauge.GaugeKind;
import org.tenthwise.model.gauge.GaugeOrMaster;
import org.tenthwise.model.gauge.Setting;
import org.tenthwise.model.run.Entry;
import org.tenthwise.model.run.StepEvent;
import org.tenthwise.model.words.Words;

/** What can be done about the gauge of the step in hand. */
sealed interface Remedy {

    /** What a row reads. */
    String reads();

    /** Another gauge is taken. */
    record Other(String reads) implements Remedy {}

    /** The same gauge is set anew. */
    record SetAnew(boolean senseToo, String reads) implements Remedy {}

    /** How the register of the machine counts is told otherwise. */
    record Machine(String reads) implements Remedy {}

    /** By what certificate the gauge, or what it is set on, was calibrated. */
    record Certificate(GaugeOrMaster of, String reads) implements Remedy {}

    /** A setting was wrong and is struck out. */
    record Wrong(Entry setting, SettingFault fault, String reads) implements Remedy {}

    /**
     * What is harmless first; settings that count, the latest first. A closed or shut step has its settings struck out
     * and nothing else.
     */
    static List<Remedy> of(State state, Words words) {
        List<Remedy> all = new ArrayList<>();
        boolean open = !state.asked().isShut();
        Optional<Setting> now = state.setting();
        if (open && now.flatMap(Setting::certified).isPresent()) {
            all.add(new SetAnew(
                    false, words.say("gauge.anew", now.get().gauge().kind().reference())));
            now.get().gauge().sense().ifPresent(sense -> all.add(new SetAnew(true, words.say("gauge.sense-anew"))));
        }
        if (open) {
            all.add(new Other(words.say("gauge.other")));
        }
        if (open && state.inHand().check().isTurned()) {
            state.sheet()
                    .run()
                    .register()
                    .ifPresent(counts -> all.add(new Machine(words.say("gauge.machine", counts))));
        }
        if (open) {
            CalibrationWords said = new CalibrationWords(words);
            state.calibrated()
                    .forEach(here -> all.add(
                            new Certificate(here.what(), words.say("calibration.remedy", said.named(here.what())))));
        }
        state.settingsHere().forEach(entry -> wrong(entry, words, all));
        return all;
    }

    private static void wrong(Entry entry, Words words, List<Remedy> all) {
        Setting setting = StepEvent.GaugeSet.in(entry).setting();
        GaugeKind.Reference reference = setting.gauge().kind().reference();
        String mark = setting.gauge().id();
        setting.gauge()
                .sense()
                .ifPresent(sense -> all.add(new Wrong(
                        entry,
                        SettingFault.SENSE,
                        words.say("gauge.wrong.sense", mark, words.say("gauge-line.sense", sense)))));
        if (setting.certified().isPresent()) {
            all.add(new Wrong(
                    entry,
                    SettingFault.REFERENCE,
                    words.say(
                            words.key("gauge.wrong.reference", reference),
                            mark,
                            new GaugeWords(words).reference(setting))));
        }
        all.add(new Wrong(
                entry,
                SettingFault.ZERO,
                setting.zero()
                        .map(zero -> words.say("gauge.wrong.zero", mark, Figures.written(zero)))
                        .orElseGet(() -> words.say("gauge.wrong.off", mark))));
    }
}
