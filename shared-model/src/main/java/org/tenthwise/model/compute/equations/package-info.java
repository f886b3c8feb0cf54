/**
 * Equations with several unknowns, for the sums in the packages beside this one. Bare numbers in, bare numbers out:
 * what they stand for, and in what unit, the caller knows. Not seen outside the module.
 */
package org.tenthwise.model.compute.equations;
