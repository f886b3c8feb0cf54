package org.tenthwise.app.ui.run;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;

/**
 * Figures on their way to the ledger, one at a time and in the order they were entered. What stops it, a question, a
 * full check, a refusal, gets the figures back that were not sent.
 */
final class FigureQueue {

    private final Deque<String> waiting = new ArrayDeque<>();
    private boolean busy;

    boolean isBusy() {
        return busy;
    }

    /** @return whether the figure is to be sent now; otherwise it waits */
    boolean add(String figure) {
        if (busy) {
            waiting.add(figure);
            return false;
        }
        busy = true;
        return true;
    }

    /** How many wait for the one that is on its way. */
    int waiting() {
        return waiting.size();
    }

    /** The figure to send after the one that arrived; the queue is not at rest until {@link #stop}. */
    String next() {
        return waiting.remove();
    }

    /** Comes to rest and hands out what was not sent, in order. */
    List<String> stop() {
        List<String> left = List.copyOf(waiting);
        waiting.clear();
        busy = false;
        return left;
    }
}
