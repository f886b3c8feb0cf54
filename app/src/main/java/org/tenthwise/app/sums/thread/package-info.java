/**
 * Threads: limits of size and measuring over wires. One class a sum; each reads what is given, asks the model and
 * writes the answer down.
 */
package org.tenthwise.app.sums.thread;
