/**
 * Names and numbers joined: rows, points, devices, limits judged, warnings, and the explanation of one row. Rows
 * re-evaluate the same laws at the solved flow, on demand.
 */
@NullMarked
package org.linedrop.result;

import org.jspecify.annotations.NullMarked;
