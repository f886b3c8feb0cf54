package org.tenthwise.app.ui.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.logging.Logger;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;
import org.tenthwise.app.ui.Workshop;
import org.tenthwise.app.ui.form.Field;
import org.tenthwise.app.ui.form.FormViewModel;
import org.tenthwise.checklists.catalogue.PlanDesk;
import org.tenthwise.checklists.editing.PlanInHand;
import org.tenthwise.checklists.editing.PlanText;
import org.tenthwise.model.words.Words;

/** An invented list of forty characteristics made into a plan by touch, its taps counted. */
class ListToPlanTest {

    private static final Logger LOG = Logger.getLogger(ListToPlanTest.class.getName());

    private static final String NAME = "T-40-A";

    @RegisterExtension
    private final Workshop workshop = new Workshop();

    @TempDir
    private Path folder;

    private int taps;
    private int signs;

    private static String list() {
        List<String> requirements = List.of(
                "Ø30 H7",
                "Ø25 g6",
                "40 ±0.1",
                "R6 ±0.2",
                "↧ 12 ±0.2",
                "45° ±1°",
                "Ø18 H7",
                "12 h9",
                "REMOVE ALL BURRS",
                "8 P9");
        StringBuilder list = new StringBuilder("No.,Requirement,Zone\n");
        for (int number = 1; number <= 40; number++) {
            list.append("%d,%s,B%d%n".formatted(number, requirements.get(number % 10), number % 8 + 1));
        }
        return list.toString();
    }

    private void type(FormViewModel form, String key, String text) {
        form.goTo(field(form, key));
        field(form, key).type();
        form.character(text);
        signs += text.length();
        taps += 1 + text.length();
    }

    private static Field<?> field(FormViewModel form, String key) {
        return form.fields().stream()
                .filter(field -> field.id().equals("plan-" + key))
                .findFirst()
                .orElseThrow();
    }

    private <T> void choose(Field<T> field, String reads) {
        field.choice()
                .choose(field.choice().offeredProperty().get().stream()
                        .filter(offered -> field.reads(offered).equals(reads))
                        .findFirst()
                        .orElseThrow(() -> new AssertionError(reads + " is not offered: "
                                + field.choice().offeredProperty().get())));
        taps++;
    }

    /** What a person answers who has the drawing; typed where nothing is offered yet, and never a second time. */
    private void answer(FormViewModel form, Field<?> field) {
        String answer =
                switch (field.id()) {
                    case "plan-operation" -> "10";
                    case "plan-places" -> "0°; 90°";
                    case "plan-method" -> "As the sheet of the gauge says.";
                    case "plan-master" -> "30.000";
                    default -> throw new AssertionError("Nothing to say to " + field.id());
                };
        boolean offered = field.choice().offeredProperty().get().contains(answer);
        if (offered) {
            choose(field, answer);
        } else {
            form.goTo(field);
            field.type();
            form.character(answer);
            signs += answer.length();
            taps += 1 + answer.length();
        }
    }

    @Test
    void fortyCharacteristicsBecomeAPlanInWhichNothingIsOpen() throws IOException {
        PlanDesk desk = new PlanDesk(folder);
        Files.writeString(folder.resolve("list.csv"), list());
        FormViewModel head = new NewPlanViewModel(
                        Optional.of("list.csv"), desk, workshop.tasks, Words.ENGLISH, workshop, Workshop.CLOCK)
                .form();
        type(head, "part", "T-40");
        type(head, "revision", "A");
        type(head, "name", "Test bush");
        type(head, "material", "steel C45");
        type(head, "drawing", "T-40");
        head.goTo(field(head, "unit"));
        choose(field(head, "unit"), "mm");
        head.goOn();
        taps++;
        assertEquals("drafted " + NAME, workshop.asked.get(workshop.asked.size() - 1));
        PlanInHand plan = new PlanInHand(desk.open(NAME).orElseThrow());
        assertEquals(40, plan.steps().size() + plan.text().list("note").size(), "every line is there");
        while (!plan.openSteps().isEmpty()) {
            int place = plan.openSteps().get(0);
            int before = plan.open().size();
            FormViewModel form =
                    new PlanStepViewModel(NAME, plan, place, Words.ENGLISH, workshop, Workshop.CLOCK).form();
            form.fields().stream().filter(Field::required).forEach(field -> answer(form, field));
            form.goOn();
            taps++;
            assertTrue(plan.open().size() < before, () -> plan.open().toString());
        }
        assertTrue(plan.plan().isPresent(), () -> plan.open().toString());
        LOG.info(() -> "Forty characteristics from a list to a plan: %d taps, %d of them letters and figures"
                .formatted(taps, signs));
        assertTrue(taps <= 300, taps + " taps");
    }

    /** The reason stands above the form, the words of the drawing in it; kept, the step is a check like any other. */
    @Test
    void aRefusedLineIsAskedForWithItsReason() {
        PlanInHand plan =
                new PlanInHand(PlanText.of("format = 1\npart = \"T-1\"\nrevision = \"A\"\nissue = \"1\"\nname = \"T\"\n"
                                + "material = \"steel\"\ndrawing = \"T-1\"\nunit = \"mm\"\n\n"
                                + "[[operation]]\nnumber = 10\n"
                                + "name = \"Turn\"\n\n[[step]]\nnumber = 1\nballoon = \"1\"\n"
                                + "requirement = \"30 ±0.1\"\nrefused = \"line 2 of the list: so\"\n")
                        .orElseThrow());
        FormViewModel form = new PlanStepViewModel(NAME, plan, 0, Words.ENGLISH, workshop, Workshop.CLOCK).form();
        assertEquals("line 2 of the list: so", form.aboutProperty().get());
        assertTrue(field(form, "requirement").required());
        form.fields().stream()
                .filter(Field::required)
                .filter(field -> !field.id().equals("plan-requirement"))
                .forEach(field -> answer(form, field));
        form.goOn();
        assertEquals(Optional.empty(), plan.steps().get(0).value("refused"));
        assertEquals(Optional.of("30 ±0.1"), plan.steps().get(0).says("requirement"));
    }
}
