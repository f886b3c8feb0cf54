package org.tenthwise.checklists.rules;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.tenthwise.checklists.format.RawList;
import org.tenthwise.checklists.format.RawValue;
import org.tenthwise.model.plan.DrawingFile;
import org.tenthwise.model.plan.DrawingInForce;
import org.tenthwise.model.plan.PartId;
import org.tenthwise.model.plan.Signs;
import org.tenthwise.model.quantity.QuantityKind;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.tolerance.GeneralTolerance;

/** What stands at the head of a plan file. */
final class HeaderRules {

    private static final String FORMAT = "format";
    private static final String MATERIAL = "material";
    private static final int THIS_FORMAT = 1;
    private static final String NUMBER = "drawing_number";
    private static final String SHEETS = "sheets";
    private static final String CHANGES = "changes";
    private static final String FILE = "drawing_file";
    private static final String FILE_HASH = "drawing_file_sha256";
    private static final String TOLERANCE = "tolerance";

    private HeaderRules() {}

    /** @param unit absent, as any other of them, where a problem was noted */
    record Header(
            Optional<PartId> part,
            Optional<String> issue,
            Optional<String> name,
            Optional<String> material,
            Optional<DrawingInForce> drawing,
            Optional<String> route,
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

    /** One text, or what the tables of materials name. */
    private static Optional<String> material(TableKeys keys) {
        if (!keys.has(MATERIAL) || keys.isText(MATERIAL)) {
            return keys.text(MATERIAL);
        }
        List<String> names = keys.tables(MATERIAL).stream()
                .map(table -> table.values().get("name"))
                .filter(RawValue.Text.class::isInstance)
                .map(name -> ((RawValue.Text) name).text())
                .toList();
        return names.isEmpty() ? Optional.of("") : Optional.of(String.join("; ", names));
    }

    static Header read(TableKeys keys) {
        Optional<String> number = keys.text("part");
        Optional<String> revision = keys.text("revision");
        return new Header(
                number.flatMap(n -> revision.map(r -> new PartId(n, r))),
                keys.text("issue"),
                keys.text("name"),
                material(keys),
                drawing(keys),
                keys.ifAny("route", keys::text),
                keys.word("unit", Unit.of(QuantityKind.LENGTH), Unit::symbol),
                keys.ifAny("remark", keys::prose).orElse(""),
                keys.ifAny("lot", keys::truth).orElse(false));
    }

    /** What the drawing sets for sizes without a tolerance of their own. */
    static Optional<GeneralTolerance> tolerance(TableKeys keys, Unit unit) {
        return keys.ifAny(TOLERANCE, keys::text)
                .flatMap(text -> keys.sensible(TOLERANCE, () -> GeneralTolerance.ofText(text, unit)));
    }

    /** A drawing has a title; where it says none, it goes by its number. */
    private static Optional<DrawingInForce> drawing(TableKeys keys) {
        Optional<String> number = keys.ifAny(NUMBER, keys::text);
        Optional<String> revision = keys.ifAny("drawing_revision", keys::text);
        Optional<Integer> sheets = keys.ifAny(SHEETS, keys::whole);
        sheets.filter(many -> many < 1).ifPresent(many -> keys.problem(SHEETS, "plan.sheets", many));
        List<String> changes =
                keys.ifAny(CHANGES, key -> Optional.of(changes(keys))).orElse(List.of());
        Optional<DrawingFile> file = file(keys);
        Optional<String> title = keys.has("drawing") || !keys.has(NUMBER) ? keys.text("drawing") : number;
        return title.map(words -> new DrawingInForce(words, number, revision, sheets, changes, file));
    }

    private static Optional<DrawingFile> file(TableKeys keys) {
        Optional<String> hash = keys.ifAny(FILE_HASH, keys::text).filter(text -> {
            boolean isHash = DrawingFile.isHash(text);
            if (!isHash) {
                keys.problem(FILE_HASH, "plan.drawing-file-hash", text);
            }
            return isHash;
        });
        return keys.ifAny(FILE, keys::text).flatMap(name -> {
            if (!DrawingFile.canBe(name)) {
                keys.problem(FILE, "plan.drawing-file", name, DrawingFile.LONGEST);
                return Optional.empty();
            }
            return Optional.of(new DrawingFile(name, hash));
        });
    }

    private static List<String> changes(TableKeys keys) {
        List<String> changes = new ArrayList<>();
        for (RawValue item : keys.list(CHANGES).map(RawList::items).orElse(List.of())) {
            if (item instanceof RawValue.Text text && !text.text().isBlank()) {
                String change = text.text().strip();
                Signs.hiddenIn(change).ifPresent(sign -> keys.problem(item.spot(), "plan.key.hidden", CHANGES, sign));
                changes.add(change);
            } else {
                keys.problem(item.spot(), "plan.changes.written", item.what());
            }
        }
        return changes;
    }
}
