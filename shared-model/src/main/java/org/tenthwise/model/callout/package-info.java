/**
 * One reader for what stands on drawings: {@code 4X Ø8 +0.1/0 ↧12}, {@code M6x1-6H}, {@code ⟂ 0.02 A}. A text goes in
 * as it is drawn, its parts come out, each with kind, size, limits and count; what can be read in two ways is refused
 * with what is doubtful and what would be right. Nothing is ever null.
 */
package org.tenthwise.model.callout;
