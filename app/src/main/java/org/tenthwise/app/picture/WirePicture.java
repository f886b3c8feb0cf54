package org.tenthwise.app.picture;

import java.util.List;
import java.util.Optional;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.thread.ScrewThread;

/**
 * A thread over three wires: its grooves true to scale with the wires in them, pitch line and measurement as dimensions,
 * beside it the strip of the pitch diameter.
 *
 * @param strip         pitch diameters, limits and verdict
 * @param pitchDiameter what the grooves are drawn with: as measured, otherwise basic
 * @param minor         where the root is; absent where no minor diameter is known, then the basic root is drawn
 * @param wire          absent until the wires are set
 * @param notes         lines under the thread
 */
public record WirePicture(SizePicture strip, ScrewThread thread, Length pitchDiameter, Optional<SizePicture.Sized> pitch,
                          Optional<Length> minor, Optional<Wire> wire, List<String> notes, String spoken) implements Picture {

    /**
     * The wires.
     *
     * @param over    measurement over them; absent before the first
     * @param bottoms whether they rest on the root
     */
    public record Wire(Length diameter, Optional<SizePicture.Sized> over, boolean bottoms) {
    }

    public WirePicture {
        notes = List.copyOf(notes);
    }

    @Override
    public void draw(Drawing drawing) {
        SectionAndStrip.draw(strip, drawing, false, (room, scale) -> new GrooveSection(this, drawing, room).draw());
    }
}
