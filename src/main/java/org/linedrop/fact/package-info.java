/**
 * What is known and from where, what is wrong and where: figures with their band and source, formulas,
 * explanations, notices and problems. Nothing here knows of hoses, files or units; it imports nothing of ours.
 */
@NullMarked
package org.linedrop.fact;

import org.jspecify.annotations.NullMarked;
