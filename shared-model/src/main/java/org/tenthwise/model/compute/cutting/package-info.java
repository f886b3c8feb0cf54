/**
 * What is left to cut, the one cut that brings every size in, what to type into the offset register, and where to aim
 * while the edge wears. One class a formula; pure.
 */
package org.tenthwise.model.compute.cutting;
