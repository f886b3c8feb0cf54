package org.tenthwise.app.picture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.tenthwise.app.text.MadeUpLanguage;
import org.tenthwise.model.record.Line;

/** Pictures in a language that is not English and a third longer: nothing on them or spoken is English or cut off. */
class MadeUpPicturesTest {

    private final Pictures pictures = new Pictures(MadeUpLanguage.words());

    @ParameterizedTest
    @ValueSource(strings = {"LG-2207-C-fail", "WB-118-B-fail", "WB-118-B-pass"})
    void everyLineOfADemoRunIsDrawnInTheLanguage(String sample) {
        DemoRun run = DemoRun.of(sample);
        List<String> faults = new ArrayList<>();
        int texts = 0;
        for (Line line : run.sheet().lines()) {
            Picture picture = pictures.of(run.sheet(), line).orElseThrow();
            for (Frame frame : List.of(Frames.all().get("100"), Frames.all().get("150"))) {
                RecordingPen pen = RecordingPen.of(picture, frame);
                texts += pen.texts().size();
                faults.addAll(pen.faults(frame));
                Stream.concat(Stream.of(picture.spoken()), pen.texts().stream())
                        .filter(text -> !MadeUpLanguage.plainEnglish(text, "").isEmpty()
                                || !MadeUpLanguage.broken(text).isEmpty())
                        .forEach(faults::add);
            }
        }
        assertEquals(List.of(), faults.stream().distinct().toList());
        assertTrue(texts > 100, "hardly anything was drawn");
    }
}
