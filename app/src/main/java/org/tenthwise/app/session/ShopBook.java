package org.tenthwise.app.session;

import java.util.List;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;

/**
 * What a shop said of itself before it stands in any run: settings, no evidence. What is evidence is in the ledger.
 * Used from the thread of the ledger.
 */
public interface ShopBook {

    /**
     * What was said.
     *
     * @param machines names to be offered
     * @param people names to be offered
     * @param begun whether the first pages were seen and left
     */
    record Shop(List<String> machines, List<String> people, boolean begun) {

        /** Nothing was said yet. */
        public static final Shop NEW = new Shop(List.of(), List.of(), false);

        /** Of a store that is no shop's: nobody is to be shown how one begins. */
        public static final Shop NOBODYS = new Shop(List.of(), List.of(), true);

        public Shop {
            machines = List.copyOf(machines);
            people = List.copyOf(people);
        }

        Shop with(ShopNames.Kind kind, String name) {
            return changed(kind, names -> with(names, name));
        }

        Shop without(ShopNames.Kind kind, String name) {
            return changed(kind, names -> without(names, name));
        }

        private Shop changed(ShopNames.Kind kind, UnaryOperator<List<String>> change) {
            return switch (kind) {
                case MACHINE -> new Shop(change.apply(machines), people, begun);
                case PERSON -> new Shop(machines, change.apply(people), begun);
            };
        }

        private static List<String> with(List<String> names, String name) {
            return Stream.concat(names.stream(), Stream.of(name)).distinct().toList();
        }

        private static List<String> without(List<String> names, String name) {
            return names.stream().filter(other -> !other.equals(name)).toList();
        }
    }

    /** What was kept last; {@link Shop#NEW} if nothing was. */
    Shop kept();

    void keep(Shop shop);

    /** Forgets with the process: for the demo, commands and tests. */
    static ShopBook inMemory(Shop start) {
        return new ShopBook() {
            private Shop held = start;

            @Override
            public Shop kept() {
                return held;
            }

            @Override
            public void keep(Shop shop) {
                held = shop;
            }
        };
    }
}
