package org.tenthwise.app.export.pdf;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.tenthwise.app.picture.RecordingPen;
import org.tenthwise.app.text.TestLanguage;
import org.tenthwise.checklists.catalogue.DemoPart;

/** The printed record in other languages than English: nothing is left in English, and no word is broken. */
class RecordLanguagesTest {

    /** What was typed, and where plans and materials have their figures from. */
    private static final String DATA = Arrays.stream(DemoPart.values())
                    .map(part -> part.passingReadings() + part.failingReadings())
                    .collect(Collectors.joining())
            + "Root Dressed and sprayed Key Design office machined and measured Test part, invented melt "
            + "the plan says nothing else by its tables condition not stated data sheet of a maker not named "
            + "from memory its like in castings as handed on by foundries read November Copper Development "
            + "Association properties of "
            + "Machine Material Data Sheet csv json qif";

    @ParameterizedTest
    @EnumSource(
            value = Scene.class,
            names = {"FAILED", "LAPSED", "INCH_FAILED", "INCH_UNFINISHED", "WARM_GROOVES"})
    void everyPageIsOfItsLanguageAndHoldsIt(Scene scene) {
        List<String> faults = new ArrayList<>();
        for (TestLanguage language : List.of(TestLanguage.MADE_UP, TestLanguage.GERMAN)) {
            for (RecordingPen page : PrintedPages.of(language.words(), scene.evidence())) {
                faults.addAll(page.faults(Paper.A4.frame()));
                page.lettered().stream()
                        .filter(text -> text.box().right() > PageFlow.RIGHT + 0.5)
                        .forEach(text -> faults.add(text.text() + " goes past the margin"));
                for (String text : page.texts()) {
                    language.english(text, DATA).forEach(word -> faults.add(word + " is English in " + text));
                    language.broken(text, DATA).forEach(word -> faults.add(word + " is broken in " + text));
                }
            }
        }
        assertEquals("", String.join("\n", faults));
    }
}
