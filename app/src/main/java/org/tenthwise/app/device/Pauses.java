package org.tenthwise.app.device;

/** When the client goes to the background, from where a tablet may take it away without asking. */
public interface Pauses {

    /** @param before done each time, before the client rests; on the screen thread */
    void onPause(Runnable before);
}
