/**
 * Limits of size of screw threads: a thread as a drawing designates it comes in, its limits come out, each rounded the
 * way its own standard rounds, with a word on what they rest on. The tables of ISO 965-1 and ISO 2903 and the
 * allowances of ASME B1.5 lie beside the classes as files with their source. Nothing is ever null.
 */
package org.tenthwise.model.compute.thread.limits;
