package org.tenthwise.app.ui.run;

import java.util.List;
import org.tenthwise.app.text.TestLanguage;
import org.tenthwise.app.ui.Display;

/** The same screens in German. */
class GermanRunScreenTest extends MadeUpRunScreenTest {

    @Override
    protected TestLanguage language() {
        return TestLanguage.GERMAN;
    }

    /** There are many states. */
    @Override
    protected List<Display> displays() {
        return List.of(Display.DAY, Display.LARGE);
    }
}
