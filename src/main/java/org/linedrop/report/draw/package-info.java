/**
 * Marks on a page: elements that escape what they are given, the width of text, axes, shades, and the places of a
 * circuit diagram. Knows nothing of plumbing and reads no result.
 */
@Inner
@NullMarked
package org.linedrop.report.draw;

import org.jspecify.annotations.NullMarked;
import org.linedrop.fact.Inner;
