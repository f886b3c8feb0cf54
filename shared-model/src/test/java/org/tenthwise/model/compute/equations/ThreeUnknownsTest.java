package org.tenthwise.model.compute.equations;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import org.junit.jupiter.api.Test;

class ThreeUnknownsTest {

    /** Constructed: x = 1, y = −2, z = 3 put into the left-hand sides by hand. */
    @Test
    void unknownsPutInComeOut() {
        double[][] equations = {{2, 1, -1}, {0, 3, 4}, {5, -2, 1}};
        assertArrayEquals(new double[] {1, -2, 3}, ThreeUnknowns.solve(equations, new double[] {-3, 6, 12}), 1e-12);
    }

    @Test
    void equationsThatSayTheSameTwiceSettleNothing() {
        double[][] equations = {{1, 2, 3}, {2, 4, 6}, {0, 1, 1}};
        assertFalse(Double.isFinite(ThreeUnknowns.solve(equations, new double[] {1, 2, 3})[0]));
    }
}
