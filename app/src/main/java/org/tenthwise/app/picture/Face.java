package org.tenthwise.app.picture;

import java.io.InputStream;

/** The lettering that is brought along: one open family, and another for the signs it does not have. */
public enum Face {
    REGULAR("/com/formdev/flatlaf/fonts/roboto/Roboto-Regular.ttf"),
    MEDIUM("/com/formdev/flatlaf/fonts/roboto/Roboto-Medium.ttf"),
    BOLD("/com/formdev/flatlaf/fonts/roboto/Roboto-Bold.ttf"),
    OTHER_SCRIPTS("/net/sf/jasperreports/fonts/dejavu/DejaVuSans.ttf"),
    OTHER_SCRIPTS_BOLD("/net/sf/jasperreports/fonts/dejavu/DejaVuSans-Bold.ttf");

    private final String resource;

    Face(String resource) {
        this.resource = resource;
    }

    /** The TrueType file; the caller closes it. */
    public InputStream open() {
        return Face.class.getResourceAsStream(resource);
    }

    /** What stands in for a sign this face lacks. */
    Face fallback() {
        return this == BOLD || this == OTHER_SCRIPTS_BOLD ? OTHER_SCRIPTS_BOLD : OTHER_SCRIPTS;
    }
}
