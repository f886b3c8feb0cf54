package org.tenthwise.app.export.pdf;

/**
 * Where a cell stands, and to which side its text.
 *
 * @param head key of what stands over it; empty where nothing does
 */
record Column(String head, double left, double width, boolean toRight) {

    static Column words(String head, double left, double width) {
        return new Column(head, left, width, false);
    }

    /** For figures: their ends stand under each other. */
    static Column figures(String head, double right, double width) {
        return new Column(head, right - width, width, true);
    }

    /** The same further to the right. */
    Column moved(double right) {
        return new Column(head, left + right, width, toRight);
    }

    double right() {
        return left + width;
    }
}
