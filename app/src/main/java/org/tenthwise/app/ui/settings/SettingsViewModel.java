package org.tenthwise.app.ui.settings;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javafx.beans.binding.Bindings;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.value.ObservableValue;
import org.tenthwise.app.text.Spoken;
import org.tenthwise.app.ui.keys.ChoiceViewModel;
import org.tenthwise.app.ui.shell.Navigator;
import org.tenthwise.app.ui.theme.Look;
import org.tenthwise.model.words.Words;

/** What can be set, and the one thing of it in hand. What is set counts and is kept at once. */
public final class SettingsViewModel {

    /** What can be set, in the order it is shown. */
    public enum SettingsTopic {
        LANGUAGE,
        DISPLAY
    }

    /** One of two ways of the look. */
    public enum Way {
        NIGHT,
        LARGE,
        GLOVES
    }

    private final Look look;
    private final Spoken spoken;
    private final Words words;
    private final ChoiceViewModel<Locale> language;
    private final ReadOnlyObjectWrapper<SettingsTopic> inHand = new ReadOnlyObjectWrapper<>(SettingsTopic.LANGUAGE);

    public SettingsViewModel(Look look, Spoken spoken, Navigator navigator) {
        this.look = look;
        this.spoken = spoken;
        this.words = spoken.words();
        this.language = new ChoiceViewModel<>(spoken.languages().all());
        Locale now = spoken.place();
        language.choose(now);
        language.chosenProperty().subscribe((before, chosen) -> chosen.filter(other -> !other.equals(now))
                .ifPresent(other -> {
                    look.languageProperty().set(Optional.of(other.getLanguage()));
                    navigator.speak(other);
                }));
    }

    public ReadOnlyObjectProperty<SettingsTopic> inHandProperty() {
        return inHand.getReadOnlyProperty();
    }

    public void take(SettingsTopic topic) {
        inHand.set(topic);
    }

    /** The languages there are; one that is chosen is spoken at once. */
    public ChoiceViewModel<Locale> language() {
        return language;
    }

    /** A language is called as it calls itself. */
    public String name(Locale locale) {
        return spoken.languages().name(locale);
    }

    /** What stands now, in a few words. */
    public ObservableValue<String> value(SettingsTopic topic) {
        return switch (topic) {
            case LANGUAGE -> Bindings.createStringBinding(() -> name(spoken.place()));
            case DISPLAY ->
                Bindings.createStringBinding(
                        this::display, look.nightProperty(), look.largeTextProperty(), look.glovesProperty());
        };
    }

    private String display() {
        return Stream.of(Way.values())
                .filter(way -> way == Way.NIGHT || of(way).get())
                .map(way -> words.say("settings." + (of(way).get() ? "on" : "off"), way))
                .collect(Collectors.joining(", "));
    }

    public BooleanProperty of(Way way) {
        return switch (way) {
            case NIGHT -> look.nightProperty();
            case LARGE -> look.largeTextProperty();
            case GLOVES -> look.glovesProperty();
        };
    }

    public List<SettingsTopic> topics() {
        return List.of(SettingsTopic.values());
    }
}
