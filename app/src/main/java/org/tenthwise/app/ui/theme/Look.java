package org.tenthwise.app.ui.theme;

import javafx.beans.property.BooleanProperty;
import javafx.beans.property.SimpleBooleanProperty;

/** The settings a person can change, each kept as soon as it is changed. Screen thread only. */
public final class Look {

    private final BooleanProperty night;
    private final BooleanProperty largeText;
    private final BooleanProperty gloves;

    public Look(LookStore store) {
        LookStore.Kept kept = store.kept();
        night = new SimpleBooleanProperty(kept.night());
        largeText = new SimpleBooleanProperty(kept.largeText());
        gloves = new SimpleBooleanProperty(kept.gloves());
        for (BooleanProperty setting : new BooleanProperty[] {night, largeText, gloves}) {
            setting.addListener(
                    (property, was, is) -> store.keep(new LookStore.Kept(night.get(), largeText.get(), gloves.get())));
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

    /** What text sizes are multiplied by: 1 or 1.5. Pictures are laid out with it. */
    public double textScale() {
        return largeText.get() ? 1.5 : 1;
    }
}
