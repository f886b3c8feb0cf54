package org.tenthwise.app.ui.home;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.tenthwise.app.bundle.Scope;
import org.tenthwise.app.device.AskedViewer;
import org.tenthwise.app.handout.Handout;
import org.tenthwise.app.ui.Workshop;
import org.tenthwise.app.ui.form.Field;

/** Of which runs a bundle is made. */
class HandOverViewModelTest {

    @RegisterExtension
    private final Workshop workshop = new Workshop();

    private final List<Scope> scopes = new ArrayList<>();
    private Optional<Path> file = Optional.of(Path.of("b.tenthwise"));
    private HandOverViewModel model;

    @BeforeEach
    void aPartWasBegun() {
        workshop.atTheBore("014", "0.013", "0.015", "0.014", "0.027");
        model = new HandOverViewModel(
                workshop.shop,
                new Handout(
                        List.of(),
                        (run, as) -> Path.of(run),
                        scope -> {
                            scopes.add(scope);
                            return file;
                        },
                        run -> List.of(),
                        AskedViewer.none()),
                workshop.tasks,
                workshop.words,
                workshop,
                Workshop.CLOCK);
        model.load();
    }

    private <T> T choose(int field, int place) {
        @SuppressWarnings("unchecked")
        Field<T> asked = (Field<T>) model.form().fields().get(field);
        T chosen = asked.choice().offeredProperty().get().get(place);
        asked.choice().choose(chosen);
        return chosen;
    }

    private void write() {
        for (int i = 0; i < 5 && workshop.told.isEmpty(); i++) {
            model.form().goOn();
        }
    }

    @Test
    void thePartAndTheDaysThatWereChosenAreTheScope() {
        assertEquals("LG-2207", this.<String>choose(0, 0));
        LocalDate from = choose(1, 3);
        LocalDate to = choose(2, 0);
        write();
        assertEquals(
                List.of(new Scope(Optional.empty(), Optional.of("LG-2207"), Optional.of(from), Optional.of(to))),
                scopes);
        assertEquals(LocalDate.now(Workshop.CLOCK), to);
        assertEquals(to.minusDays(3), from);
        assertTrue(workshop.told.get(0).words().contains("File: b.tenthwise."), workshop.told::toString);
    }

    @Test
    void whereNothingIsChosenThatIsSaidAndNothingWritten() {
        write();
        assertEquals(List.of(), scopes);
        assertTrue(workshop.told.get(0).words().startsWith("Say a part number"), workshop.told::toString);
    }

    @Test
    void whereNoRunIsOfThemThatIsSaid() {
        file = Optional.empty();
        choose(2, 40);
        write();
        assertEquals(1, scopes.size());
        assertTrue(workshop.told.get(0).words().endsWith("Nothing was written."), workshop.told::toString);
    }
}
