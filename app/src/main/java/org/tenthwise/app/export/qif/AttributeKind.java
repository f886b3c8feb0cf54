package org.tenthwise.app.export.qif;

import java.util.List;

/**
 * What is so or not so: a look, a limit gauge, a paper.
 *
 * @param what is asked
 */
record AttributeKind(String what) implements CharacteristicKind {

    private static final String CONFORMS = "conforms";
    private static final String CONFORMS_NOT = "does-not-conform";

    @Override
    public String name() {
        return "UserDefinedAttribute";
    }

    @Override
    public void define(XmlElement definition) {
        definition.add("WhatToMeasure", what);
    }

    @Override
    public void want(XmlElement nominal) {
        nominal.add(values("PassValues", CONFORMS)).add(values("FailValues", CONFORMS_NOT));
    }

    private static XmlElement values(String name, String value) {
        return XmlElement.list(name, List.of(XmlElement.text("StringValue", value)));
    }

    /** Nothing where neither was shown. */
    @Override
    public void measure(XmlElement measurement, ItemFound found) {
        switch (found.standing()) {
            case PASS -> measurement.add("Value", CONFORMS);
            case FAIL, CUT_AGAIN -> measurement.add("Value", CONFORMS_NOT);
            case UNPROVEN, OPEN -> {
                // no value is the answer
            }
        }
    }
}
