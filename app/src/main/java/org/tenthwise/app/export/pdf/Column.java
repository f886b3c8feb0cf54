package org.tenthwise.app.export.pdf;

/** Where a cell stands, and to which side its text. */
record Column(double left, double width, boolean toRight) {

    static Column words(double left, double width) {
        return new Column(left, width, false);
    }

    /** For figures: their ends stand under each other. */
    static Column figures(double right, double width) {
        return new Column(right - width, width, true);
    }

    double right() {
        return left + width;
    }
}
