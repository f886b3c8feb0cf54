package org.tenthwise.app.ui.run;

/**
 * The figure refused last. While it stands on the pad the next character begins another figure, and only the key insists on
 * it; the same figure sent again by a gauge is refused again.
 */
final class Refusal {

    private boolean standing;
    private String figure = "";
    private String why = "";

    void of(String refused, String reason) {
        standing = true;
        figure = refused;
        why = reason;
    }

    /** What stands on the pad is no figure that could be entered. */
    void ofWhatStands() {
        standing = true;
    }

    /** The figure is being changed or insisted on; sent again as it was it is still refused. */
    void lift() {
        standing = false;
    }

    void forget() {
        standing = false;
        figure = "";
        why = "";
    }

    boolean stands() {
        return standing;
    }

    boolean isOf(String typed) {
        return typed.equals(figure);
    }

    String why() {
        return why;
    }
}
