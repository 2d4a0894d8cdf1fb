package org.nextpull.finding;

import java.util.EnumSet;
import java.util.Locale;
import java.util.Set;

/** Every finding that the tool can make. The handbook page "Findings" lists them; {@code report} has a sentence for each. */
public enum FindingCode {
    // files and plans
    /** There is no file {file}; check its name and folder. */
    FILE_NOT_FOUND,
    /** {file} cannot be read; check that it is whole and that you may read it. */
    FILE_UNREADABLE,
    /** {file} is a pipe or a device, and those are not read. */
    FILE_IS_NO_FILE,
    /** {message}; mend the line. */
    PLAN_SYNTAX,
    /** {value} has a decimal comma, and a plan takes a decimal point; write {mended}. */
    PLAN_DECIMAL_COMMA,
    /** {file} is named as the plan and looks like a log; give the plan after --plan, and logs without it. */
    PLAN_IS_LOG,
    /** The plan is not text: it holds the character {value}; save it as plain UTF-8 text. */
    PLAN_NOT_TEXT,
    /** {file} has {length} characters, more than {most}; it is no plan. */
    PLAN_TOO_LONG,
    /** There is no key {key} in a plan; did you mean {nearest}? Without {nearest}: known here are {allowed}. */
    PLAN_UNKNOWN_KEY,
    /** {key} must be {want}, not {value}. */
    PLAN_WRONG_TYPE,
    /** {key} must be a finite number, not {value}. */
    PLAN_NOT_FINITE,
    /** {key} = {value} is out of range; give a number from {low} to {high}. */
    PLAN_OUT_OF_RANGE,
    /** {key} = {value} is not known; did you mean {nearest}? Allowed are {allowed}. */
    PLAN_UNKNOWN_WORD,
    /** {key} is missing; this table needs it. */
    PLAN_MISSING_KEY,
    /** {key} = {value} must be {relation} {other} = {other_value}; change one of the two. */
    PLAN_ORDER,
    /** {key} = {value} runs from high to low; write the lower number first: [{high}, {low}]. */
    PLAN_WINDOW_REVERSED,
    /** {other} = {other_value} needs {key}; add it. */
    PLAN_KEY_NEEDED,
    /** {key} = {value} means nothing with {other} = {other_value}; remove one of the two. */
    PLAN_KEY_MEANINGLESS,
    /** {key} = {value} cannot go with {other} = {other_value}; change one of the two. */
    PLAN_KEYS_CONFLICT,
    /** {key} = {value} is used twice; each needs a name of its own. */
    PLAN_NAME_TWICE,
    /** Torque at the crank on a chassis dyno: nextpull adds no losses, so {key} = {value} holds only where the dyno measured them. */
    PLAN_CRANK_ON_CHASSIS,
    /** A key is understood, but nothing goes by it yet. */
    PLAN_KEY_UNUSED,
    /** Speeds of a list do not rise. */
    PLAN_NOT_RISING,
    /** The map before the sweep does not cover the band. */
    PLAN_MAP_SHORT,
    // columns and rows of logs
    /** {file} is empty; export the log again. */
    FILE_EMPTY,
    /** {file} is not text; give the CSV that the logger exports. */
    FILE_BINARY,
    /** {file} is a spreadsheet workbook; save it as CSV and give that. */
    FILE_IS_WORKBOOK,
    /** {file} has no header line; put the names of the columns above the numbers. */
    FILE_WITHOUT_HEADER,
    /** {file} ends after its header; there is nothing to read, so export the log again. */
    FILE_WITHOUT_ROWS,
    /** {file} has no usable number in any column; look at the logger's export settings. */
    FILE_WITHOUT_VALUES,
    /** {file} breaks off in the middle of its packed data (rows before that: {rows}); copy it again if rows are missing. */
    FILE_CUT_SHORT,
    /** The pulls of {file} do not fit into memory. */
    LOG_TOO_LARGE_FOR_MEMORY,
    /** {file} is a table of results, one row a pull; each row counts as one pull. */
    FILE_IS_TABLE,
    /** {file} is a settings file, not a log; name it as settings under [log] in the plan. */
    FILE_IS_SETTINGS,
    /** {file} is named as a log and looks like a plan; give it after --plan. */
    FILE_IS_PLAN,
    /** {file} was named twice; it is read once. */
    FILE_NAMED_TWICE,
    /** {file} holds no log; give a folder or a zip with CSV files in it. */
    FOLDER_WITHOUT_LOGS,
    /** {file} holds {count} logs, more than {most}; unpack the day that is meant and name its folder. */
    ZIP_WITH_TOO_MANY_LOGS,
    /** Files in {file} that are no logs by their names were passed over ({count} in all); name one to have it read. */
    FOLDER_FILES_PASSED_OVER,
    /** {file} has no column that could be torque, power or roller speed; name it in [log] columns. Its columns are {headers}. */
    LOG_WITHOUT_TORQUE,
    /** [log] columns names "{header}" for {channel}, but there is no such column; the nearest is "{nearest}". */
    COLUMN_NOT_FOUND,
    /** "{header}" was taken for {channel}, and not {others}; name another one in [log] columns if that is wrong. */
    COLUMN_CHOSEN,
    /** "{header}" was taken for {channel} because of the size of its values; name it in [log] columns if that is wrong. */
    COLUMN_TAKEN_BY_VALUES,
    /** "{header}" has no unit; {unit} was assumed. Name it in [log] units: {channel} = "{unit}". */
    COLUMN_UNIT_ASSUMED,
    /** "{header}" has no unit; torque, speed and power only agree if it is in {unit}. */
    COLUMN_UNIT_FROM_POWER,
    /** "{header}" has no unit and its values fit none; the column is left out until [log] units names one for {channel}. */
    COLUMN_UNIT_UNKNOWN,
    /** "{header}" is in "{unit}", which is no unit for {channel}; the column is left out until [log] units names one. */
    COLUMN_UNIT_STRANGE,
    /** "{header}" says {unit}, but its values, around {middle}, look like {likely_unit}; if so, write {channel} = "{likely_unit}" in [log] units. */
    COLUMN_UNIT_DOUBTFUL,
    /** "{header}" could be {channel}, but most of its cells are no numbers; the column is left out. */
    COLUMN_NOT_NUMERIC,
    /** "{header}" says that it is corrected already; name its standard as corrected_by under [log], or log the measured value. */
    COLUMN_ALREADY_CORRECTED,
    /** "{header}" holds the greatest value of each pull, not its average; give the average over the band if you have it. */
    COLUMN_OF_PEAKS,
    /** "{header}" was taken as pressure above that of the air; the barometer, or else 101.325 kPa, was added. */
    COLUMN_ABOVE_AIR_PRESSURE,
    /** "{header}" counts up through the log; each row takes what was added since the row before. */
    COLUMN_RUNNING_TOTAL,
    /** "{header}" is an air-fuel ratio without a scale, so there is no lambda; write one line under [log]: {likely}. */
    AFR_WITHOUT_SCALE,
    /** "{torque_header}" and "{power_header}" do not agree at the logged speed, unless they are in {torque_unit} and {power_unit}; check the units and name them in [log] units. */
    TORQUE_AND_POWER_DISAGREE,
    /** Broken rows of {file} were skipped, at line {lines} ({count} in all). */
    ROWS_BROKEN,
    /** Rows of {file} have more fields than the header has names, {row_fields} to {header_fields}; if commas are decimal marks, export with semicolons. */
    ROWS_WIDER_THAN_HEADER,
    /** Rows of {file} have fewer fields than the header has names, {row_fields} to {header_fields}, and are parted by blanks; export with tabs or semicolons. */
    ROWS_NARROWER_THAN_HEADER,
    /** Cells of "{header}" hold values that {channel} cannot have, at line {lines} ({count} in all); they are left out. */
    VALUES_IMPOSSIBLE,
    /** Numbers with marks between thousands were read as whole numbers ({count} in all). */
    NUMBERS_WITH_THOUSANDS_MARKS,
    /** Commas in {file} were taken as decimal marks; if they part thousands, export without them. */
    COMMA_DOUBTFUL,
    /** The header stands again in {file} at line {lines} and was passed over there. */
    HEADER_REPEATED,
    /** Another header starts at line {line} of {file}; nothing after it was read, so split the file there. */
    HEADER_CHANGES,
    /** Quotes in {file} do not close, at line {lines} ({count} in all); they were taken out. */
    QUOTE_NOT_CLOSED,
    /** {file} has no time column; write the rate of its rows as sample_hz under [log]. */
    TIME_MISSING,
    /** {file} has no time column; its rows were taken at {hz} Hz, as [log] says. */
    TIME_FROM_RATE,
    /** "{header}" stands still, so it gives no time; write the rate of the rows as sample_hz under [log]. */
    TIME_STANDS_STILL,
    /** The time starts again in {file}, at line {lines} ({count} in all); each start is taken as a new pull. */
    TIME_STARTS_AGAIN,
    /** Rows of {file} that have the time of the row before were skipped, at line {lines} ({count} in all); log a finer time if they are many. */
    TIME_REPEATED,
    /** The time goes back in {file}, at line {lines} ({count} in all); rows there were skipped. */
    TIME_GOES_BACK,
    /** This row of the table has "{value}" under "{header}", which cannot be used; the row is skipped. */
    TABLE_ROW_BROKEN,
    /** {file} has none of the columns of a settings file; its first line must name some of {columns}. */
    SETTINGS_WITHOUT_HEADER,
    /** The settings file has a column "{header}" that is not known; did you mean {nearest}? */
    SETTINGS_COLUMN_UNKNOWN,
    /** This row of the settings file has "{value}" under "{header}", which cannot be used, or names a pull twice; mend the row. */
    SETTINGS_ROW_BROKEN,

