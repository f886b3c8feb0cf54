package org.tenthwise.app.picture;

/**
 * A text on a picture, before it has a place.
 *
 * @param size pixels to the em at 100 % text
 * @param backed whether the ground is laid under it, so that lines end at it
 */
public record Label(String text, double size, Face face, Role role, boolean backed) {

    public static Label of(String text, double size, Role role) {
        return new Label(text, size, Face.REGULAR, role, false);
    }

    public Label bold() {
        return new Label(text, size, Face.BOLD, role, backed);
    }

    public Label onGround() {
        return new Label(text, size, face, role, true);
    }

    public Label sized(double other) {
        return new Label(text, other, face, role, backed);
    }
}
