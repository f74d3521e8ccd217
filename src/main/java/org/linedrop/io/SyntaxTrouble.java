package org.linedrop.io;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.linedrop.fact.Problem;
import org.snakeyaml.engine.v2.common.ScalarStyle;
import org.snakeyaml.engine.v2.events.Event;
import org.snakeyaml.engine.v2.events.ScalarEvent;
import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;

/**
 * What a beginner did when the YAML reader gives up. The reader names the place where it noticed; this names the line
 * that has to be changed. Its wording was seen by trying every slip (see the test); a wording not known here ends in
 * the general message, never in an exception.
 */
final class SyntaxTrouble {
    private static final Pattern LAST_WORD = Pattern.compile("([^\\s,{\\[\"']+(?: [^\\s,{\\[\"']+)*)[\"']? *$");
    private static final Pattern PLAIN_WORD = Pattern.compile("([^\\s,{}\\[\\]:]+)\\s*$");

    private final SourceLines lines;
    private final TreeBuilder builder;
    private final String context;
    private final String complaint;
    private final int line;
    private final int column;
    private final int startLine;
    private final int startColumn;

    SyntaxTrouble(SourceLines lines, TreeBuilder builder, MarkedYamlEngineException e) {
        this.lines = lines;
        this.builder = builder;
        this.context = e.getContext() == null ? "" : e.getContext();
        this.complaint = e.getProblem() == null ? "" : e.getProblem();
        this.line = e.getProblemMark().map(Mark::getLine).orElse(0) + 1;
        this.column = e.getProblemMark().map(Mark::getColumn).orElse(0) + 1;
        this.startLine = e.getContextMark().map(Mark::getLine).orElse(line - 1) + 1;
        this.startColumn = e.getContextMark().map(Mark::getColumn).orElse(column - 1) + 1;
    }

    Problem problem() {
        if (!builder.cuts().isEmpty()) {
            return remark(builder.cuts().get(0));
        }
        if (complaint.contains("(TAB)") && lines.upTo(line, column).isBlank()) {
            return lines.problem(line, column, "line " + line + " starts with a tab", "Use two spaces per step");
        }
        if (quotedOverLines().isPresent()) {
            return quotedOverLines().get();
        }
        if (context.contains("quoted scalar")) {
            return complaint.contains("escape")
                    ? lines.problem(
                            line,
                            column,
                            "a \\ stands between double quotes",
                            "Use single quotes, or write it twice: \\\\")
                    : lines.problem(startLine, startColumn, openQuote(lines.from(startLine, startColumn)), "");
        }
        if (context.contains("block scalar")
                || complaint.contains("character '>'")
                || complaint.contains("character '|'")) {
            return blockText();
        }
        if (complaint.contains("cannot start any token")
                || context.contains("an alias")
                || context.contains("an anchor")
                || context.contains("a tag")
                || context.contains("directive")) {
            return sign();
        }
        if (complaint.contains("sequence entries are not allowed") || complaint.contains("but found '-'")) {
            return dash();
        }
        if (complaint.contains("mapping values are not allowed")) {
            return secondColon();
        }
        if (complaint.contains("could not find expected ':'")) {
            return noColon(startLine);
        }
        if (context.contains("flow mapping") || context.contains("flow sequence")) {
            return braces();
        }
        return misplaced();
    }

    static String openQuote(String from) {
        return "this " + (from.startsWith("'") ? "'" : "\"") + " is not closed on its line";
    }

    private Problem remark(TreeBuilder.Cut cut) {
        if (cut.size().isEmpty()) {
            return lines.problem(
                    cut.line(),
                    cut.column(),
                    "the closing bracket stands behind \" #\"",
                    "YAML drops everything after \" #\". Put the bracket before it");
        }
        return lines.problem(
                cut.line(), cut.column(), TreeBuilder.sizeMessage(cut.value()), Slips.sizeHint(cut.size()));
    }

    /** A quotation mark that found its partner only lines later. */
    private Optional<Problem> quotedOverLines() {
        Event last = builder.last();
        if (!quoted(last) || last == null) {
            return Optional.empty();
        }
        int begins = last.getStartMark().map(Mark::getLine).orElse(0) + 1;
        int at = last.getStartMark().map(Mark::getColumn).orElse(0) + 1;
        int ends = last.getEndMark().map(Mark::getLine).orElse(0) + 1;
        return ends > begins
                ? Optional.of(lines.problem(begins, at, openQuote(lines.from(begins, at)), ""))
                : Optional.empty();
    }

