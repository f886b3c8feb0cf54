package org.tenthwise.app.picture;

import java.util.LinkedHashMap;
import java.util.Map;

/** The room a picture gets: on the reference screen, on a small one, upright, and in the record. */
final class Frames {

    private Frames() {}

    static Map<String, Frame> all() {
        Map<String, Frame> frames = new LinkedHashMap<>();
        frames.put("100", Frame.screen(652, 452, 1));
        frames.put("150", Frame.screen(652, 452, 1.5));
        frames.put("small", Frame.screen(460, 300, 1));
        frames.put("upright-150", Frame.screen(700, 560, 1.5));
        frames.put("print", Frame.print(420, 250));
        return frames;
    }

    /** What the longest advice at large text leaves. */
    static Map<String, Frame> low() {
        Map<String, Frame> frames = new LinkedHashMap<>();
        frames.put("low-62", Frame.screen(772, 62, 1.5));
        frames.put("low-86", Frame.screen(772, 86, 1.5));
        frames.put("low-97", Frame.screen(772, 97, 1.5));
        frames.put("low-121", Frame.screen(772, 121, 1.5));
        frames.put("low-140", Frame.screen(772, 140, 1.5));
        frames.put("low-169", Frame.screen(551, 169, 1.5));
        frames.put("low-199", Frame.screen(599, 199, 1.5));
        return frames;
    }

    /** The same, and the room of an upright screen and of a row in the record. */
    static Map<String, Frame> sheets() {
        Map<String, Frame> frames = all();
        frames.put("upright", Frame.screen(760, 420, 1));
        frames.put("upright-large", Frame.screen(760, 420, 1.5));
        frames.put("record", Frame.print(330, 200));
        return frames;
    }

    /** Every room the run screen gives a picture, narrow and wide, low and high, at both sizes of letters. */
    static Map<String, Frame> rooms() {
        Map<String, Frame> frames = new LinkedHashMap<>();
        for (double text : new double[] {1, 1.5}) {
            for (int width : new int[] {360, 460, 560, 660, 780}) {
                for (int height : new int[] {75, 110, 150, 200, 260, 330, 420, 500}) {
                    frames.put("%d by %d at %.1f".formatted(width, height, text), Frame.screen(width, height, text));
                }
            }
        }
        return frames;
    }
}