    // wires, folders and captures
    /** {file}: the capture cannot be written ({why}). The session goes on and keeps in memory what arrives; free space or mend the folder, it is tried again each second. */
    CAPTURE_NOT_SAVED,
    /** {file}: the capture is written again; {bytes} bytes that came meanwhile could not be kept in it. */
    CAPTURE_SAVES_AGAIN,
    /** {file}: the session goes on after {seconds} s in which nothing was recorded; a pull in that time is missing. */
    CAPTURE_CONTINUED,
    /** {file}: bytes of the capture cannot be read ({bytes} in all, damaged places: {count}); what came before and after them is there. */
    CAPTURE_DAMAGED,
    /** The computer's clock was set by {seconds} s while the session runs; the times of the pulls do not depend on it. */
    CLOCK_WAS_SET,
    /** A wire needs the name of a port; give [[wire]] device or --port. */
    WIRE_WITHOUT_NAME,
    /** {file}: there is no such port; plug it in, or name one of these: {ports}. */
    WIRE_NOT_THERE,
    /** {file}: another program or session has the port; close it there. */
    WIRE_IN_USE,
    /** {file}: no right to open the port; add yourself to the group that owns it (often dialout) and log in again. */
    WIRE_NOT_ALLOWED,
    /** {file}: this is no serial port, or it does not take {settings} (error {error}); check its name and settings. */
    WIRE_NOT_OPENED,
    /** The serial library could not be loaded ({why}); start with -Djava.io.tmpdir= or -DjSerialComm.library.path= naming a folder from which programs may run. Files and folders work without it. */
    WIRE_LIBRARY_UNUSABLE,
    /** {file}: connected. */
    WIRE_CONNECTED,
    /** {file}: the port went away: unplugged? It is connected again by itself; a pull in progress is cut. */
    WIRE_UNPLUGGED,
    /** {file}: {bytes} bytes were dropped, for they came faster than they could be worked on; a pull in progress is cut. */
    WIRE_OVERRUN,
    /** {file}: nothing has come for {seconds} s. Is the logger on, and does it send? */
    WIRE_SILENT,
    /** {file}: bytes arrive ({bytes} so far) but no line ends: wrong speed? It is set to {settings}. */
    WIRE_NO_LINE_ENDS,
    /** {file}: {percent} % of the bytes are no text: wrong speed, bits or parity? It is set to {settings}. */
    WIRE_NOT_TEXT,
    /** {file}: {count} of the last {lines} sentences have a wrong checksum: a bad cable, earth or plug, or the wrong speed. */
    WIRE_CHECKSUMS_WRONG,
    /** {file}: {count} of the last {lines} lines cannot be read, such as "{line}": half lines, or not the line format of the plan. */
    WIRE_LINES_BROKEN,
    /** {file}: good lines again. */
    WIRE_WELL_AGAIN,
    /** {file}: lines arrive but no header line has; give [[wire]] columns, or start the logger after this. */
    WIRE_WITHOUT_HEADER,
    /** {file}: it sends no known channel; its columns are {columns}. Name them in [[wire]] columns. */
    WIRE_WITHOUT_CHANNELS,
    /** {file}: the values of a line ({fields} in all) are not as many as the columns, {columns}; give [[wire]] columns one name for each value. */
    WIRE_FIELDS_DIFFER,
    /** {file}: also sends {channel}, which {other} sends already; it is kept as sensor {sensor}. */
    WIRE_CHANNEL_TWICE,
    /** {file}: the folder cannot be read ({why}); check that it is there and shared. It is tried again by itself. */
    FOLDER_NOT_READABLE,
    /** {file}: the folder can be read again. */
    FOLDER_READABLE_AGAIN,
    /** {file}: what was there before the session began is no part of it: {files} ({count} in all). Write a log there under another name to have it in, or give it to the command advise. */
    FOLDER_LOGS_BEFORE,
    /** {file}: another program holds the file and it cannot be read ({why}); it is tried again. */
    FOLDER_FILE_HELD,
    /** {file}: holds the same as {other}, which was taken already; it is not taken twice. */
    FOLDER_FILE_KNOWN,
    /** {file}: was written anew after it was taken; it is taken again, and the pulls of its earlier content stay as they are. */
    FOLDER_FILE_REWRITTEN,
    /** {file}: got more lines after it was taken; it is taken again from its beginning, and its earlier pulls are known. */
    FOLDER_FILE_EXTENDED,

