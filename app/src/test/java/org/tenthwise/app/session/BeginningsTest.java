package org.tenthwise.app.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.tenthwise.app.InventedPlans;
import org.tenthwise.app.store.MemoryLedger;
import org.tenthwise.app.store.Occasions;
import org.tenthwise.model.plan.Answer;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.record.Line;
import org.tenthwise.model.record.Outcome;
import org.tenthwise.model.run.Occasion;
import org.tenthwise.model.run.OccasionSaid;
import org.tenthwise.model.run.Purpose;
import org.tenthwise.model.run.SignedAs;
import org.tenthwise.model.words.Refused;
import org.tenthwise.model.words.Words;

/** What a run that stands on an earlier one asks: of the issues of its plan since then, and of that run. */
class BeginningsTest {

    private static final Clock CLOCK = Clock.fixed(Instant.parse("2026-11-25T06:31:00Z"), ZoneOffset.UTC);
    private static final Plan FIRST = plan("A", issued("1", ""));

    private final MemoryLedger ledger = new MemoryLedger();
    private final Runs shop = new Runs(ledger, CLOCK);

    /** Four looks, called Look 1 to 4; the second and the third are of the first piece alone. */
    private static Plan plan(String revision, String... issues) {
        String looks = IntStream.rangeClosed(1, 4)
                .mapToObj(number ->
                        """
                        [[step]]
                        number = %d
                        operation = 10
                        kind = "look"
                        name = "Look %d"
                        what = "Right."
                        %s"""
                                .formatted(number, number, number == 2 || number == 3 ? "when = [\"first\"]\n" : ""))
                .collect(Collectors.joining());
        return InventedPlans.read(InventedPlans.text("mm", looks + String.join("", issues))
                .replace("issue = \"1\"\nname", "issue = \"%d\"\nname".formatted(issues.length))
                .replace("revision = \"A\"", "revision = \"%s\"".formatted(revision)));
    }

    private static String issued(String number, String affected) {
        return """
                [[issued]]
                issue = "%s"
                reason = "Why %s"
                by = "Planner 1"
                %s
                """
                .formatted(number, number, affected);
    }

    private RunSession begun(Plan plan, String serial, Occasion occasion) throws Exception {
        return shop.begin(new RunHeader(plan, serial, "L-1", "Lathe 4", "Setter 1").begunFor(occasion));
    }

    private RunSession done(Plan plan, String serial, Occasion occasion) throws Exception {
        RunSession session = begun(plan, serial, occasion);
        while (session.state().asked().asQuestion().isPresent()) {
            session.answer(Answer.YES);
            session.goOn();
        }
        session.close("Inspector 1", SignedAs.ACCEPTED);
        return session;
    }

    @BeforeEach
    void aWholeRunToStandOn() throws Exception {
        done(FIRST, "1", Occasions.fullFirstArticle("new part"));
    }

    private static OccasionSaid said(Purpose purpose, String baseline, Integer... affected) {
        return new OccasionSaid(purpose, baseline, "new tool", Optional.empty(), List.of(affected), "", List.of());
    }

    private List<Integer> partial(Plan plan, Integer... affected) {
        return shop.beginnings()
                .occasion(plan, said(Purpose.FIRST_ARTICLE_PARTIAL, "T-1-A-1", affected))
                .affected();
    }

    @Test
    void aPartialFirstArticleThatNamesNothingTakesWhatTheIssueAffects() {
        assertEquals(List.of(2), partial(plan("A", issued("1", ""), issued("2", "affected = [\"Look 2\"]"))));
    }

    @Test
    void overSeveralIssuesItTakesWhatEachOfThemAffects() {
        Plan third =
                plan("A", issued("1", ""), issued("2", "affected = [\"Look 3\"]"), issued("3", "affected = [\"2\"]"));
        assertEquals(List.of(2, 3), partial(third));
    }

    @Test
    void whereAnIssueBetweenDoesNotSayItTakesEveryCharacteristic() {
        Plan third = plan("A", issued("1", ""), issued("2", ""), issued("3", "affected = [\"Look 2\"]"));
        assertEquals(List.of(1, 2, 3, 4), partial(third));
    }

