/**
 * Plans made and changed at the tablet: which there are, the steps of one, and the forms by which its head, a step and
 * a new issue are told. Every change is kept as a draft; what is written is the plan file a person can read.
 */
package org.tenthwise.app.ui.plan;
