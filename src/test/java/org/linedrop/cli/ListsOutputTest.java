package org.linedrop.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.linedrop.report.Golden;

/** What the lists of the catalogue and comparisons look like, and what is said to who asks for what is not there. */
class ListsOutputTest {
    /** What a run did. */
    private record Run(int code, String out, String err) {}

    private static Run run(String arguments) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        String[] words = arguments.split(" ", -1);
        for (int i = 0; i < words.length; i++) {
            words[i] = words[i].replace('_', ' ');
        }
        int code = Runner.run(words, out, err);
        return new Run(code, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
    }

    /** Underscores stand for spaces within a word. */
    @ParameterizedTest
    @CsvSource({
        "catalogue sizes,                                        catalogue-sizes.txt",
        "catalogue sizes --dash 6AN --units us,                  catalogue-sizes-6.us.txt",
        "catalogue hoses --dash 6,                               catalogue-hoses-6.txt",
        "catalogue hoses --dash -8 --fluid E85_summer --units us, catalogue-hoses-8.us.txt",
        "catalogue hoses --liner FKM,                            catalogue-hoses-fkm.txt",
        "catalogue nipples --dash 6,                             catalogue-nipples-6.txt",
        "catalogue tubes --dash 5,                               catalogue-tubes-5.txt",
        "catalogue tubes --material aluminium --units us,        catalogue-tubes-aluminium.us.txt",
        "catalogue compatibility --fluid E85_summer,             catalogue-compatibility-e85.txt",
        "catalogue compatibility --family push-on,               catalogue-compatibility-push-on.txt",
        "catalogue fluids,                                       catalogue-fluids.txt",
        "catalogue fluids --temperature 104_F --units us,        catalogue-fluids-104.us.txt",
        "catalogue fluids --fluid engine_oil_15W-50,             catalogue-fluid-15w50.txt",
        "catalogue fluids --fluid E85_winter --units us,         catalogue-fluid-e85.us.txt",
        "catalogue ends --dash 6,                                catalogue-ends-6.txt",
        "catalogue ends --dash 6 --family race_PTFE --fluid E85_summer --temperature 40_C --flow 216_L/h,"
                + " catalogue-ends-cost.txt",
        "compare --fluid E85_summer --temperature 40_C --flow 216_L/h --dash 6_8_10, compare-e85.txt",
        "compare --fluid engine_oil_15W-50 --temperature 110_C --flow 45_L/min --length 2_m --dash 12 --units us,"
                + " compare-oil.us.txt",
        "catalogue --help,                                       catalogue-help.txt",
        "catalogue hoses --help,                                 catalogue-hoses-help.txt"
    })
    void pagesAreAsTheyWereReadAndFoundGood(String arguments, String golden) {
        Run run = run(arguments);
        assertThat(run.err()).isEmpty();
        assertThat(run.code()).isZero();
        assertThat(run.out().lines()).allMatch(line -> line.codePointCount(0, line.length()) <= 120);
        Golden.same(golden, run.out());
    }

    @ParameterizedTest
    @CsvSource({
        "catalogue sizes --dash 6 --format json,                          catalogue-sizes-6.json",
        "catalogue hoses --dash 6 --fluid E85_summer --format csv,        catalogue-hoses-6.csv",
        "catalogue hoses --family race_PTFE --dash 6 --format json,       catalogue-hoses-ptfe-6.json",
        "catalogue nipples --dash 6 --format csv --units us,              catalogue-nipples-6.us.csv",
        "catalogue tubes --dash 5 --format csv,                           catalogue-tubes-5.csv",
        "catalogue compatibility --liner PTFE --format csv,               catalogue-compatibility-ptfe.csv",
        "catalogue fluids --format csv,                                   catalogue-fluids.csv",
        "catalogue fluids --fluid water --temperature 20_C --format json, catalogue-fluid-water.json"
    })
    void tablesForProgramsAreAsTheyWereReadAndFoundGood(String arguments, String golden) {
        Run run = run(arguments);
        assertThat(run.err()).isEmpty();
        assertThat(run.code()).isZero();
        Golden.sameToNineDigits(golden, run.out());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "catalogue | which list? Write for example linedrop catalogue hoses. Lists: sizes, hoses, ends, nipples",
                "catalogue hose | no command \"hose\". Did you mean hoses?",
                "catalogue hoses 6 | \"6\" is one argument too many: put a name with spaces in quotes",
                "catalogue hoses --dsh 6 | no option \"--dsh\". Did you mean --dash?",
                "catalogue hoses --dash 7 | no dash size -7. It must be one of: -2, -3, -4",
                "catalogue hoses --dash six | --dash \"six\" is no dash size. Write --dash 6",
                "catalogue hoses --family rase_PTFE | no hose family is called \"rase PTFE\". Did you mean race PTFE?",
                "catalogue hoses --liner PTEF | no liner is called \"PTEF\". Did you mean PTFE?",
                "catalogue hoses --family race_PTFE --liner NBR | race PTFE has no liner of NBR. Leave out --liner",
                "catalogue hoses --fluid E85_sumer | fluid \"E85 sumer\" is not known. Did you mean \"E85 summer\"",
                "catalogue nipples --family race_ruber | Did you mean race rubber?",
                "catalogue tubes --material steal | no tube material is called \"steal\". Did you mean steel?",
                "catalogue compatibility --fluid petrl_summer | Did you mean \"petrol summer\"",
                "catalogue fluids --fluid petrolsumer | Did you mean \"petrol summer\"",
                "catalogue fluids --temperature 40 | \"40\" has no unit. Celsius? Write 40 C",
                "catalogue fluids --format txt | --format \"txt\" is none of text, json, csv. Did you mean text?",
                "catalogue fluids --out src | --out src is a directory"
            })
    void whatIsNotThereIsSaidInPlainWords(String arguments, String message) {
        Run run = run(arguments);
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err()).contains(message).hasLineCount(1);
        assertThat(run.out()).isEmpty();
    }

    @Test
    void aFluidWithoutStateThereIsListedWithoutFigures() {
        Run cold = run("catalogue fluids --temperature -50_C");
        assertThat(cold.code()).isZero();
        assertThat(cold.out().lines().filter(line -> line.startsWith("water ")))
                .singleElement()
                .asString()
                .matches("water +- +A +- +A +- +A +0 +130 .*");
        assertThat(run("catalogue fluids --fluid water --temperature -50_C").out())
                .contains("no state is given");
    }

    @Test
    void theListIsWrittenWholeToAFile(@TempDir Path folder) throws Exception {
        Path file = folder.resolve("hoses.csv");
        Run run = run("catalogue hoses --format csv --out " + file);
        assertThat(run.out() + run.err()).isEmpty();
        assertThat(Files.readString(file))
                .isEqualTo(run("catalogue hoses --format csv").out());
    }
}
