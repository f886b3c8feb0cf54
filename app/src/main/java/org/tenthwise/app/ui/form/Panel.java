package org.tenthwise.app.ui.form;

import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import org.tenthwise.app.ui.keys.Choice;
import org.tenthwise.app.ui.keys.Key;
import org.tenthwise.app.ui.keys.LetterPad;
import org.tenthwise.app.ui.keys.TextEntryViewModel;
import org.tenthwise.app.ui.theme.ScreenSizes;
import org.tenthwise.app.ui.theme.Texts;
import org.tenthwise.model.words.Words;

/**
 * Where one field is answered: ready answers, or a line and the letters; the key that leads on is at the lower right.
 * Where nothing can be answered, nothing is asked.
 */
final class Panel<T> extends StackPane {

    private static final int SHORT = 30;

    private final Field<T> field;
    private final FormViewModel form;
    private final Words words;

    Panel(Field<T> field, FormViewModel form, Words words) {
        this.field = field;
        this.form = form;
        this.words = words;
        getStyleClass().addAll("on-sheet", "form-panel");
        VBox choosing = choosing();
        field.typing()
                .ifPresentOrElse(
                        typing -> {
                            VBox lettering = lettering(typing);
                            field.wayProperty().subscribe(way -> getChildren()
                                    .setAll(way == Field.Way.TYPE ? lettering : choosing));
                        },
                        () -> getChildren().setAll(choosing));
    }

    private VBox choosing() {
        Choice<T> choice = new Choice<>(field.choice(), words, answer -> words.readable(field.reads(answer)));
        VBox.setVgrow(choice, Priority.ALWAYS);
        HBox foot = new HBox(ScreenSizes.GAP);
        if (field.typing().isPresent()) {
            Key type = new Key(Key.Kind.PLAIN, words.say("ask.type"), field::type);
            type.setId("type");
            foot.getChildren().add(share(type));
        }
        foot.getChildren().add(share(lead()));
        VBox question = question("title");
        field.choice().offeredProperty().subscribe(offered -> {
            boolean askable = field.typing().isPresent() || !offered.isEmpty();
            question.setVisible(askable);
            foot.setVisible(askable);
        });
        return new VBox(ScreenSizes.GAP, question, choice, foot);
    }

    private VBox lettering(TextEntryViewModel typing) {
        Label typed = new Label();
        typed.setId("typed");
        typed.getStyleClass().add("typed-line");
        typed.setWrapText(true);
        typed.setAlignment(Pos.BOTTOM_LEFT);
        typing.typedProperty().subscribe(text -> {
            typed.getStyleClass().removeAll("figure", "middling");
            typed.getStyleClass().add(text.length() <= SHORT ? "figure" : "middling");
        });
        typed.setMaxSize(Double.MAX_VALUE, Double.MAX_VALUE);
        typed.textProperty().bind(typing.typedProperty().map(words::readable));
        HBox.setHgrow(typed, Priority.ALWAYS);
        HBox top = new HBox(ScreenSizes.GAP, typed);
        VBox.setVgrow(top, Priority.ALWAYS);
        Key back = new Key(Key.Kind.PLAIN, words.say("ask.choose"), field::choose);
        back.setId("choose");
        back.getStyleClass().add("form-back");
        field.choice().offeredProperty().subscribe(ready -> {
            top.getChildren().remove(back);
            if (!ready.isEmpty()) {
                top.getChildren().add(back);
            }
        });
        LetterPad letters = new LetterPad(typing, words, lead());
        letters.setMinHeight(USE_PREF_SIZE);
        return new VBox(ScreenSizes.GAP, question("strong"), top, letters);
    }

    /** @param size of the letters of what it is about */
    private VBox question(String size) {
        Label about = Texts.label("", size);
        about.setId("about-" + field.id());
        about.textProperty().bind(field.aboutProperty().map(words::readable));
        about.managedProperty().bind(field.aboutProperty().isNotEmpty());
        VBox asked = new VBox(about, Texts.label(field.question(), "heading"));
        asked.setMinHeight(USE_PREF_SIZE);
        return asked;
    }

    private Key lead() {
        Key key = new Key(
                Key.Kind.COMMIT, form.wordProperty(), form.lineProperty().map(words::readable), form::goOn);
        key.setId("commit");
        key.disableProperty().bind(form.readyProperty().not());
        return key;
    }

    private static Key share(Key key) {
        key.getStyleClass().add("form-lead");
        return key.shared();
    }
}
