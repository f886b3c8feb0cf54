package org.tenthwise.model.plan;

/** One operation of the route, by its number on the card. */
public record Operation(int number, String name) {}
