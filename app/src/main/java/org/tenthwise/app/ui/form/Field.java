package org.tenthwise.app.ui.form;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import org.tenthwise.app.ui.keys.ChoiceViewModel;
import org.tenthwise.app.ui.keys.TextEntryViewModel;

/**
 * One thing a form asks for.
 *
 * @param <T> what it comes to
 */
public final class Field<T> {

    /** How it is answered at the moment. */
    public enum Way {
        CHOOSE,
        TYPE
    }

    private final String id;
    private final String name;
    private final String question;
    private final boolean required;
    private final Function<T, String> shown;
    private Function<T, String> row;
    private final ChoiceViewModel<T> choice = new ChoiceViewModel<>(List.of());
    private final Optional<TextEntryViewModel> typing;
    private final Function<String, T> understood;
    private final ReadOnlyObjectWrapper<Way> way;
    private boolean onlyIfWanted;
    private final BooleanProperty asked = new SimpleBooleanProperty(true);
    private final StringProperty about = new SimpleStringProperty("");
    private final ReadOnlyObjectWrapper<Optional<T>> value = new ReadOnlyObjectWrapper<>(Optional.empty());

    private Field(
            String id,
            String name,
            String question,
            boolean required,
            Function<T, String> shown,
            Optional<TextEntryViewModel> typing,
            Function<String, T> understood) {
        this.id = id;
        this.name = name;
        this.question = question;
        this.required = required;
        this.shown = shown;
        this.row = shown;
        this.typing = typing;
        this.understood = understood;
        this.way = new ReadOnlyObjectWrapper<>(typing.isPresent() ? Way.TYPE : Way.CHOOSE);
        choice.chosenProperty().subscribe(this::take);
        typing.ifPresent(line -> line.typedProperty().subscribe(this::take));
        way.subscribe(this::take);
    }

    /**
     * Something to choose and nothing else.
     *
     * @param shown what a choice reads
     */
    public static <T> Field<T> choice(String id, String name, String question, Function<T, String> shown) {
        return choice(id, name, question, true, shown);
    }

    /** The same, which may be left as well. */
    public static <T> Field<T> choiceIfAny(String id, String name, String question, Function<T, String> shown) {
        return choice(id, name, question, false, shown).onlyIfWanted();
    }

    private static <T> Field<T> choice(
            String id, String name, String question, boolean required, Function<T, String> shown) {
        return new Field<>(id, name, question, required, shown, Optional.empty(), text -> {
            throw new IllegalStateException("Nothing is typed for " + id);
        });
    }

    /**
     * Words, ready ones or typed.
     *
     * @param most most characters
     */
    public static Field<String> words(String id, String name, String question, boolean required, int most) {
        return new Field<>(
                id,
                name,
                question,
                required,
                Function.identity(),
                Optional.of(new TextEntryViewModel("", most, text -> {})),
                Function.identity());
    }

    /** The same for a serial, a lot or a mark, which are mostly capitals: letters stay so until they are turned. */
    public static Field<String> mark(String id, String name, String question, boolean required, int most) {
        return new Field<>(
                id,
                name,
                question,
                required,
                Function.identity(),
                Optional.of(new TextEntryViewModel("", most, true, text -> {})),
                Function.identity());
    }

    /** Offers ready answers. A field nothing has been typed for then begins with them. */
    public void offer(List<T> ready) {
        choice.offer(ready);
        boolean untouched =
                typing.filter(line -> !line.typedProperty().get().isEmpty()).isEmpty();
        if (!ready.isEmpty() && untouched) {
            way.set(Way.CHOOSE);
        }
    }

    /** @param reads what the key of a ready answer reads, which may say more than the answer */
    public void offer(List<T> ready, Function<T, String> reads) {
        row = reads;
        offer(ready);
    }

    public String id() {
        return id;
    }

    public String name() {
        return name;
    }

    /** What is asked, as a question to the person. */
    public String question() {
        return question;
    }

    public boolean required() {
        return required;
    }

    /** Lets it be filled in by whoever goes to it, and passed over by everybody else. */
    public Field<T> onlyIfWanted() {
        onlyIfWanted = true;
        return this;
    }

    boolean isPassedOver() {
        return onlyIfWanted;
    }

    /** Whether it is asked for at all, as things stand; what is not is neither shown nor missed. */
    public BooleanProperty askedProperty() {
        return asked;
    }

    /** What it is about, to be read large over the question; may be empty. */
    public StringProperty aboutProperty() {
        return about;
    }

    public ChoiceViewModel<T> choice() {
        return choice;
    }

    /** The line typed on; absent where nothing can be typed. */
    public Optional<TextEntryViewModel> typing() {
        return typing;
    }

    public ReadOnlyObjectProperty<Way> wayProperty() {
        return way.getReadOnlyProperty();
    }

    /** What it comes to; absent while nothing is chosen or typed. */
    public ReadOnlyObjectProperty<Optional<T>> valueProperty() {
        return value.getReadOnlyProperty();
    }

    /** The value as it reads, empty where there is none. */
    public String reads() {
        return value.get().map(shown).orElse("");
    }

    public String reads(T offered) {
        return row.apply(offered);
    }

    /** Lets words be typed instead of chosen. */
    public void type() {
        if (typing.isPresent()) {
            way.set(Way.TYPE);
        }
    }

    /** Goes back to the ready answers, where there are any. */
    public void choose() {
        if (!choice.offeredProperty().get().isEmpty()) {
            way.set(Way.CHOOSE);
        }
    }

    private void take() {
        value.set(
                way.get() == Way.CHOOSE
                        ? choice.chosenProperty().get()
                        : typing.map(line -> line.typedProperty().get().strip())
                                .filter(text -> !text.isEmpty())
                                .map(understood));
    }
}
