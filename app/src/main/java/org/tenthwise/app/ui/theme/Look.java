package org.tenthwise.app.ui.theme;

import java.util.List;
import java.util.Optional;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.Property;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.beans.property.SimpleObjectProperty;

/** The settings a person can change, each kept as soon as it is changed. Screen thread only. */
public final class Look {

    private final BooleanProperty night;
    private final BooleanProperty largeText;
    private final BooleanProperty gloves;
    private final ObjectProperty<Optional<String>> language;

    public Look(LookStore store) {
        LookStore.Kept kept = store.kept();
        night = new SimpleBooleanProperty(kept.night());
        largeText = new SimpleBooleanProperty(kept.largeText());
        gloves = new SimpleBooleanProperty(kept.gloves());
        language = new SimpleObjectProperty<>(kept.language());
        for (Property<?> setting : List.of(night, largeText, gloves, language)) {
            setting.addListener((property, was, is) ->
                    store.keep(new LookStore.Kept(night.get(), largeText.get(), gloves.get(), language.get())));
        }
    }

    public BooleanProperty nightProperty() {
        return night;
    }

    /** Text at 150 % instead of 100 %. */
    public BooleanProperty largeTextProperty() {
        return largeText;
    }

    public BooleanProperty glovesProperty() {
        return gloves;
    }

    /** The language chosen, by its letters of ISO 639; absent for that of the device. */
    public ObjectProperty<Optional<String>> languageProperty() {
        return language;
    }

    /** What text sizes are multiplied by: 1 or 1.5. Pictures are laid out with it. */
    public double textScale() {
        return largeText.get() ? 1.5 : 1;
    }
}
