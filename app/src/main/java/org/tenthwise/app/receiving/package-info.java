/**
 * Goods in: bundles of other stations, looked at whole before anything of them counts, and taken into the ledger of
 * this store as they are.
 */
package org.tenthwise.app.receiving;
