/** Sizes, limits, plans, what was done in a run, the sums and the verdicts. Pure: no screen, no SQL, no files. */
module org.tenthwise.model {
    requires org.apache.commons.statistics.distribution;
    requires com.ibm.icu;

    uses org.tenthwise.model.words.Vocabulary;

    provides org.tenthwise.model.words.Vocabulary with
            org.tenthwise.model.words.ModelVocabulary;

    exports org.tenthwise.model.words;
    exports org.tenthwise.model.quantity;
    exports org.tenthwise.model.tolerance;
    exports org.tenthwise.model.callout;
    exports org.tenthwise.model.gauge;
    exports org.tenthwise.model.table;
    exports org.tenthwise.model.thread;
    exports org.tenthwise.model.plan;
    exports org.tenthwise.model.run;
    exports org.tenthwise.model.verdict;
    exports org.tenthwise.model.worked;
    exports org.tenthwise.model.record;
    exports org.tenthwise.model.compare;
    exports org.tenthwise.model.firstarticle;
    exports org.tenthwise.model.compute.chain;
    exports org.tenthwise.model.compute.comparison;
    exports org.tenthwise.model.compute.cutting;
    exports org.tenthwise.model.compute.dovetail;
    exports org.tenthwise.model.compute.drilling;
    exports org.tenthwise.model.compute.eccentric;
    exports org.tenthwise.model.compute.expression;
    exports org.tenthwise.model.compute.fit;
    exports org.tenthwise.model.compute.form;
    exports org.tenthwise.model.compute.gear;
    exports org.tenthwise.model.compute.groove;
    exports org.tenthwise.model.compute.keyway;
    exports org.tenthwise.model.compute.polygon;
    exports org.tenthwise.model.compute.radius;
    exports org.tenthwise.model.compute.position;
    exports org.tenthwise.model.compute.roughness;
    exports org.tenthwise.model.compute.gauging;
    exports org.tenthwise.model.compute.roundness;
    exports org.tenthwise.model.compute.statistics;
    exports org.tenthwise.model.compute.taper;
    exports org.tenthwise.model.compute.temperature;
    exports org.tenthwise.model.compute.thread;
    exports org.tenthwise.model.compute.thread.limits;
    exports org.tenthwise.model.compute.uncertainty;
    exports org.tenthwise.model.compute.zone;
}
