package org.tenthwise.app.export.qif;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.tenthwise.model.plan.BalloonNumber;
import org.tenthwise.model.plan.OnDrawing;
import org.tenthwise.model.plan.PartId;
import org.tenthwise.model.plan.Step;
import org.tenthwise.model.record.AccountLine;
import org.tenthwise.model.record.Line;

/**
 * The characteristics of the drawing in their four aspects: how each is defined, what is wanted, of which items, and
 * what was found of each item. All of one are of one kind, as the standard demands.
 */
final class CharacteristicAspects {

    private final XmlIds ids;
    private final PartId part;
    private final FileUnits units;
    private final Datums datums;
    private final DrawnNominals nominals;
    private final DrawingPlaces places;
    private final MeasuredItems measurements;

    private final List<XmlElement> definitions = new ArrayList<>();
    private final List<XmlElement> nominalElements = new ArrayList<>();
    private final List<XmlElement> items = new ArrayList<>();
    private final List<XmlElement> measured = new ArrayList<>();

    CharacteristicAspects(
            XmlIds ids,
            PartId part,
            FileUnits units,
            Datums datums,
            DrawnNominals nominals,
            DrawingPlaces places,
            MeasuredItems measurements) {
        this.ids = ids;
        this.part = part;
        this.units = units;
        this.datums = datums;
        this.nominals = nominals;
        this.places = places;
        this.measurements = measurements;
    }

    /** @param lines of one check in the account of the drawing */
    void add(List<AccountLine.Checked> lines) {
        Line line = lines.get(0).line();
        Optional<BalloonNumber> balloon = lines.get(0).balloon();
        Optional<BigDecimal> target = nominals.of(line.step());
        CharacteristicKind kind = KindOf.of(line.step(), units, datums, target);
        XmlElement nominal = wanted(
                kind,
                StepFacts.of(line, target.isPresent()),
                line.step().name(),
                line.step().drawing(),
                balloon);
        Optional<PlainFigures> figures = line.step().limits().map(limits -> new PlainFigures(units, limits));
        List<ItemFound> found = FoundOfEach.of(lines, figures);
        for (ItemFound one : found) {
            Optional<Integer> which =
                    one.which().or(() -> line.step().drawing().instances().one());
            XmlElement item = item(kind, line.step().name(), line.step().drawing(), balloon, which, nominal);
            measured.add(measurements.of(kind, item, line, one, found.size() == 1, figures));
        }
    }

    /** What this kind of run leaves out: it is there, and not measured. */
    void add(AccountLine.NotInThisRun left) {
        Step step = left.line().step();
        Optional<BigDecimal> target = nominals.of(step);
        CharacteristicKind kind = KindOf.of(step, units, datums, target);
        NamedAttributes facts = StepFacts.of(left.line(), target.isPresent()).and("not-in-this-run", "yes");
        XmlElement nominal = wanted(kind, facts, step.name(), step.drawing(), left.balloon());
        Optional<Integer> one = step.drawing().instances().one();
        measured.add(measurements.open(kind, item(kind, step.name(), step.drawing(), left.balloon(), one, nominal)));
    }

    /** A balloon that nothing answers: it is there, and not measured. */
    void add(AccountLine.Unanswered open) {
        OnDrawing drawing = open.drawing();
        String name = drawing.requirement().isBlank()
                ? open.balloon().map(BalloonNumber::text).orElse("")
                : drawing.requirement();
        CharacteristicKind kind = new AttributeKind(name);
        NamedAttributes unanswered = new NamedAttributes().and("unanswered", "yes");
        XmlElement nominal = wanted(kind, unanswered, name, drawing, open.balloon());
        XmlElement item = item(kind, name, drawing, open.balloon(), Optional.empty(), nominal);
        measured.add(measurements.open(kind, item));
    }

    private XmlElement wanted(
            CharacteristicKind kind,
            NamedAttributes facts,
            String name,
            OnDrawing drawing,
            Optional<BalloonNumber> balloon) {
        XmlElement definition = ids.give(new XmlElement(kind.name() + "CharacteristicDefinition"))
                .add(facts.element())
                .addSaid("Description", drawing.requirement())
                .addSaid("Name", name)
                .add(balloon.map(number -> Designators.of(number.text(), Optional.empty(), drawing.designator())));
        kind.define(definition);
        definitions.add(definition);
        XmlElement nominal = ids.give(new XmlElement(kind.name() + "CharacteristicNominal"))
                .add("CharacteristicDefinitionId", definition.id());
        kind.want(nominal);
        nominalElements.add(nominal);
        return nominal;
    }

    private XmlElement item(
            CharacteristicKind kind,
            String name,
            OnDrawing drawing,
            Optional<BalloonNumber> balloon,
            Optional<Integer> which,
            XmlElement nominal) {
        XmlElement item = ids.give(new XmlElement(kind.name() + "CharacteristicItem"))
                .addSaid("Description", drawing.requirement())
                .addSaid(
                        "Name",
                        which.map(one -> "%s (%s/%s)"
                                        .formatted(
                                                name,
                                                one,
                                                Math.max(
                                                        one, drawing.instances().count())))
                                .orElse(name));
        balloon.map(number -> which.map(one -> number.text() + "-" + one).orElse(number.text()))
                .ifPresent(designator -> item.add(Designators.of(
                        designator,
                        Optional.of(PersistentId.of("characteristic", part.number(), part.revision(), designator)),
                        drawing.designator())));
        item.add("CharacteristicNominalId", nominal.id()).add(places.of(drawing));
        items.add(item);
        return item;
    }

    /**
     * Absent where the drawing asks for nothing.
     *
     * @param standard id of the standard the characteristics are by
     */
    Optional<XmlElement> element(String standard) {
        return definitions.isEmpty()
                ? Optional.empty()
                : Optional.of(new XmlElement("Characteristics")
                        .add("FormalStandardId", standard)
                        .addList("CharacteristicDefinitions", definitions)
                        .addList("CharacteristicNominals", nominalElements)
                        .addList("CharacteristicItems", items));
    }

    /** Absent where the drawing asks for nothing. */
    Optional<XmlElement> measured() {
        return measured.isEmpty()
                ? Optional.empty()
                : Optional.of(
                        new XmlElement("MeasuredCharacteristics").addList("CharacteristicMeasurements", measured));
    }
}
