package org.tenthwise.app.store;

/**
 * The last entry of a ledger: who knows it can tell whether the ledger was changed or cut short since.
 *
 * @param seq 0 for an empty ledger
 * @param hash {@link Chain#START} for an empty ledger
 */
public record Head(long seq, String hash) {

    public static final Head OF_NOTHING = new Head(0, Chain.START);
}
