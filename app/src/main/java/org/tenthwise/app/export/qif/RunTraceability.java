package org.tenthwise.app.export.qif;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.tenthwise.app.export.Evidence;
import org.tenthwise.app.export.RecordName;
import org.tenthwise.app.store.RunHead;
import org.tenthwise.model.plan.IssueOfPlan;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.record.DrawingAccount;
import org.tenthwise.model.record.Sheet;
import org.tenthwise.model.run.Baseline;
import org.tenthwise.model.run.Event;
import org.tenthwise.model.run.Occasion;
import org.tenthwise.model.run.Purpose;
import org.tenthwise.model.run.Signature;
import org.tenthwise.model.run.SignedAs;
import org.tenthwise.model.words.Word;

/** Which part it was, where it was made, when and by whom it was measured, and how all of it can be proven. */
final class RunTraceability {

    private final Evidence evidence;
    private final Sheet sheet;
    private final Event.Begun begun;
    private final Occasion occasion;

    RunTraceability(Evidence evidence) {
        this.evidence = evidence;
        this.sheet = evidence.sheet();
        this.begun = sheet.run().begun();
        this.occasion = begun.occasion();
    }

    /** Of the inspection. */
    XmlElement inspection(String software, List<XmlElement> notes) {
        XmlElement inspection = new XmlElement("InspectionTraceability")
                .addSaid("OrderNumber", occasion.order())
                .add("ReportNumber", RecordName.of(sheet.run().id(), evidence.head()));
        mode().ifPresent(mode -> inspection.add("InspectionMode", mode));
        return inspection
                .add(partial())
                .addList("NotedEvents", notes)
                .add(
                        "InspectionStart",
                        NamedFacts.time(sheet.run().entries().get(0).at()))
                .add(closed().map(at -> XmlElement.text("InspectionEnd", at)))
                .add(new XmlElement("InspectionSoftwareItems")
                        .addReferences("InspectionProgramExecutionSoftware", List.of(software)))
                .add(Optional.of(sheet.run().by())
                        .filter(by -> !by.isBlank())
                        .map(by -> new XmlElement("InspectionOperator").add("Name", by)))
                .add(facts().element());
    }

    /** The standard names first articles alone; of any other run its purpose stands among the attributes. */
    private Optional<String> mode() {
        return switch (occasion.purpose()) {
            case FIRST_ARTICLE_FULL -> Optional.of("FAI_Full");
            case FIRST_ARTICLE_PARTIAL -> Optional.of("FAI_Partial");
            case NOT_STATED, FIRST_PIECE, IN_PROCESS, LAST_PIECE, MEASURED_AGAIN -> Optional.empty();
        };
    }

    /** On the ground of which run, and why. */
    private Optional<XmlElement> partial() {
        return occasion.baseline()
                .filter(baseline -> occasion.purpose() == Purpose.FIRST_ARTICLE_PARTIAL)
                .map(baseline -> new XmlElement("PartialInspection")
                        .add("BaselineProductNumber", baseline.run())
                        .add("ReasonForPartialInspection", occasion.reason()));
    }

    private Optional<String> closed() {
        return sheet.run().signatures().stream()
                .filter(Signature::closed)
                .reduce((earlier, later) -> later)
                .map(signature -> NamedFacts.time(signature.entry().at()));
    }

    /** What proves the document, and what of the run the standard has no element for. */
    private NamedAttributes facts() {
        Plan plan = sheet.plan();
        RunHead head = evidence.head();
        return new NamedAttributes()
                .and("outcome", Word.of(sheet.outcome()))
                .and(
                        "signed-against",
                        sheet.against().stream().map(Signature::signedBy).collect(Collectors.joining("; ")))
                .and("purpose", Word.of(occasion.purpose()))
                .and("reason", occasion.reason())
                .and("piece", occasion.piece().map(String::valueOf))
                .and(
                        "affected-steps",
                        occasion.affected().stream().map(String::valueOf).collect(Collectors.joining(", ")))
                .and("baseline-run", occasion.baseline().map(Baseline::run))
                .and("baseline-head", occasion.baseline().map(Baseline::head))
                .and("run", sheet.run().id())
                .and("run-entries", String.valueOf(head.place()))
                .and("last-entry", String.valueOf(head.seq()))
                .and("run-hash", head.hash())
                .and("plan-issue", plan.issue())
                .and("plan-issued-for", plan.issued().map(IssueOfPlan::reason))
                .and("plan-sha256", begun.plan().sha256())
                .and("route", plan.route())
                .and("remark", plan.remark())
                .and("balloons-missing", gaps())
                .and("not-understood", sheet.holdsWhatIsNotKnown() ? "yes" : "");
    }

    private String gaps() {
        return DrawingAccount.of(sheet).gaps().stream().map(Object::toString).collect(Collectors.joining(", "));
    }

    /** Who accepted it, and still does. */
    XmlElement version() {
        List<XmlElement> signed = sheet.run().signatures().stream()
                .filter(signature -> signature.meaning() == SignedAs.ACCEPTED && !signature.lapsed())
                .map(signature -> new XmlElement("Employee").add("Name", signature.signedBy()))
                .toList();
        return new XmlElement("Version")
                .add("TimeCreated", NamedFacts.time(evidence.stands()))
                .addList("SignOffs", signed);
    }

    /** Of the part in hand. */
    XmlElement component(XmlElement component, String process, QifStatuses statuses) {
        return component
                .add(new NamedAttributes()
                        .and("material", sheet.plan().material())
                        .and("no-lot", begun.noLot() ? "yes" : "")
                        .element())
                .addSaid("SerialNumber", begun.serial())
                .addSaid("AdditionalChanges", String.join("; ", occasion.changes()))
                .add(statuses.ofAll("Status"))
                .add(new XmlElement("Traceability")
                        .addSaid("LotNumber", begun.lot())
                        .add("ManufacturingProcessId", process));
    }

    /** Where it is made. */
    XmlElement process(XmlElement process) {
        return process.addSaid("Description", sheet.plan().route().orElse(""))
                .addSaid("Job", occasion.order())
                .addSaid("Revision", begun.part().revision())
                .addSaid("MachineIdentifier", begun.machine())
                .addSaid("OperatorIdentifier", sheet.run().by());
    }
}
