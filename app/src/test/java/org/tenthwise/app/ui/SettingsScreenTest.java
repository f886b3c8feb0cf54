package org.tenthwise.app.ui;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.tenthwise.app.ui.settings.SettingsView;
import org.tenthwise.app.ui.settings.SettingsViewModel;
import org.tenthwise.app.ui.settings.SettingsViewModel.SettingsTopic;
import org.tenthwise.app.ui.shell.Screen;

/** The settings, a topic each, on every display. */
class SettingsScreenTest extends ScreenTest {

    @RegisterExtension
    private final Workshop workshop = new Workshop(words);

    private Screen settings(Window window, SettingsTopic topic) {
        SettingsViewModel model = new SettingsViewModel(window.look(), window.spoken(), workshop);
        model.take(topic);
        return new SettingsView(model, words, workshop);
    }

    @Test
    void theLanguageHoldsEverywhere() {
        seen("settings", "language", window -> settings(window, SettingsTopic.LANGUAGE));
    }

    @Test
    void theDisplayHoldsEverywhere() {
        seen("settings", "display", window -> settings(window, SettingsTopic.DISPLAY));
    }
}
