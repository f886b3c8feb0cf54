package org.tenthwise.app.ui.about;

/**
 * What only the opened program knows of itself.
 *
 * @param version of Tenthwise
 * @param dataAt where the ledger lies, for people
 * @param plansAt where plan files are looked for, for people
 */
public record AboutFacts(String version, String dataAt, String plansAt) {}