    // air and correction
    /** The {quantity} of {value} lies outside the range of {standard}, {low} to {high}; the factor was computed all the same, so do not compare this figure with one from other air. */
    AIR_OUTSIDE_STANDARD,
    /** There is no correction standard "{name}"; the nearest are {nearest}. */
    AIR_STANDARD_UNKNOWN,
    /** A barometer of {value} is not one of this earth's ({low} to {high}); check its unit. */
    AIR_BAROMETER_IMPLAUSIBLE,
    /** Inlet air of {value} is not one that an engine is run in ({low} to {high}); check its unit. */
    AIR_TEMPERATURE_IMPLAUSIBLE,
    /** A relative humidity of {humidity} is not possible; give it between 0 and 100 %. */
    AIR_HUMIDITY_OUT_OF_RANGE,
    /** A relative humidity of {humidity} is drier than any desert; give 60 for 60 %, not 0.6. */
    AIR_HUMIDITY_LOOKS_LIKE_FRACTION,
    /** The wet bulb of {wet_bulb} is above the dry bulb of {dry_bulb}; one of the two thermometers is wrong, or they were swapped. */
    AIR_WET_BULB_ABOVE_DRY_BULB,
    /** The wet bulb of {wet_bulb} is lower than the driest air of {dry_bulb} could make it; read both thermometers again. */
    AIR_WET_BULB_TOO_LOW,
    /** The dew point of {dew_point} is above the air temperature of {dry_bulb}; one of the two is wrong, or they were swapped. */
    AIR_DEW_POINT_ABOVE_DRY_BULB,
    /** The dew point of {dew_point} is below -100 degC, where no formula for vapour holds; give the humidity as 0 % instead. */
    AIR_DEW_POINT_TOO_LOW,
    /** The barometer of {barometer} looks like the sea-level pressure of a weather report, not the pressure at the dyno, which is about {station} (altitude about {altitude}); give the station pressure, or every corrected figure comes out too low. */
    AIR_BAROMETER_LOOKS_SEA_LEVEL,
    /** A barometer of {barometer} does not fit an altitude of {altitude}, where {low} to {high} is usual; check both and their units. */
    AIR_BAROMETER_NOT_OF_ALTITUDE,
    /** The barometer given, {barometer}, differs from the logged one, {other}; the logged one is used, so find out which is wrong. */
    AIR_BAROMETERS_DIFFER,
    /** With the engine stopped the manifold shows {other} where the barometer says {barometer}; one of the two sensors is off. */
    AIR_MANIFOLD_AT_REST_DIFFERS,
    /** At full load the manifold shows {other}, above the barometer of {barometer}; the barometer is too low, or the engine is boosted. */
    AIR_MANIFOLD_ABOVE_BAROMETER,
    /** At full load the manifold shows only {other} under a barometer of {barometer}; the throttle was not fully open, the intake is blocked, or the barometer is one of sea level. */
    AIR_MANIFOLD_FAR_BELOW_BAROMETER,
    // fuels
    /** There is no fuel "{name}"; the nearest are {nearest}. Name one of these, or write your own as a [[blend]] in the plan. */
    FUEL_UNKNOWN,
    /** "{name}" names pump petrol by its octane or grade, which says nothing of what it burns to; name it by its ethanol, as the pump does: e0, e5 or e10. */
    FUEL_NAMED_BY_OCTANE,
    /** The blend "{name}" has the name of a listed fuel or of another blend; give it a name of its own. */
    FUEL_NAME_TAKEN,
    /** {part} of the blend "{name}" is {value}; a fraction lies between 0 and 1. */
    FUEL_FRACTION_NEGATIVE,
    /** The fractions of the blend "{name}" add up to {sum}, over 1; give 0.86 for 86 %. */
    FUEL_FRACTIONS_OVER_ONE,
    /** The parts of the blend "{name}" add up to {sum}, not to 1; name the part that is missing. */
    FUEL_PARTS_MISSING,
    /** The elements of the blend "{name}" leave {rest} of its mass unnamed; that part is taken not to burn, so check the data sheet. */
    FUEL_REMAINDER_INERT,
    /** {part} has no density, so the blend "{name}" cannot be made by volume; give its shares by mass. */
    FUEL_DENSITY_UNKNOWN,
    /** "{name}" does not burn: it needs no air. Choose a fuel, or name more of its parts. */
    FUEL_DOES_NOT_BURN,
    /** The shares of a blend are by "volume" or by "mass", not by "{name}". */
    FUEL_SHARE_UNKNOWN,
    /** No injector duty follows from a fuel flow of {flow} and a pressure of {pressure} across the injectors; both must be above zero. */
    FUEL_INJECTOR_INPUT,
    /** Injectors would be open {duty} of the time, over {highest}; they need to be {ratio} times as large, or the pressure higher. */
    FUEL_INJECTOR_DUTY_HIGH,
    /** Injectors cannot give this flow: they would have to be open {duty} of the time; they need to be {ratio} times as large. */
    FUEL_INJECTORS_TOO_SMALL,
    /** The density of "{name}" is not known, so no volume, jet or injector can be computed; give it from the maker's data sheet. */
    FUEL_FLOW_NEEDS_DENSITY,
    /** How much alcohol "{name}" holds is not known, so what water does to it cannot be computed; name its parts in the plan. */
    FUEL_ALCOHOL_UNKNOWN,
    /** Give the water as litres for each litre of "{name}", between 0 and 1. */
    FUEL_WATER_SHARE,
    /** "{name}" holds no alcohol, so water does not mix with it; it lies below and must be drained. */
    FUEL_WATER_DOES_NOT_MIX,
    /** "{name}" holds no more than about {held} of water by volume and then parts into two layers; do not run it. */
    FUEL_WATER_MAY_SEPARATE,
    /** "{value}" is no scale of air-fuel ratios; give what the gauge shows at lambda 1, such as 14.7, or the name of a fuel. */
    FUEL_SCALE_UNKNOWN,
    // pulls
    /** Pull {pull} of {file} is not used: it ends at {rpm} rpm, before the band's end at {want} rpm. Run it again. */
    PULL_CUT_SHORT,
    /** Pull {pull} of {file} is not used: the throttle was let go at {rpm} rpm, before the band's end at {want} rpm. Run it again. */
    PULL_THROTTLE_LIFTED,
    /** Pull {pull} of {file} is not used: it runs from {from} to {to} rpm and the band from {want_from} to {want_to} rpm. Start below the band and end above it, or set the band to what is run. */
    PULL_OUTSIDE_BAND,
    /** Pull {pull} of {file} is not used: {seconds} s over {rpm} rpm is too short for a pull. */
    PULL_TOO_SHORT,
    /** Pull {pull} of {file} is not used: the speed was held for {seconds} s and [pull] hold_s asks for {want} s. */
    PULL_HOLD_TOO_SHORT,
    /** Pull {pull} of {file} is not used: it has too few rows with a speed, {rows} where {want} are needed. Log faster. */
    PULL_TOO_FEW_SAMPLES,
    /** Pull {pull} of {file} is not used: the speed goes back by {rpm} rpm on its way, near {at} rpm. Run it again. */
    PULL_SPEED_NOT_MONOTONE,
    /** Pull {pull} of {file} is not used: the speed leaps by {rpm} rpm between two rows, near {at} rpm: a gear change, a slip or a broken sensor. */
    PULL_SPEED_JUMP,
    /** Pull {pull} of {file} is not used: engine and roller turn {percent} % apart from their usual ratio near {at} rpm: a tyre or the clutch slips. Strap the car down or warm the tyres. */
    PULL_WHEEL_SLIP,
    /** Pull {pull} of {file} is not used: the log has a hole of {seconds} s in it, at {rpm} rpm. */
    PULL_DATA_GAP,
    /** Pull {pull} of {file} is not used: the data stopped in the middle of it, when the port went away or the program ended. */
    PULL_DATA_STOPPED,
    /** Pull {pull} of {file} is not used: {percent} % of its rows are missing. */
    PULL_ROWS_DROPPED,
    /** Pull {pull} of {file} is not used: its torque is {percent} % of what the log reaches elsewhere, so it was not at full load. Log the throttle to be sure. */
    PULL_LOAD_TOO_LOW,
    /** Stretch {pull} of {file} is no pull, but knock was counted in it under load, at {low} to {high} rpm (count {events}). It blocks that advance less the margin and above, as knock in a pull does. */
    PULL_KNOCK_ALONE,
    /** Pull {pull} of {file} is thrown away as a warming pull ([pull] throw_away_first = {count}). */
    PULL_THROWN_AWAY,
    /** Pull {pull} of {file} is not used: {other} holds it too, the same in every sample, and a pull counts once. */
    PULL_COUNTED_ALREADY,
    /** In pull {pull} of {file} {percent} % of the rows are missing; it is used. */
    PULL_ROWS_MISSING,
    /** In pull {pull} of {file} rows have a speed that no engine could reach between its neighbours ({count} in all); they are left out. */
    PULL_SPEED_SPIKES,
    /** The lambda of pull {pull} of {file} was moved {seconds} s towards the start, with an error of {error} s, read off its answer to the throttle; [log] lambda_delay_s gives it a fixed value. */
    LAMBDA_DELAY_ESTIMATED,
    /** The lambda of pull {pull} of {file} was not moved for the sensor's delay, for the log does not show it; give [log] lambda_delay_s. */
    LAMBDA_DELAY_NOT_APPLIED,
    /** {file} has no engine speed: it is the roller's times [dyno] engine_rev_per_roller_rev. */
    SPEED_FROM_ROLLER,
    /** {file} has no engine speed and the plan no [dyno] engine_rev_per_roller_rev: every speed of its pulls is the roller's. */
    SPEED_IS_ROLLER,
    /** {file} has no time, so no pull can be found in it; give [log] sample_hz if its rows are evenly spaced. */
    LOG_WITHOUT_TIME,
    /** {file} has no speed of engine, roller or road, so no pull can be found in it; name the column in [log] columns. */
    LOG_WITHOUT_SPEED,
    /** {file} has no throttle: full load is told by {by}. */
    LOAD_WITHOUT_THROTTLE,
    /** The throttle of {file} never reaches {want} %: its highest value is {percent} %. Set [pull] full_load_percent just below what full throttle reads. */
    THROTTLE_NEVER_FULL,
    /** In {file} rows have a time that does not fit between their neighbours ({count} in all); they are left out. */
    ROWS_OUT_OF_TIME,

