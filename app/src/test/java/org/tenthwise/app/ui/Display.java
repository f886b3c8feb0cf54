package org.tenthwise.app.ui;

import java.util.List;
import org.tenthwise.app.ui.theme.LookStore.Kept;

/**
 * A display and a look to see a screen with.
 *
 * @param name how its pictures are named
 * @param dots to the inch
 */
public record Display(String name, int width, int height, int dots, Kept look) {

    /** That of a desk or of a tablet. */
    public Display(String name, int width, int height, Kept look) {
        this(name, width, height, 96, look);
    }

    private static final Kept NIGHT = new Kept(true, false, false);
    private static final Kept LARGE_PRINT = new Kept(false, true, false);
    private static final Kept NIGHT_LARGE = new Kept(true, true, false);
    private static final Kept GLOVES = new Kept(false, false, true);
    private static final Kept GLOVES_LARGE = new Kept(false, true, true);

    /** The reference tablet by day. */
    public static final Display DAY = new Display("day", 1280, 800, Kept.PLAIN);

    /** The same in large print. */
    public static final Display LARGE = new Display("day-150", 1280, 800, LARGE_PRINT);

    /** The same, held upright. */
    public static final Display UPRIGHT = new Display("day-portrait", 800, 1280, Kept.PLAIN);

    /** Every way a screen must hold. */
    public static final List<Display> ALL = List.of(
            DAY,
            new Display("night", 1280, 800, NIGHT),
            LARGE,
            new Display("night-150", 1280, 800, NIGHT_LARGE),
            new Display("day-gloves", 1280, 800, GLOVES),
            new Display("day-150-gloves", 1280, 800, GLOVES_LARGE),
            new Display("day-1024x600", 1024, 600, Kept.PLAIN),
            new Display("night-150-1024x600", 1024, 600, NIGHT_LARGE),
            new Display("day-1920", 1920, 1200, Kept.PLAIN),
            UPRIGHT,
            new Display("night-portrait", 800, 1280, NIGHT),
            new Display("day-150-portrait", 800, 1280, LARGE_PRINT));
}
