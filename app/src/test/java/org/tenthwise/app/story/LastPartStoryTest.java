package org.tenthwise.app.story;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.tenthwise.app.InventedPlans;
import org.tenthwise.app.session.RunSession;
import org.tenthwise.model.plan.Aim;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.plan.Register;
import org.tenthwise.model.run.Disposition;
import org.tenthwise.model.run.StepEvent.PassBegun.Why;

/** What is told of the part before: all of it line by line, and its size in a line for the step. */
class LastPartStoryTest extends StoryOfABore {

    private void partBefore(Plan plan, String machine, String... figures) throws Exception {
        RunSession before = begun(plan, "013", machine, "Setter 3");
        setGauge(before);
        enter(before, figures);
        later(60);
        session = begun(PLAN, "015", "Setter 1");
        session.goTo(BORE);
    }

    @Test
    void everyLineOfThePartBeforeHasItsSerialInFront() throws Exception {
        partBefore(PLAN, "Lathe 4", "0.010", "0.012");
        assertEquals(
                List.of(
                        "013 · 20.012: Pass. 0.009 mm inside the upper limit. | 07:35 | Setter 3",
                        "013 · 0°: 20.010, read 0.010 (BG-1) | 07:34 | Setter 3",
                        "013 · 90°: 20.012, read 0.012 (BG-1) | 07:35 | Setter 3"),
                told("Last part, serial 013"));
        assertFalse(headings().contains("This part, serial 015"), "nothing is read of this one");
    }

    private String brief() {
        return StepStory.lastPart(session.state(), WORDS).orElse("none");
    }

    @Test
    void inALineItIsItsSizeAloneWhereItPassedAsThisOneWould() throws Exception {
        partBefore(PLAN, "Lathe 4", "0.010", "0.012");
        assertEquals("Last part, serial 013: 20.012.", brief());
        session.goTo(LOT);
        assertEquals("Last part, serial 013: passed.", brief());
        session.goTo(3);
        assertEquals("none", brief());
    }

    @Test
    void inALineItSaysThatItFailed() throws Exception {
        partBefore(PLAN, "Lathe 4", "0.010", "0.030");
        assertEquals("Last part, serial 013: 20.030, failed.", brief());
    }

    @Test
    void inALineItSaysThatItsLimitsAndItsRevisionWereOthers() throws Exception {
        Plan other = InventedPlans.read(
                TEXT.replace("upper = 20.021", "upper = 20.033").replace("revision = \"A\"", "revision = \"B\""));
        partBefore(other, "Lathe 4", "0.010", "0.030");
        assertEquals("Last part, serial 013: 20.030, rev B, other limits.", brief());
    }

    @Test
    void whatWasOtherwiseThereIsSaid() throws Exception {
        Plan other = InventedPlans.read(TEXT.replace("upper = 20.021", "upper = 20.033")
                .replace("issue = \"1\"", "issue = \"2\"")
                .replace("revision = \"A\"", "revision = \"B\""));
        partBefore(other, "Lathe 7", "0.010", "0.030");
        assertEquals(
                List.of(
                        "013 · 20.030: Pass. 0.003 mm inside the upper limit. | 07:35 | Setter 3",
                        "013 · Of rev B; this one is of rev A. |  | ",
                        "013 · Measured by plan issue 2; this one by issue 1. |  | ",
                        "013 · Other limits: 20.000 to 20.033 mm; here 20.000 to 20.021 mm. |  | ",
                        "013 · Made on Lathe 7. |  | "),
                told("Last part, serial 013").subList(0, 5));
    }

    @Test
    void anotherTextOfTheSameIssueIsSaid() throws Exception {
        partBefore(InventedPlans.read(TEXT.replace("Two ways.", "Two ways, slowly.")), "Lathe 4", "0.010", "0.012");
        assertEquals(
                "013 · Measured by another text of plan issue 1. |  | ",
                told("Last part, serial 013").get(1));
    }

    @Test
    void whatWasStruckOutThereIsToldAsSuch() throws Exception {
        RunSession before = begun(PLAN, "013", "Setter 3");
        setGauge(before);
        enter(before, "0.050");
        before.strikeOut(before.state().pass().readings().get(0).entry().seq(), "Misread");
        enter(before, "0.010", "0.012");
        session = begun(PLAN, "015", "Setter 1");
        session.goTo(BORE);
        assertEquals(
                "013 · 0°: 0.050 (BG-1). Struck out: Misread. | 07:34 | Setter 3 | gone",
                told("Last part, serial 013").get(1));
    }

    @Test
    void theCutsOfThePartBeforeAreToldByThePass() throws Exception {
        RunSession before = begun(PLAN, "013", "Setter 3");
        setGauge(before);
        enter(before, "-0.050", "-0.050");
        before.machine(Register.DIAMETER, Aim.ByLimits.MIDDLE);
        before.again(Why.CUT);
        enter(before, "0.010", "0.012");
        session = begun(PLAN, "015", "Setter 1");
        session.goTo(BORE);
        assertEquals(
                List.of(
                        "013 · Round 1, 0°: 19.950, read −0.050 (BG-1) | 07:34 | Setter 3",
                        "013 · Round 2, 0°: 20.010, read 0.010 (BG-1) | 07:36 | Setter 3"),
                told("Last part, serial 013").stream()
                        .filter(line -> line.contains("0°") && !line.contains("90°"))
                        .toList());
    }

    @Test
    void whatWasSignedForThereIsSaidAndNotCalledAPass() throws Exception {
        RunSession before = begun(PLAN, "013", "Setter 3");
        setGauge(before);
        enter(before, "0.010", "0.030");
        before.dispose(Disposition.USE_AS_IS, "Agreed", "Design office", "117");
        session = begun(PLAN, "015", "Setter 1");
        session.goTo(BORE);
        assertEquals(
                "013 · 20.030: Fail. 0.009 mm above the upper limit. Disposition: use as is, under concession, Design"
                        + " office. | 07:35 | Setter 3",
                told("Last part, serial 013").get(0));
    }
}