    private static boolean quoted(@org.jspecify.annotations.Nullable Event event) {
        return event instanceof ScalarEvent scalar
                && (scalar.getScalarStyle() == ScalarStyle.DOUBLE_QUOTED
                        || scalar.getScalarStyle() == ScalarStyle.SINGLE_QUOTED);
    }

    private Problem blockText() {
        boolean inBraces = !context.contains("block scalar");
        int at = inBraces ? line : startLine;
        int from = inBraces ? column : startColumn;
        String value = Slips.value(lines.from(at, from), inBraces);
        if (value.isEmpty()) {
            return general();
        }
        return lines.problem(
                at, from, "\"" + SourceLines.shown(value) + "\" cannot be read here", Slips.limitHint(value));
    }

    private Problem sign() {
        int from = context.contains("for the next token") || context.isEmpty() ? column : startColumn;
        int at = context.contains("for the next token") || context.isEmpty() ? line : startLine;
        String value = Slips.value(lines.from(at, from), builder.inBraces());
        if (value.isEmpty()) {
            return general();
        }
        String message = "*%!&@".indexOf(value.charAt(0)) >= 0
                ? Slips.signMessage(value.charAt(0))
                : "a value may not begin with " + (value.charAt(0) == '\t' ? "a tab" : value.charAt(0));
        return lines.problem(at, from, message, Slips.signHint(value));
    }

    private Problem dash() {
        String value = Slips.value(lines.from(line, column), builder.inBraces());
        String item = value.startsWith("-") ? value.substring(1).strip() : value;
        if (item.matches("\\d.*")) {
            return lines.problem(
                    line,
                    column,
                    "\"- " + SourceLines.shown(item) + "\" reads as a list",
                    "Write -" + SourceLines.shown(item) + " without a space");
        }
        return lines.problem(
                line,
                column,
                "a list cannot begin here",
                "Put each item in a line of its own under the key, with \"- \" before it");
    }

    private Problem secondColon() {
        String before = lines.upTo(line, column);
        if (before.contains(": ")) {
            return lines.problem(line, column, "a second \": \" in one line", "Put the value in quotes");
        }
        int above = lines.above(line);
        if (above > 0 && !lines.line(above).contains(": ")) {
            Problem slip = noColon(above);
            if (!lines.line(above).strip().endsWith(":")) {
                return slip;
            }
        }
        return step();
    }

    private Problem step() {
        return lines.problem(
                line,
                1 + lines.indent(line),
                "line " + line + " begins in column " + (1 + lines.indent(line)) + ", where no line above it begins",
                "Lines of one step begin in one column; a step inwards is two spaces, below a key that has nothing"
                        + " behind its colon");
    }

    /** A line that was to be a key with its value and has no colon, or none that counts. */
    private Problem noColon(int at) {
        String text = lines.line(at).strip();
        String bare = text.startsWith("- ") ? text.substring(2).strip() : text;
        int indent = 1 + lines.indent(at);
        Optional<String[]> glued = Slips.glued(bare);
        if (glued.isPresent()) {
            return lines.problem(at, indent, Slips.gluedMessage(glued.get()), "");
        }
        return lines.problem(
                at,
                indent,
                "\"" + SourceLines.shown(bare) + "\" has no colon",
                "Write key: value, with a colon and a space");
    }

    private Problem braces() {
        char open = context.contains("mapping") ? '{' : '[';
        char close = context.contains("mapping") ? '}' : ']';
        if (quoted(builder.last()) && sameLineAsLast() && complaint.endsWith("<scalar>")) {
            String next = Slips.value(lines.from(line, column), true);
            return next.contains(": ")
                    ? lines.problem(line, column, "a comma is missing before \"" + bare(next) + ":\"", "")
                    : quoteClosedEarly();
        }
        String before = lines.upTo(line, column);
        boolean continuation = line > startLine
                && lines.indent(line) > lines.indent(startLine)
                && !lines.line(line).strip().startsWith("-");
        if (complaint.endsWith(" :") && (line == startLine || continuation)) {
            return missingComma(before);
        }
        if (complaint.endsWith("<scalar>") && (line == startLine || continuation)) {
            return lines.problem(
                    line,
                    column,
                    "a comma or a colon is missing before \""
                            + SourceLines.shown(Slips.value(lines.from(line, column), true)) + "\"",
                    "");
        }
        boolean alone = lines.from(startLine, startColumn).strip().length() == 1;
        return lines.problem(
                startLine, startColumn, "this " + open + " has no " + close + (alone ? "" : " on its line"), "");
    }

