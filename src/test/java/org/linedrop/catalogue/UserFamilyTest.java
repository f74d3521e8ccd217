package org.linedrop.catalogue;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.linedrop.fact.Figure;
import org.linedrop.fact.Source;
import org.linedrop.fact.Status;

/** A family of the user's own: columns, the rest from the family it resembles. Figures invented. */
class UserFamilyTest {
    private static final Catalogue ALL = Catalogue.standard();
    private static final Source MEASURED = Source.of("user's file", Status.MEASURED);

    private static UserFamily blue(UserFamily.Row... rows) {
        return new UserFamily("blue race hose", "race PTFE", List.of(rows));
    }

    private static UserFamily.Row row(String size, double boreM, double endBoreM) {
        return new UserFamily.Row(
                size,
                Figure.exact(boreM, MEASURED),
                Figure.exact(endBoreM, MEASURED),
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                null);
    }

    @Test
    void takesWhatIsGivenAndTheRestFromLike() {
        Catalogue mine = ALL.with(blue(row("-6", 7.9e-3, 6.6e-3), row("-8", 10.2e-3, 8.9e-3)));
        HoseSize hose = mine.hose("blue race hose -6");
        HoseSize like = ALL.hose("race PTFE -6");
        assertThat(hose.boreM()).isEqualTo(Figure.exact(7.9e-3, MEASURED));
        assertThat(hose.liner()).isEqualTo("PTFE");
        assertThat(hose.roughnessM()).isEqualTo(like.roughnessM());
        assertThat(Objects.requireNonNull(hose.minBendRadiusM()).value())
                .isEqualTo(Objects.requireNonNull(like.minBendRadiusM()).value());
        assertThat(hose.minBendRadiusM().source().locator()).startsWith("taken from race PTFE");
        EndSize end = mine.end(hose, "swept", 90);
        assertThat(end.nippleBoreM()).isEqualTo(Figure.exact(6.6e-3, MEASURED));
        assertThat(end.build()).isEqualTo("three-piece");
        assertThat(mine.families()).hasSize(ALL.families().size() + 1);
        assertThat(ALL.families()).noneMatch(f -> f.name().equals("blue race hose"));
        assertThat(HoseLookup.ofSize(mine, "-6"))
                .hasSize(HoseLookup.ofSize(ALL, "-6").size() + 1);
    }

    @Test
    void ratingsOfAnotherHoseAreGuesses() {
        HoseSize hose = ALL.with(new UserFamily("my hose", "MIL-H-8794", List.of(row("-6", 8e-3, 7e-3))))
                .hose("my hose -6");
        Figure working = Objects.requireNonNull(hose.workingPressurePa());
        assertThat(working.value())
                .isEqualTo(Objects.requireNonNull(ALL.hose("MIL-H-8794 -6").workingPressurePa())
                        .value());
        assertThat(working.status()).isEqualTo(Status.GUESSED);
        assertThat(Ratings.check(hose, 1e5, Double.NaN, Double.NaN, Double.NaN)
                        .get(0)
                        .verdict())
                .isEqualTo(RatingResult.Verdict.NOT_JUDGED);
    }

    @Test
    void aSizeThatLikeDoesNotHaveNeedsItsBore() {
        Catalogue mine = ALL.with(blue(row("-5", 6.3e-3, 5e-3)));
        assertThat(mine.hose("blue race hose -5").minBendRadiusM()).isNull();
        assertThat(mine.end(mine.hose("blue race hose -5"), "straight", 0)
                        .nippleLengthM()
                        .value())
                .isEqualTo(15e-3);
        assertThatThrownBy(() -> ALL.with(blue(new UserFamily.Row(
                        "-5", null, null, null, null, null, null, null, null, null, null, null, null))))
                .isInstanceOf(CatalogueException.class)
                .hasMessage("blue race hose -5 has no bore, and race PTFE has no -5. Give bore:");
    }

    @Test
    void refusesNamesAndSizes() {
        assertThatThrownBy(() -> ALL.with(new UserFamily("race PTFE", "race rubber", List.of())))
                .hasMessageContaining("already has a hose family");
        assertThatThrownBy(() -> ALL.with(new UserFamily("x", "race PTEF", List.of())))
                .hasMessageContaining("Did you mean race PTFE?");
        assertThatThrownBy(() -> ALL.with(blue(row("3/8 in", 8e-3, 6e-3)))).hasMessageContaining("sized by dash");
    }
}
