package org.tenthwise.app.ui.settings;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import javafx.beans.binding.Bindings;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.value.ObservableValue;
import org.tenthwise.app.session.Runs;
import org.tenthwise.app.session.ShopNames;
import org.tenthwise.app.text.Spoken;
import org.tenthwise.app.ui.keys.ChoiceViewModel;
import org.tenthwise.app.ui.shell.LedgerTasks;
import org.tenthwise.app.ui.shell.Navigator;
import org.tenthwise.app.ui.theme.Look;
import org.tenthwise.model.words.Words;

/** What can be set, and the one thing of it in hand. What is set counts and is kept at once. */
public final class SettingsViewModel {

    /** What can be set, in the order it is shown. */
    public enum SettingsTopic {
        LANGUAGE,
        DISPLAY,
        COPIES,
        MACHINES,
        PEOPLE
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
    private final Optional<CopiesViewModel> copies;
    private final ShopViewModel machines;
    private final ShopViewModel people;
    private final ReadOnlyObjectWrapper<SettingsTopic> inHand = new ReadOnlyObjectWrapper<>(SettingsTopic.LANGUAGE);

    /** @param copies absent for a store that is thrown away: nobody makes backups of it */
    public SettingsViewModel(
            Look look,
            Spoken spoken,
            Runs shop,
            Optional<CopiesViewModel> copies,
            LedgerTasks tasks,
            Navigator navigator) {
        this.look = look;
        this.spoken = spoken;
        this.words = spoken.words();
        this.language = new ChoiceViewModel<>(spoken.languages().all());
        this.copies = copies;
        this.machines = new ShopViewModel(ShopNames.Kind.MACHINE, shop, tasks, words, navigator);
        this.people = new ShopViewModel(ShopNames.Kind.PERSON, shop, tasks, words, navigator);
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
            case COPIES -> copies.orElseThrow().value();
            case MACHINES -> machines.value();
            case PEOPLE -> people.value();
        };
    }

    private String display() {
        return words.list(Stream.of(Way.values())
                .filter(way -> way == Way.NIGHT || of(way).get())
                .map(way -> words.say("settings." + (of(way).get() ? "on" : "off"), way))
                .toList());
    }

    public BooleanProperty of(Way way) {
        return switch (way) {
            case NIGHT -> look.nightProperty();
            case LARGE -> look.largeTextProperty();
            case GLOVES -> look.glovesProperty();
        };
    }

    public List<SettingsTopic> topics() {
        return Stream.of(SettingsTopic.values())
                .filter(topic -> topic != SettingsTopic.COPIES || copies.isPresent())
                .toList();
    }

    public Optional<CopiesViewModel> copies() {
        return copies;
    }

    public ShopViewModel machines() {
        return machines;
    }

    public ShopViewModel people() {
        return people;
    }

    /** Looks up what does not stand in the look. */
    public void load() {
        copies.ifPresent(CopiesViewModel::load);
        machines.load();
        people.load();
    }
}
