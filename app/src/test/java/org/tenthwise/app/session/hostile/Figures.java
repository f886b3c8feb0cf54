package org.tenthwise.app.session.hostile;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.tenthwise.model.gauge.ReadingDirection;
import org.tenthwise.model.gauge.Setting;

/** What a hand reads at a step: mostly inside the limits and near them. @param setting of the gauge in hand */
record Figures(Facts.What what, Optional<Setting> setting, Random random) {

    String degrees() {
        return BigDecimal.valueOf(180 + random.nextInt(100), 1).toPlainString();
    }

    /** At a slot: mostly in, at times of another unit, of nothing, or out. */
    String reading(String slot) {
        if (random.nextInt(60) == 0) {
            return List.of("29991", "0", "-3", "1.181", "0.0020003").get(random.nextInt(5));
        }
        if (what instanceof Facts.RunOut) {
            int most = List.of(5, 10, 20, 20, 30).get(random.nextInt(5));
            return BigDecimal.valueOf(random.nextInt(most) + (slot.endsWith("highest") ? 8 : 0), 3)
                    .toPlainString();
        }
        if (what instanceof Facts.Indicated indicated) {
            return indicated(slot, indicated);
        }
        if (what instanceof Facts.Angle angle) {
            return angle(angle);
        }
        if (what instanceof Facts.Scale scale) {
            return scale(scale);
        }
        if (what instanceof Facts.Position position) {
            return position(position, Integer.parseInt(slot.substring(0, slot.indexOf('.'))));
        }
        if (what instanceof Facts.Difference difference) {
            return difference.upper().toPlainString();
        }
        if (what instanceof Facts.Taper taper) {
            return taper(slot, taper);
        }
        BigDecimal size = what instanceof Facts.Size bore
                ? size(bore)
                : what instanceof Facts.Plug plug ? plug(plug) : overWires((Facts.Thread) what);
        return asRead(size).toPlainString();
    }

    /**
     * To a thousandth of a millimetre or a degree; at times an angle is typed a turn less, or in degrees and minutes.
     */
    private String position(Facts.Position position, int slot) {
        BigDecimal off = BigDecimal.valueOf(inOrNear(-36, 36), 3);
        if (!position.polar() || slot % 2 == 1) {
            BigDecimal nominal = position.polar() ? position.polar(slot) : position.nominal(slot);
            return nominal.add(off).toPlainString();
        }
        BigDecimal degrees = position.polar(slot).add(off.multiply(new BigDecimal("2.5")));
        return switch (random.nextInt(8)) {
            case 0 -> degrees.subtract(new BigDecimal("360")).toPlainString();
            case 1 -> StepText.marked(degrees.multiply(new BigDecimal("60")).setScale(1, RoundingMode.HALF_EVEN));
            default -> degrees.toPlainString();
        };
    }

    /** A lowest about zero and a highest about the limit; at times the two swapped, and of a symmetry as it comes. */
    private String indicated(String slot, Facts.Indicated indicated) {
        boolean isHighest = slot.endsWith(".1") == (random.nextInt(12) > 0);
        int most =
                indicated.limit().subtract(indicated.guard()).movePointRight(3).intValueExact();
        return BigDecimal.valueOf(isHighest ? inOrNear(2, most) : random.nextInt(5) - 1, 3)
                .toPlainString();
    }

    private BigDecimal size(Facts.Size bore) {
        BigDecimal low = bore.lower().orElseThrow();
        int width = bore.upper()
                .map(upper -> upper.subtract(low).movePointRight(3).intValueExact())
                .orElse(20);
        int guard = bore.guard().movePointRight(3).intValueExact();
        return low.add(BigDecimal.valueOf(inOrNear(guard, width - guard), 3));
    }

    /** In minutes, at times with a tenth of one, in decimals of a degree, or with nothing to tell the two apart. */
    private String angle(Facts.Angle angle) {
        int guard = angle.guard().intValueExact();
        int width = angle.upper().subtract(angle.lower()).intValueExact();
        BigDecimal minutes = angle.lower().add(BigDecimal.valueOf(inOrNear(guard, width - guard)));
        return switch (random.nextInt(8)) {
            case 0 -> StepText.marked(minutes.add(new BigDecimal("0.1")));
            case 1 -> minutes.divide(new BigDecimal("60"), 6, RoundingMode.HALF_EVEN) + "°";
            case 2 ->
                minutes.divide(new BigDecimal("60"), 2, RoundingMode.HALF_EVEN).toPlainString();
            default -> StepText.marked(minutes);
        };
    }

    /** In tenths; of a roughness often so small that the first value is enough. */
    private String scale(Facts.Scale scale) {
        int most = scale.upper()
                .map(upper -> upper.movePointRight(1).intValueExact())
                .orElse(500);
        int least = scale.lower()
                .map(lower -> lower.movePointRight(1).intValueExact())
                .orElse(most / 2);
        int tenths =
                scale.rule().isPresent() && random.nextInt(3) == 0 ? most + random.nextInt(4) : inOrNear(least, most);
        return BigDecimal.valueOf(tenths, 1).toPlainString();
    }

    /** On the plate 50 or a little more, on the blocks what an angle near the limits has; at times the two swapped. */
    private String taper(String slot, Facts.Taper taper) {
        BigDecimal low = new BigDecimal("50.000").add(thousandths(2));
        int guard = taper.guard().intValueExact();
        int minutes = taper.lower().intValueExact()
                + inOrNear(guard, taper.upper().subtract(taper.lower()).intValueExact() - guard);
        double rise = 80 * Math.tan(Math.toRadians(minutes / 120.0));
        boolean isHigh = slot.endsWith(".2") != (random.nextInt(15) == 0);
        return (isHigh ? low.add(BigDecimal.valueOf(rise)) : low)
                .setScale(3, RoundingMode.HALF_EVEN)
                .toPlainString();
    }

    private BigDecimal plug(Facts.Plug plug) {
        return new BigDecimal("30.005").subtract(plug.least()).subtract(BigDecimal.valueOf(inOrNear(-2, 6), 3));
    }

    /** A measurement that means a pitch diameter somewhere about the limits. */
    private BigDecimal overWires(Facts.Thread thread) {
        BigDecimal pitchDiameter = thread.lower().add(BigDecimal.valueOf(inOrNear(10, 122), 3));
        return pitchDiameter
                .add(thread.wire().multiply(new BigDecimal("3")))
                .subtract(new BigDecimal("1.299038"))
                .setScale(3, RoundingMode.HALF_EVEN);
    }

    /** Mostly from least to most, at times a little outside, at the ends rather more often than between. */
    private int inOrNear(int least, int most) {
        return switch (random.nextInt(12)) {
            case 0 -> least - 1 - random.nextInt(6);
            case 1 -> most + 1 + random.nextInt(6);
            case 2 -> least;
            case 3 -> most;
            default -> least + random.nextInt(most - least + 1);
        };
    }

    /** What the gauge in hand shows on a size. */
    private BigDecimal asRead(BigDecimal size) {
        if (setting.flatMap(Setting::zero).isEmpty()) {
            return size;
        }
        BigDecimal over = size.subtract(
                new BigDecimal(setting.get().certified().orElseThrow().text()));
        boolean falls = setting.get().gauge().sense().orElseThrow() == ReadingDirection.FALLS_WITH_SIZE;
        return new BigDecimal(setting.get().zero().get().text()).add(falls ? over.negate() : over);
    }

    BigDecimal thousandths(int most) {
        return BigDecimal.valueOf(random.nextInt(2 * most + 1) - most, 3);
    }
}
