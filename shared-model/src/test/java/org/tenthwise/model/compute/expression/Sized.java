package org.tenthwise.model.compute.expression;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** Sizes by name, written short: {@code od = 50 50.02; id = 40}. */
final class Sized {

    private Sized() {}

    static Map<String, List<BigDecimal>> of(String text) {
        Map<String, List<BigDecimal>> sizes = new LinkedHashMap<>();
        Arrays.stream(text.split(";"))
                .map(String::strip)
                .filter(each -> !each.isEmpty())
                .forEach(each -> {
                    String[] parts = each.split("=");
                    sizes.put(
                            parts[0].strip(),
                            Arrays.stream(parts[1].strip().split(" +"))
                                    .map(BigDecimal::new)
                                    .collect(Collectors.toList()));
                });
        return sizes;
    }

    static Map<String, BigDecimal> one(String text) {
        Map<String, BigDecimal> single = new LinkedHashMap<>();
        of(text).forEach((name, sizes) -> single.put(name, sizes.get(0)));
        return single;
    }
}
