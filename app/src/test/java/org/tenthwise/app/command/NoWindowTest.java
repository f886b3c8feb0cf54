package org.tenthwise.app.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.tenthwise.model.words.Words;

/** What JavaFX 21 says on Linux, as it was seen with no X server, with no GTK 3, and with no libX11. */
class NoWindowTest {

    private static String said(Throwable cause) {
        return Words.ENGLISH.say(NoWindow.because(cause).why());
    }

    @Test
    void aDisplayThatDoesNotAnswerIsSaidToBeMissing() {
        assertEquals(
                NoWindow.noDisplay().why(),
                NoWindow.because(new UnsupportedOperationException("Unable to open DISPLAY"))
                        .why());
    }

    @Test
    void aLibraryThatIsMissingIsNamedAndNoDisplayBlamed() {
        String said = said(new UnsupportedOperationException("Unable to load glass GTK library."));
        assertTrue(said.contains("GTK 3") && said.contains("Unable to load glass GTK library."), said);
        assertFalse(said.contains("display"), said);
    }

    @Test
    void whatTheSystemSaysOfALibraryStandsInOneLine() {
        String said = said(new UnsatisfiedLinkError("libglass.so:\n libX11.so.6: cannot open shared object file"));
        assertTrue(said.contains("GTK 3") && said.contains("(libglass.so: libX11.so.6: cannot open"), said);
    }

    @Test
    void whatElseKeepsTheWindowShutIsSaidAsItIs() {
        String said = said(new UnsupportedOperationException("Internal Error"));
        assertTrue(said.contains("Internal Error"), said);
        assertFalse(said.contains("GTK") || said.contains("display"), said);
    }
}
