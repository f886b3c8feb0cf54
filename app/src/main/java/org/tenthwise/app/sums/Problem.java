package org.tenthwise.app.sums;

import java.util.Optional;

/**
 * Why a sum gives no answer, in words a person can act on.
 *
 * @param key what it is about; absent if it is about the whole
 * @param words one sentence with the key and the value
 */
public record Problem(Optional<String> key, String words) implements SumReply {}
