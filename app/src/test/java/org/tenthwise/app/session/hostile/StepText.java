package org.tenthwise.app.session.hostile;

import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** A step of a random plan as a plan file has it. */
record StepText(Facts facts) {

    private static final Map<Class<?>, String> KINDS = Map.ofEntries(
            Map.entry(Facts.RunOut.class, "run-out"),
            Map.entry(Facts.Indicated.class, "indicated"),
            Map.entry(Facts.Angle.class, "angle"),
            Map.entry(Facts.Position.class, "position"),
            Map.entry(Facts.Scale.class, "scale"),
            Map.entry(Facts.Taper.class, "worked"),
            Map.entry(Facts.Plug.class, "plug-fit"),
            Map.entry(Facts.Difference.class, "calculated"),
            Map.entry(Facts.Thread.class, "thread-over-wires"),
            Map.entry(Facts.Paper.class, "document"));

    String toml() {
        Map<String, Object> keys = new LinkedHashMap<>();
        Facts.What what = facts.what();
        keys.put("number", facts.number());
        keys.put("name", quoted("Check " + facts.number()));
        if (facts.inOrder()) {
            keys.put("operation", 10);
            keys.put("method", quoted("As usual."));
        }
        if (!facts.when().isEmpty()) {
            keys.put(
                    "when", facts.when().stream().sorted().map(StepText::quoted).toList());
        }
        if (!facts.hold().isEmpty()) {
            keys.put("hold", new TreeSet<>(facts.hold()));
        }
        String kind = kind();
        if (facts.inOrder()) {
            keys.put("kind", quoted(kind));
        }
        if (facts.drawing() && facts.number() % 3 > 0) {
            keys.put("balloon", quoted("a" + facts.number()));
            keys.put("designator", quoted(facts.number() % 3 == 1 ? "Key" : "Major"));
        }
        if (facts.drawing() == kind.equals("confirm")) {
            keys.put("class", quoted(facts.drawing() ? "drawing" : facts.number() % 2 == 0 ? "set-up" : "in-process"));
        }
        if (what instanceof Facts.Asks asks) {
            if (kind.equals("go-not-go")) {
                keys.put("go", quoted("Enters."));
                keys.put("not_go", quoted("Does not enter."));
                if (asks.certified()) {
                    certificate(keys);
                }
            } else {
                keys.put("what", quoted("It is so."));
            }
        } else if (what instanceof Facts.RunOut runOut) {
            keys.put("limit", runOut.limit());
            keys.put(
                    "holding", quoted(List.of("three-jaw", "four-jaw", "collet").get(facts.number() % 3)));
            if (runOut.two()) {
                keys.put("sections", "[{ name = \"near\", at = 30 }, { name = \"far\", at = 140 }]");
            }
            keys.put("gauge_kind", quoted("dial-indicator"));
            if (!runOut.angles().isEmpty()) {
                keys.put("angles", runOut.angles());
            }
        } else if (what instanceof Facts.Size size) {
            if (!size.isPlain()) {
                keys.put("feature", quoted(size.kind()));
            }
            size.lower().ifPresent(lower -> keys.put("lower", lower));
            size.upper().ifPresent(upper -> keys.put("upper", upper));
            keys.put("places", places(size.places()));
            keys.put("readings_each", size.each());
            if (!size.combine().equals("each")) {
                keys.put(
                        "drawing_says",
                        quoted(Map.of("mean", "SA", "largest", "SX", "smallest", "SN")
                                .get(size.combine())));
            }
            if (size.cutAgain()) {
                keys.put("cut_again", quoted(size.isOutside() ? "too big" : "too small"));
                size.cuts().aim().ifPresent(aim -> keys.put("aim", aim));
                size.cuts().least().ifPresent(least -> keys.put("least_cut", least));
                size.cuts().step().ifPresent(step -> keys.put("offset_step", step));
            }
            keys.put("guard_band", size.guard());
            keys.put("gauge_kind", quoted(size.gauge()));
            if (size.compared()) {
                keys.put("master", size.about());
            }
            keys.put("temperature", quoted(size.warm() ? "ask" : "not-asked"));
        } else if (what instanceof Facts.Indicated indicated) {
            keys.put("movement_of", quoted(indicated.of()));
            if (!indicated.datumBy().isEmpty()) {
                keys.put("datum", quoted("A"));
                keys.put("datum_by", quoted(indicated.datumBy()));
            }
            keys.put("limit", indicated.limit());
            keys.put("guard_band", indicated.guard());
            keys.put("places", places(indicated.places()));
            keys.put("gauge_kind", quoted("lever-indicator"));
        } else if (what instanceof Facts.Angle angle) {
            keys.put("lower", quoted(marked(angle.lower())));
            keys.put("upper", quoted(marked(angle.upper())));
            keys.put("guard_band", quoted(marked(angle.guard())));
            keys.put("places", places(angle.places()));
            keys.put("gauge_kind", quoted("bevel-protractor"));
        } else if (what instanceof Facts.Scale scale) {
            keys.put("unit", quoted(scale.unit()));
            scale.lower().ifPresent(lower -> keys.put("lower", lower));
            scale.upper().ifPresent(upper -> keys.put("upper", upper));
            scale.rule()
                    .ifPresentOrElse(
                            rule -> keys.put("rule", quoted(rule)), () -> keys.put("guard_band", scale.guard()));
            keys.put("places", places(scale.places()));
            keys.put("gauge_kind", quoted("other-instrument"));
        } else if (what instanceof Facts.Taper taper) {
            keys.put("by", quoted("rollers"));
            keys.put("height", 40);
            keys.put("end", quoted("small-down"));
            keys.put("lower", quoted(marked(taper.lower())));
            keys.put("upper", quoted(marked(taper.upper())));
            keys.put("guard_band", quoted(marked(taper.guard())));
            keys.put("places", places(taper.places()));
            keys.put("gauge_kind", quoted("micrometer"));
        } else if (what instanceof Facts.Paper paper) {
            keys.put("what", quoted("A certificate."));
            keys.put("where", quoted("Measuring room"));
            keys.put("count", paper.count());
            paper.upper().ifPresent(upper -> keys.put("upper", upper));
        } else if (what instanceof Facts.Position position) {
            keys.put("zone", position.zone());
            if (position.bore() > 0) {
                keys.put("modifier", quoted(position.modifier()));
                keys.put("size_step", position.bore());
            }
            keys.put(
                    "holes",
                    position.two()
                            ? "[{ name = \"A\", x = 20, y = 15 }, { name = \"B\", x = -20, y = 0 }]"
                            : "[{ name = \"A\", x = 20, y = 15 }]");
            if (position.ends()) {
                keys.put("ends", "[\"entry\", \"exit\"]");
            }
            if (position.polar()) {
                keys.put("read", quoted("polar"));
            }
            keys.put("gauge_kind", quoted(position.polar() ? "coordinate-machine" : "caliper"));
        } else if (what instanceof Facts.Plug plug) {
            keys.put("bore_step", plug.bore());
            keys.put("clearance_least", plug.least());
            keys.put("clearance_greatest", plug.greatest());
            keys.put("places", places(plug.places()));
            keys.put("feel", quoted(plug.feel().name().toLowerCase(Locale.ROOT).replace('_', '-')));
            keys.put("gauge_kind", quoted("micrometer"));
        } else if (what instanceof Facts.Difference difference) {
            keys.put("of", quoted("one - other"));
            keys.put("names", "{ one = %d, other = %d }".formatted(difference.of(), difference.less()));
            keys.put("lower", difference.lower());
            keys.put("upper", difference.upper());
        } else if (what instanceof Facts.Thread thread) {
            keys.put("form", quoted("metric"));
            keys.put("diameter", 10);
            keys.put("pitch", "1.5");
            keys.put("lower", thread.lower());
            keys.put("upper", thread.upper());
            keys.put("wire", thread.wire());
            keys.put("guard_band", thread.guard());
            keys.put("places", places(2));
            keys.put("cut_again", quoted("too big"));
            keys.put("temperature", quoted("not-asked"));
            if (thread.minorStep() > 0) {
                keys.put("minor_step", thread.minorStep());
            }
            thread.minor().ifPresent(minor -> keys.put("minor_diameter", minor));
        }
        return keys.entrySet().stream()
                .map(key -> key.getKey() + " = " + key.getValue())
                .collect(Collectors.joining("\n", facts.inOrder() ? "\n[[step]]\n" : "\n[[elsewhere]]\n", "\n"));
    }

    private String kind() {
        Facts.What what = facts.what();
        if (what instanceof Facts.Asks asks) {
            return asks.kind();
        }
        if (what instanceof Facts.Size size) {
            return size.isPlain() ? size.kind() : "size";
        }
        return KINDS.get(what.getClass());
    }

    /** A plug whose ends are made inside limits of 20.000 and 20.021. */
    private static void certificate(Map<String, Object> keys) {
        keys.put("gauge_form", quoted("plug"));
        keys.put("go_size", "20.002");
        keys.put("not_go_size", "20.020");
        keys.put("lower", "20.000");
        keys.put("upper", "20.021");
    }

    /** An angle above zero, in minutes that may have decimals, as people write it. */
    static String marked(BigDecimal minutes) {
        BigDecimal[] parts = minutes.divideAndRemainder(new BigDecimal("60"));
        return parts[0].toBigInteger() + "°" + parts[1].toPlainString() + "'";
    }

    private static String quoted(String text) {
        return "\"" + text + "\"";
    }

    private static List<String> places(int count) {
        return IntStream.rangeClosed(1, count)
                .mapToObj(i -> quoted("place " + i))
                .toList();
    }
}
