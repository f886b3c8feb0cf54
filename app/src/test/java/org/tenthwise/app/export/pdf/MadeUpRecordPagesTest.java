package org.tenthwise.app.export.pdf;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.tenthwise.app.picture.RecordingPen;
import org.tenthwise.app.text.MadeUpLanguage;
import org.tenthwise.checklists.catalogue.DemoPart;

/** The printed record in a language that is not English and a third longer: nothing is left in English or cut off. */
class MadeUpRecordPagesTest {

    /** What was typed, and where plans and materials have their figures from. */
    private static final String DATA = Arrays.stream(DemoPart.values())
                    .map(part -> part.passingReadings() + part.failingReadings())
                    .collect(Collectors.joining())
            + "Root Dressed and sprayed Key Design office machined and measured Test part, invented melt "
            + "the plan says nothing else by its tables condition not stated data sheet of a maker not named "
            + "from memory its like in castings page read November com spectrummachine Spectrum "
            + "Machine Material Data Sheet";

    @ParameterizedTest
    @EnumSource(
            value = Scene.class,
            names = {"FAILED", "LAPSED", "INCH_FAILED", "INCH_UNFINISHED", "WARM_GROOVES"})
    void everyPageIsOfTheLanguageAndHoldsIt(Scene scene) {
        List<String> faults = new ArrayList<>();
        for (RecordingPen page : PrintedPages.of(MadeUpLanguage.words(), scene.evidence())) {
            faults.addAll(page.faults(Paper.A4.frame()));
            for (String text : page.texts()) {
                MadeUpLanguage.plainEnglish(text, DATA)
                        .forEach(word -> faults.add(word + " is plain English in " + text));
                MadeUpLanguage.broken(text).forEach(word -> faults.add(word + " is broken in " + text));
            }
        }
        assertEquals("", String.join("\n", faults));
    }
}
