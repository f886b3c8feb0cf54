package org.tenthwise.checklists.rules;

import java.util.Optional;
import org.tenthwise.model.plan.PartId;
import org.tenthwise.model.quantity.QuantityKind;
import org.tenthwise.model.quantity.Unit;

/** What stands at the head of a plan file. */
final class HeaderRules {

    private static final String FORMAT = "format";
    private static final int THIS_FORMAT = 1;

    private HeaderRules() {}

    /** @param unit absent, as any other of them, where a problem was noted */
    record Header(
            Optional<PartId> part,
            Optional<String> issue,
            Optional<String> name,
            Optional<String> material,
            Optional<String> drawing,
            Optional<Unit> unit,
            String remark,
            boolean lotAsked) {}

    /**
     * False, with the one problem noted, where the file is of a format not read here: nothing else in it is judged
     * then.
     */
    static boolean isOfThisFormat(TableKeys keys) {
        Optional<Integer> format = keys.whole(FORMAT);
        if (format.isPresent() && format.get() != THIS_FORMAT) {
            keys.problem(FORMAT, "plan.format", format.get(), THIS_FORMAT);
            return false;
        }
        if (format.isPresent() && !keys.isFirst(FORMAT)) {
            keys.problem(FORMAT, "plan.format-first", THIS_FORMAT);
        }
        return true;
    }

    static Header read(TableKeys keys) {
        Optional<String> number = keys.text("part");
        Optional<String> revision = keys.text("revision");
        return new Header(
                number.flatMap(n -> revision.map(r -> new PartId(n, r))),
                keys.text("issue"),
                keys.text("name"),
                keys.text("material"),
                keys.text("drawing"),
                keys.word("unit", Unit.of(QuantityKind.LENGTH), Unit::symbol),
                keys.ifAny("remark", keys::prose).orElse(""),
                keys.ifAny("lot", keys::truth).orElse(false));
    }
}
