package org.tenthwise.app.picture;

import java.util.List;
import java.util.Optional;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.thread.ScrewThread;

/**
 * A thread over three wires: its profile in axial section with the wires in the grooves, true to scale, and beside it
 * the strip of the pitch diameters.
 *
 * @param pitchDiameter of the profile drawn
 * @param minor minor diameter of the profile drawn
 * @param wire the wire drawn; {@code set} where it is the one in use, not one that would do
 * @param shown the reading the profile is drawn from; absent before there is one
 * @param touching what to say of a wire on the root; absent where none is
 * @param notes short, the weightiest first
 * @param strip pitch diameters, as the strip of an outside diameter; absent where there are no limits
 */
public record WirePicture(
        ScrewThread thread,
        Length pitchDiameter,
        Length minor,
        Wire wire,
        Optional<Shown> shown,
        Optional<String> touching,
        List<String> notes,
        Optional<SizePicture> strip,
        String spoken)
        implements Picture {

    /** A wire by its diameter. */
    public record Wire(Length diameter, boolean set) {}

    /**
     * A reading by its figures.
     *
     * @param where the place; empty where there is none
     * @param toScale the same and that it is true to scale, said only where it is
     * @param pitchDiameter absent where a wire on the root says nothing of it
     */
    public record Shown(String where, String toScale, String overWires, Optional<String> pitchDiameter) {}

    public WirePicture {
        notes = List.copyOf(notes);
    }

    @Override
    public void draw(Drawing drawing) {
        strip.ifPresentOrElse(
                beside -> SectionAndStrip.draw(
                        beside, drawing, false, false, (on, room, scale) -> new ThreadSection(this, on, room).draw()),
                () -> new ThreadSection(this, drawing, drawing.frame().box().grown(-1)).draw());
    }
}
