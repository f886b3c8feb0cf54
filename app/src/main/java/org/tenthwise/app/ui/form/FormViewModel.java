package org.tenthwise.app.ui.form;

import java.time.Clock;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.BooleanSupplier;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import org.tenthwise.app.ui.keys.Settling;
import org.tenthwise.app.ui.keys.Typing;
import org.tenthwise.model.words.Words;

/**
 * The fields of a form, the one in hand, and the one key that leads on.
 *
 * <p>The key goes to the next field that is still empty and was not looked at, or is needed; where there is none it
 * does what the form is for. While the field in hand is needed and empty, or while what the form is for is being done,
 * it does nothing, and says so.
 */
public final class FormViewModel implements Typing {

    /** As much as the key shows at any text size. */
    private static final int LONGEST = 16;

    private final List<Field<?>> fields;
    private final Words words;
    private final String purpose;
    private final Runnable act;
    private final StringProperty about = new SimpleStringProperty("");
    private final ReadOnlyObjectWrapper<Field<?>> inHand;
    private final Set<Field<?>> lookedAt = new HashSet<>();
    private final ReadOnlyStringWrapper word = new ReadOnlyStringWrapper("");
    private final ReadOnlyStringWrapper line = new ReadOnlyStringWrapper("");
    private final ReadOnlyBooleanWrapper ready = new ReadOnlyBooleanWrapper(false);
    private boolean busy;
    private boolean actsAtOnce;

    /**
     * @param fields in the order they are asked; at least one
     * @param purpose what the key reads when nothing is missing
     * @param act what it then does
     */
    public FormViewModel(List<? extends Field<?>> fields, Words words, String purpose, Runnable act) {
        this.fields = List.copyOf(fields);
        this.words = words;
        this.purpose = purpose;
        this.act = act;
        this.inHand = new ReadOnlyObjectWrapper<>(this.fields.get(0));
        lookedAt.add(inHand.get());
        this.fields.forEach(field -> field.valueProperty().subscribe(this::weigh));
        this.fields.forEach(field -> field.wayProperty().subscribe(this::weigh));
        this.fields.forEach(field -> field.askedProperty().subscribe(this::weigh));
        about.subscribe(this::weigh);
        weigh();
    }

    public List<Field<?>> fields() {
        return fields;
    }

    public ReadOnlyObjectProperty<Field<?>> inHandProperty() {
        return inHand.getReadOnlyProperty();
    }

    /** What the key does now. */
    public ReadOnlyStringProperty wordProperty() {
        return word.getReadOnlyProperty();
    }

    /** Where the key leads, what its deed is about, or why it does nothing. */
    public ReadOnlyStringProperty lineProperty() {
        return line.getReadOnlyProperty();
    }

    public ReadOnlyBooleanProperty readyProperty() {
        return ready.getReadOnlyProperty();
    }

    /** What the deed is about, for the key. */
    public StringProperty aboutProperty() {
        return about;
    }

    /**
     * Lets a tap on a ready answer of {@code field} be the deed.
     *
     * @param settled whether a finger can have seen what it taps
     */
    public <T> void actsOn(Field<T> field, BooleanSupplier settled) {
        actsAtOnce = true;
        field.choice().chosenProperty().subscribe((before, chosen) -> {
            if (chosen.isPresent()
                    && inHand.get() == field
                    && ready.get()
                    && next().isEmpty()
                    && settled.getAsBoolean()) {
                act.run();
            }
        });
    }

    /**
     * Lets a tap on a ready answer lead on to what is missing, and on one of {@code last} be the deed where nothing is.
     * Answers that have just come are deaf for a moment; one that stands there already is no tap.
     */
    public void leadsOn(Field<?> last, Clock clock) {
        leadsOn(List.of(last), clock);
    }

    /** The same with several that a tap can be the deed of. */
    public void leadsOn(List<? extends Field<?>> last, Clock clock) {
        Settling came = new Settling(clock);
        came.means(offered());
        inHand.subscribe(() -> came.means(offered()));
        last.forEach(field -> actsOn(field, came::settled));
        for (Field<?> field : fields) {
            field.choice().offeredProperty().subscribe(() -> came.means(offered()));
            field.choice().chosenProperty().subscribe((before, chosen) -> {
                if (chosen.isPresent() && inHand.get() == field && ready.get() && came.settled()) {
                    next().ifPresent(this::goTo);
                }
            });
        }
    }

    private List<Object> offered() {
        return List.of(
                inHand.get().id(), inHand.get().choice().offeredProperty().get());
    }

    /** Whether a tap on a ready answer can be the deed. */
    boolean actsAtOnce() {
        return actsAtOnce;
    }

    /** Lets the deed be about what a field comes to. */
    public void about(Field<?> field) {
        field.valueProperty().subscribe(() -> about.set(field.reads()));
    }

    public void goTo(Field<?> field) {
        inHand.set(field);
        lookedAt.add(field);
        weigh();
    }

    /** Goes on to what is missing, or does what the form is for. */
    public void goOn() {
        if (!ready.get()) {
            return;
        }
        Optional<Field<?>> next = next();
        if (next.isPresent()) {
            goTo(next.get());
        } else {
            act.run();
        }
    }

    /** Whether what the form is for is being done now. */
    public void busy(boolean now) {
        busy = now;
        weigh();
    }

    @Override
    public void character(String character) {
        Field<?> field = inHand.get();
        field.typing().ifPresent(typing -> {
            field.type();
            typing.character(character);
        });
    }

    @Override
    public void takeBack() {
        Field<?> field = inHand.get();
        if (field.wayProperty().get() == Field.Way.TYPE) {
            field.typing().ifPresent(Typing::takeBack);
        }
    }

    /**
     * On to what is missing, no further: a gauge ends each of its figures by Enter, and what the form is for is never
     * its deed.
     */
    @Override
    public void enter() {
        if (ready.get()) {
            next().ifPresent(this::goTo);
        }
    }

    private void weigh() {
        Field<?> field = inHand.get();
        boolean missing = isEmpty(field) && field.required();
        Optional<Field<?>> next = next();
        ready.set(!missing && !busy);
        word.set(next.isPresent() ? words.say("ask.next") : purpose);
        line.set(
                busy
                        ? words.say("ask.busy")
                        : missing
                                ? words.say("ask.missing", field.wayProperty().get())
                                : Shortened.to(LONGEST, next.map(Field::name).orElseGet(about::get)));
    }

    private Optional<Field<?>> next() {
        int at = fields.indexOf(inHand.get());
        for (int step = 1; step < fields.size(); step++) {
            Field<?> field = fields.get((at + step) % fields.size());
            boolean wanted = field.required() || !field.isPassedOver() && !lookedAt.contains(field);
            if (field.askedProperty().get() && isEmpty(field) && wanted) {
                return Optional.of(field);
            }
        }
        return Optional.empty();
    }

    private static boolean isEmpty(Field<?> field) {
        return field.valueProperty().get().isEmpty();
    }
}