    // curves
    /** Pull {pull} of {file} has no torque, no power and no roller inertia that could give one: no curve. Name the column in [log] columns or give [dyno] roller_inertia_kg_m2. */
    CURVE_WITHOUT_TORQUE,
    /** Pull {pull} of {file} has too few rows with both speed and torque ({rows}) for a curve. */
    CURVE_TOO_THIN,
    /** Torque and power of pull {pull} of {file} disagree: power is {percent} % of torque times speed. Torque is used; check the units and columns. */
    CURVE_TORQUE_AND_POWER_DISAGREE,
    /** In pull {pull} of {file} rows have a torque far off their neighbours' ({count} in all); they are left out. */
    CURVE_TORQUE_SPIKES,
    /** The torque of pull {pull} of {file} is its power divided by the speed: no torque is logged. */
    CURVE_TORQUE_FROM_POWER,
    /** The torque of pull {pull} of {file} is that of the roller's inertia alone and stated at the roller; losses of tyres and gears are in it, and no crank torque is worked out. */
    CURVE_TORQUE_AT_ROLLER,
    /** {newton_metres} N.m on average were added to the torque of pull {pull} of {file} for the inertia that the log leaves out. */
    CURVE_INERTIA_ADDED,
    /** The inertia of the plan could not be added to pull {pull} of {file}: {missing} is not known. */
    CURVE_INERTIA_LEFT_OUT,
    /** The rows of pull {pull} of {file} are {rpm} rpm apart, so each point of its curve averages over {reach} rpm to both sides. Log faster for a sharper curve. */
    CURVE_COARSE,

