package org.tenthwise.app.ui.theme;

import java.util.Optional;

/** Where the settings a person made are kept between two openings of the client. */
public interface LookStore {

    /**
     * The settings.
     *
     * @param night dark ground
     * @param largeText all text at 150 %
     * @param gloves keypad keys of 112 px
     * @param language the one chosen, by its letters of ISO 639; absent for that of the device
     */
    record Kept(boolean night, boolean largeText, boolean gloves, Optional<String> language) {

        /** In the language of the device. */
        public Kept(boolean night, boolean largeText, boolean gloves) {
            this(night, largeText, gloves, Optional.empty());
        }

        /** Day, text at 100 %, bare hands. */
        public static final Kept PLAIN = new Kept(false, false, false);
    }

    /** What was kept last; {@link Kept#PLAIN} if nothing was. */
    Kept kept();

    void keep(Kept kept);

    /** Forgets with the process: for the demo and for tests. */
    static LookStore inMemory(Kept start) {
        return new LookStore() {
            private Kept held = start;

            @Override
            public Kept kept() {
                return held;
            }

            @Override
            public void keep(Kept kept) {
                held = kept;
            }
        };
    }
}
