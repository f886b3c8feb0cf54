package org.tenthwise.model.compute.form;

/** How the size of a wall goes with depth, from the mouth or free end inwards. */
public enum WallShape {
    /** No two depths differ noticeably. */
    EVEN,
    /** Narrows going in. */
    TAPER_IN,
    /** Widens going in. */
    TAPER_OUT,
    /** Wide at the mouth, even from the next depth on. */
    BELL_MOUTH,
    /** Narrower between the ends than at either. */
    WAIST,
    /** Wider between the ends than at either. */
    BARREL,
    /** Differs noticeably, in none of these ways. */
    UNEVEN
}