    // alarms
    /** The plan limits {limit}, but {file} has no {channel}: that limit is not watched. Name the column in [log] columns, or watch it yourself. */
    LIMIT_NOT_WATCHED,
    /** {channel} of pull {pull} of {file} gave no reading for {seconds} s, so nothing watched what relies on it; mend the sensor or its wire, or watch it yourself. */
    CHANNEL_BLANK,
    /** {channel} of pull {pull} of {file} read {reading} over and over, as a dead sensor does, so it watched nothing; mend the sensor or its wire. */
    CHANNEL_FROZEN,
    /** {channel} of pull {pull} of {file} read {reading}, more than a sensor can show: it is far too hot, or the sensor is broken. Lift, and find out which before the next pull. */
    CHANNEL_OUT_OF_RANGE,
    /** {channel} of pull {pull} of {file} read {reading}, which no engine does under full load, so it watched nothing; look for a dead sensor, a swapped column or a wrong unit. */
    CHANNEL_IMPLAUSIBLE,
    /** {file} has no barometer: boost is counted from a standard atmosphere of 101.325 kPa, too low on high ground. Give [air] baro_kpa. */
    BOOST_WITHOUT_BAROMETER,
    /** The exhaust of pull {pull} of {file} ({sensor}) was still rising by {kelvins_per_second} K/s at the end, at {last}: the gas was hotter than the sensor shows. */
    EXHAUST_STILL_RISING,

    // engine
    /** The model engine cannot have {name} = {value}; it must lie between {least} and {most}. Correct that number. */
    ENGINE_PARAMETER_OUT_OF_RANGE,
    /** At {rpm} rpm and lambda {lambda} the charge of the model engine would burn for {deg} degrees, longer than a stroke. Choose a richer mixture, a lower speed or a faster chamber. */
    ENGINE_BURN_TOO_LONG,
    /** The model engine cannot run on {fuel}: its {property} is not known. Choose a listed fuel that has it. */
    ENGINE_FUEL_LACKS,

    // rig
    /** The model engine cannot follow {name}: {what} would be {value}; give the plan numbers that keep it from {least} to {most}. */
    RIG_NO_SUCH_ENGINE,
    /** The model engine cannot be run under this plan: it lacks {name}. Add that to the plan. */
    RIG_NEEDS,
    /** The model engine cannot be run with {name} = "{value}". Choose another in the plan. */
    RIG_CANNOT,
    /** The plan allows {name} from {least} to {most}, not {value}. Choose one within. */
    RIG_SETTING_OUTSIDE,
    /** The settings file asks for {fuel}, but the model engine has one tank with {other}. Remove the other fuel. */
    RIG_ONE_FUEL,
    /** Ports that the plan needs: {wires}; ports that are named: {ports}. Give --port once for each [[wire]], in the order of the plan; without any it needs one. */
    RIG_PORTS_DIFFER,
    /** The model engine has nothing for the column "{column}"; take it out of the [[wire]], or write "-" in its place. */
    RIG_COLUMN_NOT_MEASURED,
    /** {file} carries {most} bytes a second at {settings}, but the lines come to {bytes}: they will lag and get lost. Send fewer columns, or set a higher baud or a lower [log] sample_hz. */
    RIG_WIRE_TOO_SLOW,
    /** Nobody reads {file}, so what it does not take is lost. */
    RIG_NOBODY_READS,
    /** {file} went away, so the engine stops. */
    RIG_PORT_GONE,

