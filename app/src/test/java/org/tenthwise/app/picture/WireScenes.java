package org.tenthwise.app.picture;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.thread.ScrewThread;
import org.tenthwise.model.thread.ThreadForm;

/** Threads over wires to draw, with invented readings. */
final class WireScenes {

    private WireScenes() {}

    static Map<String, WirePicture> all() {
        Map<String, WirePicture> scenes = new LinkedHashMap<>();
        scenes.put("pass", thread(Staged.carrier().wires(21, "3.620").reads(21, "40.742", "40.755", "40.749")));
        scenes.put("past-size", thread(Staged.carrier().wires(21, "3.620").reads(21, "40.560", "40.566", "40.571")));
        scenes.put(
                "cut-again",
                thread(Staged.carrier()
                        .wires(21, "3.620")
                        .reads(21, "41.460", "41.452", "41.455")
                        .cut(21)
                        .reads(21, "41.060", "41.052", "41.055")));
        scenes.put("one-read", thread(Staged.carrier().wires(21, "3.620").reads(21, "40.742")));
        scenes.put(
                "struck",
                thread(Staged.carrier()
                        .wires(21, "3.620")
                        .reads(21, "40.242")
                        .struckOut()
                        .reads(21, "40.742", "40.755")));
        scenes.put("before-wires", thread(Staged.carrier()));
        scenes.put("before-readings", (WirePicture)
                Staged.barrelEnd().wires(22, "0.0700").picture(22));
        scenes.put("inch", demo("WB-118-B-pass"));
        scenes.put("touches-root", demo("WB-118-B-fail"));
        scenes.put("metric", metric());
        return scenes;
    }

    private static WirePicture thread(Staged staged) {
        return (WirePicture) staged.picture(21);
    }

    private static WirePicture demo(String sample) {
        return (WirePicture) DemoRun.of(sample).picture(22);
    }

    /** M12 × 1.75, wires 1.100 where 1.010 is best: a small thread of 60°, all in place of a plan. */
    private static WirePicture metric() {
        ScrewThread thread = new ScrewThread(ThreadForm.METRIC, mm("12"), mm("1.75"), 1);
        return new WirePicture(
                thread,
                mm("10.80"),
                mm("9.85"),
                new WirePicture.Wire(mm("1.1"), true),
                Optional.of(new WirePicture.Shown("middle", "middle, true to scale", "12.584", Optional.of("10.800"))),
                Optional.empty(),
                List.of("wires 1.100", "best wire 1.010", "pitch 1.75", "flank 30°"),
                Optional.of(SizeScenes.all().get("outside-two-places")),
                "Thread");
    }

    private static Length mm(String figure) {
        return Length.of(figure, Unit.MILLIMETRE);
    }
}
