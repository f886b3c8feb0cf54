package org.tenthwise.app.session.hostile;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * What may be said of the movement of an indicator.
 *
 * <p>The rules, in words. What is held in jaws turns about the jaws: it proves nothing of its datum. Otherwise every
 * place has both its readings, and the two were taken with one gauge that nobody put down or set anew in between; where
 * all places are one movement (total run-out, squareness, parallelism, flatness) that goes for all of them. Highest
 * less lowest, at the worst place or over all of them, is inside the limit by the guard band. Of all but a symmetry no
 * lowest lies above its highest.
 */
final class IndicatedOracle {

    private static final Set<String> PLACE_BY_PLACE = Set.of("circular-run-out", "axial-run-out", "symmetry");

    private final Facts.Indicated demanded;
    private final Map<String, Counting.Read> read;

    IndicatedOracle(Facts.Indicated demanded, Map<String, Counting.Read> read) {
        this.demanded = demanded;
        this.read = read;
    }

    Oracle.Says passed() {
        if (demanded.datumBy().equals("chuck")) {
            return Oracle.Says.NOT_PASSED;
        }
        List<List<Counting.Read>> sweeps = new ArrayList<>();
        List<Counting.Read> all = new ArrayList<>();
        for (int place = 1; place <= demanded.places(); place++) {
            Counting.Read first = read.get(place + ".1");
            Counting.Read second = read.get(place + ".2");
            if (first == null || second == null || isWrongWayRound(first, second)) {
                return Oracle.Says.NOT_PASSED;
            }
            sweeps.add(List.of(first, second));
            all.addAll(List.of(first, second));
        }
        return Oracle.says((PLACE_BY_PLACE.contains(demanded.of()) ? sweeps : List.of(all))
                .stream().allMatch(this::isInside));
    }

    private boolean isWrongWayRound(Counting.Read highest, Counting.Read lowest) {
        return !demanded.of().equals("symmetry") && highest.figure().compareTo(lowest.figure()) < 0;
    }

    private boolean isInside(List<Counting.Read> movement) {
        Set<Long> settings = new LinkedHashSet<>();
        movement.forEach(one -> settings.add(one.set()));
        List<BigDecimal> figures = movement.stream().map(Counting.Read::figure).toList();
        BigDecimal moved = Oracle.greatest(figures).subtract(Oracle.least(figures));
        return settings.size() == 1 && moved.compareTo(demanded.limit().subtract(demanded.guard())) <= 0;
    }
}
