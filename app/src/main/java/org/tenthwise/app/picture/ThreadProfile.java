package org.tenthwise.app.picture;

import java.util.ArrayList;
import java.util.List;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Nanometres;
import org.tenthwise.model.thread.ScrewThread;

/**
 * A thread in axial section, to be drawn: grooves half a pitch wide at the pitch line, flanks at the half angle of the
 * form, flat crests and flat roots. Radii and positions along the axis in millimetres.
 *
 * @param tangent of the half angle
 * @param asGiven whether it is drawn as it was given, and not kept within what still looks like a thread
 */
record ThreadProfile(double pitch, double tangent, double pitchRadius, double crest, double root, boolean asGiven) {

    /** A ridge keeps at least this much of the pitch at its crest, and a groove this much depth. */
    private static final double LEAST_CREST = 0.04;

    private static final double LEAST_DEPTH = 0.15;

    /**
     * @param pitchDiameter as read; kept within what leaves the thread crests and grooves
     * @param minor minor diameter; kept within the groove
     */
    static ThreadProfile of(ScrewThread thread, Length pitchDiameter, Length minor) {
        double pitch = Nanometres.of(thread.pitch());
        double tangent = Math.tan(Math.toRadians(thread.form().halfAngleDegrees()));
        double crest = Nanometres.of(thread.diameter()) / 2;
        double widest = crest - (0.25 - LEAST_CREST) * pitch / tangent;
        double pitchRead = Nanometres.of(pitchDiameter) / 2;
        double pitchRadius = Math.min(Math.max(pitchRead, widest), crest);
        double apex = pitchRadius - pitch / 4 / tangent;
        double rootGiven = Nanometres.of(minor) / 2;
        double root = Math.min(Math.max(rootGiven, apex), crest - LEAST_DEPTH * pitch);
        return new ThreadProfile(
                pitch, tangent, pitchRadius, crest, root, pitchRadius == pitchRead && root == rootGiven);
    }

    /** Half the width of a groove at this radius. */
    private double halfWidth(double radius) {
        return Math.max(0, pitch / 4 + (radius - pitchRadius) * tangent);
    }

    /** Radius of the centre of a wire that touches both flanks, or, where the root is in its way, the root. */
    double wireCentre(double wire) {
        double sine = tangent / Math.sqrt(1 + tangent * tangent);
        double onFlanks = pitchRadius + wire / 2 / sine - pitch / 4 / tangent;
        return Math.max(onFlanks, root + wire / 2);
    }

    /** Whether a wire lies on the flanks, where its size says something of the pitch diameter. */
    boolean isOnFlanks(double wire) {
        return wireCentre(wire) > root + wire / 2;
    }

    /** Radius of the surface at {@code along} when a groove is in the middle at zero. */
    double radius(double along) {
        double off = Math.abs(along - Math.rint(along / pitch) * pitch);
        double atRoot = halfWidth(root);
        double atCrest = Math.min(halfWidth(crest), pitch / 2);
        if (off <= atRoot) {
            return root;
        }
        return off >= atCrest ? crest : root + (off - atRoot) / (atCrest - atRoot) * (crest - root);
    }

    /** Positions of every edge between two ends, and the ends, in order. */
    List<Double> edges(double from, double to) {
        List<Double> edges = new ArrayList<>(List.of(from));
        double atRoot = halfWidth(root);
        double atCrest = Math.min(halfWidth(crest), pitch / 2);
        for (double groove = Math.floor(from / pitch) * pitch; groove <= to + pitch; groove += pitch) {
            for (double edge : new double[] {groove - atCrest, groove - atRoot, groove + atRoot, groove + atCrest}) {
                if (edge > from && edge < to) {
                    edges.add(edge);
                }
            }
        }
        edges.add(to);
        return edges;
    }
}
