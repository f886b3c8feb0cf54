package org.tenthwise.app.picture;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.tenthwise.checklists.catalogue.DemoPart;
import org.tenthwise.checklists.rules.ReadingsFile;
import org.tenthwise.checklists.rules.SampleReader;
import org.tenthwise.checklists.rules.SampleReading;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.plan.PlanBuilder;
import org.tenthwise.model.record.Line;
import org.tenthwise.model.record.Sheet;
import org.tenthwise.model.run.Entry;
import org.tenthwise.model.run.Event;
import org.tenthwise.model.run.Run;
import org.tenthwise.model.words.Words;

/** A demo part as its readings file leaves it. */
public record DemoRun(Plan plan, Sheet sheet) {

    private static final OffsetDateTime AT = OffsetDateTime.parse("2026-11-25T09:30:00+01:00");

    /** @param sample part and kind of readings: {@code LG-2207-C-fail} */
    public static DemoRun of(String sample) {
        DemoPart part = sample.startsWith("LG") ? DemoPart.SCREW_CARRIER : DemoPart.WINCH_BARREL_END;
        Plan plan = part.plan();
        String text = sample.endsWith("pass") ? part.passingReadings() : part.failingReadings();
        ReadingsFile read = ((SampleReading.Good) new SampleReader().read(text, plan)).sample();
        List<Entry> entries = new ArrayList<>();
        entries.add(new Entry(1, "r", AT, read.by(), read.begun()));
        for (Event event : read.events()) {
            entries.add(new Entry(entries.size() + 1, "r", AT, read.by(), event));
        }
        return new DemoRun(plan, Sheet.of(plan, new Run(entries)));
    }

    Picture picture(int step) {
        Line found = sheet.lines().stream()
                .filter(line -> line.step().number() == step)
                .findFirst()
                .orElseThrow();
        return new Pictures(Words.of(Locale.ENGLISH)).of(sheet, found).orElseThrow();
    }

    /** The picture of a step where the plan knows nothing of the shape of the part. */
    Picture withoutOutline(int step) {
        Plan bare = new PlanBuilder(plan).outline(Optional.empty()).build();
        return new DemoRun(bare, Sheet.of(bare, sheet.run())).picture(step);
    }
}
