package org.tenthwise.app.drafting;

import java.math.BigDecimal;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.tenthwise.checklists.drafting.ListColumn;
import org.tenthwise.model.words.Message;
import org.tenthwise.model.words.Refused;

/** Makes a row of a list of one item of a QIF document, or of several that are alike. */
final class QifLine {

    private static final String DEFINITION = "CharacteristicDefinitionId";
    private static final String NOMINAL = "CharacteristicNominalId";

    private final QifUnits units;
    private final Map<String, XmlTree> byId;

    /** @param byId every element that can be referred to */
    QifLine(QifUnits units, Map<String, XmlTree> byId) {
        this.units = units;
        this.byId = byId;
    }

    /** The number that all items of a nominal have together; absent where each has its own alone. */
    Optional<String> numberOfAll(XmlTree item) {
        Optional<XmlTree> nominal = referred(item, NOMINAL);
        return nominal.flatMap(of -> referred(of, DEFINITION))
                .flatMap(QifLine::number)
                .or(() -> nominal.flatMap(QifLine::number));
    }

    /** @param alike of one nominal */
    QifRow of(List<XmlTree> alike) {
        XmlTree item = alike.get(0);
        Map<ListColumn, String> said = new EnumMap<>(ListColumn.class);
        Optional<String> number =
                alike.size() > 1 ? numberOfAll(item) : number(item).or(() -> numberOfAll(item));
        put(said, ListColumn.NUMBER, number.or(() -> item.said("Name").flatMap(QifList::number)));
        put(said, ListColumn.SHEET, item.said("LocationOnDrawing", "SheetNumber"));
        put(said, ListColumn.ZONE, item.said("LocationOnDrawing", "DrawingZone"));
        put(said, ListColumn.DESIGNATOR, mark(item));
        put(said, ListColumn.COUNT, Optional.of(String.valueOf(alike.size())).filter(count -> alike.size() > 1));
        try {
            XmlTree nominal = must(item, NOMINAL);
            XmlTree definition = must(nominal, DEFINITION);
            required(item, nominal, definition, said);
            return new QifRow(said, Optional.empty());
        } catch (Refused e) {
            return refused(item, said, e.why());
        }
    }

    private static QifRow refused(XmlTree item, Map<ListColumn, String> said, Message why) {
        said.putIfAbsent(
                ListColumn.REQUIREMENT,
                words(item).filter(any -> !any.isEmpty()).orElseGet(() -> QifList.kind(item)));
        return new QifRow(said, Optional.of(why));
    }

    private static void put(Map<ListColumn, String> said, ListColumn column, Optional<String> text) {
        text.filter(any -> !any.isBlank()).ifPresent(any -> said.put(column, any));
    }

    private static Optional<String> number(XmlTree of) {
        return of.said("CharacteristicDesignator", "Designator");
    }

    private Optional<XmlTree> referred(XmlTree from, String by) {
        return from.said(by).map(byId::get);
    }

    private XmlTree must(XmlTree from, String by) {
        return referred(from, by)
                .orElseThrow(() ->
                        new Refused("list.qif.refers-to-nothing", from.said(by).orElse(by)));
    }

    private static Optional<String> mark(XmlTree item) {
        Optional<XmlTree> criticality = item.at("CharacteristicDesignator", "Criticality");
        return criticality
                .flatMap(level -> level.said("LevelEnum"))
                .filter(level -> !level.equals("UNDEFINED"))
                .map(level -> level.toLowerCase(Locale.ROOT))
                .or(() -> criticality.flatMap(level -> level.said("OtherLevel")));
    }

    /** What the document says of it in words. */
    private static Optional<String> words(XmlTree of) {
        return of.said("Description").or(() -> of.said("Name"));
    }

    private void required(XmlTree item, XmlTree nominal, XmlTree definition, Map<ListColumn, String> said) {
        QifKind kind =
                QifKind.of(QifList.kind(item)).orElseThrow(() -> new Refused("list.qif.kind", QifList.kind(item)));
        QifLimits limits = kind.limits(definition, nominal, units);
        Optional<String> described = words(item).or(() -> words(definition)).or(() -> definition.said("WhatToMeasure"));
        QifCallout callout =
                new QifCallout(units.lengths(), kind, limits, datums(definition), kind.isPlain(definition));
        QifCallout.InList written = callout.written(described, thread(definition));
        said.put(ListColumn.REQUIREMENT, written.requirement());
        if (written.beside()) {
            put(said, ListColumn.LOWER, limits.lower().map(BigDecimal::toPlainString));
            put(said, ListColumn.UPPER, limits.upper().map(BigDecimal::toPlainString));
        }
        if (!kind.isOfAScale()) {
            put(said, ListColumn.UNIT, Optional.of(limits.unit()));
        }
        put(
                said,
                ListColumn.NOTE,
                Optional.of(Stream.of(described, item.said("Name"))
                                .flatMap(Optional::stream)
                                .distinct()
                                .filter(text -> !text.equals(written.requirement()))
                                .collect(Collectors.joining("; ")))
                        .filter(text -> !text.isEmpty()));
    }

    /** Letters of the datums in their order; empty where none is named. */
    private String datums(XmlTree definition) {
        return referred(definition, "DatumReferenceFrameId").stream()
                .flatMap(frame -> frame.at("Datums").stream())
                .flatMap(XmlTree::all)
                .flatMap(element -> element.said("DatumDefinitionId").stream())
                .flatMap(id -> Optional.ofNullable(byId.get(id)).stream())
                .flatMap(datum -> datum.said("DatumLabel").stream())
                .collect(Collectors.joining(" "));
    }

    private Optional<String> thread(XmlTree definition) {
        return referred(definition, "ThreadSpecificationId").flatMap(thread -> thread.said("TextSpecification"));
    }
}
