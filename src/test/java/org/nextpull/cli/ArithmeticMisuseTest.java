package org.nextpull.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Bad and hostile input to {@code fuel} and {@code air}: a sentence that says what to do, never a fault. */
class ArithmeticMisuseTest {
    private static final String AIR = "air --baro 98kPa --air 20C --humidity 50%";

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "1 | fuel show e84                                              | the nearest are e85",
                "1 | fuel compare petrrol                                       | petrol",
                "1 | fuel compare e85 --against water                           | does not burn",
                "1 | fuel convert e85 --afr 12.6 --scale 0                      | is not a scale",
                "1 | fuel convert e85 --afr 12.6 --scale -14.7                  | is not a scale",
                "1 | fuel convert e85 --afr 12.6 --scale 1e999                  | is not a scale",
                "1 | fuel convert e85 --afr 12.6 --scale petrl                  | petrol",
                "1 | fuel blend --of ethanol=0.3,e10=0.9                        | over 1",
                "1 | fuel blend --of ethanol=0.3,e10=0.3                        | not to 1",
                "1 | fuel blend --of ethanol=-0.3,e10=1.3                       | between 0 and 1",
                "1 | fuel blend --of ethanol=0.5,etanol=0.5                     | ethanol",
                "1 | fuel blend --of water=1                                    | does not burn",
                "1 | fuel blend --of ethanol=1 --by weight                      | by \"mass\"",
                "1 | fuel blend --elements c=0.9,h=0.2                          | over 1",
                "1 | fuel water petrol --water 1L --fuel 20L                  | holds no alcohol",
                "1 | fuel water ethanol --water 30L --fuel 20L                | between 0 and 1",
                "1 | fuel show --plan no-such-plan.toml                         | no-such-plan.toml",
                "1 | air --baro 29.9kPa --air 20C --humidity 50%       | check its unit",
                "1 | air --baro 98kPa --air 95C --humidity 50%         | check its unit",
                "1 | air --baro 98kPa --air 20C --humidity 120%        | between 0 and 100",
                "1 | air --baro 98kPa --air 20C --humidity -1%         | between 0 and 100",
                "1 | air --baro 98kPa --air 20C --wet-bulb 22C               | swapped",
                "1 | air --baro 98kPa --air 20C --wet-bulb -20C              | read both",
                "1 | air --baro 98kPa --air 20C --dew-point 22C              | swapped",
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
                "2 | fuel convert e85 --lambda 12.6                             | not a lambda",
                "2 | fuel convert e85 --lambda 0                                | not a lambda",
                "2 | fuel convert e85 --lambda NaN                              | not a number",
                "2 | fuel convert e85 --lambda 1e400                            | too large",
                "2 | fuel convert e85 --lambda 0x1p3                            | not a number",
                "2 | fuel convert e85 --lambda 0,86                             | 0.86",
                "2 | fuel convert e85 --afr 0.86                                | --lambda",
                "2 | fuel compare e85 --lambda -1                               | not a lambda",
                "2 | fuel blend                                                 | either --of or --elements",
                "2 | fuel blend --of ethanol=1 --elements c=1                   | either --of or --elements",
                "2 | fuel blend --of ethanol=x                                  | not a number",
                "2 | fuel blend --of ethanol=1 --density 0.8kg/L               | goes with --elements",
                "2 | fuel blend --elements c=0.9,h=0.1 --by mass                | --by goes with --of",
                "2 | fuel blend --elements c=0.8,sulphur=0.1                    | no element",
                "2 | fuel blend --elements c=0.86,h=0.14 --density 0kg/L       | above 0",
                "2 | fuel water ethanol --fuel 20L                             | volume of water is missing",
                "2 | fuel water ethanol --water 1L --fuel 0L                  | above 0",
                "2 | fuel water ethanol --water -1L --fuel 20L                | not be negative",
                "2 | fuel water ethanol --water 1L --water 1gal --fuel 20L   | only once",
                "2 | fuel injector e85 --injectors 4 --rated 500cc/min         | pressure of the rating is missing",
                "2 | fuel injector e85 --injectors 4 --rated 500cc/min --rated-at 300kPa                  | power is missing",
                "2 | fuel injector e85 --injectors 4 --rated 500cc/min --rated-at 300kPa --power 100kW   | consumption is missing",
                "2 | fuel injector e85 --injectors 4 --rated 500cc/min --rated-at 0kPa --flow 60kg/h     | above 0",
                "2 | fuel injector e85 --injectors 4 --rated 500cc/min --rated-at 300kPa --flow 60kg/h --power 9kW | not both",
                "2 | fuel injector e85 --injectors 0 --rated 500cc/min --rated-at 300kPa --flow 60kg/h   | from 1 to 100",
                "2 | air                                                        | barometer is missing",
                "2 | air --baro 98kPa                                          | air temperature is missing",
                "2 | air --baro 98kPa --air 20C                               | water in the air is missing",
                "2 | air --baro 98kPa --baro 29inHg --air 20C --humidity 50%  | only once",
                "2 | air --baro 98kPa --air 20C --wet-bulb 18C --dew-point 10C      | both give the water",
                "2 | air --baro 98kPa --air -300C --humidity 50%       | absolute zero",
                "2 | air --baro 98kPa --air 20C --dew-point -300C            | absolute zero",
                "2 | air --baro 98 --air 20C --humidity 50%                    | --baro 98 lacks a unit; write one behind the number: Pa, hPa, kPa",
                "2 | air --baro 98kPa --air 20bar --humidity 50%               | --air 20bar lacks a unit",
                "2 | air --baro 98kPa --air 20C --humidity 0.5                 | lacks a unit; write one behind the number: %",
                "2 | air --baro 98,5kPa --air 20C --humidity 50%               | 98.5kPa",
                "2 | fuel injector e85 --injectors 4 --rated 500L --rated-at 300kPa --flow 60kg/h | cm3/min",
                "2 | air --baro InfinitykPa --air 20C --humidity 50%   | not a number",
            })
    void wrongUsageIsSaidToBe(int status, String line, String says) {
        refused(status, line, says);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "2 | --later hut=3                       | knows no reading",
                "2 | --later air                         | --later",
                "2 | --later air=20C,air=68F           | gives air twice",
                "2 | --later air=-30C                   | too cold",
                "1 | --later air=95C                    | --later",
                "2 | --altitude 90000m                  | 6000 m",
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
