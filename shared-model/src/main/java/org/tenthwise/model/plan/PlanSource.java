package org.tenthwise.model.plan;

/**
 * The text of a plan, to the byte, and its hash.
 *
 * @param text the plan file
 * @param sha256 SHA-256 over the UTF-8 bytes of {@code text}, 64 small hex digits
 */
public record PlanSource(String text, String sha256) {}
