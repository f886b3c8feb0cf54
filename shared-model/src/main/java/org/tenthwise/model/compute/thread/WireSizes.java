package org.tenthwise.model.compute.thread;

import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Nanometres;
import org.tenthwise.model.thread.ScrewThread;
import org.tenthwise.model.thread.ThreadForm;

/**
 * The wires a thread can be measured over.
 *
 * <p>With half angle A, groove width s at the pitch diameter (half the pitch), and h the depth from the basic major
 * diameter to the pitch line, on radius: best, touching the flanks at the pitch line, s / cos A; least, flush with the
 * crest, (2h + s · cot A) / (1 + csc A); greatest, touching the flanks at the corners of the crest, (s + 2h · tan A) /
 * cos A.
 *
 * <p>Diameters, to 1 nm, each in proportion to the pitch.
 *
 * <p>Holds for a lead angle of zero and is what the handbooks list for every lead angle. At 5° of lead the wire that
 * touches at the pitch line is 0.4 % less: see {@link TouchingWire}; {@link MeasurementOverWires} looks at the thread
 * as it is.
 *
 * <p>Source: best wire, ASME B1.2 and Machinery's Handbook, 31st ed., p. 2127; least and greatest from the geometry of
 * the basic form. The stub form has a lower crest above its pitch line, so its least and greatest are less; and its
 * root is so near that the best wire may rest on it: see {@link RootClearance}.
 */
public record WireSizes(Length best, Length least, Length greatest) {

    public static WireSizes of(ScrewThread thread) {
        return of(thread.form(), Groove.of(thread));
    }

    /** The best alone, which hangs on no crest. */
    public static Length best(Groove groove) {
        return Nanometres.round(Nanometres.of(groove.width()) / Math.cos(groove.radians()));
    }

    /** @param form whose crest the thread has, whatever its flanks */
    public static WireSizes of(ThreadForm form, Groove groove) {
        double cosine = Math.cos(groove.radians());
        double width = Nanometres.of(groove.width());
        double bothDepths = 2 * form.pitchLineDepth() * Nanometres.of(groove.pitch());
        return new WireSizes(
                best(groove),
                Nanometres.round((bothDepths + groove.sharpDepth()) / groove.wireFactor()),
                Nanometres.round((width + bothDepths * groove.tangent()) / cosine));
    }
}
