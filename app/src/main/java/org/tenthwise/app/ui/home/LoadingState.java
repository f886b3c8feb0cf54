package org.tenthwise.app.ui.home;

/** How far looking something up has come. */
public enum LoadingState {
    NOT_YET,
    DONE,
    /** It could not be looked up, which was told as a message; nothing is known of it. */
    FAILED
}
