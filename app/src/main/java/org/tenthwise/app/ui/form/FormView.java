package org.tenthwise.app.ui.form;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.IntStream;
import javafx.beans.binding.Bindings;
import javafx.beans.value.ObservableValue;
import javafx.css.PseudoClass;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.tenthwise.app.ui.keys.Deaf;
import org.tenthwise.app.ui.keys.Key;
import org.tenthwise.app.ui.keys.PagedRows;
import org.tenthwise.app.ui.keys.Typing;
import org.tenthwise.app.ui.shell.SidedScreen;
import org.tenthwise.app.ui.theme.PictureFrames;
import org.tenthwise.app.ui.theme.ScreenSizes;
import org.tenthwise.model.words.Words;

/** A form under a heading: what it is about and its fields on the one side, the field in hand on the other. */
public class FormView extends SidedScreen {

    private static final PseudoClass EMPTY = PseudoClass.getPseudoClass("empty");
    private static final int FEW = 3;
    private static final int ON_ONE_PAGE = 8;
    private static final int IN_TWO_COLUMNS = 6;

    private final FormViewModel model;
    private final Words words;
    private final Runnable load;
    private final Map<Field<?>, Region> panels = new HashMap<>();
    private final Map<Field<?>, Deaf> deaf = new HashMap<>();
    private final List<Key> keys = new ArrayList<>();
    private final GridPane fields = new GridPane();
    /** Where there are more fields than can be seen at once, they are by the page. */
    private final PagedRows pages;

    private boolean byThePage;
    /** Fields that need all the room across, where the others stand in two columns. */
    private Set<Field<?>> whole = Set.of();

    private boolean inTwoColumns;

    private final VBox side;

    /** @param load looks up what the form is about, each time it is shown */
    public FormView(String title, FormViewModel model, Words words, Region heading, Runnable load) {
        super(title);
        this.model = model;
        this.words = words;
        this.load = load;
        fields.setHgap(8);
        fields.setVgap(8);
        fields.setMinHeight(USE_PREF_SIZE);
        model.fields().forEach(field -> keys.add(key(field)));
        pages = new PagedRows(words);
        VBox.setVgrow(pages, Priority.ALWAYS);
        side = new VBox(16, fields);
        side.getStyleClass().addAll("on-paper", "form-side");
        lay(heading, side, ScreenSizes.FORM_SIDE, ScreenSizes.FORM_ABOVE);
        owns(model.inHandProperty().subscribe(this::show));
        model.fields().forEach(field -> owns(field.askedProperty().subscribe(this::layKeys)));
        model.fields().forEach(field -> owns(field.choice().offeredProperty().subscribe(() -> came(field))));
    }

    /**
     * One whose fields stand in two columns wherever it is shown.
     *
     * @param whole those that need all the room across
     */
    protected FormView(
            String title,
            FormViewModel model,
            Words words,
            Region heading,
            Runnable load,
            Set<? extends Field<?>> whole) {
        this(title, model, words, heading, load);
        this.whole = Set.copyOf(whole);
        inTwoColumns = true;
    }

    /** A form by itself, with its title over it. */
    public static FormView titled(String title, FormViewModel form, Words words, Runnable back, Runnable load) {
        return new FormView(title, form, words, RunHeading.titled(title, words, back), load);
    }

    /** A form about the step in hand, beside the card of the step. */
    public static FormView of(StepForm step, Words words, PictureFrames pictures) {
        return new FormView(
                        step.title(),
                        step.form(),
                        words,
                        RunHeading.of(step.title(), step.inHand().stateProperty(), words, step::back),
                        step::load)
                .about(new StepCardView(step.card(), words, pictures));
    }

    /** What the form is about stands over its fields, and takes what room they leave. */
    public final FormView about(Region about) {
        VBox.setVgrow(about, Priority.ALWAYS);
        side.getChildren().add(0, about);
        return this;
    }

    @Override
    public final Typing typing() {
        return model;
    }

    @Override
    public final void onShown() {
        load.run();
    }

    @Override
    protected final void arranged() {
        layKeys();
    }

    /** Puts the keys of the fields that are asked for beside or under each other. */
    private void layKeys() {
        List<Key> asked = IntStream.range(0, keys.size())
                .filter(i -> model.fields().get(i).askedProperty().get())
                .mapToObj(keys::get)
                .toList();
        byThePage = inTwoColumns ? asked.size() + wide(asked) > IN_TWO_COLUMNS : keys.size() > ON_ONE_PAGE;
        side.getChildren().set(side.getChildren().size() - 1, byThePage ? pages : fields);
        if (byThePage) {
            pages.show(asked);
            reveal(model.inHandProperty().get());
            return;
        }
        pages.show(List.of());
        int across = !inTwoColumns && (isWide() || asked.size() < FEW) ? 1 : 2;
        fields.getChildren().clear();
        fields.getColumnConstraints().clear();
        for (int column = 0; column < across; column++) {
            ColumnConstraints share = new ColumnConstraints();
            share.setPercentWidth(100.0 / across);
            fields.getColumnConstraints().add(share);
        }
        int place = 0;
        for (Key key : asked) {
            boolean isWhole = whole.contains(model.fields().get(keys.indexOf(key)));
            int row = isWhole ? (place + across - 1) / across : place / across;
            fields.add(key, isWhole ? 0 : place % across, row, isWhole ? across : 1, 1);
            place = isWhole ? (row + 1) * across : place + 1;
        }
    }

    private long wide(List<Key> asked) {
        return whole.stream()
                .filter(field -> asked.contains(keys.get(model.fields().indexOf(field))))
                .count();
    }

    private void reveal(Field<?> field) {
        pages.reveal(Math.max(
                0,
                model.fields().stream()
                        .filter(any -> any.askedProperty().get())
                        .toList()
                        .indexOf(field)));
    }

    private void show(Field<?> field) {
        Region panel = panels.computeIfAbsent(field, wanted -> new Panel<>(wanted, model, words));
        rest(panel);
        came(field);
        for (int i = 0; i < keys.size(); i++) {
            keys.get(i).showChosen(model.fields().get(i) == field);
        }
        if (byThePage) {
            reveal(field);
        }
    }

    /** What can act at once takes no press for a moment after it has come. */
    private void came(Field<?> field) {
        if (model.actsAtOnce() && panels.containsKey(field)) {
            deaf.computeIfAbsent(field, shown -> new Deaf(panels.get(shown))).forAMoment();
        }
    }

    private Key key(Field<?> field) {
        ObservableValue<String> value = Bindings.createStringBinding(
                () -> field.reads().isEmpty() ? words.say("ask.empty") : words.readable(field.reads()),
                field.valueProperty());
        Key key = Key.field(Bindings.createStringBinding(field::name), value, () -> model.goTo(field));
        key.setId("field-" + field.id());
        owns(field.valueProperty().subscribe(answer -> key.pseudoClassStateChanged(EMPTY, answer.isEmpty())));
        return key;
    }
}
