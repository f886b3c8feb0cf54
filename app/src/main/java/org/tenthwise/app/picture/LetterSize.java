package org.tenthwise.app.picture;

import java.util.function.ToIntFunction;

/**
 * Large text in a picture that has little room: where smaller letters, down to the usual ones, let the picture show
 * more, it gets those.
 */
final class LetterSize {

    /** What a picture tells that could show all it has to. */
    static final int ALL = Integer.MAX_VALUE;

    private static final double USUAL = 1;

    private LetterSize() {}

    /**
     * @param picture draws, and tells how much it could show: more is better, and of two that show the same the larger
     *     letters are taken
     */
    static void draw(Drawing drawing, ToIntFunction<Drawing> picture) {
        double largest = drawing.frame().textScale();
        double best = largest;
        int most = largest > USUAL ? picture.applyAsInt(drawing.rehearsal()) : ALL;
        for (double text : new double[] {(largest + USUAL) / 2, USUAL}) {
            int shown = most == ALL ? ALL : picture.applyAsInt(lettered(drawing.rehearsal(), text));
            best = shown > most ? text : best;
            most = Math.max(most, shown);
        }
        picture.applyAsInt(lettered(drawing, best));
    }

    private static Drawing lettered(Drawing drawing, double text) {
        Frame whole = drawing.frame();
        return drawing.inset(new Point(0, 0), whole.lettered(text));
    }
}
