package org.tenthwise.app.ui.settings;

import java.util.List;
import java.util.Locale;
import java.util.function.Consumer;
import java.util.stream.Stream;
import javafx.beans.binding.Bindings;
import javafx.beans.property.BooleanProperty;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import javafx.util.Subscription;
import org.tenthwise.app.session.ShopNames;
import org.tenthwise.app.ui.keys.Choice;
import org.tenthwise.app.ui.keys.Key;
import org.tenthwise.app.ui.keys.PagedRows;
import org.tenthwise.app.ui.settings.SettingsViewModel.SettingsTopic;
import org.tenthwise.app.ui.settings.SettingsViewModel.Way;
import org.tenthwise.app.ui.theme.ScreenSizes;
import org.tenthwise.app.ui.theme.Texts;
import org.tenthwise.model.words.Word;
import org.tenthwise.model.words.Words;

/** Where each thing is set: a question, and what can be chosen or told. */
final class SettingsPanels {

    private final SettingsViewModel model;
    private final Words words;
    private final Consumer<Subscription> owns;

    SettingsPanels(SettingsViewModel model, Words words, Consumer<Subscription> owns) {
        this.model = model;
        this.words = words;
        this.owns = owns;
    }

    VBox of(SettingsTopic topic) {
        VBox panel = new VBox(ScreenSizes.GAP, Texts.label(words.say("settings.question", topic), "heading"));
        panel.getChildren()
                .addAll(
                        switch (topic) {
                            case LANGUAGE -> language();
                            case DISPLAY -> display();
                            case COPIES -> copies(model.copies().orElseThrow());
                            case MACHINES -> names(model.machines());
                            case PEOPLE -> names(model.people());
                        });
        panel.getStyleClass().addAll("on-sheet", "form-panel");
        return panel;
    }

    private List<Region> language() {
        Choice<Locale> choice = new Choice<>(model.language(), words, model::name);
        VBox.setVgrow(choice, Priority.ALWAYS);
        return List.of(choice, Texts.label(words.say("settings.language.stays"), "body"));
    }

    private List<Region> display() {
        return Stream.of(Way.values())
                .<Region>map(way -> new HBox(ScreenSizes.GAP, side(way, false), side(way, true)))
                .toList();
    }

    /** The key of one of the two ways. */
    private Key side(Way way, boolean on) {
        BooleanProperty setting = model.of(way);
        String text = words.say(on ? "settings.on" : "settings.off", way);
        Key key = shared(
                new Key(Key.Kind.PLAIN, text, () -> setting.set(on)),
                "set-%s-%s".formatted(Word.of(way), on ? "on" : "off"));
        owns.accept(setting.subscribe(now -> {
            key.showChosen(now == on);
            key.speak(now == on ? words.say("choice.chosen", text) : text);
        }));
        return key;
    }

    private List<Region> copies(CopiesViewModel copies) {
        PagedRows said = paged();
        owns.accept(copies.saidProperty()
                .subscribe(sentences -> said.show(sentences.stream()
                        .map(sentence -> Texts.label(sentence, "middling"))
                        .toList())));
        Key none = shared(new Key(Key.Kind.PLAIN, words.say("settings.copies.stop"), copies::none), "no-copies");
        owns.accept(copies.folderProperty().subscribe(folder -> none.setDisable(folder.isEmpty())));
        Key choose = shared(new Key(Key.Kind.PLAIN, words.say("settings.copies.choose"), copies::choose), "copies-to");
        return List.of(said, new HBox(ScreenSizes.GAP, none, choose));
    }

    private List<Region> names(ShopViewModel names) {
        PagedRows rows = paged();
        owns.accept(names.namesProperty()
                .subscribe(all -> rows.show(Stream.iterate(0, i -> i < all.size(), i -> i + 1)
                        .map(i -> row(names, all.get(i), i))
                        .toList())));
        Key add = shared(
                new Key(
                        Key.Kind.PLAIN,
                        words.say(names.areMachines() ? "settings.name-machine" : "settings.name-person"),
                        names::add),
                "add-name");
        return List.of(rows, Texts.label(words.say("settings.names.stay"), "body"), new HBox(add));
    }

    private Region row(ShopViewModel names, ShopNames.Name name, int place) {
        HBox row = new HBox(ScreenSizes.GAP);
        if (names.areMachines()) {
            Key key = new Key(
                    Key.Kind.PLAIN,
                    Bindings.createStringBinding(name::name),
                    Bindings.createStringBinding(() -> names.line(name)),
                    () -> names.tell(name));
            key.getStyleClass().addAll("row", "form-field");
            row.getChildren().add(shared(key, "name-" + place));
        } else {
            Region label = Texts.label(name.name(), "strong", "home-row");
            label.setMaxWidth(Double.MAX_VALUE);
            HBox.setHgrow(label, Priority.ALWAYS);
            row.getChildren().add(label);
        }
        if (!name.used()) {
            Key off = new Key(Key.Kind.PLAIN, words.say("settings.names.remove"), () -> names.remove(name));
            off.setId("remove-" + place);
            off.speak(words.say("settings.names.remove") + ": " + name.name());
            off.getStyleClass().add("form-back");
            row.getChildren().add(off);
        }
        row.setMinHeight(ScreenSizes.CHOICE_KEY);
        return row;
    }

    private PagedRows paged() {
        PagedRows rows = new PagedRows(words);
        VBox.setVgrow(rows, Priority.ALWAYS);
        rows.setMinHeight(0);
        return rows;
    }

    private static Key shared(Key key, String id) {
        key.setId(id);
        key.setMinHeight(ScreenSizes.DECIDING_KEY);
        return key.shared();
    }
}
