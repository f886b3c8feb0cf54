package org.tenthwise.app.story;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.tenthwise.app.export.Evidence;
import org.tenthwise.app.export.Records;
import org.tenthwise.app.session.Prompt;
import org.tenthwise.app.session.State;
import org.tenthwise.checklists.catalogue.DemoPart;
import org.tenthwise.model.record.Line;
import org.tenthwise.model.record.Sheet;
import org.tenthwise.model.words.Words;

/** What is told of a step behind its row of the record is what is told of it while it is in hand. */
public class SameToldEverywhereTest {

    private static final Words WORDS = Words.of(Locale.ENGLISH);

    @ParameterizedTest
    @EnumSource(DemoPart.class)
    void ofEveryStepOfAPassingPart(DemoPart part) {
        assertEquals(List.of(), untold(Records.whole(part, Records.passing(part))));
    }

    @ParameterizedTest
    @EnumSource(DemoPart.class)
    void ofEveryStepOfAFailingPart(DemoPart part) {
        assertTrue(untold(Records.whole(part, Records.failing(part))).contains("Whole part, visual"));
    }

    /** The steps of which nothing taken is told, the same of all of them. */
    private static List<String> untold(Evidence evidence) {
        Sheet sheet = evidence.sheet();
        List<String> untold = new ArrayList<>();
        for (Line line : sheet.lines()) {
            if (!same(inHand(sheet, line))) {
                untold.add(line.step().name());
            }
        }
        return untold;
    }

    private static State inHand(Sheet sheet, Line line) {
        OffsetDateTime now = sheet.run().last().at();
        return new State(
                sheet,
                line.step(),
                sheet.run().closed().isPresent() ? new Prompt.Closed() : new Prompt.Nothing(),
                sheet.run().gauges().setting(line.step().number()),
                false,
                Optional.empty(),
                Map.of(),
                Optional.empty(),
                List.of(),
                now);
    }

    /** @return whether anything taken at the step was told */
    public static boolean same(State state) {
        List<StoryChapter> more = StepStory.of(state, WORDS).chapters();
        List<StoryChapter> record = StepStory.inRecord(state.sheet(), state.line(), state.at(), WORDS)
                .chapters();
        String rounds = WORDS.say("story.this", state.sheet().run().begun().serial());
        assertEquals(starting(more, rounds), starting(record, rounds));
        assertEquals(lines(more, "story.gauges"), lines(record, "story.gauges"));
        assertTrue(lines(record, "story.judged").containsAll(lines(more, "story.judged")));
        List<StoryLine> signed = lines(record, "story.signed");
        assertEquals(signed, lines(more, "story.signed").subList(0, signed.size()));
        return !starting(record, rounds).isEmpty();
    }

    private static List<StoryChapter> starting(List<StoryChapter> chapters, String heading) {
        return chapters.stream()
                .filter(chapter -> chapter.heading().startsWith(heading))
                .toList();
    }

    private static List<StoryLine> lines(List<StoryChapter> chapters, String heading) {
        return chapters.stream()
                .filter(chapter -> chapter.heading().equals(WORDS.say(heading)))
                .flatMap(chapter -> chapter.lines().stream())
                .toList();
    }
}
