package org.tenthwise.app.bench;

/** A result as it reads. */
public record ResultRow(String key, String name, String value) {}
