package org.tenthwise.app.ui.run;

import java.util.Optional;
import javafx.beans.binding.Bindings;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import org.tenthwise.app.ui.keys.KeypadViewModel;
import org.tenthwise.app.ui.run.RunScreenState.PromptPanel;
import org.tenthwise.model.words.Words;

/** The two lines over the pad: what is asked for, or why what was typed was not taken, and the figure. */
final class PadLines {

    private final ReadOnlyObjectProperty<RunScreenState> shown;
    private final KeypadViewModel pad;
    private final ReadOnlyStringProperty objection;
    private final Words words;
    private final ReadOnlyStringWrapper prompt = new ReadOnlyStringWrapper();
    private final ReadOnlyStringWrapper figure = new ReadOnlyStringWrapper();

    /** @param objection why what was typed was not taken; empty where it was */
    PadLines(
            ReadOnlyObjectProperty<RunScreenState> shown,
            KeypadViewModel pad,
            ReadOnlyStringProperty objection,
            Words words) {
        this.shown = shown;
        this.pad = pad;
        this.objection = objection;
        this.words = words;
        prompt.bind(Bindings.createStringBinding(
                this::promptNow, shown, objection, pad.stateProperty(), pad.typedProperty()));
        figure.bind(Bindings.createStringBinding(this::figureNow, shown, pad.typedProperty(), pad.offeredProperty()));
    }

    /** What is asked for, or why what was typed was not taken. */
    ReadOnlyStringProperty promptProperty() {
        return prompt.getReadOnlyProperty();
    }

    /** The figure as typed; while nothing is, what is offered of it, or the one taken last where it is to be seen. */
    ReadOnlyStringProperty figureProperty() {
        return figure.getReadOnlyProperty();
    }

    private String promptNow() {
        return objection.get().isEmpty()
                ? pad.unfit()
                        .map(why -> words.say("run.unfit", why))
                        .orElseGet(() -> padShown().map(PromptPanel.Pad::prompt).orElse(""))
                : objection.get();
    }

    private String figureNow() {
        String typed = pad.typedProperty().get();
        String standing = typed.isEmpty() ? pad.offeredProperty().get() : typed;
        return standing.isEmpty() ? padShown().map(PromptPanel.Pad::last).orElse("") : standing;
    }

    private Optional<PromptPanel.Pad> padShown() {
        return shown.get().panel() instanceof PromptPanel.Pad shownPad ? Optional.of(shownPad) : Optional.empty();
    }
}
