package org.tenthwise.app.ui.run;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.tenthwise.app.text.TestLanguage;
import org.tenthwise.app.ui.Display;
import org.tenthwise.model.plan.Answer;

/** What is asked takes three lines in German large print: the figure stays clear of the keys. */
class GermanPromptLayoutTest extends RunAtHand {

    @Override
    protected TestLanguage language() {
        return TestLanguage.GERMAN;
    }

    @Test
    void theFigureStaysAboveTheKeysWhateverIsAskedOfATurn() throws Exception {
        run.session.answer(Answer.YES);
        run.session.goTo(ARun.RUN_OUT);
        List<String> faults = new ArrayList<>();
        look(faults);
        run.enter("0.002", "-0.040", "0.003", "-0.051");
        look(faults);
        run.enter("0.000");
        look(faults);
        assertEquals(List.of(), faults);
    }

    private void look(List<String> faults) {
        for (Display display : displays()) {
            run(() -> {
                Window window = window(display);
                window.shell().show(screen(window));
                settle(window.scene());
                new SheetLooks(window.scene())
                        .faults().stream()
                                .filter(fault -> fault.startsWith("the figure"))
                                .forEach(fault -> faults.add(display.name() + ": " + fault));
            });
        }
    }
}
