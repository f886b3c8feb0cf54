/**
 * What is open over all runs of a store: nothing is kept here, a matter is gone when its cause is. Every one leads to
 * the run it is of.
 */
package org.tenthwise.app.matters;
