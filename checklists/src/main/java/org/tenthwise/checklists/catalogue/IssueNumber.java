package org.tenthwise.checklists.catalogue;

import java.math.BigInteger;

/** How the issues of a plan are counted: 1, 2, 3, or A, B, C; {@code 3b} is followed by {@code 4}. */
final class IssueNumber {

    private IssueNumber() {}

    /** What follows an issue; something else with {@code .1} behind it. */
    static String after(String issue) {
        String figures = issue.replaceAll("\\D.*$", "");
        if (!figures.isEmpty()) {
            return new BigInteger(figures).add(BigInteger.ONE).toString();
        }
        boolean isLetter = issue.length() == 1 && issue.charAt(0) >= 'A' && issue.charAt(0) < 'Z';
        return isLetter ? String.valueOf((char) (issue.charAt(0) + 1)) : issue + ".1";
    }
}