    /** The key of {@code "b": 2}, without its quotation marks. */
    private static String bare(String next) {
        return SourceLines.shown(next.substring(0, next.indexOf(": ")).replace("\"", ""));
    }

    private boolean sameLineAsLast() {
        Event last = builder.last();
        return last != null && last.getEndMark().map(Mark::getLine).orElse(-1) + 1 == line;
    }

    /** The key whose colon was not expected: the words between the last separator and that colon. */
    private Problem missingComma(String before) {
        if (before.substring(1 + Math.max(before.lastIndexOf(','), before.lastIndexOf('{')))
                .contains(": ")) {
            if (valueIsOneWord(before)) {
                return lines.problem(line, column, "a second \": \" in one value", "Put the value in quotes");
            }
            return commaBefore(PLAIN_WORD.matcher(before), before);
        }
        return commaBefore(LAST_WORD.matcher(before), before);
    }

    private Problem commaBefore(Matcher word, String before) {
        String key = word.find() ? word.group(1) : before.strip();
        return lines.problem(line, column, "a comma is missing before \"" + key.replace("\"", "") + ":\"", "");
    }

    /** {@code source: sheet: page 4}: between the two colons stands one word, so nothing was left out before it. */
    private static boolean valueIsOneWord(String before) {
        String value = before.substring(before.lastIndexOf(": ") + 2).strip();
        return value.indexOf(' ') < 0;
    }

    private Problem quoteClosedEarly() {
        Event last = builder.last();
        int from =
                last == null ? column : last.getStartMark().map(Mark::getColumn).orElse(0) + 1;
        String value = Slips.value(lines.from(line, from), builder.inBraces());
        String better = Slips.inches(value);
        return lines.problem(
                line,
                from,
                "the quotation marks close early in " + SourceLines.shown(value),
                "Write " + SourceLines.shown(better));
    }

    private Problem misplaced() {
        if (complaint.contains("found '<scalar>'") && quoted(builder.last()) && sameLineAsLast()) {
            return quoteClosedEarly();
        }
        if (complaint.contains("found '}'") || complaint.contains("found ']'")) {
            char close = complaint.contains("'}'") ? '}' : ']';
            return lines.problem(
                    line,
                    column,
                    "this " + close + " has no " + (close == '}' ? '{' : '['),
                    "Delete it, or add the other");
        }
        if (complaint.contains("found ','")) {
            return lines.problem(line, column, "a comma stands where nothing is listed", "Delete it");
        }
        if (complaint.contains("block mapping start") || complaint.contains("block sequence start")) {
            return step();
        }
        if (lines.line(line).strip().startsWith(":")) {
            return lines.problem(line, column, "nothing stands before the colon", "A key is a word and a colon");
        }
        if (complaint.contains("mapping keys are not allowed")) {
            return lines.problem(line, column, "a question mark may not begin a value", "Put the value in quotes");
        }
        if (lines.line(startLine).startsWith("%") || lines.line(line - 1).startsWith("%")) {
            int at = lines.line(startLine).startsWith("%") ? startLine : line - 1;
            return lines.problem(
                    at, 1, "a line may not begin with %", "Delete the line, or write the % behind its number");
        }
        if (complaint.contains("found '<scalar>'") && !lines.upTo(line, column).isBlank()) {
            return lines.problem(
                    line,
                    column,
                    "\"" + SourceLines.shown(lines.from(line, column)) + "\" stands behind a value that is complete",
                    "Put it inside the brackets or quotation marks, or in a line of its own");
        }
        return general();
    }

    private Problem general() {
        String text = lines.line(line).strip();
        if (text.startsWith("-{") || text.startsWith("-[")) {
            return lines.problem(
                    line,
                    1 + lines.indent(line),
                    "put a space after the dash: \"- " + SourceLines.shown(text.substring(1)) + "\"",
                    "");
        }
        String near = SourceLines.shown(lines.from(line, column));
        if (near.isEmpty()) {
            near = SourceLines.shown(lines.line(line));
        }
        return lines.problem(
                line,
                column,
                near.isEmpty() ? "the file ends too early" : "line " + line + " cannot be read at \"" + near + "\"",
                "Look here and in the line above for a missing colon, comma, quotation mark or bracket");
    }
}
