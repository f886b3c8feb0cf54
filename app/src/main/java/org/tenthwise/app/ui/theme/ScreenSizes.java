package org.tenthwise.app.ui.theme;

/**
 * How large the parts of a screen are, in pixels of the reference size: 1280 × 800 or 800 × 1280, 64 of which are about
 * 11 mm on a ten-inch tablet. What is set for kinds of keys and for type is in the style sheet.
 */
public final class ScreenSizes {

    /** Between two keys. */
    public static final double GAP = 8;

    /** A key at least, one way or the other. */
    public static final double KEY = 64;

    /** A key that turns the page of a list. */
    public static final double PAGE_KEY = 66;

    /** A key in a list to choose from. */
    public static final double CHOICE_KEY = 72;

    /** A key that decides something. */
    public static final double DECIDING_KEY = 96;

    /** What keys share a line by, where each takes as much of it as the next. */
    public static final double SHARE = 100;

    // the workplace: the list at the left, the hand at the right

    private static final double LIST = 248;
    private static final double LIST_LARGE = 300;
    private static final double REFERENCE = 1280;
    private static final double LIST_SHARE = 0.2;
    private static final double HAND = 352;
    private static final double HAND_GLOVES = 376;
    private static final double HAND_GLOVES_LARGE = 400;

    /** What asks for least room takes what others leave. */
    public static final double LEAST_LIST = 200;

    /** The keys about the record under the hand, so that none of them is under 64 wide. */
    public static final double RECORD_KEYS = 233;

    /** What is asked and the figure, with large text too. */
    public static final double READOUT = 150;

    /** Higher it is of no use: the figure stays near the keys. */
    public static final double READOUT_MOST = 230;

    /** The picture of a bench sum at least. */
    public static final double SUM_PICTURE = 110;

    /** What comes of a bench sum, at least. */
    public static final double SUM_FACTS = 224;

    // what a screen is about, beside the rest or above it

    public static final double FORM_SIDE = 440;
    public static final double BALLOONS_SIDE = 344;
    public static final double FORM_ABOVE = 500;
    public static final double SETTINGS_ABOVE = 330;
    public static final double RECORD_SIDE = 440;

    public static final double RECORD_ABOVE = 400;
    public static final double REFERENCE_SIDE = 432;
    public static final double REFERENCE_SIDE_LARGE = 520;
    public static final double REFERENCE_ABOVE = 460;
    public static final double ABOUT_SIDE = 600;

    /** What parts show together, beside their picture or below it. */
    public static final double COURSE_SIDE = 352;

    public static final double COURSE_SIDE_LARGE = 460;
    public static final double COURSE_BELOW = 480;

    /** The parts on the home screen, beside the runs or below them. */
    public static final double PARTS_SIDE = 472;

    public static final double PARTS_BELOW = 460;

    // sheets over a screen

    public static final double MESSAGE = 640;
    public static final double UNOPENED = 720;

    private ScreenSizes() {}

    /** Width of the list at the left of a workplace, which has a share of what a wide one has to spare. */
    public static double list(Look look, double workplace) {
        double spare = Math.max(0, workplace - REFERENCE) * LIST_SHARE;
        return (look.largeTextProperty().get() ? LIST_LARGE : LIST) + Math.floor(spare);
    }

    /** Width of what lies under the hand. */
    public static double hand(Look look) {
        if (!look.glovesProperty().get()) {
            return HAND;
        }
        return look.largeTextProperty().get() ? HAND_GLOVES_LARGE : HAND_GLOVES;
    }
}
