package org.tenthwise.checklists.format;

/**
 * A place in a text.
 *
 * @param line from 1
 * @param column from 1, in characters as a person counts them
 */
public record Spot(int line, int column) implements Comparable<Spot> {

    public static final Spot START = new Spot(1, 1);

    @Override
    public int compareTo(Spot other) {
        return line != other.line ? Integer.compare(line, other.line) : Integer.compare(column, other.column);
    }
}
