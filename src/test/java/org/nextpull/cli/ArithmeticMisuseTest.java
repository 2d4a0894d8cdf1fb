package org.nextpull.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Bad and hostile input to {@code fuel} and {@code air}: a sentence that says what to do, never a fault. */
class ArithmeticMisuseTest {
    private static final String AIR = "air --baro-kpa 98 --air-c 20 --humidity-percent 50";

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "1 | fuel show e84                                              | the nearest are e85",
                "1 | fuel compare petrrol                                       | petrol",
                "1 | fuel compare e85 --against water                           | does not burn",
                "1 | fuel convert e85 --afr 12.6 --scale 0                      | is no scale",
                "1 | fuel convert e85 --afr 12.6 --scale -14.7                  | is no scale",
                "1 | fuel convert e85 --afr 12.6 --scale 1e999                  | is no scale",
                "1 | fuel convert e85 --afr 12.6 --scale petrl                  | petrol",
                "1 | fuel blend --of ethanol=0.3,e10=0.9                        | over 1",
                "1 | fuel blend --of ethanol=0.3,e10=0.3                        | not to 1",
                "1 | fuel blend --of ethanol=-0.3,e10=1.3                       | between 0 and 1",
                "1 | fuel blend --of ethanol=0.5,etanol=0.5                     | ethanol",
                "1 | fuel blend --of water=1                                    | does not burn",
                "1 | fuel blend --of ethanol=1 --by weight                      | by \"mass\"",
                "1 | fuel blend --elements c=0.9,h=0.2                          | over 1",
                "1 | fuel water petrol --water-l 1 --fuel-l 20                  | holds no alcohol",
                "1 | fuel water ethanol --water-l 30 --fuel-l 20                | between 0 and 1",
                "1 | fuel show --plan no-such-plan.toml                         | no-such-plan.toml",
                "1 | air --baro-kpa 29.9 --air-c 20 --humidity-percent 50       | check its unit",
                "1 | air --baro-kpa 98 --air-c 95 --humidity-percent 50         | check its unit",
                "1 | air --baro-kpa 98 --air-c 20 --humidity-percent 120        | between 0 and 100",
                "1 | air --baro-kpa 98 --air-c 20 --humidity-percent -1         | between 0 and 100",
                "1 | air --baro-kpa 98 --air-c 20 --wet-bulb-c 22               | swapped",
                "1 | air --baro-kpa 98 --air-c 20 --wet-bulb-c -20              | read both",
                "1 | air --baro-kpa 98 --air-c 20 --dew-point-c 22              | swapped",
            })
    void inputThatCannotBeUsedIsSaidToBe(int status, String line, String says) {
        refused(status, line, says);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "2 | fuel show                                                  | Name a fuel",
                "2 | fuel nonsense                                              | nonsense",
                "2 | fuel convert e85                                           | either --lambda or --afr",
                "2 | fuel convert e85 --afr 12.6 --lambda 1                     | either --lambda or --afr",
                "2 | fuel convert e85 --lambda 12.6                             | no lambda",
                "2 | fuel convert e85 --lambda 0                                | no lambda",
                "2 | fuel convert e85 --lambda NaN                              | not a number",
                "2 | fuel convert e85 --lambda 1e400                            | too large",
                "2 | fuel convert e85 --lambda 0x1p3                            | not a number",
                "2 | fuel convert e85 --lambda 0,86                             | 0.86",
                "2 | fuel convert e85 --afr 0.86                                | --lambda",
                "2 | fuel compare e85 --lambda -1                               | no lambda",
                "2 | fuel blend                                                 | either --of or --elements",
                "2 | fuel blend --of ethanol=1 --elements c=1                   | either --of or --elements",
                "2 | fuel blend --of ethanol=x                                  | not a number",
                "2 | fuel blend --of ethanol=1 --density-kg-l 0.8               | goes with --elements",
                "2 | fuel blend --elements c=0.9,h=0.1 --by mass                | --by goes with --of",
                "2 | fuel blend --elements c=0.8,sulphur=0.1                    | no element",
                "2 | fuel blend --elements c=0.86,h=0.14 --density-kg-l 0       | above 0",
                "2 | fuel water ethanol --fuel-l 20                             | volume of water is missing",
                "2 | fuel water ethanol --water-l 1 --fuel-l 0                  | above 0",
                "2 | fuel water ethanol --water-l -1 --fuel-l 20                | not be negative",
                "2 | fuel water ethanol --water-l 1 --water-gal 1 --fuel-l 20   | both give",
                "2 | fuel injector e85 --injectors 4 --rated-cc-min 500         | pressure of the rating is missing",
                "2 | fuel injector e85 --injectors 4 --rated-cc-min 500 --rated-kpa 300                  | power is missing",
                "2 | fuel injector e85 --injectors 4 --rated-cc-min 500 --rated-kpa 300 --power-kw 100   | consumption is missing",
                "2 | fuel injector e85 --injectors 4 --rated-cc-min 500 --rated-kpa 0 --flow-kg-h 60     | above 0",
                "2 | fuel injector e85 --injectors 4 --rated-cc-min 500 --rated-kpa 300 --flow-kg-h 60 --power-kw 9 | not both",
                "2 | fuel injector e85 --injectors 0 --rated-cc-min 500 --rated-kpa 300 --flow-kg-h 60   | from 1 to 100",
                "2 | air                                                        | barometer is missing",
                "2 | air --baro-kpa 98                                          | air temperature is missing",
                "2 | air --baro-kpa 98 --air-c 20                               | water in the air is missing",
                "2 | air --baro-kpa 98 --baro-inhg 29 --air-c 20 --humidity-percent 50  | both give the barometer",
                "2 | air --baro-kpa 98 --air-c 20 --wet-bulb-c 18 --dew-point-c 10      | both give the water",
                "2 | air --baro-kpa 98 --air-c -300 --humidity-percent 50       | absolute zero",
                "2 | air --baro-kpa 98 --air-c 20 --dew-point-c -300            | absolute zero",
                "2 | air --baro-kpa Infinity --air-c 20 --humidity-percent 50   | not a number",
            })
    void wrongUsageIsSaidToBe(int status, String line, String says) {
        refused(status, line, says);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "2 | --later hut=3                       | knows no reading",
                "2 | --later air-c                       | --later",
                "2 | --later air-c=20,air-f=68           | both give the air temperature",
                "2 | --later air-c=-30                   | too cold",
                "1 | --later air-c=95                    | --later",
                "2 | --altitude-m 90000                  | 6000 m",
            })
    void laterWeatherThatCannotBeUsedIsSaidToBe(int status, String rest, String says) {
        refused(status, AIR + " " + rest, says);
    }

    private static void refused(int status, String line, String says) {
        Run run = Run.of(line);
        assertThat(run.status()).as(run.err()).isEqualTo(status);
        assertThat(run.err()).contains(says).doesNotContain("Exception").doesNotContain("fault of the program");
        assertThat(run.out()).isEmpty();
        Run asJson = Run.of(line + " --json");
        assertThat(asJson.status()).isEqualTo(status);
        JsonNode error = asJson.json().path("error");
        assertThat(error.path("code").asText()).matches(status == 2 ? "wrong-usage" : "(air|fuel|file)-[a-z-]+");
        assertThat(error.path("message").asText()).isNotBlank();
    }
}
