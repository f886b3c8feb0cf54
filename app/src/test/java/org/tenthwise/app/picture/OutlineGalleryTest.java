package org.tenthwise.app.picture;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.tenthwise.app.ui.picture.Sheets;
import org.tenthwise.model.plan.Mark;

class OutlineGalleryTest {

    private final Sheets sheets = new Sheets();

    @ParameterizedTest
    @EnumSource(
            value = Palette.class,
            names = {"DAY", "NIGHT"})
    void outlinesAreSavedToBeLookedAt(Palette palette) {
        for (double text : new double[] {1, 1.5}) {
            sheets.save(
                    "outline-numbered-" + text,
                    new OutlinePicture(DemoShapes.carrier(), Optional.empty(), DemoShapes.carrierNumbers(), ""),
                    Frame.screen(698, 330, text),
                    palette);
        }
        Frame small = Frame.small(220, 150, Role.SHEET);
        sheets.save(
                "outline-small-bore",
                OutlinePicture.small(DemoShapes.carrier(), Optional.of(DemoShapes.mark("90", "30")), ""),
                small,
                palette);
        sheets.save(
                "outline-small-pocket",
                OutlinePicture.small(DemoShapes.carrier(), Optional.of(DemoShapes.mark("88", "24")), ""),
                small,
                palette);
        sheets.save(
                "outline-small-thread",
                OutlinePicture.small(
                        DemoShapes.barrelEnd(), Optional.of(new Mark(DemoShapes.mm("120"), DemoShapes.mm("65"))), ""),
                small,
                palette);
        sheets.save(
                "outline-pin",
                new OutlinePicture(
                        DemoShapes.pin(),
                        Optional.empty(),
                        List.of(
                                new OutlinePicture.Numbered("1", DemoShapes.mark("6", "8")),
                                new OutlinePicture.Numbered("112", DemoShapes.mark("65", "18"))),
                        ""),
                Frame.screen(500, 300, 1),
                palette);
    }
}
