package org.linedrop.study;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.ObjectInputStream;
import java.io.ObjectOutputStream;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.linedrop.Examples;
import org.linedrop.circuit.Circuit;
import org.linedrop.study.kit.OwnFigures;
import org.linedrop.units.Display;

class AnswersSerialiseTest {
    private static final Circuit FEED = Examples.circuit("fuel-feed-516.yaml");

    @SuppressWarnings("unchecked")
    private static <T> T copied(T answer) throws IOException, ClassNotFoundException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ObjectOutputStream out = new ObjectOutputStream(bytes)) {
            out.writeObject(answer);
        }
        try (ObjectInputStream in = new ObjectInputStream(new ByteArrayInputStream(bytes.toByteArray()))) {
            return (T) in.readObject();
        }
    }

    @Test
    void aCheckedFeedComesBackWithItsNetworkAndItsBits() throws Exception {
        FeedCheck check = FeedCheck.of(FEED, List.of(FEED.caseName()));
        FeedCheck copy = copied(check);
        CaseCheck there = copy.cases().get(0);
        CaseCheck here = check.cases().get(0);
        assertThat(there.sentence(Display.METRIC)).isEqualTo(here.sentence(Display.METRIC));
        assertThat(there.result().usual().rows())
                .isEqualTo(here.result().usual().rows());
        assertThat(there.result().limits()).isEqualTo(here.result().limits());
        assertThat(there.result().smallest().points())
                .isEqualTo(here.result().smallest().points());
        assertThat(there.result().usual().explain("feed 1.1"))
                .isEqualTo(here.result().usual().explain("feed 1.1"));
    }

    @Test
    void answersOfSearchAndDiagnosisComeBackEqual() throws Exception {
        SizeQuestion question = new SizeQuestion(
                SizeQuestion.Objective.SMALLEST, List.of("feed"), List.of(), List.of(6, 8), OwnFigures.NONE, 100, 1);
        SizeAnswer sizes = SizeSearch.of(FEED, question, Progress.NONE);
        assertThat(copied(sizes)).isEqualTo(sizes);
        assertThat(FEED.with(sizes.sets().get(0).changes()).runs().get(1).parts())
                .as("the changes of a set make the circuit so")
                .hasSize(5);
        List<Reading> readings = List.of(Reading.read(FEED, "rail 310 kPa"), Reading.read(FEED, "feed 216 L/h"));
        Diagnosis diagnosis = Diagnosis.of(FEED, readings);
        assertThat(copied(diagnosis)).isEqualTo(diagnosis);
        ToleranceBand band =
                ToleranceBand.of(FEED, new BandQuestion(List.of(FEED.caseName()), 16, 0, 0, 0), 1, Progress.NONE);
        assertThat(copied(band)).isEqualTo(band);
    }
}
