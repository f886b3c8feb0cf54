package org.tenthwise.app;

import java.lang.reflect.Field;

/**
 * The first call of the JDK's old door to memory outside the heap. JavaFX draws curves through it, and from Java 24 on
 * the JDK writes a warning to standard error at the first such call and at no other.
 */
final class FirstMemoryCall {

    private FirstMemoryCall() {}

    static void make() {
        try {
            Class<?> door = Class.forName("sun.misc.Unsafe");
            Field one = door.getDeclaredField("theUnsafe");
            one.setAccessible(true);
            Object open = one.get(null);
            Object address = door.getMethod("allocateMemory", long.class).invoke(open, 8L);
            door.getMethod("freeMemory", long.class).invoke(open, address);
        } catch (ReflectiveOperationException | RuntimeException e) {
            return; // a JDK without that door has nothing to warn of
        }
    }
}
