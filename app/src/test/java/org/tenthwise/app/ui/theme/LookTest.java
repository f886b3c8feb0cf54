package org.tenthwise.app.ui.theme;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.tenthwise.app.ui.theme.LookStore.Kept;

class LookTest {

    private final LookStore store = LookStore.inMemory(Kept.PLAIN);

    @Test
    void aChangedSettingIsKeptAtOnceWithTheOthers() {
        Look look = new Look(store);
        look.nightProperty().set(true);
        look.glovesProperty().set(true);
        assertEquals(new Kept(true, false, true), store.kept());
    }

    @Test
    void whatWasKeptIsThereAgain() {
        new Look(store).glovesProperty().set(true);
        assertTrue(new Look(store).glovesProperty().get());
    }

    @Test
    void largeTextIsHalfAsLargeAgain() {
        Look look = new Look(store);
        assertEquals(1, look.textScale());
        look.largeTextProperty().set(true);
        assertEquals(1.5, look.textScale());
    }
}
