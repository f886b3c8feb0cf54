package org.tenthwise.app.sums.roughness;

import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.tenthwise.app.sums.CannotAnswer;
import org.tenthwise.app.sums.Input;
import org.tenthwise.app.sums.Output;
import org.tenthwise.app.sums.Sum;
import org.tenthwise.app.sums.SumDescription;
import org.tenthwise.app.sums.SumInput;
import org.tenthwise.app.sums.SumResult;
import org.tenthwise.model.compute.roughness.AcceptanceRule;
import org.tenthwise.model.compute.roughness.RoughnessStanding;
import org.tenthwise.model.verdict.VerdictKind;
import org.tenthwise.model.words.Word;

/** Whether the values of a surface are accepted by an upper limit of roughness, and how many are still to measure. */
public final class RoughnessSum implements Sum {

    public static final String NAME = "roughness";
    public static final Input<List<BigDecimal>> VALUES = Input.figures("values").bounded("roughness");
    public static final Input<BigDecimal> LIMIT = Input.positive("limit").bounded("of-values");
    public static final Input<AcceptanceRule> RULE = Input.choice("rule", rules());
    public static final Output<String> VERDICT = Output.word("verdict", "pass", "fail", "open");
    public static final Output<Integer> STILL_TO_MEASURE = Output.whole("still_to_measure");
    public static final Output<Integer> ALLOWED_OVER = Output.whole("allowed_over");
    private static final SumDescription DESCRIPTION = SumDescription.named(NAME)
            .takes(VALUES, LIMIT, RULE)
            .gives(VERDICT, STILL_TO_MEASURE, ALLOWED_OVER)
            .on("16-percent", "max");

    private static Map<String, AcceptanceRule> rules() {
        Map<String, AcceptanceRule> byKey = new LinkedHashMap<>();
        for (AcceptanceRule known : AcceptanceRule.values()) {
            byKey.put(known.key(), known);
        }
        return byKey;
    }

    @Override
    public SumDescription description() {
        return DESCRIPTION;
    }

    @Override
    public SumResult of(SumInput given) {
        List<BigDecimal> values = given.get(VALUES);
        for (int i = 0; i < values.size(); i++) {
            if (values.get(i).signum() <= 0) {
                throw new CannotAnswer(
                        VALUES, "no-roughness", i + 1, values.get(i).toPlainString());
            }
        }
        BigDecimal limit = given.get(LIMIT);
        AcceptanceRule rule = given.get(RULE);
        RoughnessStanding standing = rule.of(values, limit);
        long over = values.stream().filter(value -> value.compareTo(limit) > 0).count();
        SumResult.Writing answer = DESCRIPTION
                .in(given.anyUnit())
                .put(VERDICT, Word.of(standing.verdict()))
                .put(STILL_TO_MEASURE, standing.stillToMeasure())
                .put(ALLOWED_OVER, standing.allowedOver())
                .note("over", over, values.size());
        if (standing.verdict() == VerdictKind.PASS && over > standing.allowedOver()) {
            answer.note("measured-on");
        }
        return answer.note("worst").on(rule.key());
    }
}
