package org.tenthwise.app.ui.keys;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import javafx.scene.layout.StackPane;
import org.tenthwise.model.words.Words;

/**
 * Large rows to choose from, a page at a time. The chosen row has a thick accent line round it and says so.
 *
 * @param <T> what is chosen from
 */
public final class Choice<T> extends StackPane {

    private final ChoiceViewModel<T> model;
    private final Words words;
    private final Function<T, String> name;
    private final PagedRows rows;
    private final List<Key> keys = new ArrayList<>();

    /** @param name what a row reads, in one or two lines */
    public Choice(ChoiceViewModel<T> model, Words words, Function<T, String> name) {
        this.model = model;
        this.words = words;
        this.name = name;
        this.rows = new PagedRows(words);
        getChildren().add(rows);
        model.offeredProperty().subscribe(this::fill);
        model.chosenProperty().subscribe(this::mark);
    }

    private void fill(List<T> things) {
        keys.clear();
        for (T thing : things) {
            Key key = new Key(Key.Kind.PLAIN, name.apply(thing), () -> model.choose(thing));
            key.getStyleClass().add("row");
            key.setId("choice-" + keys.size());
            keys.add(key);
        }
        rows.show(keys);
        mark(model.chosenProperty().get());
    }

    private void mark(Optional<T> chosen) {
        for (int i = 0; i < keys.size(); i++) {
            Key key = keys.get(i);
            boolean on =
                    chosen.filter(model.offeredProperty().get().get(i)::equals).isPresent();
            key.showChosen(on);
            key.speak(on ? words.say("choice.chosen", key.getText()) : key.getText());
        }
    }
}
