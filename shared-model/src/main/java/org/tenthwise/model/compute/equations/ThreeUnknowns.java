package org.tenthwise.model.compute.equations;

/**
 * Three linear equations in three unknowns.
 *
 * <p>Cramer's rule: each unknown is the determinant with its column replaced by the right-hand side, over the
 * determinant of the equations.
 *
 * <p>Source: any textbook of linear algebra. Three unknowns are few enough for it to be as good as elimination, and it
 * can be read.
 */
public final class ThreeUnknowns {

    private ThreeUnknowns() {}

    /**
     * @param equations three rows of three factors
     * @param right three right-hand sides
     * @return the three unknowns; not finite where the equations do not settle them
     */
    public static double[] solve(double[][] equations, double[] right) {
        double whole = determinant(equations);
        double[] unknowns = new double[3];
        for (int column = 0; column < 3; column++) {
            unknowns[column] = determinant(replaced(equations, column, right)) / whole;
        }
        return unknowns;
    }

    private static double[][] replaced(double[][] equations, int column, double[] right) {
        double[][] copy = new double[3][];
        for (int row = 0; row < 3; row++) {
            copy[row] = equations[row].clone();
            copy[row][column] = right[row];
        }
        return copy;
    }

    private static double determinant(double[][] m) {
        return m[0][0] * (m[1][1] * m[2][2] - m[1][2] * m[2][1])
                - m[0][1] * (m[1][0] * m[2][2] - m[1][2] * m[2][0])
                + m[0][2] * (m[1][0] * m[2][1] - m[1][1] * m[2][0]);
    }
}
