package org.tenthwise.model.compute.statistics;

/** From what to what a figure may well lie. */
public record Interval(double low, double high) {}
