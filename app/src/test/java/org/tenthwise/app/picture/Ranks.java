package org.tenthwise.app.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** What counts less in a picture and is there although something that counts more was left out. */
final class Ranks {

    private Ranks() {}

    static List<String> faultsOf(Picture picture, RecordingPen pen) {
        if (picture instanceof RunOutSections both) {
            return both.sections().stream()
                    .flatMap(section -> of(section.ring(), pen).stream())
                    .toList();
        }
        if (picture instanceof RunOutPicture ring) {
            return of(ring, pen);
        }
        if (picture instanceof PlugPicture plug) {
            return of(plug, pen);
        }
        return of((WirePicture) picture, pen);
    }

    /**
     * The movement before its limit, both before what to do, that before how far off centre it is, and all of it before
     * remarks; the readings in a table last. The movement may stand in two lines.
     */
    private static List<String> of(RunOutPicture ring, RecordingPen pen) {
        List<List<String>> ranks = new ArrayList<>();
        ranks.add(ring.movement().map(RunOutPicture.Sized::words).stream().toList());
        ranks.add(List.of(ring.limit().words()));
        ranks.add(Stream.concat(
                        ring.jaws().stream()
                                .filter(jaw -> jaw.in().signum() > 0)
                                .map(RunOutPicture.Jaw::words),
                        ring.hints().tap().map(RunOutPicture.Tap::words).stream())
                .toList());
        ranks.add(ring.fit().map(RunOutPicture.Fit::words).orElse(List.of()));
        ranks.add(ring.notes());
        ranks.add(
                ring.readings().size() < 2
                                || ring.readings().stream()
                                        .anyMatch(read -> read.value().isEmpty())
                        ? List.of()
                        : ring.readings().stream()
                                .map(RunOutPicture.Reading::angleWords)
                                .toList());
        return of(ranks, pen);
    }

    private static List<String> of(PlugPicture plug, RecordingPen pen) {
        return of(
                List.of(
                        plug.strip().columns().stream()
                                .flatMap(column -> column.size().stream())
                                .map(SizePicture.Sized::figures)
                                .toList(),
                        plug.hand().map(PlugPicture.Hand::words).stream().toList(),
                        plug.notes()),
                pen);
    }

    private static List<String> of(WirePicture thread, RecordingPen pen) {
        return of(
                List.of(
                        thread.shown().flatMap(WirePicture.Shown::pitchDiameter).stream()
                                .toList(),
                        thread.shown().map(WirePicture.Shown::overWires).stream()
                                .toList(),
                        thread.notes()),
                pen);
    }

    /** @param ranks those that count most first */
    private static List<String> of(List<List<String>> ranks, RecordingPen pen) {
        List<String> faults = new ArrayList<>();
        Optional<String> leftOut = Optional.empty();
        for (List<String> rank : ranks) {
            for (String words : rank) {
                boolean there = isThere(words, pen);
                if (there && leftOut.isPresent() && !ranksBefore(ranks, rank).contains(words)) {
                    faults.add("\"%s\" is there, \"%s\" is not".formatted(words, leftOut.get()));
                }
            }
            if (leftOut.isEmpty()) {
                leftOut = rank.stream().filter(words -> !isThere(words, pen)).findFirst();
            }
        }
        return faults;
    }

    /** By itself, or with more than one word in a line or over two. */
    private static boolean isThere(String words, RecordingPen pen) {
        return pen.texts().contains(words)
                || words.contains(" ") && String.join(" ", pen.texts()).contains(words);
    }

    private static List<String> ranksBefore(List<List<String>> ranks, List<String> rank) {
        return ranks.subList(0, ranks.indexOf(rank)).stream()
                .flatMap(List::stream)
                .toList();
    }
}
