package org.tenthwise.checklists.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.tenthwise.checklists.editing.PlanInHand;
import org.tenthwise.checklists.editing.PlanText;
import org.tenthwise.checklists.editing.TableText;
import org.tenthwise.checklists.editing.Template;
import org.tenthwise.checklists.editing.TomlValue;
import org.tenthwise.model.words.Refused;

class TemplateShelfTest {

    private static final String HEAD =
            """
            format = 1
            part = "T-9"
            revision = "A"
            issue = "1"
            name = "Test bush"
            material = "steel C45"
            drawing = "T-9 sheet 1"
            unit = "mm"

            [[operation]]
            number = 10
            name = "First"
            """;

    @TempDir
    private Path folder;

    private static PlanInHand carrier() {
        return new PlanInHand(PlanText.of(DemoPart.SCREW_CARRIER.planText()).orElseThrow());
    }

    private static Template shipped(int place) {
        return TemplateShelf.shipped(Locale.ENGLISH).get(place);
    }

    @ParameterizedTest
    @ValueSource(strings = {"en", "de"})
    void whatIsLeftOpenIsOnlyWhatIsMissing(String language) {
        for (Template template : TemplateShelf.shipped(Locale.forLanguageTag(language))) {
            PlanInHand plan = new PlanInHand(PlanText.of(HEAD).orElseThrow());
            plan.add(0, template, Optional.of("10"));
            assertFalse(plan.open().isEmpty() && template.steps().stream().noneMatch(TemplateShelfTest::isWhole));
            plan.open()
                    .forEach(point -> assertTrue(
                            point.missing().isPresent() && point.step().isPresent(), template.name() + ": " + point));
        }
    }

    private static boolean isWhole(TableText step) {
        return step.value("what").isPresent();
    }

    @Test
    void bothLanguagesAskTheSame() {
        List<Template> english = TemplateShelf.shipped(Locale.ENGLISH);
        List<Template> german = TemplateShelf.shipped(Locale.GERMANY);
        assertEquals(english.size(), german.size());
        for (int i = 0; i < english.size(); i++) {
            assertFalse(english.get(i).name().equals(german.get(i).name()));
            assertEquals(skeleton(english.get(i)), skeleton(german.get(i)));
        }
    }

    private static List<String> skeleton(Template template) {
        return template.steps().stream()
                .map(step -> step.keys() + " " + step.value("kind") + step.value("cut_again") + step.value("hold")
                        + step.value("gauge_kind") + step.value("class") + step.value("bore_step"))
                .toList();
    }

    @Test
    void inAPlanTheStepsOfATemplateNameEachOtherAndNoStranger() {
        PlanInHand plan = carrier();
        String before = plan.text().text();
        plan.add(3, shipped(0), Optional.of("20"));
        assertEquals(Optional.of("5"), plan.steps().get(5).value("bore_step"));
        assertEquals(Optional.of("[5, 6]"), plan.steps().get(5).value("hold"));
        assertEquals(Optional.of("20"), plan.steps().get(5).value("operation"));
        assertEquals(Optional.empty(), plan.steps().get(5).value("balloon"), "it has none on the drawing yet");
        assertEquals(Optional.of("16"), plan.steps().get(16).value("bore_step"), "the plug of the plan keeps its bore");
        plan.undo();
        assertEquals(before, plan.text().text());
    }

    @Test
    void atTheEndToo() {
        PlanInHand plan = carrier();
        int end = plan.steps().size();
        plan.add(end, shipped(0), Optional.of("60"));
        assertEquals(
                Optional.of(String.valueOf(end + 2)), plan.steps().get(end + 2).value("bore_step"));
    }

    @Test
    void aTemplateThatNamesAStepItHasNotLeavesThatOpen() {
        Template wrong = Template.of(
                        "[[step]]\nnumber = 4\nkind = \"plug-fit\"\nbore_step = 2\nhold = [2, 4]\n", "plug")
                .orElseThrow();
        PlanInHand plan = carrier();
        plan.add(15, wrong, Optional.of("20"));
        assertEquals(Optional.empty(), plan.steps().get(15).value("bore_step"));
        assertEquals(Optional.of("[16]"), plan.steps().get(15).value("hold"));
    }

