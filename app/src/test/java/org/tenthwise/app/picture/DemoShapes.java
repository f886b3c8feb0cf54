package org.tenthwise.app.picture;

import java.math.BigDecimal;
import java.util.List;
import org.tenthwise.model.plan.Mark;
import org.tenthwise.model.plan.Outline;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Unit;

/** Invented parts to draw: a screw carrier in millimetres, a winch-barrel end in inches, a plain pin. */
public final class DemoShapes {

    private DemoShapes() {}

    static Length mm(String figure) {
        return Length.of(new BigDecimal(figure), Unit.MILLIMETRE);
    }

    static Mark mark(String at, String diameter) {
        return new Mark(mm(at), mm(diameter));
    }

    private static Mark inches(String at, String diameter) {
        return new Mark(Length.of(at, Unit.INCH), Length.of(diameter, Unit.INCH));
    }

    public static Outline carrier() {
        return new Outline(
                List.of(
                        mark("0", "40"),
                        mark("60", "40"),
                        mark("60", "68"),
                        mark("72", "68"),
                        mark("72", "48"),
                        mark("104", "48")),
                List.of(mark("0", "10"), mark("58", "10"), mark("58", "30"), mark("104", "30")),
                List.of(new Outline.ThreadedLength(mm("4"), mm("56"), mm("7"), mm("4"))),
                List.of(new Outline.Pocket(mm("78"), mm("98"), mm("8"), true)),
                List.of(new Outline.CrossHole(mm("66"), mm("5"))));
    }

    static List<OutlinePicture.Numbered> carrierNumbers() {
        return List.of(
                number("4", "96", "48"),
                number("9", "84", "48"),
                number("10", "72", "60"),
                number("12", "58", "20"),
                number("13", "90", "30"),
                number("15", "18", "32"),
                number("17", "40", "36"),
                number("19", "88", "24"),
                number("20", "66", "55"),
                number("21", "20", "10"));
    }

    private static OutlinePicture.Numbered number(String number, String at, String diameter) {
        return new OutlinePicture.Numbered(number, mark(at, diameter));
    }

    public static Outline barrelEnd() {
        return new Outline(
                List.of(
                        inches("0", "5.2"),
                        inches("0.8", "5.2"),
                        inches("0.8", "3.4"),
                        inches("3.1", "3.4"),
                        inches("3.1", "2.75"),
                        inches("6", "2.75")),
                List.of(
                        inches("0", "2.5"),
                        inches("1", "2.5"),
                        inches("1", "1.9"),
                        inches("2.3", "1.9"),
                        inches("2.3", "1.2"),
                        inches("6", "1.2")),
                List.of(new Outline.ThreadedLength(
                        Length.of("3.3", Unit.INCH),
                        Length.of("6", Unit.INCH),
                        Length.of("0.2", Unit.INCH),
                        Length.of("0.06", Unit.INCH))),
                List.of(new Outline.Pocket(
                        Length.of("1.3", Unit.INCH), Length.of("2.5", Unit.INCH), Length.of("0.6", Unit.INCH), false)),
                List.of());
    }

    /** Solid, with a taper and a blind centre. */
    static Outline pin() {
        return new Outline(
                List.of(mark("0", "20"), mark("2", "24"), mark("50", "24"), mark("80", "12"), mark("100", "12")),
                List.of(mark("0", "8"), mark("12", "8"), mark("14", "0")),
                List.of(),
                List.of(),
                List.of());
    }
}
