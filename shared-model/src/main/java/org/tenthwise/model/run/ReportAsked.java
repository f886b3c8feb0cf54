package org.tenthwise.model.run;

import java.util.List;
import org.tenthwise.model.plan.PartId;
import org.tenthwise.model.words.Refused;

/**
 * What was asked for a first-article report, which no run knows. What nobody said is empty, and is left blank on the
 * forms.
 *
 * @param identifier of the report, unique in the shop
 * @param part number and revision it is on
 * @param edition of the standard the forms follow, which the contract names
 * @param extent of the report
 * @param reason why there is one; of a full one by the later edition too
 * @param baseline what a partial one stands on: part number and revision, and which report or run
 * @param affected the characteristics of a partial one, by balloon or by name; empty for a full one
 * @param order number of the purchase order
 * @param organization who made the part and reports on it
 * @param supplierCode the code the customer has for it
 * @param route number of the route with its issue, where the plan does not name it
 * @param changes in force that neither drawing nor plan name
 * @param assembly whether the part is an assembly; otherwise it is a detail part
 * @param comments in words of whoever draws it up
 */
public record ReportAsked(
        String identifier,
        PartId part,
        Edition edition,
        Extent extent,
        String reason,
        String baseline,
        List<String> affected,
        String order,
        String organization,
        String supplierCode,
        String route,
        List<String> changes,
        boolean assembly,
        String comments) {

    /** An edition of the standard that the three forms are arranged by. */
    public enum Edition {
        B,
        C
    }

    /** How much of the drawing a report is on. */
    public enum Extent {
        FULL,
        PARTIAL
    }

    public ReportAsked {
        affected = affected.stream().distinct().toList();
        changes = List.copyOf(changes);
        if (identifier.isBlank()) {
            throw new Refused("model.report.identifier");
        }
        if (extent == Extent.PARTIAL && (baseline.isBlank() || reason.isBlank() || affected.isEmpty())) {
            throw new Refused("model.report.partial");
        }
        if (extent == Extent.FULL && !affected.isEmpty()) {
            throw new Refused("model.report.full");
        }
    }

    /** The same report with what it stands on said so. */
    public ReportAsked standingOn(String what) {
        return new ReportAsked(
                identifier,
                part,
                edition,
                extent,
                reason,
                what,
                affected,
                order,
                organization,
                supplierCode,
                route,
                changes,
                assembly,
                comments);
    }

    public boolean isPartial() {
        return extent == Extent.PARTIAL;
    }
}
