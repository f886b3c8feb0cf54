package org.tenthwise.checklists.rules;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.tenthwise.model.gauge.Setting;
import org.tenthwise.model.run.Event;
import org.tenthwise.model.run.StepEvent;

/**
 * What a readings file says was done, as it is read: the events in order, and which figures are meant although far off.
 */
final class SampleEvents {

    private final List<Event> events = new ArrayList<>();
    private final Set<Integer> meant = new HashSet<>();
    private final Map<Integer, Setting> standing = new HashMap<>();

    void add(Event event) {
        events.add(event);
    }

    void addAll(List<Event> more) {
        events.addAll(more);
    }

    /** The gauge of a step as it is set from here on; nothing where it is set so already. */
    void set(int step, SampleGauges.Laid laid) {
        if (!laid.setting().equals(standing.put(step, laid.setting()))) {
            events.add(new StepEvent.GaugeSet(step, laid.setting()));
            if (laid.meant()) {
                lastIsMeant();
            }
        }
    }

    /** The event added last is meant as it is, far off or not. */
    void lastIsMeant() {
        meant.add(events.size() - 1);
    }

    /** Strikes out the event added last. */
    void strikeLast(String reason) {
        events.add(new Event.StruckOut(ReadingsFile.place(events.size() - 1), reason));
    }

    List<Event> events() {
        return events;
    }

    Set<Integer> meant() {
        return meant;
    }
}
