package org.tenthwise.app.ui.settings;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.tenthwise.app.text.MadeUpLanguage;
import org.tenthwise.app.text.Spoken;
import org.tenthwise.app.ui.Ways;
import org.tenthwise.app.ui.settings.SettingsViewModel.SettingsTopic;
import org.tenthwise.app.ui.settings.SettingsViewModel.Way;
import org.tenthwise.app.ui.theme.Look;
import org.tenthwise.app.ui.theme.LookStore;
import org.tenthwise.model.words.Languages;
import org.tenthwise.model.words.Words;

class SettingsViewModelTest {

    private final Ways ways = new Ways();
    private final LookStore store = LookStore.inMemory(LookStore.Kept.PLAIN);
    private final Spoken spoken = new Spoken(
            new Languages(
                    List.of(Locale.ENGLISH, MadeUpLanguage.LOCALE),
                    Locale.ENGLISH,
                    language -> language.equals(Locale.ENGLISH) ? Words.ENGLISH : MadeUpLanguage.words()),
            Locale.ENGLISH);
    private final SettingsViewModel model = new SettingsViewModel(new Look(store), spoken, ways);

    @Test
    void eachLanguageIsCalledAsItCallsItself() {
        assertEquals(
                List.of("English", MadeUpLanguage.words().say("language.name")),
                model.language().offeredProperty().get().stream()
                        .map(model::name)
                        .toList());
        assertEquals("English", model.value(SettingsTopic.LANGUAGE).getValue());
    }

    @Test
    void aLanguageThatIsChosenIsKeptAndSpokenAtOnce() {
        model.language().choose(MadeUpLanguage.LOCALE);
        assertEquals(Optional.of("art"), store.kept().language());
        assertEquals(List.of("speak art"), ways.asked);
    }

    @Test
    void theLanguageInUseChangesNothing() {
        model.language().choose(Locale.ENGLISH);
        assertEquals(Optional.empty(), store.kept().language());
        assertEquals(List.of(), ways.asked);
    }

    @Test
    void theDisplayIsSaidInAFewWords() {
        assertEquals("Day", model.value(SettingsTopic.DISPLAY).getValue());
        model.of(Way.NIGHT).set(true);
        model.of(Way.GLOVES).set(true);
        assertEquals("Night, Gloves", model.value(SettingsTopic.DISPLAY).getValue());
        assertEquals(new LookStore.Kept(true, false, true), store.kept());
    }
}