    // responses
    /** Pull {pull} of {file} cannot be corrected: the log has no {reading} and the plan's [air] gives none. */
    AIR_READING_MISSING,
    /** Knock in pull {pull} of {file} at {low} to {high} rpm, beyond the band (count {events}). It blocks that advance less the margin and above, as knock in the band does. */
    KNOCK_BESIDE_BAND,
    /** In pull {pull} of {file} the knock channels are blank or hold what cannot be, in all of it or in a part, so knock counts as not measured. Look at the sensor, and listen. */
    KNOCK_NOT_READ,
    /** The knock counter never counted anything but 0 over the whole day, so nothing shows that it works. Listen, and try it before you trust it. */
    KNOCK_NEVER_COUNTED,
    /** {file} has a knock level, but the plan's [limits] has no knock_level, so it tells nothing here. Give the level above which this engine knocks. */
    KNOCK_LEVEL_NOT_USED,
    /** In pull {pull} of {file} the ignition took out {deg} deg of advance by itself near {rpm} rpm, against the other pulls. That counts as knock heard; mark the pull with knock = no where another cause is known. */
    SPARK_TAKEN_OUT_KNOCK,
    /** In pull {pull} of {file} the ignition took out {deg} deg of advance by itself near {rpm} rpm, against the other pulls. You say that it was not knock; find out what it was. */
    SPARK_TAKEN_OUT,
    /** The advice names no map, so none is written to {file}; write sets = "map" in [timing] where the ignition holds one, or leave out --map. */
    NO_MAP_TO_WRITE,
    /** The advance in the log changes over speed, so the ignition holds a map, and the answer is one. Say sets = "map" in [timing] to say so yourself; its start_deg then counts from the present map. */
    MAP_TOLD_BY_LOG,
    /** No pull has a logged spark advance, so nobody knows the map that it ran. Log the advance, or say sets = "offset" and write down what you add to the map. */
    MAP_WITHOUT_ADVANCE,
    /** No speed was reached by more than one pull, so no two settings can be held against each other. Run pulls over one band. */
    MAP_SPEEDS_NOT_SHARED,
    /** The log has {deg} deg at every speed of each pull: its advance column is stuck, or one number was run each time. Mend the column, or change the map by a step and pull again. */
    MAP_ADVANCE_STUCK,
    /** Pull {pull} of {file} ran at {measured} deg of advance, not at the {asked} deg that were asked for; the measured value counts. */
    ADVANCE_NOT_AS_ASKED,
    /** Pull {pull} of {file} ran at lambda {measured}, not at the {asked} that was asked for; the measured value counts. */
    LAMBDA_NOT_AS_ASKED,
    /** Pull {pull} of {file} read a relative humidity of {humidity}; sensors read a little beyond the ends in very wet or dry air, so {taken} was taken. Check the sensor if the air was not like that. */
    AIR_HUMIDITY_HELD,

    // compare
    /** There is no pull of {label}, which the others are to be compared with; choose one of {known}. */
    COMPARE_REFERENCE_UNKNOWN,
    /** There is no pull of {label}, which the others are to be compared with; {nearest} comes nearest; choose one of {known}. */
    COMPARE_REFERENCE_MISSPELT,
    /** No pull carries a label; write one before each file, as in before=a.csv, or fill a label column or the settings file. */
    COMPARE_NO_LABEL,
    /** The log has no repeats of one setting, so nothing is known of the scatter; run one setting again, or give --scatter. */
    NO_SCATTER_TO_PLAN_BY,
    /** All pulls carry the label {label}; name a second one, since a comparison needs two. */
    COMPARE_ONE_LABEL,
    /** There is only one pull of {label}, and a difference cannot be told from scatter without a second one; run {label} again. */
    COMPARE_ONE_PULL,
    /** {label} and {reference} were changed over only once, so nobody can tell whether the label or the day has changed, and no verdict rests on it; run further pulls of both in turn, {reference} {label} {label} {reference}. */
    COMPARE_ONE_CHANGE_OVER,
    /** The order of the pulls leaves the drift of the day in the difference of {label} and {reference}: the interval is {factor} times as wide as the scatter alone would make it. Run further pulls of both in turn, {reference} {label} {label} {reference}. */
    COMPARE_IN_BLOCKS,
    /** The very first pull differed by {percent} % because the engine was still warming up; this was taken out. Warm up longer before the first pull. */
    COMPARE_WARM_UP,
    /** Pull {pull} of {file} ({label}) lies far from the others and counts {weight} of a pull; look for a reason. */
    COMPARE_OUTLIER,
    /** {label} scatters by {percent} %, {other} by {other_percent} %, and the intervals allow for that; look for what makes {label} unsteady. */
    COMPARE_SCATTER_UNEQUAL,
    /** {pulls} of {planned} planned pulls are run, so the intervals are not final; run the other {missing} before you decide. */
    COMPARE_NOT_FINAL,
    /** The 95 % interval of {label} excludes zero, but at this look a difference must be clearer to be claimed; run further pulls to decide. */
    COMPARE_HELD_BACK,
    /** Telling {label} from {reference} to {worth} % would take over {most} further pulls at the present scatter; look for a larger difference or for steadier pulls. */
    COMPARE_OUT_OF_REACH,
    /** Pull {pull} of {file} is corrected by the standard "{standard}" and pull {other_pull} of {other_file} by "{other}", and figures of different standards cannot be compared; bring all to one. */
    COMPARE_STANDARDS_DIFFER,
    /** Pull {pull} of {file} covers {from} to {to} rpm and pull {other_pull} of {other_file} {other_from} to {other_to} rpm, and averages over different bands cannot be compared; choose a band that all pulls cover. */
    COMPARE_BANDS_DIFFER,
    /** Some pulls have torque only and others power only; give one of the two for all pulls. */
    COMPARE_NO_COMMON_RESPONSE,
    /** Pull {pull} of {file} has no label and is left out; name it in the settings file or on the command line. */
    COMPARE_WITHOUT_LABEL,
    /** Inlet air of {label} differed from that of {reference} by {kelvins}; the standard takes part of that out, not all. */
    COMPARE_INLET_AIR_DIFFERS,
    /** Coolant of {label} differed from that of {reference} by {kelvins}; part of the difference may be that. */
    COMPARE_COOLANT_DIFFERS,
    /** Lambda of {label} differed from that of {reference} by {lambda}; the difference is of mixture and {label} together. */
    COMPARE_LAMBDA_DIFFERS,
    /** Advance of {label} differed from that of {reference} by {deg} deg; the difference is of timing and {label} together. */
    COMPARE_ADVANCE_DIFFERS,

