package org.tenthwise.checklists.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tenthwise.checklists.editing.PlanInHand;
import org.tenthwise.checklists.editing.PlanText;
import org.tenthwise.checklists.editing.TomlValue;
import org.tenthwise.model.plan.IssueOfPlan;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.words.Refused;

class PlanDeskTest {

    private static final String NAME = "carrier";
    private static final PlanDesk.Why WHY = new PlanDesk.Why(
            "Bore \"first\"",
            "Setter 1",
            Optional.of("Planner 1"),
            LocalDate.of(2026, 11, 30),
            Optional.of(List.of("13", "14A")));

    @TempDir
    private Path folder;

    private PlanDesk desk;

    @BeforeEach
    void aPlanInForce() throws IOException {
        desk = new PlanDesk(folder);
        Files.writeString(folder.resolve("carrier.toml"), DemoPart.SCREW_CARRIER.planText());
    }

    private String issueInForce() throws IOException {
        return new PlanFolder(folder).read().plans().get(0).issue();
    }

    @Test
    void filesThatMayBePagesOfADrawingAreOffered() throws IOException {
        for (String file : List.of("T-1.pdf", "T-2.PNG", "T-3.jpeg", ".hidden.pdf", "notes.txt")) {
            Files.createFile(folder.resolve(file));
        }
        assertEquals(List.of("T-1.pdf", "T-2.PNG", "T-3.jpeg"), desk.drawings());
        assertEquals(List.of(NAME), desk.names());
    }

    @Test
    void aDraftIsKeptBesideThePlanAndIsNoPlan() throws IOException {
        PlanText draft = desk.open(NAME).orElseThrow().withHead(head -> head.with("name", TomlValue.text("Other")));
        desk.keep(NAME, draft);
        assertEquals(List.of(NAME), desk.drafts());
        assertEquals(draft.text(), desk.open(NAME).orElseThrow().text());
        Catalogue inForce = new PlanFolder(folder).read();
        assertEquals(
                List.of(DemoPart.SCREW_CARRIER.plan().name()),
                inForce.plans().stream().map(Plan::name).toList());
        assertEquals(List.of(), inForce.refused());
        desk.throwAway(NAME);
        assertEquals(List.of(), desk.drafts());
    }

    @Test
    void anIssueSaysWhyAndWhoAndTheTextBeforeIsKept() throws IOException {
        String before = issueInForce();
        PlanInHand inHand = new PlanInHand(desk.open(NAME).orElseThrow());
        inHand.change(plan -> plan.withHead(head -> head.with("name", TomlValue.text("Other"))));
        desk.keep(NAME, inHand.text());
        Plan issued = desk.issue(NAME, inHand.text(), WHY);
        assertEquals(IssueNumber.after(before), issued.issue());
        assertEquals(issued.issue(), issueInForce());
        assertEquals(
                List.of(new IssueOfPlan(
                        issued.issue(),
                        "Bore \"first\"",
                        "Setter 1",
                        Optional.of("Planner 1"),
                        Optional.of(WHY.on()),
                        WHY.affected())),
                issued.issues());
        assertEquals(
                DemoPart.SCREW_CARRIER.planText(),
                Files.readString(folder.resolve("issues").resolve("carrier-issue-" + before + ".toml")));
        assertEquals(List.of(), desk.drafts());
        Plan again = desk.issue(NAME, desk.open(NAME).orElseThrow(), WHY);
        assertEquals(2, again.issues().size());
    }

    @Test
    void aDraftBegunFromAnOlderIssueIsRefusedAndNothingIsWritten() throws IOException {
        PlanText stale = desk.open(NAME).orElseThrow();
        desk.issue(NAME, stale, WHY);
        String inForce = Files.readString(folder.resolve("carrier.toml"));
        Refused refused = assertThrows(Refused.class, () -> desk.issue(NAME, stale, WHY));
        assertTrue(refused.getMessage().contains("has been issued as issue"), refused.getMessage());
        assertEquals(inForce, Files.readString(folder.resolve("carrier.toml")));
    }

    @Test
    void whatHasOpenPointsIsNotIssued() throws IOException {
        PlanText open = desk.open(NAME).orElseThrow().with("step", 0, step -> step.without("name"));
        desk.keep(NAME, open);
        assertThrows(Refused.class, () -> desk.issue(NAME, open, WHY));
        assertEquals(DemoPart.SCREW_CARRIER.planText(), Files.readString(folder.resolve("carrier.toml")));
        assertEquals(List.of(NAME), desk.drafts());
    }

    @Test
    void aNewPlanKeepsTheIssueItWasGiven() throws IOException {
        PlanText made = PlanText.of(DemoPart.WINCH_BARREL_END.planText()).orElseThrow();
        Plan issued = new PlanDesk(folder.resolve("new")).issue("barrel", made, WHY);
        assertEquals(DemoPart.WINCH_BARREL_END.plan().issue(), issued.issue());
        assertEquals(1, issued.issues().size());
    }

    @Test
    void whatIsNotThereOrNoTomlIsNotOpened() throws IOException {
        assertEquals(Optional.empty(), desk.open("nothing"));
        Files.writeString(folder.resolve("odd.toml"), "a = ");
        assertEquals(Optional.empty(), desk.open("odd"));
        Files.write(folder.resolve("bytes.toml"), new byte[] {(byte) 0xD8});
        assertThrows(Refused.class, () -> desk.open("bytes"));
    }

    @ParameterizedTest
    @CsvSource({"1,2", "9,10", "99,100", "A,B", "Z,Z.1", "3b,4", "new,new.1"})
    void issuesAreCountedAsShopsCountThem(String issue, String next) {
        assertEquals(next, IssueNumber.after(issue));
    }
}
