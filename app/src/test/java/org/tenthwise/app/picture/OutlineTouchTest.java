package org.tenthwise.app.picture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.tenthwise.checklists.catalogue.DemoPart;
import org.tenthwise.checklists.rules.PlanReader;
import org.tenthwise.checklists.rules.PlanReading;
import org.tenthwise.model.plan.Mark;
import org.tenthwise.model.plan.Outline;

class OutlineTouchTest {

    private static final Frame FRAME = Frame.screen(900, 400, 1);

    /** Wherever the part is touched, the mark is on the feature nearest to the finger. */
    @ParameterizedTest
    @EnumSource(DemoPart.class)
    void aTouchPutsTheMarkOnWhatIsTouched(DemoPart part) {
        if (!(new PlanReader().read(part.planText()) instanceof PlanReading.Good good)
                || good.plan().outline().isEmpty()) {
            return;
        }
        Outline outline = good.plan().outline().orElseThrow();
        OutlinePicture picture = OutlinePicture.small(outline, Optional.empty(), "");
        HalfSection section = new HalfSection(outline, new Box(12, 4, 888, 396));
        Box box = section.box();
        for (int x = 0; x <= 40; x++) {
            for (int y = 0; y <= 20; y++) {
                Point spot = new Point(box.left() + box.width() * x / 40, box.top() + box.height() * y / 20);
                Mark mark = picture.touched(FRAME, spot).orElseThrow();
                assertEquals(
                        OutlineFeature.at(section.mark(spot), outline, section).line(),
                        OutlineFeature.at(mark, outline, section).line());
                assertTrue(!mark.at().isAbove(outline.length()) && mark.at().signum() >= 0);
                assertTrue(!mark.diameter().isAbove(outline.greatestDiameter()));
            }
        }
        assertEquals(Optional.empty(), picture.touched(FRAME, new Point(box.left() - 100, box.centreY())));
        assertEquals(Optional.empty(), picture.touched(FRAME, new Point(box.centreX(), box.bottom() + 100)));
    }
}