    @Test
    void whatIsKeptHasNoFigureOfTheOldDrawing() throws IOException {
        TemplateShelf shelf = new TemplateShelf(folder);
        List<TableText> boreAndPlug = carrier().steps().subList(12, 14);
        shelf.keep(Template.kept("Our bore", boreAndPlug));
        List<Template> all = shelf.all(Locale.ENGLISH);
        Template ours = all.get(all.size() - 1);
        assertEquals("Our bore", ours.name());
        assertEquals(2, ours.steps().size());
        for (String key : List.of("nominal", "zone", "master", "at", "name", "drawing", "places", "method")) {
            assertEquals(Optional.empty(), ours.steps().get(0).value(key), key);
        }
        assertEquals(Optional.of("1"), ours.steps().get(1).value("bore_step"));
        assertEquals(Optional.of("[1, 2]"), ours.steps().get(1).value("hold"));
        assertEquals(boreAndPlug.get(0).value("caution"), ours.steps().get(0).value("caution"));
        assertEquals(Optional.empty(), ours.steps().get(1).value("clearance_least"));
        assertThrows(Refused.class, () -> shelf.keep(Template.kept("Our bore", boreAndPlug)));
    }

    @Test
    void aFigureWrittenIntoATemplateOfTheShopDoesNotCountForAnotherPart() throws IOException {
        Files.writeString(
                folder.resolve("ours.template.toml"),
                """
                name = "Ours"

                [[step]]
                number = 1
                kind = "bore"
                name = "Bore of ours"
                upper = 30.02
                lower = 30.00
                gauge = "BG-2"
                gauge_kind = "bore-gauge"
                something_new = 12.5
                readings_each = 2
                at = [10, 30]
                balloon = "7"
                """);
        List<Template> all = new TemplateShelf(folder).all(Locale.ENGLISH);
        assertEquals(
                List.of("number", "kind", "name", "gauge_kind", "readings_each"),
                all.get(all.size() - 1).steps().get(0).keys());
    }

    /** Helical teeth must not come out of a template as straight ones. */
    @Test
    void teethWhoseHelixIsLeftOutAreAskedForAnew() {
        TableText teeth = TableText.ofList("step")
                .with("number", "1")
                .with("kind", TomlValue.text("worked"))
                .with("by", TomlValue.text("over-pins"))
                .with("helix", "15");
        assertEquals(
                List.of("number", "kind"),
                Template.kept("Teeth", List.of(teeth)).steps().get(0).keys());
        assertEquals(
                List.of("number", "kind", "by"),
                Template.kept("Teeth", List.of(teeth.without("helix")))
                        .steps()
                        .get(0)
                        .keys());
    }

    @Test
    void aTemplateIsNoPlanAndWhatIsNoTemplateIsPassedOver() throws IOException {
        TemplateShelf shelf = new TemplateShelf(folder);
        shelf.keep(shipped(1));
        Files.writeString(folder.resolve("broken.template.toml"), "[[step");
        Files.writeString(folder.resolve("empty.template.toml"), "name = \"Nothing\"");
        assertEquals(
                TemplateShelf.shipped(Locale.ENGLISH).size() + 1,
                shelf.all(Locale.ENGLISH).size());
        assertTrue(new PlanFolder(folder).read().plans().isEmpty());
        assertTrue(new PlanFolder(folder).read().refused().isEmpty());
        assertEquals(List.of(), new PlanDesk(folder).names());
    }

    @Test
    void everyStepOfThePlansThatComeAlongCanBeKept() {
        for (DemoPart part : DemoPart.values()) {
            List<TableText> steps = new PlanInHand(PlanText.of(part.planText()).orElseThrow()).steps();
            for (int place = 0; place < steps.size(); place++) {
                Template kept = Template.of(
                                Template.kept("T", steps.subList(place, place + 1))
                                        .text(),
                                "t")
                        .orElseThrow();
                TableText step = kept.steps().get(0);
                assertEquals(steps.get(place).value("kind"), step.value("kind"));
                assertEquals(Optional.empty(), step.value("upper"));
                assertEquals(Optional.empty(), step.value("balloon"));
            }
        }
    }
}
