/**
 * What to buy and how to make it up, for one or several circuits of a vehicle: quantities only. Nothing here solves a
 * circuit, so that a kit can be made of circuits with devices that have no law yet.
 */
@NullMarked
package org.linedrop.study.kit;

import org.jspecify.annotations.NullMarked;
