package org.tenthwise.app;

import java.lang.reflect.Field;

/**
 * JavaFX 21 draws curves in memory outside the heap, which it takes in a way that the JDK will drop. From Java 24 on
 * the JDK says so on standard error, once, where an operator can do nothing about it.
 */
final class MemoryWarning {

    private MemoryWarning() {}

    /** Lets the JDK take the warning as given. Needs {@code Add-Opens: jdk.unsupported/sun.misc}, as the jar has it. */
    static void takeAsGiven() {
        try {
            Field given = Class.forName("sun.misc.Unsafe").getDeclaredField("memoryAccessWarned");
            given.setAccessible(true);
            given.setBoolean(null, true);
        } catch (ReflectiveOperationException | RuntimeException e) {
            return; // a JDK that does not warn, or a start from a folder of classes: nothing is lost but silence
        }
    }
}
