package org.tenthwise.app.session;

import java.util.List;
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

        Shop withMachine(String name) {
            return new Shop(with(machines, name), people, begun);
        }

        Shop withPerson(String name) {
            return new Shop(machines, with(people, name), begun);
        }

        Shop without(String name, boolean machine) {
            return machine
                    ? new Shop(without(machines, name), people, begun)
                    : new Shop(machines, without(people, name), begun);
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
