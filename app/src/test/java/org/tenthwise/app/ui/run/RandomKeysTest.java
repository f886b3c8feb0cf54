package org.tenthwise.app.ui.run;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.tenthwise.app.InventedPlans;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.run.Entry;
import org.tenthwise.model.run.StepEvent;

/**
 * Fingers that press anything and a gauge that types at any time, against what is known without the pad: which keys
 * were pressed, what was in sight before the first of them, and what the gauge sent.
 */
class RandomKeysTest extends RunAtHand {

    private static final Plan PLAN = InventedPlans.inMillimetres(size(1, "47.980", "48.020", "MC-1")
            + size(2, "9.98", "10.02", "MC-2")
            + size(3, "4.000", "4.060", "MC-1")
            + size(4, "29.90", "30.10", "MC-2"));
    private static final List<Set<String>> WHOLES =
            List.of(Set.of("47", "48"), Set.of("9", "10"), Set.of("4"), Set.of("29", "30"));
    /** In and out, over the whole unit, with another number of decimals and with none. */
    private static final List<List<String>> SIZES = List.of(
            List.of("47.991", "47.990", "47.988", "48.003", "48.012", "47.99", "48", "48.1"),
            List.of("9.98", "9.99", "10.01", "10.02", "9.999", "10", "9.9"),
            List.of("4.021", "4.022", "4.044", "4.06", "4.4", "4", "3.999"),
            List.of("29.98", "29.99", "30.04", "30.05", "30.005", "30"));

    private int taken;
    private int takenWithAnOffer;

    private static String size(int number, String lower, String upper, String gauge) {
        return """
                [[step]]
                number = %d
                operation = 10
                kind = "diameter"
                name = "Size %1$d"
                method = "Eight places."
                lower = %s
                upper = %s
                places = ["a", "b", "c", "d", "e", "f", "g", "h"]
                gauge_kind = "micrometer"
                gauge = "%s"

                """
                .formatted(number, lower, upper, gauge);
    }

    @Test
    void whatIsEnteredIsWhatWasShownAndAGaugesFigureIsWhatItTyped() throws Exception {
        for (int seed = 0; seed < 60; seed++) {
            beginARunOf(PLAN);
            walk(new Random(seed), atOnce());
        }
        assertTrue(taken > 500, () -> taken + " taken");
        assertTrue(takenWithAnOffer > 40, () -> takenWithAnOffer + " taken with something offered");
    }

    private void walk(Random random, RunViewModel model) throws Exception {
        for (int deed = 0; deed < 80; deed++) {
            int what = model.takesFiguresProperty().get() ? random.nextInt(12) : random.nextInt(2);
            switch (what) {
                case 0 -> model.goTo(1 + random.nextInt(4));
                case 1 -> strikeTheLast(model);
                case 2, 3 -> byTheGauge(random, model);
                default -> byAFinger(random, model);
            }
        }
    }

    private void strikeTheLast(RunViewModel model) throws Exception {
        Entry last = run.session.state().sheet().run().last();
        if (last.event() instanceof StepEvent.ReadingTaken) {
            run.session.strikeOut(last.seq(), "a slip");
            model.refresh();
        }
    }

    private void byTheGauge(Random random, RunViewModel model) {
        boolean half = isHalfTyped(model);
        String sent = aSize(random);
        List<String> before = all();
        sends(model, sent + "\n");
        List<String> more = all().subList(before.size(), all().size());
        assertTrue(more.isEmpty() || !half && more.equals(List.of(sent)), () -> sent + " became " + more);
        taken += more.size();
        clear(model);
    }

    /** The key is there while something stands. */
    private static void clear(RunViewModel model) {
        if (isHalfTyped(model)) {
            model.clear();
        }
    }

    private static boolean isHalfTyped(RunViewModel model) {
        return !model.pad().typedProperty().get().isEmpty();
    }

    /** A whole figure, with slips, each key of it as a finger may press it. */
    private void byAFinger(Random random, RunViewModel model) {
        clear(model);
        String seen = model.pad().offeredProperty().get();
        Set<String> wholes = WHOLES.get(stepOfTheFigure() - 1);
        StringBuilder pressed = new StringBuilder();
        for (char key : slip(random, asTyped(random, seen)).toCharArray()) {
            if (key == '<' && pressed.isEmpty()) {
                seen = "";
            } else if (key == '<') {
                pressed.setLength(pressed.length() - 1);
            } else {
                pressed.append(key == '.' && pressed.isEmpty() ? "0." : key);
            }
            Finger.presses(model, Character.toString(key));
            if (!pressed.isEmpty()) {
                assertEquals(
                        whole(pressed.toString(), seen, wholes),
                        model.pad().typedProperty().get());
            }
        }
        if (random.nextInt(10) == 0) {
            return;
        }
        String shown = model.figureProperty().get();
        List<String> before = all();
        Finger.presses(model, "\n");
        List<String> more = all().subList(before.size(), all().size());
        assertTrue(more.isEmpty() || more.equals(List.of(shown)), () -> shown + " became " + more);
        if (!more.isEmpty()) {
            taken++;
            takenWithAnOffer += seen.isEmpty() || pressed.indexOf(".") >= 0 ? 0 : 1;
        }
        clear(model);
    }

    /** What those keys come to, in the words of the guide. */
    private static String whole(String pressed, String seen, Set<String> wholes) {
        if (pressed.contains(".")) {
            return pressed;
        }
        if (!seen.isEmpty()) {
            return seen + pressed;
        }
        return wholes.stream()
                .filter(pressed::startsWith)
                .filter(whole -> !whole.equals(pressed))
                .map(whole -> whole + "." + pressed.substring(whole.length()))
                .findFirst()
                .orElse(pressed);
    }

    private int stepOfTheFigure() {
        return run.session.state().figureBeginsNext()
                ? run.session.state().next().orElseThrow().number()
                : run.session.state().inHand().number();
    }

    private String asTyped(Random random, String seen) {
        String size = aSize(random);
        return switch (random.nextInt(8)) {
            case 0 -> size;
            case 1 -> size.replace(".", "");
            case 2 -> "<" + size.replace(".", "");
            default -> size.startsWith(seen) ? size.substring(seen.length()) : size.substring(size.indexOf('.') + 1);
        };
    }

    /** Now and then a key twice, one missing, or one taken back. */
    private static String slip(Random random, String keys) {
        if (keys.isEmpty() || random.nextInt(3) > 0) {
            return keys;
        }
        int at = random.nextInt(keys.length());
        String key = keys.substring(at, at + 1);
        return keys.substring(0, at)
                + List.of("", key + key, key + "<" + key, key + "<<").get(random.nextInt(4))
                + keys.substring(at + 1);
    }

    /** Mostly one of the check. */
    private String aSize(Random random) {
        int step = random.nextInt(8) == 0 ? 1 + random.nextInt(SIZES.size()) : stepOfTheFigure();
        List<String> sizes = SIZES.get(step - 1);
        return sizes.get(random.nextInt(sizes.size()));
    }

    /** Every reading of the run, in the order of the ledger. */
    private List<String> all() {
        List<String> texts = new ArrayList<>();
        run.session.state().sheet().run().entries().stream()
                .flatMap(entry -> entry.event() instanceof StepEvent.ReadingTaken read
                        ? Stream.of(read.typed().text())
                        : Stream.empty())
                .forEach(texts::add);
        return texts;
    }
}
