package org.tenthwise.app.ui;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;
import org.tenthwise.app.backup.BackupBook;
import org.tenthwise.app.session.ShopNames;
import org.tenthwise.app.ui.form.FormView;
import org.tenthwise.app.ui.settings.CopiesViewModel;
import org.tenthwise.app.ui.settings.FolderView;
import org.tenthwise.app.ui.settings.FolderViewModel;
import org.tenthwise.app.ui.settings.RegisterViewModel;
import org.tenthwise.app.ui.settings.SettingsView;
import org.tenthwise.app.ui.settings.SettingsViewModel;
import org.tenthwise.app.ui.settings.SettingsViewModel.SettingsTopic;
import org.tenthwise.app.ui.shell.Screen;
import org.tenthwise.model.plan.Aim;
import org.tenthwise.model.plan.Register;
import org.tenthwise.model.run.ShopEvent;

/** The settings, a topic each, on every display. */
class SettingsScreenTest extends ScreenTest {

    @RegisterExtension
    private final Workshop workshop = new Workshop(words);

    @TempDir
    private Path folder;

    private final List<String> said = List.of(
            words.say("about.backups.none"),
            words.say("about.backups.beside", "/home/shop/tenthwise.db-backups", 10),
            words.say("about.backups.no-folder"));

    private Screen settings(Window window, SettingsTopic topic) {
        CopiesViewModel copies = new CopiesViewModel(
                new BackupBook(folder.resolve(BackupBook.FILE)), () -> said, workshop.tasks, words, workshop);
        SettingsViewModel model = new SettingsViewModel(
                window.look(), window.spoken(), workshop.shop, Optional.of(copies), workshop.tasks, workshop);
        model.take(topic);
        return new SettingsView(model, words, workshop);
    }

    @Test
    void theLanguageHoldsEverywhere() {
        seen("settings", "language", window -> settings(window, SettingsTopic.LANGUAGE));
    }

    @Test
    void theDisplayHoldsEverywhere() {
        seen("settings", "display", window -> settings(window, SettingsTopic.DISPLAY));
    }

    @Test
    void secondCopiesHoldEverywhere() {
        seen("settings", "copies", window -> settings(window, SettingsTopic.COPIES));
    }

    @Test
    void machinesAndPeopleHoldEverywhere() {
        workshop.setUp("014");
        workshop.shop.names().add(ShopNames.Kind.MACHINE, "Boring mill with a long name 2");
        workshop.shop.names().add(ShopNames.Kind.PERSON, "Inspector 1");
        Workshop.must(() -> {
            workshop.shop.tellMachine(
                    new ShopEvent.MachineKnown("Lathe 4", Register.DIAMETER, Aim.ByLimits.THIRD), "Setter 2");
            return true;
        });
        seen("settings", "machines", window -> settings(window, SettingsTopic.MACHINES));
        seen("settings", "people", window -> settings(window, SettingsTopic.PEOPLE));
    }

    @Test
    void theRegisterOfAMachineHoldsEverywhere() {
        workshop.setUp("014");
        seen("settings", "register", window -> {
            RegisterViewModel model = new RegisterViewModel(
                    new ShopNames.Name("Lathe 4", true, Optional.empty()),
                    workshop.shop,
                    workshop.tasks,
                    words,
                    workshop);
            return FormView.titled("Lathe 4", model.form(), words, workshop::back, model::load);
        });
    }

    @Test
    void aFolderIsLookedForEverywhere() throws IOException {
        for (String name : List.of("1-stick", "2-share", ".hidden")) {
            Files.createDirectories(Path.of("target", "folders", name));
        }
        seen(
                "settings",
                "folder",
                window -> new FolderView(
                        new FolderViewModel(
                                Path.of("target", "folders"), workshop.tasks, words, workshop, chosen -> {}),
                        words,
                        workshop));
    }
}
