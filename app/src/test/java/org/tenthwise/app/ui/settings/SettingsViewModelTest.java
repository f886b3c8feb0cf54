package org.tenthwise.app.ui.settings;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;
import org.tenthwise.app.backup.BackupBook;
import org.tenthwise.app.session.RunSession;
import org.tenthwise.app.session.ShopNames;
import org.tenthwise.app.text.MadeUpLanguage;
import org.tenthwise.app.text.Spoken;
import org.tenthwise.app.ui.Workshop;
import org.tenthwise.app.ui.form.FormViewModel;
import org.tenthwise.app.ui.keys.ChoiceViewModel;
import org.tenthwise.app.ui.settings.SettingsViewModel.SettingsTopic;
import org.tenthwise.app.ui.settings.SettingsViewModel.Way;
import org.tenthwise.app.ui.theme.Look;
import org.tenthwise.app.ui.theme.LookStore;
import org.tenthwise.checklists.catalogue.DemoPart;
import org.tenthwise.model.plan.Register;
import org.tenthwise.model.words.Languages;
import org.tenthwise.model.words.Words;

class SettingsViewModelTest {

    @RegisterExtension
    private final Workshop workshop = new Workshop();

    @TempDir
    private Path folder;

    private final LookStore store = LookStore.inMemory(LookStore.Kept.PLAIN);
    private final Spoken spoken = new Spoken(
            new Languages(
                    List.of(Locale.ENGLISH, MadeUpLanguage.LOCALE),
                    Locale.ENGLISH,
                    language -> language.equals(Locale.ENGLISH) ? Words.ENGLISH : MadeUpLanguage.words()),
            Locale.ENGLISH);
    private SettingsViewModel model;

    @BeforeEach
    void open() {
        BackupBook book = new BackupBook(folder.resolve(BackupBook.FILE));
        model = new SettingsViewModel(
                new Look(store),
                spoken,
                workshop.shop,
                Optional.of(new CopiesViewModel(
                        book,
                        () -> List.of("Copies go to " + book.settings().folder()),
                        workshop.tasks,
                        Words.ENGLISH,
                        workshop)),
                workshop.tasks,
                workshop);
        model.load();
    }

    @Test
    void eachLanguageIsCalledAsItCallsItself() {
        assertEquals(
                List.of("English", MadeUpLanguage.words().say("language.name")),
                model.language().offeredProperty().get().stream()
                        .map(model::name)
                        .toList());
        assertEquals("English", model.value(SettingsTopic.LANGUAGE).getValue());
    }

    @Test
    void aLanguageThatIsChosenIsKeptAndSpokenAtOnce() {
        model.language().choose(MadeUpLanguage.LOCALE);
        assertEquals(Optional.of("art"), store.kept().language());
        assertEquals(List.of("speak art"), workshop.asked);
    }

    @Test
    void theLanguageInUseChangesNothing() {
        model.language().choose(Locale.ENGLISH);
        assertEquals(Optional.empty(), store.kept().language());
        assertEquals(List.of(), workshop.asked);
    }

    @Test
    void theDisplayIsSaidInAFewWords() {
        assertEquals("Day", model.value(SettingsTopic.DISPLAY).getValue());
        model.of(Way.NIGHT).set(true);
        model.of(Way.GLOVES).set(true);
        assertEquals("Night, Gloves", model.value(SettingsTopic.DISPLAY).getValue());
        assertEquals(new LookStore.Kept(true, false, true), store.kept());
    }

    @Test
    void aFolderForSecondCopiesIsKeptAndGivenUpAgain() {
        assertEquals("None", model.value(SettingsTopic.COPIES).getValue());
        workshop.chosenFolder = Optional.of(folder);
        CopiesViewModel copies = model.copies().orElseThrow();
        copies.choose();
        assertEquals(folder.toString(), model.value(SettingsTopic.COPIES).getValue());
        assertEquals(
                Optional.of(folder),
                new BackupBook(folder.resolve(BackupBook.FILE)).settings().folder());
        assertEquals(
                List.of("Copies go to " + Optional.of(folder)),
                copies.saidProperty().get());
        copies.none();
        assertEquals("None", model.value(SettingsTopic.COPIES).getValue());
    }

    @Test
    void whatIsThrownAwayHasNoCopies() {
        assertEquals(
                List.of(SettingsTopic.LANGUAGE, SettingsTopic.DISPLAY, SettingsTopic.MACHINES, SettingsTopic.PEOPLE),
                new SettingsViewModel(
                                new Look(store), spoken, workshop.shop, Optional.empty(), workshop.tasks, workshop)
                        .topics());
    }

    @Test
    void aMachineThatIsNamedIsListedUntilItIsTakenOff() {
        NameViewModel naming =
                new NameViewModel(ShopNames.Kind.MACHINE, workshop.shop, workshop.tasks, Words.ENGLISH, workshop);
        "Lathe 7".chars().forEach(letter -> naming.form().character(Character.toString(letter)));
        naming.form().goOn();
        assertEquals(List.of("back"), workshop.asked);
        model.load();
        assertEquals("Lathe 7", model.value(SettingsTopic.MACHINES).getValue());
        ShopNames.Name machine = model.machines().namesProperty().get().get(0);
        assertEquals(
                "X offset not entered yet: asked at the first cut",
                model.machines().line(machine));
        model.machines().remove(machine);
        assertEquals("", model.value(SettingsTopic.MACHINES).getValue());
    }

    @Test
    void howARegisterCountsIsToldByAPersonAndStandsInTheLedger() {
        RunSession session = workshop.begin(DemoPart.SCREW_CARRIER, "014");
        ShopNames.Name lathe = workshop.shop.names().all(ShopNames.Kind.MACHINE).get(0);
        RegisterViewModel telling =
                new RegisterViewModel(lathe, workshop.shop, workshop.tasks, Words.ENGLISH, workshop);
        telling.load();
        for (int i = 0; i < 2; i++) {
            press(telling.form(), 0);
        }
        press(telling.form(), 0);
        assertEquals(List.of("back"), workshop.asked);
        model.load();
        assertEquals(
                "X offset on diameter. Aim: the middle of the limits",
                model.machines().line(model.machines().namesProperty().get().get(0)));
        assertEquals(
                Optional.of(Register.DIAMETER),
                workshop.begin(DemoPart.SCREW_CARRIER, "015")
                        .state()
                        .sheet()
                        .run()
                        .register());
        assertEquals(
                Optional.empty(),
                workshop.shop.open(session.id()).state().sheet().run().register());
        assertTrue(workshop.isWhole());
    }

    private static void press(FormViewModel form, int offered) {
        ChoiceViewModel<?> choice = form.inHandProperty().get().choice();
        chosen(choice, offered);
        form.goOn();
    }

    private static <T> void chosen(ChoiceViewModel<T> choice, int offered) {
        choice.choose(choice.offeredProperty().get().get(offered));
    }
}
