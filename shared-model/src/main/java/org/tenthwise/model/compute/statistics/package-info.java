/**
 * What a handful of parts can tell about the next ones, and how little that often is. Readings come in as the decimals
 * that were typed; sums of them are exact, and only what needs a distribution goes through binary fractions. One class
 * a formula; each says from how many readings on it means something. Nothing is ever null.
 */
package org.tenthwise.model.compute.statistics;
