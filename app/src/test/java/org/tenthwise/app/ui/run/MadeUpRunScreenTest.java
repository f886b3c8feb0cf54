package org.tenthwise.app.ui.run;

import java.util.List;
import org.tenthwise.app.ui.Display;

/** The same screens in a language that is not English and a third longer: nothing is left in English or cut off. */
class MadeUpRunScreenTest extends RunScreenTest {

    @Override
    protected boolean isMadeUp() {
        return true;
    }

    /** The one with the narrowest columns: there are many states. */
    @Override
    protected List<Display> displays() {
        return List.of(Display.DAY);
    }

    /** What was typed, names of the plan at the beginning of a sentence, and what the plan says of its limits. */
    @Override
    protected String data() {
        return "Key fitted by hand Misread Gauge slipped Near the jaws Far out by its tables";
    }
}
