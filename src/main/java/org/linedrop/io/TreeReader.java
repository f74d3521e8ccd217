package org.linedrop.io;

import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import org.linedrop.circuit.form.Tree;
import org.linedrop.fact.Place;
import org.linedrop.fact.Problem;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.events.Event;
import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;
import org.snakeyaml.engine.v2.exceptions.YamlEngineException;
import org.snakeyaml.engine.v2.parser.ParserImpl;
import org.snakeyaml.engine.v2.scanner.StreamReader;

/**
 * YAML or JSON to a {@link Tree}. Never throws on what a file holds: what cannot be read becomes a {@link Problem} in
 * words for somebody who does not know YAML.
 *
 * <p>Only the plain part of YAML is read: no aliases, anchors, tags, block texts or second documents. Nesting is counted
 * on the event stream, because a tree composer overflows the stack between 1,000 and 5,000 levels.
 */
final class TreeReader {
    /** A file may have this many bytes, some hundred times a large circuit. */
    static final int LARGEST_BYTES = 1_000_000;

    /** Mappings and lists may stand in each other this deep. */
    static final int DEEPEST = 100;

    private TreeReader() {}

    /**
     * Reads a file from a stream, at most {@link #LARGEST_BYTES} and one of it.
     *
     * @param file   name of the file for the problems
     * @param stream the file; not closed
     * @param silent keys that name no element of their own: the items of a list under {@code parts} of the run
     *               {@code feed} are {@code feed 1}, {@code feed 2}, if {@code parts} is silent
     * @return the tree or what is wrong
     * @throws IOException when the stream cannot be read
     */
    static Reading read(String file, InputStream stream, Collection<String> silent) throws IOException {
        return read(file, stream.readNBytes(LARGEST_BYTES + 1), silent);
    }

    /**
     * Reads a file from its bytes: UTF-8 with or without byte order mark, or UTF-16 with it.
     *
     * @param file   name of the file for the problems
     * @param bytes  the file, not modified
     * @param silent keys that name no element of their own
     * @return the tree or what is wrong
     */
    static Reading read(String file, byte[] bytes, Collection<String> silent) {
        if (bytes.length > LARGEST_BYTES) {
            return tooLarge(file);
        }
        List<Problem> problems = new ArrayList<>();
        String text = TextDecoder.decode(file, bytes, problems);
        return problems.isEmpty() ? readTidy(file, text, silent) : failed(problems);
    }

    /**
     * Reads a file from its text.
     *
     * @param file   name of the file for the problems
     * @param text   the text; a byte order mark at its start is dropped
     * @param silent keys that name no element of their own
     * @return the tree or what is wrong
     */
    static Reading read(String file, String text, Collection<String> silent) {
        return text.length() > LARGEST_BYTES ? tooLarge(file) : readTidy(file, TextDecoder.tidy(text), silent);
    }

    private static Reading readTidy(String file, String text, Collection<String> silent) {
        List<Problem> characters = TextDecoder.check(file, text);
        if (!characters.isEmpty()) {
            return failed(characters);
        }
        LoadSettings settings = LoadSettings.builder()
                .setLabel(file)
                .setCodePointLimit(2 * LARGEST_BYTES)
                .setMaxAliasesForCollections(0)
                .build();
        SourceLines lines = new SourceLines(file, text);
        TreeBuilder builder = new TreeBuilder(lines, silent);
        try {
            // Not through the api.lowlevel package: the module does not export it.
            Iterator<Event> events = new ParserImpl(settings, new StreamReader(settings, text));
            while (events.hasNext() && builder.fatal().isEmpty()) {
                builder.take(events.next());
            }
        } catch (MarkedYamlEngineException e) {
            return failed(List.of(new SyntaxTrouble(lines, builder, e).problem()));
        } catch (NumberFormatException e) { // what the parser makes of a unicode escape before the end of the file
            return failed(List.of(lines.problem(
                    (int) text.lines().count(),
                    1,
                    "the file ends within a text, after \\u",
                    "Close the text with a quotation mark: is the file complete?")));
        } catch (YamlEngineException e) {
            return failed(List.of(lines.problem(
                    1, 1, "the file cannot be read", "Lines that begin with % or --- are not needed: delete them")));
        }
        return builder.fatal().map(problem -> failed(List.of(problem))).orElseGet(builder::reading);
    }

    private static Reading failed(List<Problem> problems) {
        return new Reading(Optional.empty(), problems);
    }

    private static Reading tooLarge(String file) {
        return failed(List.of(new Problem(
                new Place(file, 0, 0, ""),
                "",
                "",
                "the file is larger than " + LARGEST_BYTES + " bytes",
                "A circuit has a few thousand: is this the right file?")));
    }
}
