package org.tenthwise.app.reference;

/**
 * A published case that no sum runs.
 *
 * @param name what it is, in a few words
 * @param reason why no sum runs it
 */
public record LeftOut(String source, String name, String reason) {}