    // fits
    /** A parabola through the same pulls puts the peak from {low} to {high}, the fit from {fit_low} to {fit_high}: they disagree. Repeat the settings on both sides of the peak before you believe either. */
    PEAK_DISPUTED,
    /** A parabola through these pulls alone does not bound the peak; the interval leans on what engines of this kind usually do. More pulls on both sides would make it stand by itself. */
    PEAK_NOT_BOUNDED_ALONE,

    // the day as a whole
    /** The settings file has rows for {file} ({rows} in all), but not as many as there are pulls and refused candidates ({pulls} in all), so none of these rows is used; name the pull of each row, or make the counts the same. */
    SETTINGS_COUNT,
    /** The settings file has a row for {named}, which is not among the logs; its row is not used. */
    SETTINGS_FOR_NO_FILE,
    /** The settings file names pull {number} of {file}, where the pulls end at {pulls}, refused candidates counted, so its row is not used; mend the number. */
    SETTINGS_FOR_NO_PULL,
    /** Nobody said what was set for pull {pull}, so what was proposed is taken; say what it was if it was something else. */
    SETTING_ASSUMED,
    /** Two pulls both carry the order number {order}, so the numbers do not give the order of the day and are not used; count on from file to file. */
    ORDER_REPEATED,
    /** The pulls are of {days} days, told apart by {by}. Each has a level and a drift of its own; they share the answer, and the budget counts the last day's pulls. Number them on in an order column where they are of one day. */
    SEVERAL_DAYS,
    /** No pull was found that could be used. */
    NO_PULL_TO_USE,
    /** Pulls of {file} ({count} in all) have no {response}, which the plan fits; write response = "{other}" under [goal], or give a column of it. */
    RESPONSE_MISSING,
    /** Pull {pull} of {file} is not used: it made no torque or power above zero. */
    RESPONSE_NOT_POSITIVE,
    /** The plan asks for spark and mixture together ([goal] stages = "together"), which this version does not do: it goes through them in turn. */
    STAGES_TAKEN_IN_TURN,
    /** The plan has neither [timing] nor [mixture], so there is nothing to advise on; add the table of the factor that is swept. */
    NOTHING_TO_SWEEP,
    /** The plan has no [band]: each pull is averaged over its own speeds, so pulls over other speeds do not compare; give the band that all of them span. */
    PLAN_WITHOUT_BAND,
    /** Boost differs by {percent} % between pulls, so that a change of torque may come from it: the sweep is confounded. Torque is not scaled by boost. */
    BOOST_DIFFERS,
    /** The torque of the logs was corrected by {standard} before it was logged, as [log] corrected_by says, so nothing is corrected again. */
    LOG_CORRECTED_ALREADY,
    /** The figures of this boosted engine are corrected by {standard}; where boost is controlled to an absolute pressure, the control has mended part of the weather already and the correction counts it twice. Compare only pulls of like weather, or set [air] standard to "none". */
    BOOST_CORRECTED_TWICE,
    /** Inlet air differs by {kelvins} K between pulls; a correction does not mend what that does to charge and knock. */
    INLET_AIR_DIFFERS,
    // notebook
    /** There is no notebook {file} yet; a live session begins one, and so does notebook add. */
    NOTEBOOK_MISSING,
    /** The notebook {file} cannot be opened: {why}. Name another place with --notebook. */
    NOTEBOOK_CANNOT_OPEN,
    /** {file} is not a notebook: it is no database at all. Name the right file with --notebook. */
    NOTEBOOK_NOT_ONE,
    /** {file} is a database of another program, not a notebook. Name the right file with --notebook. */
    NOTEBOOK_OF_ANOTHER,
    /** The notebook {file} was written by a newer version of the program (tables of version {version}; this one knows {known}). Use that version, or another notebook. */
    NOTEBOOK_NEWER,
    /** The notebook {file} has tables of version {version} and must be brought to {known} first, which needs the right to write it. Run notebook check as somebody who may write it. */
    NOTEBOOK_OLDER,
    /** The notebook {file} is damaged: {why}; use a back-up, and keep the damaged file. */
    NOTEBOOK_DAMAGED,
    /** The notebook {file} cannot be written: {why}. Free it for writing, or name another place with --notebook. */
    NOTEBOOK_READ_ONLY,
    /** Another program has held the notebook {file} for longer than five seconds. Close what writes to it and try again; nothing was changed. */
    NOTEBOOK_LOCKED,
    /** The disk is full: the notebook {file} could not be written. What was kept before is still there; make room. */
    NOTEBOOK_DISK_FULL,
    /** The notebook {file} failed: {why}; what was kept before is still there, so mend that and try again. */
    NOTEBOOK_FAILED,
    /** The library that reads notebooks cannot be loaded: {why}. Start Java with -Dorg.sqlite.tmpdir= and a folder that allows programs. */
    NOTEBOOK_NO_LIBRARY,
    /** The notebook {file} holds something that this version does not know: {why}; it was changed by hand or is damaged; use a back-up. */
    NOTEBOOK_STRANGE_VALUE,
    /** The samples of candidate {candidate} of session {session} in {file} are damaged: {why}; use a back-up. */
    NOTEBOOK_SAMPLES_DAMAGED,
    /** The notebook {file} has no session {session}; notebook list shows those that it has. */
    NOTEBOOK_NO_SUCH_SESSION,
    /** The plan of this session in {file} cannot be read by this version: {why}. Use the version that kept it. */
    NOTEBOOK_PLAN_UNREADABLE,
    /** There is already a file {file}, and a back-up writes over nothing; name another, or move that one away. */
    NOTEBOOK_BACK_UP_EXISTS,
    /** The notebook {file} holds pulls of this day already, the same in every sample, in session {sessions}; nothing was kept. Leave out the logs that it holds. */
    NOTEBOOK_HAS_PULLS,
    /** Pull {pull} of session {session}: {name} was {before} when it was kept by version {version}, and comes out as {now} from the same samples. Believe the newer figure if the version changed, else use a back-up. */
    NOTEBOOK_FIGURE_DIFFERS,
    /** {parts} days are compared with each other: whatever changed from day to day beside the label (weather, fuel, tyres, the dyno) is in the difference, and no interval knows of it. Run both labels in turn on one day to be sure. */
    COMPARE_ACROSS_SESSIONS,
    /** {label} was run at more than one setting, and the mean of a sweep is that of its settings: of its pulls ({pulls} in all) only those are compared that ran the setting run last and more than once ({kept} in all). Run the chosen setting of each label several times, in turn. */
    COMPARE_SWEPT,
    /** {file} and {other} hold the same pulls, and each counts once; name only one of the two. */
    COMPARE_COUNTED_ONCE,
    /** Logs are compared by a plan, and none is named; name one. */
    COMPARE_WITHOUT_PLAN,

