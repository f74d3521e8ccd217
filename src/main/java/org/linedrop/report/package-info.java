/**
 * Answers as people and programs read them: one column list per row type, rendered as text, CSV or JSON. Converts
 * units and computes nothing.
 */
@NullMarked
package org.linedrop.report;

import org.jspecify.annotations.NullMarked;
