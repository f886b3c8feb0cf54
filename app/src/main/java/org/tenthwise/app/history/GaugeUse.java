package org.tenthwise.app.history;

import java.util.Optional;
import org.tenthwise.model.gauge.GaugeKind;

/**
 * A gauge as it was set for a step.
 *
 * @param seq place in the ledger
 * @param reference mark of the master or of the wires it was set on
 */
public record GaugeUse(long seq, int step, GaugeKind kind, String mark, Optional<String> reference) {}