    // live
    /** None of the [[wire]] tables of the plan ({count} in all) is for {device}; name it in one of them. */
    LIVE_PORT_OF_NO_WIRE,
    /** There is no pull {number} yet (run so far: {pulls}); look at the numbers again. */
    LIVE_PULL_UNKNOWN,
    /** {file} was changed before it could be read, so its pulls are missing; write it again under another name. */
    LIVE_FILE_CHANGED,
    /** There is no session in {folder} to go on with; start without --resume, or name its notebook. */
    LIVE_NOTHING_TO_RESUME,
    /** {file}: the notebook is gone; another one is begun in its place, and all of this session is kept in it. */
    LIVE_NOTEBOOK_LOST,
    /** {file}: the notebook is written again, and all of this session is in it. */
    LIVE_NOTEBOOK_KEEPS_AGAIN,
    /** The captures hold {file}, which is no source of this session; what it sent is left out. */
    LIVE_SOURCE_UNKNOWN,
    /** The captures cannot be read again ({why}), so what came before this start is missing. */
    LIVE_CAPTURES_UNREADABLE,
    /** The plan is not the one that the session began with; the pulls so far are judged by the plan as it is now. */
    LIVE_PLAN_DIFFERS,
    /** {file}: another program runs this session; close the other one first. */
    LIVE_SESSION_RUNS,
    /** Session {session} was run on {was}, and the plan is for {now}; start a session of its own. */
    LIVE_ENGINE_DIFFERS,
    /** Session {session} was kept from logs and has nothing to go on with. */
    LIVE_WITHOUT_CAPTURE,
    /** The advice could not be worked out ({why}), which is a fault of the program; pulls and alarms go on, and the advice before still stands. */
    LIVE_ADVICE_FAILED,
    /** Something in the program failed ({why}); the session goes on. Please report it. */
    LIVE_FAULT,
    /** {file} is a table of results and no log, which a running session does not take; give it to advise. */
    LIVE_TABLE_IN_FOLDER,
    /** {file} sends no {reading} and the plan's [air] gives none: no pull can be corrected. Give it in [air], or name its column in [log] columns. */
    LIVE_AIR_MISSING,
    /** What earlier days of this engine taught ({days} in the notebook) narrows what is believed of its curve and scatter; it may shorten a step or the sweep, never lengthen a step. Set [goal] learn_from_notebook = false to go without. */
    EXPERIENCE_OF_ENGINE,
    /** What earlier days of engines of this class taught ({days} in the notebook) narrows what is believed of the curve and scatter; it may shorten a step or the sweep, never lengthen a step. Set [goal] learn_from_notebook = false to go without. */
    EXPERIENCE_OF_CLASS,

    // what the commands write
    /** Nothing could be written to {file}: {why}; name a place that you may write to. */
    FOLDER_NOT_WRITABLE,
    /** {file} was read for this and is not written over, so nothing was written; choose another name to write to. */
    INPUT_NOT_WRITTEN_OVER,
    /** {file} is there already without {named}, which it would stand beside, so it is not written over and nothing was written; choose another --out. */
    FILE_OF_ANOTHER,

    // window
    /** There is no display to open the window on; open it where there is one, or use advise, replay or live. */
    NO_DISPLAY;

    private static final Set<FindingCode> HAZARDS = EnumSet.of(
            LIMIT_NOT_WATCHED,
            KNOCK_BESIDE_BAND,
            EXHAUST_STILL_RISING,
            BOOST_WITHOUT_BAROMETER,
            PULL_WHEEL_SLIP,
            FUEL_INJECTOR_DUTY_HIGH,
            FUEL_INJECTORS_TOO_SMALL,
            ADVANCE_NOT_AS_ASKED,
            LAMBDA_NOT_AS_ASKED);

    /** Whether it bears on what can hurt an engine or people: such findings are said first. */
    public boolean isHazard() {
        return HAZARDS.contains(this);
    }

    /** The code as JSON and the handbook write it: {@code file-not-found}. */
    public String id() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
