package org.tenthwise.app.command;

import java.util.List;
import org.tenthwise.app.session.RunSession;
import org.tenthwise.checklists.catalogue.ExamplePart;
import org.tenthwise.checklists.rules.ReadingsFile;
import org.tenthwise.checklists.rules.SampleReader;
import org.tenthwise.checklists.rules.SampleReading;
import org.tenthwise.model.run.Event;
import org.tenthwise.model.words.Words;

/** Readings files of the whole drawings, done in a run as far as it is signed, for tests of other packages. */
public final class Replayed {

    private Replayed() {}

    public static void play(RunSession session, ExamplePart part, String readings) throws Exception {
        SampleReading read = new SampleReader().read(readings, part.plan());
        if (!(read instanceof SampleReading.Good good)) {
            throw new AssertionError(read.toString());
        }
        ReadingsFile sample = good.sample();
        List<Event> done = sample.events().stream()
                .takeWhile(event -> event.as(Event.Signed.class).isEmpty()
                        && event.as(Event.Closed.class).isEmpty())
                .toList();
        new Replay(session, Words.ENGLISH).play(sample.begunWith(done.size()));
    }
}
