package org.tenthwise.app.export.qif;

import java.util.List;
import org.tenthwise.app.export.Evidence;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.record.AccountLine;
import org.tenthwise.model.record.Sheet;

/** The whole document as a tree, its parts in the order of the standard. */
final class QifDocument {

    private static final String NAME_SPACE = "http://qifstandards.org/xsd/qif3";
    private static final String VERSION = "3.0.0";
    private static final String PROGRAM = "Tenthwise";

    private final Evidence evidence;
    private final Sheet sheet;
    private final XmlIds ids = new XmlIds();
    private final FileUnits units;
    private final Datums datums = new Datums(ids);
    private final MeasurementDevices devices = new MeasurementDevices(ids);
    private final NotedEvents notes;
    private final QifStatuses statuses;
    private final RunTraceability traceability;
    private final XmlElement standard;
    private final XmlElement software;
    private final DesignedPart product;

    private QifDocument(Evidence evidence) {
        this.evidence = evidence;
        this.sheet = evidence.sheet();
        Plan plan = sheet.plan();
        this.units = new FileUnits(plan.unit());
        this.notes = NotedEvents.of(sheet);
        this.statuses = new QifStatuses(sheet);
        this.traceability = new RunTraceability(evidence);
        this.standard = standard();
        this.software = ids.give(new XmlElement("Software"))
                .add("VendorName", PROGRAM)
                .add("ApplicationName", PROGRAM)
                .add("Version", evidence.version());
        this.product = new DesignedPart(ids, plan);
    }

    static XmlElement of(Evidence evidence) {
        return new QifDocument(evidence).element();
    }

    /** The standard wants to know by which one the characteristics are toleranced; a plan does not say. */
    private XmlElement standard() {
        return ids.give(new XmlElement("Standard"))
                .add(new XmlElement("Organization").add("OtherStandardsOrganization", "as-drawn"))
                .add("Designator", "as-drawn");
    }

    private XmlElement element() {
        XmlElement component = ids.give(new XmlElement("ActualComponent"));
        XmlElement process = ids.give(new XmlElement("ManufacturingProcessTraceability"));
        List<XmlElement> noted = notes.elements(ids);
        CharacteristicAspects characteristics = characteristics(component.id());
        XmlElement results = results(component, process, noted, characteristics);
        XmlElement document = new XmlElement("QIFDocument")
                .with("xmlns", NAME_SPACE)
                .with("versionQIF", VERSION)
                .add("QPId", persistent("document"))
                .add(traceability.version())
                .addList("StandardsDefinitions", List.of(standard))
                .addList("SoftwareDefinitions", List.of(software))
                .add(units.element());
        datums.addTo(document);
        devices.addTo(document);
        document.add(product.element());
        document.add(characteristics.element(standard.id()));
        document.add(results);
        document.addList("ManufacturingProcessTraceabilities", List.of(traceability.process(process)));
        return document.with("idMax", String.valueOf(ids.last()));
    }

    /** Of this state of the run, as this release tells it. */
    private String persistent(String what) {
        return PersistentId.of(what, evidence.head().hash(), evidence.version());
    }

    private CharacteristicAspects characteristics(String component) {
        Plan plan = sheet.plan();
        CharacteristicAspects all = new CharacteristicAspects(
                ids,
                plan.part(),
                units,
                datums,
                new DrawnNominals(plan.unit()),
                new DrawingPlaces(product.drawing()),
                new MeasuredItems(sheet, ids, devices, notes, statuses, component));
        DrawnRequirements requirements = DrawnRequirements.of(sheet);
        for (List<AccountLine.Checked> lines : requirements.checked()) {
            all.add(lines);
        }
        for (AccountLine.NotInThisRun left : requirements.leftOut()) {
            all.add(left);
        }
        for (AccountLine.Unanswered open : requirements.unanswered()) {
            all.add(open);
        }
        return all;
    }

    private XmlElement results(
            XmlElement component, XmlElement process, List<XmlElement> noted, CharacteristicAspects characteristics) {
        XmlElement of = ids.give(new XmlElement("MeasurementResults"))
                .add(traceability.inspection(software.id(), noted))
                .add("ThisResultsInstanceQPId", persistent("results"))
                .add(characteristics.measured())
                .add(statuses.ofAll("InspectionStatus"))
                .addReferences("ActualComponentIds", List.of(component.id()));
        traceability.component(component, process.id(), statuses);
        return new XmlElement("Results")
                .addList("MeasurementResultsSet", List.of(of))
                .addList("ActualComponentSets", List.of(XmlElement.list("ActualComponentSet", List.of(component))));
    }
}
