package org.tenthwise.app.export.qif;

/** Gives every element that can be referred to its id: all of a document are of one row, from 1. */
final class XmlIds {

    static final String ATTRIBUTE = "id";

    private int last;

    XmlElement give(XmlElement element) {
        last++;
        return element.with(ATTRIBUTE, String.valueOf(last));
    }

    /** The greatest so far. */
    int last() {
        return last;
    }
}
