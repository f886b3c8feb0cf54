package org.tenthwise.model.run;

/** As what a person signs a first-article report; the customer does so on paper. */
public enum ReportRole {
    /** All characteristics are accounted for, and meet what is asked or are documented for a decision. */
    VERIFIED,
    /** Another person has looked it through and approves it. */
    APPROVED
}