    @Test
    void whereAnIssueAffectsWhatThePlanHasNoMoreItTakesEveryCharacteristic() {
        Plan second = plan("A", issued("1", ""), issued("2", "affected = [\"Look 2\", \"Old bore\"]"));
        assertEquals(List.of(1, 2, 3, 4), partial(second));
    }

    @Test
    void underTheSameIssueOrWhereNoneIsAffectedItTakesEveryCharacteristic() {
        assertEquals(List.of(1, 2, 3, 4), partial(FIRST));
        assertEquals(List.of(1, 2, 3, 4), partial(plan("A", issued("1", ""), issued("2", "affected = []"))));
    }

    /** Issue 1 of another revision is another issue 1, unless all that is said of it is the same. */
    @Test
    void theIssueOfAnotherRevisionIsNotTakenForOneOfThisRevision() {
        String second = issued("2", "affected = [\"Look 2\"]");
        assertEquals(List.of(2), partial(plan("B", issued("1", ""), second)));
        assertEquals(List.of(1, 2, 3, 4), partial(plan("B", issued("1", "").replace("Why 1", "New revision"), second)));
    }

    @Test
    void whatIsNamedMustNotLeaveOutWhatAnIssueBetweenAffects() {
        Plan third = plan(
                "A", issued("1", ""), issued("2", "affected = [\"Look 3\"]"), issued("3", "affected = [\"Look 2\"]"));
        Refused refused = assertThrows(Refused.class, () -> partial(third, 2));
        assertEquals(
                "Issues of the plan since run T-1-A-1 affect 3 too: name these as well, or name none and all that is "
                        + "affected is taken",
                Words.of(Locale.ENGLISH).say(refused.why()));
        assertEquals(List.of(2, 3, 4), partial(third, 2, 3, 4));
    }

    @Test
    void whatAnIssueOfAnotherRevisionAffectsIsNotLeftOutEither() {
        Plan other = plan("B", issued("7", ""), issued("2", "affected = [\"Look 2\"]"));
        assertThrows(Refused.class, () -> partial(other, 3));
        assertEquals(List.of(2, 3), partial(other, 2, 3));
    }

    /** Where no issue says it, a person does. */
    @Test
    void underTheSameIssueAPersonMayNameWhatANewToolAffects() {
        assertEquals(List.of(3), partial(FIRST, 3));
    }

    private List<Integer> again(Plan plan, String run, Integer... named) throws Exception {
        Occasion occasion = shop.beginnings().occasion(plan, said(Purpose.MEASURED_AGAIN, run, named));
        return begun(plan, "9", occasion).state().sheet().lines().stream()
                .filter(Line::asked)
                .map(line -> line.step().number())
                .toList();
    }

    /** Of a check that was not made there is nothing to make again. */
    @Test
    void whatIsMeasuredAgainIsWhatTheEarlierRunHad() throws Exception {
        done(FIRST, "2", Occasions.inProcess(2));
        assertEquals(List.of(1, 2, 3, 4), again(FIRST, "T-1-A-1"));
        assertEquals(List.of(1, 4), again(FIRST, "T-1-A-2"));
        assertEquals(List.of(4), again(FIRST, "T-1-A-2", 4));
    }

    /** A number may be that of another check there. */
    @Test
    void underAnotherTextOfThePlanEverythingIsMeasuredAgain() throws Exception {
        done(FIRST, "2", Occasions.inProcess(2));
        assertEquals(List.of(1, 2, 3, 4), again(plan("A", issued("1", ""), issued("2", "")), "T-1-A-2"));
    }

    @Test
    void whatIsMeasuredAgainOfAPieceInProcessDoesNotMakeThePartConform() throws Exception {
        done(FIRST, "2", Occasions.inProcess(2));
        Occasion occasion = shop.beginnings().occasion(FIRST, said(Purpose.MEASURED_AGAIN, "T-1-A-2"));
        assertEquals(
                Outcome.ASKED_CONFORMS,
                done(FIRST, "2", occasion).state().sheet().outcome());
    }
}
