package org.tenthwise.app.ui.run;

import org.junit.jupiter.api.BeforeEach;
import org.tenthwise.app.InventedPlans;

/** A wall, worked out of an outside at two places, a bore and the run-out of the bore; nothing is taken at it. */
abstract class WallAtHand extends RunAtHand {

    static final String WALL =
            """
            [[step]]
            number = 1
            operation = 10
            kind = "diameter"
            name = "Outside 50"
            method = "Two places."
            lower = 49.950
            upper = 50.050
            places = ["near", "far"]
            gauge_kind = "micrometer"
            gauge = "MC-1"

            [[step]]
            number = 2
            operation = 10
            kind = "bore"
            name = "Bore 40"
            method = "One place."
            lower = 40.000
            upper = 40.050
            places = ["middle"]
            gauge_kind = "inside-micrometer"
            gauge = "IM-1"

            [[step]]
            number = 3
            operation = 10
            kind = "run-out"
            name = "Bore to the outside"
            method = "Outside turned true, indicator in the bore."
            limit = 0.10
            gauge_kind = "dial-indicator"
            gauge = "IN-1"

            [[step]]
            number = 4
            operation = 10
            kind = "calculated"
            name = "Wall of the sleeve"
            drawing = "5 ±0.06"
            of = "(od - id) / 2 + e"
            names = { od = 1, id = 2, e = { step = 3, value = "eccentricity" } }
            lower = 4.94
            upper = 5.06
            """;

    @BeforeEach
    void atTheWall() throws Exception {
        beginARunOf(InventedPlans.inMillimetres(WALL));
    }

    void read(String bore) throws Exception {
        run.session.goTo(1);
        run.enter("50.000", "50.020");
        run.session.goTo(2);
        run.enter(bore);
        run.session.goTo(3);
        run.session.turn().sweep(true);
        run.enter("0.040", "-0.020");
        run.session.goTo(4);
    }
}
