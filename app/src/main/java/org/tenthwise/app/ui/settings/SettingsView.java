package org.tenthwise.app.ui.settings;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import javafx.beans.binding.Bindings;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.tenthwise.app.ui.form.RunHeading;
import org.tenthwise.app.ui.keys.Key;
import org.tenthwise.app.ui.settings.SettingsViewModel.SettingsTopic;
import org.tenthwise.app.ui.shell.Navigator;
import org.tenthwise.app.ui.shell.SidedScreen;
import org.tenthwise.app.ui.theme.ScreenSizes;
import org.tenthwise.model.words.Word;
import org.tenthwise.model.words.Words;

/** What can be set on the one side, the thing in hand on the other. */
public final class SettingsView extends SidedScreen {

    private final SettingsViewModel model;
    private final Words words;
    private final Map<SettingsTopic, Region> panels = new EnumMap<>(SettingsTopic.class);
    private final SettingsPanels made;
    private final List<Key> keys = new ArrayList<>();
    private final GridPane topics = new GridPane();

    public SettingsView(SettingsViewModel model, Words words, Navigator navigator) {
        super(words.say("settings.title"));
        this.model = model;
        this.words = words;
        this.made = new SettingsPanels(model, words, this::owns);
        topics.setHgap(ScreenSizes.GAP);
        topics.setVgap(ScreenSizes.GAP);
        topics.setMinHeight(USE_PREF_SIZE);
        model.topics().forEach(topic -> keys.add(key(topic)));
        VBox side = new VBox(topics);
        side.getStyleClass().addAll("on-paper", "form-side");
        lay(
                RunHeading.titled(title(), words, navigator::back),
                side,
                ScreenSizes.FORM_SIDE,
                ScreenSizes.SETTINGS_ABOVE);
        owns(model.inHandProperty().subscribe(this::show));
    }

    private Key key(SettingsTopic topic) {
        Key key = Key.field(
                Bindings.createStringBinding(() -> words.say("settings", topic)),
                model.value(topic),
                () -> model.take(topic));
        key.setId("settings-" + Word.of(topic));
        return key;
    }

    @Override
    protected void arranged() {
        int across = isWide() ? 1 : 2;
        topics.getChildren().clear();
        topics.getColumnConstraints().clear();
        for (int column = 0; column < across; column++) {
            ColumnConstraints share = new ColumnConstraints();
            share.setPercentWidth(100.0 / across);
            topics.getColumnConstraints().add(share);
        }
        for (int i = 0; i < keys.size(); i++) {
            topics.add(keys.get(i), i % across, i / across);
        }
    }

    private void show(SettingsTopic topic) {
        rest(panels.computeIfAbsent(topic, made::of));
        for (int i = 0; i < keys.size(); i++) {
            keys.get(i).showChosen(model.topics().get(i) == topic);
        }
    }

    @Override
    public void onShown() {
        model.load();
    }
}
