package org.tenthwise.app.ui.shell;

import java.util.List;

/**
 * Something a person must be told and answers by a tap.
 *
 * @param title what happened
 * @param words what is safe, and what to do next
 * @param replies one or more, the plain one last
 */
public record Notice(String title, String words, List<NoticeKey> replies) {

    /** @param then what the reply sets going, once the message is gone */
    public record NoticeKey(String label, Runnable then) {}

    public Notice {
        replies = List.copyOf(replies);
        if (replies.isEmpty()) {
            throw new IllegalArgumentException("A message nobody can answer would stay for ever");
        }
    }

    /** A message with nothing to decide. */
    public static Notice plain(String title, String words, String reply) {
        return new Notice(title, words, List.of(new NoticeKey(reply, () -> {})));
    }
}
