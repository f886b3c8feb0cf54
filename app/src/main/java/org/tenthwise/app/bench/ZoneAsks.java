package org.tenthwise.app.bench;

import java.util.List;
import java.util.Locale;

/** A tolerance zone, asked by its letter and its grade. Grades and letters: ISO 286-1, the usual ones first. */
final class ZoneAsks {

    private static final List<String> HOLES = List.of("H", "JS", "G", "F", "E", "D", "K", "M", "N", "P", "A", "B", "C", "CD", "EF",
            "FG", "J", "R", "S", "T", "U", "V", "X", "Y", "Z", "ZA", "ZB", "ZC");
    private static final List<String> SHAFTS = List.of("h", "js", "g", "f", "e", "d", "k", "m", "n", "p", "a", "b", "c", "cd", "ef",
            "fg", "j", "r", "s", "t", "u", "v", "x", "y", "z", "za", "zb", "zc");
    private static final List<String> GRADES = List.of("7", "6", "8", "5", "9", "10", "11", "12", "4", "3", "2", "1", "0", "01", "13",
            "14", "15", "16", "17", "18");

    private ZoneAsks() {
    }

    static Ask letter(String id, boolean hole) {
        return Ask.choice(id, hole ? HOLES : SHAFTS).aside();
    }

    static Ask grade(String id) {
        return Ask.choice(id, GRADES).aside();
    }

    static boolean isHole(String letters) {
        return !letters.equals(letters.toLowerCase(Locale.ROOT));
    }

    static boolean isKnown(String letters, String grade) {
        return (HOLES.contains(letters) || SHAFTS.contains(letters)) && GRADES.contains(grade);
    }
}
