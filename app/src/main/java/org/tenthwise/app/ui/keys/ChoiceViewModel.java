package org.tenthwise.app.ui.keys;

import java.util.List;
import java.util.Optional;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.SimpleObjectProperty;

/**
 * Some things, of which one or none is chosen.
 *
 * @param <T> what is chosen from; compared by {@code equals}
 */
public final class ChoiceViewModel<T> {

    private final ObjectProperty<List<T>> offered = new SimpleObjectProperty<>(List.of());
    private final ReadOnlyObjectWrapper<Optional<T>> chosen = new ReadOnlyObjectWrapper<>(Optional.empty());

    public ChoiceViewModel(List<T> offered) {
        offer(offered);
    }

    public ObjectProperty<List<T>> offeredProperty() {
        return offered;
    }

    public ReadOnlyObjectProperty<Optional<T>> chosenProperty() {
        return chosen.getReadOnlyProperty();
    }

    /** Offers other things; what was chosen stays so only if it is among them. */
    public void offer(List<T> things) {
        offered.set(List.copyOf(things));
        if (chosen.get().filter(things::contains).isEmpty()) {
            chosen.set(Optional.empty());
        }
    }

    /**
     * Chosen once more it is told again: whoever follows is told that nothing was, and then that it is.
     *
     * @throws IllegalArgumentException if {@code thing} is not offered
     */
    public void choose(T thing) {
        if (!offered.get().contains(thing)) {
            throw new IllegalArgumentException("Not offered: " + thing);
        }
        if (chosen.get().equals(Optional.of(thing))) {
            chosen.set(Optional.empty());
        }
        chosen.set(Optional.of(thing));
    }
}
