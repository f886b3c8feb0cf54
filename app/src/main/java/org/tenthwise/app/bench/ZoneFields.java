package org.tenthwise.app.bench;

import java.util.List;
import java.util.Locale;
import org.tenthwise.app.sums.Quantity;

/** A tolerance zone, asked by its letter and its grade. Grades and letters: ISO 286-1. */
final class ZoneFields {

    private static final List<String> HOLES = List.of(
            "A", "B", "C", "CD", "D", "E", "EF", "F", "FG", "G", "H", "J", "JS", "K", "M", "N", "P", "R", "S", "T", "U",
            "V", "X", "Y", "Z", "ZA", "ZB", "ZC");
    private static final List<String> SHAFTS = List.of(
            "a", "b", "c", "cd", "d", "e", "ef", "f", "fg", "g", "h", "j", "js", "k", "m", "n", "p", "r", "s", "t", "u",
            "v", "x", "y", "z", "za", "zb", "zc");
    private static final List<String> GRADES = List.of(
            "01", "0", "1", "2", "3", "4", "5", "6", "7", "8", "9", "10", "11", "12", "13", "14", "15", "16", "17",
            "18");

    private ZoneFields() {}

    static FormField letter(String id, boolean hole) {
        return FormField.ofTheForm(id, Quantity.WORD)
                .choosing(hole ? HOLES : SHAFTS)
                .usually(hole ? "H" : "g");
    }

    static FormField grade(String id, boolean hole) {
        return FormField.ofTheForm(id, Quantity.WORD).choosing(GRADES).usually(hole ? "7" : "6");
    }

    static boolean isHole(String letters) {
        return !letters.equals(letters.toLowerCase(Locale.ROOT));
    }

    static boolean isKnown(String letters, String grade) {
        return (HOLES.contains(letters) || SHAFTS.contains(letters)) && GRADES.contains(grade);
    }
}
