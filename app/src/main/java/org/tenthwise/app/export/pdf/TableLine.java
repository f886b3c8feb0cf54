package org.tenthwise.app.export.pdf;

import java.util.List;
import java.util.Optional;
import org.tenthwise.app.picture.Picture;
import org.tenthwise.model.verdict.VerdictKind;

/**
 * What a line of the table of characteristics says, before it is known how wide its columns are.
 *
 * @param number on the drawing
 * @param check its number in the order of work; empty where that is the number on the drawing
 * @param place sheet and zone; empty where the plan says none of them
 * @param name what it is called, and behind that what the drawing asks for and its designator
 * @param limits empty where nothing is measured
 * @param result size, or least and greatest, or what was answered
 * @param mark where that lies between its limits; absent for what is not judged by one size
 * @param gauge marks of the gauges it was measured with
 * @param standing absent for what is not in this run
 * @param beside what stands under the verdict, each a line at least
 * @param signed what was signed where it did not pass, with its number; empty where nothing was
 */
record TableLine(
        String number,
        String check,
        String place,
        RunIn name,
        String limits,
        RunIn result,
        Optional<Picture> mark,
        String gauge,
        Optional<VerdictKind> standing,
        List<String> beside,
        List<String> signed) {

    TableLine {
        beside = List.copyOf(beside);
        signed = List.copyOf(signed);
    }
}
